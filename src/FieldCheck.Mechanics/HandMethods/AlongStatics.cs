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
        _holding = [.. Supports(beam).Where(beam.HoldsAlong)];
        _sloped = [.. Supports(beam).Where(beam.IsSloped)];
    }

    /// <summary>True: the horizontal sum alone gives the push of the one sloped surface, as nothing else holds along.</summary>
    internal static bool GivesSlope(HandBeam beam) =>
        !Supports(beam).Any(beam.HoldsAlong) && Supports(beam).Count(beam.IsSloped) == 1;

    /// <summary>True: several sloped surfaces alone hold it lengthways, so nothing can be found without the rest.</summary>
    internal static bool NeedsAll(HandBeam beam) =>
        !Supports(beam).Any(beam.HoldsAlong) && Supports(beam).Count(beam.IsSloped) > 1;

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
        beam.Writer.Say(new HandRemark.PushesSquare(support, slope > 0));
        HandNumber angle = HandNumber.Given(
            Math.Abs(slope), HandUnit.OfAngle, new HandName(HandRole.Surface, support));
        HandNumber sine = beam.Writer.Find(
            new HandFormula.Sine(angle), new HandName(HandRole.SurfaceSine, support));
        HandNumber cosine = beam.Writer.Find(
            new HandFormula.Cosine(angle), new HandName(HandRole.SurfaceCosine, support));
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
        HandFormula left = Less(HandFormula.Total([], HandUnit.OfForce), pulls, double.NegativeInfinity, Position(_holding[0]));
        for (int i = 0; i < _holding.Length; i++)
        {
            double at = Position(_holding[i]);
            bool isLast = i + 1 == _holding.Length;
            double next = isLast ? double.PositiveInfinity : Position(_holding[i + 1]);
            AxialPull[] between = [.. pulls.Where(pull => pull.At > at && pull.At < next)];
            HandFormula right = isLast
                ? HandFormula.Total(between.Select(pull => pull.Force), HandUnit.OfForce)
                : stretch.Between(_holding[i], _holding[i + 1], between);
            Find(_holding[i], pulls.Where(pull => pull.At == at).Aggregate(left - right, (sum, pull) => sum - pull.Force));
            left = Less(right, pulls, at, next);
        }
    }

    private static HandFormula Less(HandFormula axial, AxialPull[] pulls, double from, double to) => pulls
        .Where(pull => pull.At > from && pull.At < to)
        .Aggregate(axial, (sum, pull) => sum - pull.Force);

    private double Position(int support) => _beam.Model.Supports[support].Position;

    private IEnumerable<AxialPull> Pulls() =>
    [
        .. Loads().Select(load => new AxialPull(load.Signed, load.Place, load.Place.Value)),
        .. _sloped.Select(support => new AxialPull(
            _beam.Horizontal[support]!, _writer.Place(Position(support)), Position(support))),
    ];
}
