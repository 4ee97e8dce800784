using System.Collections.Immutable;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Forces along the beam: the horizontal sum, or, between several supports that hold along, no stretch.</summary>
internal sealed class AlongStatics
{
    private readonly HandBeam _beam;
    private readonly HandWriter _writer;
    private readonly ImmutableArray<int> _holding;
    private readonly ImmutableArray<int> _sloped;

    private AlongStatics(HandBeam beam)
    {
        _beam = beam;
        _writer = beam.Writer;
        _holding = [.. Supports(beam).Where(beam.IsHeldAlong)];
        _sloped = [.. Supports(beam).Where(beam.IsSloped)];
    }

    /// <summary>True: the horizontal sum alone gives the push of the one sloped surface, as nothing else holds along.</summary>
    internal static bool GivesSlope(HandBeam beam) =>
        !Supports(beam).Any(beam.IsHeldAlong) && Supports(beam).Count(beam.IsSloped) == 1;

    /// <summary>True: several sloped surfaces alone hold it lengthways, so nothing can be found without the rest.</summary>
    internal static bool NeedsAll(HandBeam beam) =>
        !Supports(beam).Any(beam.IsHeldAlong) && Supports(beam).Count(beam.IsSloped) > 1;

    /// <summary>Finds the one sloped surface's push from the horizontal sum.</summary>
    internal static void WorkSlope(HandBeam beam)
    {
        AlongStatics along = new(beam);
        int support = along._sloped[0];
        HandName name = new(HandRole.Horizontal, support);
        along._writer.Begin(new HandStep.Along());
        along._writer.Say(new HandRemark.HorizontalSum(name));
        HandNumber horizontal = along._writer.Find(
            HandFormula.Total(along.Loads().Select(load => -load.Signed), HandUnit.OfForce), name);
        beam.Horizontal[support] = horizontal;
        (HandNumber sine, HandNumber cosine, bool risesRight) = SlopeOf(beam, support);
        HandFormula push = (HandFormula)horizontal / sine;
        HandNumber normal = along._writer.Find(risesRight ? -push : push, new HandName(HandRole.Normal, support));
        beam.Normal[support] = normal;
        beam.Vertical[support] = along._writer.Find((HandFormula)normal * cosine, new HandName(HandRole.Vertical, support));
    }

    /// <summary>Finds push and horizontal part of a sloped surface whose vertical part is known.</summary>
    internal static void WorkSlopeFromVertical(HandBeam beam, int support)
    {
        (HandNumber sine, HandNumber cosine, bool risesRight) = SlopeOf(beam, support);
        HandNumber normal = beam.Writer.Find(
            (HandFormula)beam.Vertical[support]! / cosine, new HandName(HandRole.Normal, support));
        beam.Normal[support] = normal;
        HandFormula part = (HandFormula)normal * sine;
        beam.Horizontal[support] = beam.Writer.Find(risesRight ? -part : part, new HandName(HandRole.Horizontal, support));
    }

    /// <summary>The sine and cosine of a surface's slope, without sign, and which way it rises.</summary>
    internal static (HandNumber Sine, HandNumber Cosine, bool RisesRight) SlopeOf(HandBeam beam, int support)
    {
        double slope = beam.Model.Supports[support].SurfaceSlope;
        if (beam.Slopes.TryGetValue(support, out (HandNumber Sine, HandNumber Cosine) known))
        {
            return (known.Sine, known.Cosine, slope > 0);
        }

        beam.Writer.Say(new HandRemark.PushesSquare(support, slope > 0));
        HandNumber angle = HandNumber.Given(
            Math.Abs(slope), HandUnit.OfAngle, new HandName(HandRole.Surface, support));
        HandNumber sine = beam.Writer.Find(
            new HandFormula.Sine(angle), new HandName(HandRole.SurfaceSine, support));
        HandNumber cosine = beam.Writer.Find(
            new HandFormula.Cosine(angle), new HandName(HandRole.SurfaceCosine, support));
        beam.Slopes.Add(support, (sine, cosine));
        return (sine, cosine, slope > 0);
    }

    /// <summary>Finds what holds along, with the sloped surfaces' parts known.</summary>
    internal static void Work(HandBeam beam) => new AlongStatics(beam).Work();

    private static IEnumerable<int> Supports(HandBeam beam) => Enumerable.Range(0, beam.Model.Supports.Length);

    private IEnumerable<HandForce> Loads() => _beam.Loads.Forces.Where(force => !force.IsAcross);

    private IEnumerable<HandFormula> Known() =>
        Loads().Select(load => load.Signed).Concat(_sloped.Select(support => (HandFormula)_beam.Horizontal[support]!));

    private void Work()
    {
        if (_holding.IsEmpty && !Known().Any())
        {
            _writer.Begin(new HandStep.Along());
            _writer.Say(new HandRemark.NothingAlong([]));
            return;
        }

        if (_holding.IsEmpty)
        {
            return;
        }

        _writer.Begin(new HandStep.Along());
        if (!Known().Any())
        {
            _writer.Say(new HandRemark.NothingAlong(_holding));
            foreach (int support in _holding)
            {
                Find(support, HandFormula.Total([], HandUnit.OfForce));
            }
        }
        else if (_holding is [int only])
        {
            _writer.Say(new HandRemark.HorizontalSum(new HandName(HandRole.Horizontal, only)));
            Find(only, HandFormula.Total(Known().Select(term => -term), HandUnit.OfForce));
        }
        else
        {
            WorkBetween();
        }
    }

    private void Find(int support, HandFormula formula) =>
        _beam.Horizontal[support] = _writer.Find(formula, new HandName(HandRole.Horizontal, support));

    /// <summary>From left to right; the axial force right of each support follows from no stretch to the next one.</summary>
    private void WorkBetween()
    {
        AxialPull[] pulls = [.. Pulls()];
        AxialStretch stretch = new(_beam);
        List<HandFormula> left = [.. Between(pulls, double.NegativeInfinity, Position(_holding[0])).Select(pull => -pull.Force)];
        HandNumber?[] axial =
        [
            .. _holding.Skip(1).Select((next, i) => stretch.Between(
                _holding[i], next, Between(pulls, Position(_holding[i]), Position(next)))),
            null,
        ];
        _writer.Say(new HandRemark.HoldsTheChange());
        for (int i = 0; i < _holding.Length; i++)
        {
            double at = Position(_holding[i]);
            double next = i + 1 < _holding.Length ? Position(_holding[i + 1]) : double.PositiveInfinity;
            AxialPull[] beyond = Between(pulls, at, next);
            List<HandFormula> right = axial[i] is HandNumber found ? [found] : [.. beyond.Select(pull => pull.Force)];
            Find(_holding[i], HandFormula.Total(
                left.Concat(right.Select(term => -term)).Concat(pulls.Where(pull => pull.At == at).Select(pull => -pull.Force)),
                HandUnit.OfForce));
            left = [.. right, .. beyond.Select(pull => -pull.Force)];
        }
    }

    private static AxialPull[] Between(AxialPull[] pulls, double from, double to) =>
        [.. pulls.Where(pull => pull.At > from && pull.At < to)];

    private double Position(int support) => _beam.Model.Supports[support].Position;

    private IEnumerable<AxialPull> Pulls() =>
    [
        .. Loads().Select(load => new AxialPull(load.Signed, load.Place, load.Place.Value, load.Actor)),
        .. _sloped.Select(support => new AxialPull(
            _beam.Horizontal[support]!,
            _writer.Place(Position(support)),
            Position(support),
            new HandActor.Named(new HandName(HandRole.Horizontal, support)))),
    ];
}
