using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Continuous and clamped beams whose support moments stand in every book of formulas; from memory, each derived again
/// by hand.
/// </summary>
public sealed class ThreeMomentClosedFormTests
{
    private const double L = 6;
    private const double W = 3e3;
    private const double P = 5e3;

    [Fact]
    public void TwoEqualSpans_EvenLoad_HogByWL2Over8()
    {
        HandBeam beam = ThreeMomentCase.Work(Beam(2 * L, Rollers(0, L, 2 * L), [Uniform(0, 2 * L, W)]));

        Equal(-W * L * L / 8, beam.Value(HandRole.SupportMoment, 1));
        Equal(3 * W * L / 8, beam.Vertical(0));
        Equal(10 * W * L / 8, beam.Vertical(1));
        Equal(3 * W * L / 8, beam.Vertical(2));
    }

    [Fact]
    public void ThreeEqualSpans_EvenLoad_HogByWL2Over10()
    {
        HandBeam beam = ThreeMomentCase.Work(Beam(3 * L, Rollers(0, L, 2 * L, 3 * L), [Uniform(0, 3 * L, W)]));

        Equal(-W * L * L / 10, beam.Value(HandRole.SupportMoment, 1));
        Equal(-W * L * L / 10, beam.Value(HandRole.SupportMoment, 2));
        Equal(0.4 * W * L, beam.Vertical(0));
        Equal(1.1 * W * L, beam.Vertical(1));
    }

    [Fact]
    public void ProppedCantilever_EvenLoad_IsProppedByThreeEighths()
    {
        HandBeam beam = ThreeMomentCase.Work(Beam(L, [Support.Fixed(0), Support.Roller(L)], [Uniform(0, L, W)]));

        Equal(-W * L * L / 8, beam.Value(HandRole.SupportMoment, 0));
        Equal(W * L * L / 8, beam.Couple(0));
        Equal(3 * W * L / 8, beam.Vertical(1));
    }

    [Fact]
    public void ProppedCantilever_PointLoadAtMidspan_IsProppedByFiveSixteenths()
    {
        HandBeam beam = ThreeMomentCase.Work(
            Beam(L, [Support.Roller(0), Support.Fixed(L)], [new Load.Point(L / 2, P)]));

        Equal(5 * P / 16, beam.Vertical(0));
        Equal(-3 * P * L / 16, beam.Couple(1));
    }

    [Theory]
    [InlineData(0, 1.0 / 12, 1.0 / 12)]
    [InlineData(1, 1.0 / 30, 1.0 / 20)]
    [InlineData(2, 1.0 / 20, 1.0 / 30)]
    public void ClampedSpan_SpreadLoad_HogsByTheBook(int shape, double left, double right)
    {
        Load load = new Load.Distributed(0, L, shape == 1 ? 0 : W, shape == 2 ? 0 : W);

        HandBeam beam = ThreeMomentCase.Work(Beam(L, [Support.Fixed(0), Support.Fixed(L)], [load]));

        Equal(W * L * L * left, beam.Couple(0));
        Equal(-W * L * L * right, beam.Couple(1));
    }

    [Fact]
    public void ClampedSpan_PointLoad_HogsByPAB2OverL2()
    {
        const double a = 2;
        const double b = L - a;
        HandBeam beam = ThreeMomentCase.Work(
            Beam(L, [Support.Fixed(0), Support.Fixed(L)], [new Load.Point(a, P)]));

        Equal(P * a * b * b / (L * L), beam.Couple(0));
        Equal(-P * a * a * b / (L * L), beam.Couple(1));
        Equal(P * b * b * (3 * a + b) / Math.Pow(L, 3), beam.Vertical(0));
    }

    [Fact]
    public void ClampedSpan_Couple_IsHeldBySixCABOverL3()
    {
        const double a = 2;
        const double b = L - a;
        HandBeam beam = ThreeMomentCase.Work(
            Beam(L, [Support.Fixed(0), Support.Fixed(L)], [new Load.Couple(a, P)]));

        Equal(6 * P * a * b / Math.Pow(L, 3), beam.Vertical(0));
        Equal(P * b * (2 * a - b) / (L * L), beam.Couple(0), scale: P);
        Equal(P * a * (2 * b - a) / (L * L), beam.Couple(1), scale: P);
    }

    /// <summary>By antisymmetry each of two equal spans takes half of a couple at their common support.</summary>
    [Theory]
    [InlineData(900)]
    [InlineData(-900)]
    public void TwoEqualSpans_CoupleAtTheMiddle_JumpsFromHalfToHalf(double couple)
    {
        HandBeam beam = ThreeMomentCase.Work(Beam(2 * L, Rollers(0, L, 2 * L), [new Load.Couple(L, couple)]));

        Equal(couple / 2, beam.Value(HandRole.MomentLeft, 1));
        Equal(-couple / 2, beam.Value(HandRole.MomentRight, 1));
        Equal(couple / 2 / L, beam.Vertical(0));
        Equal(0, beam.Vertical(1), couple);
        Equal(-couple / 2 / L, beam.Vertical(2));
    }

    [Fact]
    public void TwoEqualSpans_MiddleSettles_SagBy3EIDOverL2()
    {
        const double sinks = 0.01;
        HandBeam beam = ThreeMomentCase.Work(Beam(
            2 * L, [Support.Pin(0), Support.Roller(L) with { Settlement = sinks }, Support.Roller(2 * L)], []));

        Equal(3 * Rigidity * sinks / (L * L), beam.Value(HandRole.SupportMoment, 1));
        Equal(-6 * Rigidity * sinks / Math.Pow(L, 3), beam.Vertical(1));
    }

    [Fact]
    public void TwoSpans_SectionsDiffer_HogByLengthsOverInertias()
    {
        const double longer = 9;
        HandBeam beam = ThreeMomentCase.Work(Beam(
            [new Span(L, Rigidity, 1e9), new Span(longer, 3 * Rigidity, 1e9)],
            Rollers(0, L, L + longer),
            [Uniform(0, L + longer, W)],
            hasAbsoluteStiffness: false));

        double expected = -W * (Math.Pow(L, 3) + (Math.Pow(longer, 3) / 3)) / (8 * (L + (longer / 3)));
        Equal(expected, beam.Value(HandRole.SupportMoment, 1));
    }

    [Fact]
    public void Overhang_BringsAQuarterOfItsMomentToTheNextSupport()
    {
        const double arm = 2;
        HandBeam beam = ThreeMomentCase.Work(Beam(
            arm + 2 * L, Rollers(arm, arm + L, arm + 2 * L), [new Load.Point(0, P)]));

        Equal(-P * arm, beam.Value(HandRole.SupportMoment, 1));
        Equal(P * arm / 4, beam.Value(HandRole.SupportMoment, 2));
    }

    [Fact]
    public void GuidedSpan_EvenLoad_HogsByAThirdAndSagsByASixth()
    {
        HandBeam beam = ThreeMomentCase.Work(Beam(L, [Support.Fixed(0), Support.Guide(L)], [Uniform(0, L, W)]));

        Equal(W * L * L / 3, beam.Couple(0));
        Equal(W * L * L / 6, beam.Couple(1));
        Equal(W * Math.Pow(L, 4) / (24 * Rigidity), beam.Value(HandRole.NodeMovement, 1));
    }

    [Fact]
    public void HingeInAClampedSpan_CarriesWhatBothTipsAgreeOn()
    {
        const double l = L / 2;
        const double a = 2;
        HandBeam beam = ThreeMomentCase.Work(Beam(
            L, [Support.Fixed(0), Support.Fixed(L)], [new Load.Point(a, P)], hinges: [l]));

        // Tip of a cantilever under P at a: P a^2 (3l - a) / 6EI; under the hinge force at its tip: F l^3 / 3EI.
        double force = P * a * a * (3 * l - a) / (4 * Math.Pow(l, 3));
        Equal(force, beam.Vertical(1));
        Equal(-force, beam.HingeForce[0]!.Value);
        Equal(-force * l, beam.Couple(1));
        Equal(force * Math.Pow(l, 3) / (3 * Rigidity), beam.Value(HandRole.NodeMovement, 1));
    }

    private static Support[] Rollers(params double[] places) =>
        [.. places.Select((place, i) => i == 0 ? Support.Pin(place) : Support.Roller(place))];
}
