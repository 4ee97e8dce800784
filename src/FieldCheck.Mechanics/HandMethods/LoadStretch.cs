namespace FieldCheck.Mechanics.HandMethods;

/// <summary>A stretch between two marks, with the intensities of what lies on it.</summary>
internal sealed class LoadStretch
{
    // Of the loads on a stretch: less at one of its ends is nothing, not a change of sense just inside.
    private const double Rounding = 1e-12;

    private readonly HandWriter _writer;
    private readonly HandFormula _start;
    private readonly HandFormula _end;
    private readonly int _index;
    private HandNumber? _width;
    private HandNumber? _startFound;
    private HandNumber? _endFound;

    private LoadStretch(HandWriter writer, HandNumber from, HandNumber to, HandFormula start, HandFormula end, int index)
    {
        _writer = writer;
        From = from;
        To = to;
        _start = start;
        _end = end;
        _index = index;
        double first = start.Evaluate(number => number.Value);
        double last = end.Evaluate(number => number.Value);
        Load = IsNone(start) && IsNone(end) ? HandStretchLoad.Nothing
            : first == last ? HandStretchLoad.Uniform
            : HandStretchLoad.Varying;
    }

    internal HandNumber From { get; }

    internal HandNumber To { get; }

    internal HandStretchLoad Load { get; }

    /// <summary>Its length; the line that finds it is written when it is first asked for.</summary>
    internal HandNumber Width() => _width ??= HandNumber.Distance(From, To) is { IsInline: true } distance
        ? _writer.Find(distance.Formula, new HandName(HandRole.StretchLength, _index))
        : To;

    /// <summary>Intensity at its left end, positive down; the line that finds it is written when it is first asked for.</summary>
    internal HandNumber Start() => _startFound ??= Find(
        _start, Load == HandStretchLoad.Uniform ? HandRole.StretchEven : HandRole.StretchStart);

    /// <summary>Intensity at its right end.</summary>
    internal HandNumber End() => Load == HandStretchLoad.Uniform ? Start() : _endFound ??= Find(_end, HandRole.StretchEnd);

    /// <summary>The stretch between two marks, in two where the load on it changes its sense.</summary>
    internal static IEnumerable<LoadStretch> Between(
        HandWriter writer, LoadForces loads, HandNumber from, HandNumber to, int index)
    {
        HandForce[] over =
        [
            .. loads.Forces.Where(force =>
                force is { IsAcross: true, Spread: not null } && force.From.Value < to.Value && force.To.Value > from.Value),
        ];
        HandFormula start = HandFormula.Total(over.SelectMany(force => At(force, from)), HandUnit.OfIntensity);
        HandFormula end = HandFormula.Total(over.SelectMany(force => At(force, to)), HandUnit.OfIntensity);
        LoadStretch whole = new(writer, from, to, start, end, index);
        double first = start.Evaluate(number => number.Value);
        double last = end.Evaluate(number => number.Value);
        double least = Rounding * over.Sum(force => force.Spread!.Intensity.Value);
        bool turns = first * last < 0 && Math.Abs(first) > least && Math.Abs(last) > least;
        return turns ? InTwo(writer, whole, index) : [whole];
    }

    private static IEnumerable<LoadStretch> InTwo(HandWriter writer, LoadStretch whole, int index)
    {
        writer.Say(new HandRemark.LoadTurns());
        HandNumber start = whole.Start();
        HandNumber end = whole.End();
        HandNumber turn = writer.Find(
            (HandFormula)whole.From + (HandFormula)whole.Width() * start / ((HandFormula)start - end),
            new HandName(HandRole.LoadTurnPlace, index));
        HandFormula nothing = HandFormula.Total([], HandUnit.OfIntensity);
        yield return new LoadStretch(writer, whole.From, turn, start, nothing, index);
        yield return new LoadStretch(writer, turn, whole.To, nothing, end, index);
    }

    /// <summary>What one piece adds at a place on it, positive down; nothing where a triangle begins.</summary>
    private static IEnumerable<HandFormula> At(HandForce force, HandNumber place)
    {
        HandSpread spread = force.Spread!;
        HandFormula peak = spread.Intensity;
        HandFormula? size = spread.Shape switch
        {
            HandShape.Uniform => peak,
            HandShape.Rising => Share(peak, HandNumber.Distance(spread.From, place), spread, spread.To.Value == place.Value),
            _ => Share(peak, HandNumber.Distance(place, spread.To), spread, spread.From.Value == place.Value),
        };
        return size is null ? [] : [force.Sense == HandSense.Up ? -size : size];
    }

    private static HandFormula? Share(HandFormula peak, HandNumber distance, HandSpread spread, bool isPeak) =>
        isPeak ? peak
        : distance.Value == 0 ? null
        : peak * distance / spread.Width;

    private static bool IsNone(HandFormula formula) => formula is HandFormula.Sum { Terms.IsEmpty: true };

    private HandNumber Find(HandFormula formula, HandRole role) => formula is HandFormula.Known known ? known.Number
        : formula is HandFormula.Sum { Terms: [HandFormula.Known { Number.IsInline: false } only] } ? only.Number
        : _writer.Find(formula, new HandName(role, _index));
}
