using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>
/// Patterns that are more than what is known in one figure only: two bays of 6 m, hinged, and a load on one. What is known
/// are answers made up for it: without the load, and of a softer beam, so that its deflections count for nothing.
/// </summary>
public sealed class ScreenedFiguresTests
{
    private const double More = 1 + 1e-6;

    /// <summary>
    /// Under a triangle 6x/6 M = 6x - x³/6 is greatest at 6/√3, between stations at 3 and 4.5 m: forces at each station give as
    /// much there, and forces beside the supports more V. One more force at the peak, as much as it is or less, decides.
    /// </summary>
    [Theory]
    [InlineData(null, true)]
    [InlineData(1 - 1e-6, true)]
    [InlineData(More, false)]
    public void PeakBetweenStations_IsSeen(double? known, bool matters)
    {
        Load.Distributed live = new(0, 6, 0, 6);
        double peak = 6 / Math.Sqrt(3);
        LiftedRecords records = Records(
            live,
            [
                [Tent(1.5, M(1.5) * More)], [Tent(3, M(3) * More)], [Tent(4.5, M(4.5) * More)],
                [new Load.Point(0.05, 20)], [new Load.Point(5.95, 60)],
                .. known is double share ? new Load[][] { [Tent(peak, M(peak) * share)] } : [],
            ]);

        Assert.Equal(matters, Screen(live, records).CouldMatter(1));

        static double M(double x) => 6 * x - x * x * x / 6;
    }

    /// <summary>
    /// Under 1 N/m V left of the middle support is -3 N. Known are -30 N right of it, which is another element, and no less than
    /// -2.25 N left of it.
    /// </summary>
    [Theory]
    [InlineData(0, true)]
    [InlineData(3 * More, false)]
    public void EndOfAnElement_IsSeenBesideAJump(double known, bool matters)
    {
        Load.Distributed live = new(0, 6, 1, 1);
        LiftedRecords records = Records(
            live,
            [
                [Tent(1.5, 3.375 * More)], [Tent(3, 4.5 * More)], [Tent(4.5, 3.375 * More)],
                [new Load.Point(0.05, 20)], [new Load.Distributed(6, 12, -10, -10)], [new Load.Distributed(6, 12, 10, 10)],
                [new Load.Point(5.99, known / (5.99 / 6))],
            ]);

        Assert.Equal(matters, Screen(live, records).CouldMatter(1));
    }

    /// <summary>The same at the start of the second bay, mirrored.</summary>
    [Theory]
    [InlineData(0, true)]
    [InlineData(3 * More, false)]
    public void StartOfAnElement_IsSeenBesideAJump(double known, bool matters)
    {
        Load.Distributed live = new(6, 12, 1, 1);
        LiftedRecords records = Records(
            live,
            [
                [Tent(7.5, 3.375 * More)], [Tent(9, 4.5 * More)], [Tent(10.5, 3.375 * More)],
                [new Load.Point(11.95, 20)], [new Load.Distributed(0, 6, -10, -10)], [new Load.Distributed(0, 6, 10, 10)],
                [new Load.Point(6.01, known / (5.99 / 6))],
            ]);

        Assert.Equal(matters, Screen(live, records).CouldMatter(1));
    }

    /// <summary>A force that gives a moment under it.</summary>
    private static Load.Point Tent(double at, double moment)
    {
        double own = at > 6 ? at - 6 : at;
        return new Load.Point(at, moment * 6 / (own * (6 - own)));
    }

    private static LiftedRecords Records(Load live, Load[][] known)
    {
        Superposition sum = Sum(live);
        LiftedRecords records = new(sum.Problem, sum.Imposed);
        records.Take(Answer.To(Model(1, SupportAction.Both)));
        foreach (Load[] loads in known)
        {
            records.Take(Answer.To(Model(0.05, SupportAction.Both, loads)));
        }

        return records;
    }

    private static PatternScreen Screen(Load live, LiftedRecords records)
    {
        Superposition sum = Sum(live);
        return new PatternScreen(
            sum, 0, new SituationTrials(sum, 0).Optional, RaisedRests.Of(sum, new BeamSolver())!, records);
    }

    private static Superposition Sum(Load live) => LiftedBeams.Sum(new EnvelopeProblem(Model(1, SupportAction.PushesOnly, live), [0], []));

    private static BeamModel Model(double rigidity, SupportAction last, params Load[] loads) => new(
        [new Span(6, rigidity, 1), new Span(6, rigidity, 1)],
        [Support.Pin(0), Support.Roller(6), Support.Roller(12) with { Action = last }],
        [6],
        [new LoadCase("live", [.. loads]), new LoadCase("dead", [new Load.Distributed(6, 12, 1, 1)])],
        [new Combination("all", CombinationBasis.Service, [1, 1])]);
}
