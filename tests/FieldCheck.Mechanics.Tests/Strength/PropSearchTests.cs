using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>
/// Where a prop may stand, by the three-moment equation. Held is a moment: the plank is judged by bending alone, and its
/// stress is written as a moment over S = 333,333 mm³. All loads are 2 kN/m.
/// </summary>
public sealed class PropSearchTests
{
    private const double Load = 2000;

    /// <summary>The ends of a stretch are found to a ten-thousandth of a step, a 120th of the beam.</summary>
    private const double Step = 1.0 / 120 / 1e4;

    /// <summary>
    /// Bays a and b = 6 - a: w·(a³ + b³)/8·6 = w·(36 - 3ab)/8 over the prop, more than what sags beside it as far as 1.98 m
    /// from an end: 3030.3 N·m. In the middle w·l²/8 of 3 m, and 5/4·w·l on the prop.
    /// </summary>
    [Fact]
    public void StretchOfASimpleBeam_EndsWhereTheMomentOverThePropIsUsedUp()
    {
        double held = Load * (36 - 3 * 1.98 * 4.02) / 8;

        PropStretch found = Assert.Single(Find(Bending(Simple(6), held)));

        Assert.InRange(found.From, 1.98 - 1e-7, 1.98 + 6 * Step);
        Assert.InRange(found.To, 4.02 - 6 * Step, 4.02 + 1e-7);
        Assert.Equal(3, found.Best);
        Assert.Equal(Load * 9 / 8 / held, found.Utilisation, 1e-9);
        Assert.Equal(1.25 * Load * 3, found.Push, 1e-6);
        Assert.Null(found.Left);
    }

    /// <summary>
    /// A cantilever of 4 m with a prop at x: w·(4 - x)²/2 over it, as far as 1.91 m from the wall; w·(-32 + 16x - x²)/8 at the
    /// wall. Of places a thirtieth of a metre apart these two are least at 17/6 m, and the far end may be propped too.
    /// </summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void StretchOfACantilever_ReachesItsEnd(bool isMirrored)
    {
        double held = Load * 2.09 * 2.09 / 2;
        BeamModel model = Checked.Model([4], [Support.Fixed(isMirrored ? 4 : 0)], Checked.Uniform(0, 4, Load));

        PropStretch found = Assert.Single(Find(Bending(model, held)));

        double near = isMirrored ? 4 - found.To : found.From;
        Assert.InRange(near, 1.91 - 1e-7, 1.91 + 4 * Step);
        Assert.Equal(isMirrored ? 0 : 4, isMirrored ? found.From : found.To);
        Assert.Equal(17.0 / 6, isMirrored ? 4 - found.Best : found.Best, 1e-12);
        Assert.Equal(Load * 7 / 6 * 7 / 6 / 2 / held, found.Utilisation, 1e-9);

        // R = w·(6l² - 4lx + x²)/8x of a cantilever (deflection w·x²·(6l² - 4lx + x²)/24EI against R·x³/3EI).
        double x = 17.0 / 6;
        Assert.Equal(Load * (96 - 16 * x + x * x) / (8 * x), found.Push, 1e-6);
    }

    /// <summary>
    /// Two bays of 6 m: w·36/8 over the middle support is too much, a prop in either bay takes off enough, near the middle
    /// support no more. What is held is less than 3.857·w, which a clamped end leaves, or more.
    /// </summary>
    [Theory]
    [InlineData(3.6)]
    [InlineData(3.9)]
    public void TwoBays_HaveAStretchEach(double held)
    {
        BeamModel model = Checked.Model([6, 6], [Support.Pin(0), Support.Roller(6), Support.Roller(12)], Checked.Uniform(0, 12, Load));

        ImmutableArray<PropStretch> found = Find(Bending(model, held * Load));

        Assert.Equal(2, found.Length);
        double first = held > 3.857 ? 0.1 : found[0].From;
        Assert.Equal((first, 12 - first), (found[0].From, found[1].To));
        Assert.Equal(held > 3.857 ? OverMiddle(0.1) : held, OverMiddle(found[0].From), 1e-4);
        Assert.InRange(OverMiddle(found[0].To), held - 1e-4, held + 1e-8);
        Assert.Equal(12, found[0].To + found[1].From, 24 * Step);
        Assert.Equal(12, found[0].From + found[1].To, 24 * Step);
        Assert.Equal(found[0].Push, found[1].Push, 1e-6);
        Assert.Equal(found[0].Utilisation, found[1].Utilisation, 1e-9);
        Assert.Equal(OverMiddle(found[0].Best) / held, found[0].Utilisation, 1e-9);
        Assert.True(
            Enumerable.Range(1, 59).All(i => OverMiddle(i / 10.0) >= OverMiddle(found[0].Best) - 1e-9), "No place tried is better.");
    }

    /// <summary>A prop as stiff as the beam at midspan, 48EI/l³, takes half of 5/8·w·l: 3750 N.</summary>
    [Fact]
    public void PropThatGivesWay_TakesItsShare()
    {
        PropStretch found = Find(Bending(Simple(6), 4500), stiffness: 48e6 / 216).Single();

        // At x the beam gives δ = w·x·(l³ - 2lx² + x³)/24EI and x²·(l - x)²/3EIl to a force; 2.0625 m from an end V = 0.
        Assert.Equal(3, found.Best);
        Assert.Equal(3750, found.Push, 1e-6);
        Assert.Equal(4125 * 4125 / (2 * Load) / 4500, found.Utilisation, 1e-9);
        Assert.Equal(6, found.From + found.To, 12 * Step);
        Assert.Equal(4500, Sagging(found.From), 0.1);
    }

    /// <summary>
    /// Half of the load in another combination: the push is the greater, 7500 N at midspan, and so is what is used up.
    /// </summary>
    [Fact]
    public void Push_IsTheGreatestOfAllCombinations()
    {
        BeamModel model = Simple(6) with
        {
            Combinations =
            [
                new Combination("half", CombinationBasis.Service, [0.5]), new Combination("whole", CombinationBasis.Service, [1]),
            ],
        };

        Assert.Equal(7500, Find(Bending(model, 3000)).Single().Push, 1e-6);
    }

    /// <summary>
    /// 8 m propped in the middle: 4000 N·m over the prop of 5333 N·m, but 5/8·w·4 m = 5 kN beside it, on 2/3 of 0.01 m², of
    /// 0.5 N/mm².
    /// </summary>
    [Fact]
    public void OneKindAlone_SaysWhatIsLeftOver()
    {
        StrengthProblem problem = Checked.Problem(Simple(8), Checked.Stick(new Strengths(16e6, 0.5e6, null)));

        Assert.Empty(Find(problem));
        PropStretch found = Assert.Single(Find(problem, only: CheckKind.Bending));
        Assert.Equal(4, found.Best);
        Assert.Equal(4000 / (16e6 * 0.05 * 0.04 / 6), found.Utilisation, 1e-9);
        Assert.Equal(CheckKind.Shear, found.Left!.Kind);
        Assert.Equal(1.5 * 5000 / 0.01 / 0.5e6, found.Left.Utilisation!.Value, 1e-9);
    }

    /// <summary>
    /// A prop at a lifts A of bays a and b where w·a²/2 is less than w·(a³ + b³)/8(a + b): where a is less than (√13 − 1)/6 of b.
    /// Where nobody said that A holds down, the stretch ends there; where it only pushes, that is told.
    /// </summary>
    [Theory]
    [InlineData(SupportAction.Both)]
    [InlineData(SupportAction.PushesOnly)]
    public void PropThatLiftsAnEnd_IsNotOffered_OrToldOf(SupportAction action)
    {
        double last = 6 * (Math.Sqrt(13) - 1) / (Math.Sqrt(13) + 5);
        BeamModel model = Checked.Model(
            [6], [Support.Pin(0) with { Action = action }, Support.Roller(6) with { Action = action }], Checked.Uniform(0, 6, Load));

        PropStretch found = Assert.Single(Find(
            Bending(model, 8500) with { Untied = action == SupportAction.Both ? [0, 1] : [] }));

        Assert.Equal(3, found.Best);
        Assert.Empty(found.LetGo);
        Assert.Equal(action == SupportAction.Both ? [] : [0, 1], found.LetGoNearAnEnd.AsEnumerable());
        if (action == SupportAction.Both)
        {
            Assert.InRange(found.From, last, last + 6 * Step);
            Assert.InRange(found.To, 6 - last - 6 * Step, 6 - last);
        }
        else
        {
            Assert.True(found.From < last - 0.1, "Lifted off, the beam still holds.");
        }
    }

    /// <summary>A prop at the tip leaves no overhang for its limit to speak of, and stands there all the same.</summary>
    [Fact]
    public void PropUnderTheTip_IsOffered()
    {
        BeamModel model = Checked.Model([4, 2], [Support.Pin(0), Support.Roller(4)], new Load.Point(6, 1000));

        PropStretch found = Assert.Single(
            Find(Checked.Problem(model, Checked.Bare).With(new DeflectionLimits { OverhangRatio = 1e4 })), one => one.To > 4);

        Assert.Equal(6, found.To);
    }

    /// <summary>Supports to the right of a prop are counted on by one.</summary>
    [Theory]
    [InlineData(0, 1, 2)]
    [InlineData(4, 0, 2)]
    public void Prop_KeepsWhichSupportsNobodySaidToHoldDown(double place, int left, int right)
    {
        BeamModel model = Checked.Model([6], [Support.Pin(2), Support.Roller(6)], Checked.Uniform(0, 6, Load));

        StrengthProblem propped = PropSearch.With(Bending(model, 8500) with { Untied = [0, 1] }, place, null);

        Assert.Equal([left, right], propped.Untied.AsEnumerable());
    }

    [Fact]
    public void PropThatHelpsNowhere_IsNotFound() => Assert.Empty(Find(Bending(Simple(6), 2000)));

    /// <summary>A prop stands no nearer to a support than a ten-thousandth of the beam, 0.6 mm of 6 m; the next place tried is 50 mm in.</summary>
    [Theory]
    [InlineData(0.0003, 0.05)]
    [InlineData(0.0007, 0)]
    public void PropTooCloseToASupport_IsNotTried(double support, double from)
    {
        BeamModel model = Checked.Model([6], [Support.Pin(support), Support.Roller(6)], Checked.Uniform(0, 6, Load));

        PropStretch found = Find(Bending(model, 12e3)).Single();

        Assert.Equal((from, 5.95), (found.From, Math.Round(found.To, 12)));
    }

    /// <summary>A prop goes in among the supports by its place, with a seat of its own that asks nothing.</summary>
    [Fact]
    public void Prop_StandsAmongTheSupports()
    {
        Seat seat = new(0.1, 1e6, null, null);
        StrengthProblem problem = Bending(Simple(6), 3000).With(seat);

        StrengthProblem propped = PropSearch.With(problem, 2, 1e5);

        Assert.Equal(
            [Support.Pin(0), Support.Spring(2, 1e5) with { Action = SupportAction.PushesOnly }, Support.Roller(6)],
            propped.Beam.Model.Supports.AsEnumerable());
        Assert.Equal([seat, Checked.NoSeat, seat], propped.Seats.AsEnumerable());
        Assert.Equal(Support.Roller(2) with { Action = SupportAction.PushesOnly }, PropSearch.With(problem, 2, null).Beam.Model.Supports[1]);
    }

    /// <summary>How far a prop sinks is not known where rigidities are ratios only; a rigid one does not sink.</summary>
    [Fact]
    public void PropThatGivesWay_NeedsABeamOfKnownStiffness()
    {
        BeamModel model = Simple(6);
        BeamModel ratios = new(model.Spans, model.Supports, [], model.Cases, model.Combinations, HasAbsoluteStiffness: false);

        ArgumentException error = Assert.Throws<ArgumentException>("stiffness", () => Find(Bending(ratios, 3000), stiffness: 1e5));
        Assert.StartsWith("A prop that gives way needs a beam whose stiffness is known.", error.Message, StringComparison.Ordinal);
        Assert.Equal(3, Find(Bending(ratios, 3000)).Single().Best);
    }

    [Fact]
    public void NothingGiven_IsAnError()
    {
        Assert.Throws<ArgumentNullException>("problem", () => PropSearch.Find(null!, null, new BeamSolver()));
        Assert.Throws<ArgumentNullException>("solver", () => PropSearch.Find(Bending(Simple(6), 3000), null, null!));
    }

    private static BeamModel Simple(double length) => Checked.Simple(length, Checked.Uniform(0, length, Load));

    private static StrengthProblem Bending(BeamModel model, double moment) =>
        Checked.Problem(model, Checked.Stick(new Strengths(moment / Checked.Plank.SectionModulus!.Value, null, null)));

    private static ImmutableArray<PropStretch> Find(StrengthProblem problem, double? stiffness = null, CheckKind? only = null) =>
        PropSearch.Find(problem, stiffness, new BeamSolver(), only);

    /// <summary>
    /// Over the middle of 6 + 6 m with a prop at a, times w: 2·6·M₁ + c·M₂ = -(a³ + c³)/4 and c·M₁ + 2·(c + 6)·M₂ =
    /// -(c³ + 6³)/4, with c = 6 - a.
    /// </summary>
    private static double OverMiddle(double a)
    {
        double c = 6 - a;
        double prop = (a * a * a + c * c * c) / 4;
        double middle = (c * c * c + 216) / 4;
        return (12 * middle - c * prop) / (24 * (c + 6) - c * c);
    }

    /// <summary>The greatest sagging moment beside a prop at x that is as stiff as the beam at midspan.</summary>
    private static double Sagging(double x)
    {
        double sag = Load * x * (216 - 12 * x * x + x * x * x) / 24e6;
        double push = sag / (x * x * (6 - x) * (6 - x) / 18e6 + 216 / 48e6);
        double far = (Load * 18 - push * x) / 6;
        return far * far / (2 * Load);
    }
}
