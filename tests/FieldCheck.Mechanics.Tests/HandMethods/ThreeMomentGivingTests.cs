using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Supports that give way, turns that are imposed, sections that step, shear: each against the force method by hand, in
/// which what a cantilever's tip moves by is written down at once.
/// </summary>
public sealed class ThreeMomentGivingTests
{
    private const double L = 6;
    private const double W = 3e3;

    [Fact]
    public void SpringProp_TakesLessThanThreeEighths()
    {
        const double stiffness = 4e4;
        HandBeam beam = ThreeMomentCase.Work(
            Beam(L, [Support.Fixed(0), Support.Spring(L, stiffness)], [Uniform(0, L, W)]));

        double prop = 3 * W * L / 8 / (1 + (3 * Rigidity / (stiffness * Math.Pow(L, 3))));
        Equal(prop, beam.Vertical(1));
        Equal(prop / stiffness, beam.Value(HandRole.NodeMovement, 1));
    }

    [Fact]
    public void SpringProp_ThatSettles_PushesByTheDifference()
    {
        const double stiffness = 4e4;
        const double sinks = 0.02;
        HandBeam beam = ThreeMomentCase.Work(Beam(
            L, [Support.Fixed(0), Support.Spring(L, stiffness) with { Settlement = sinks }], [Uniform(0, L, W)]));

        double free = W * Math.Pow(L, 4) / (8 * Rigidity);
        double prop = (free - sinks) / (Math.Pow(L, 3) / (3 * Rigidity) + 1 / stiffness);
        Equal(prop, beam.Vertical(1));
        Equal(sinks + prop / stiffness, beam.Value(HandRole.NodeMovement, 1));
    }

    [Fact]
    public void SpringInRotation_HoldsLessThanAClamp()
    {
        const double stiffness = 3e5;
        Support sprung = Support.Pin(0) with { Rotation = new Restraint.Spring(stiffness) };
        HandBeam beam = ThreeMomentCase.Work(Beam(L, [sprung, Support.Roller(L)], [Uniform(0, L, W)]));

        double couple = W * L * L / 8 / (1 + (3 * Rigidity / (stiffness * L)));
        Equal(couple, beam.Couple(0));
        Equal(-couple, beam.Value(HandRole.SupportMoment, 0));
    }

    [Fact]
    public void ImposedRotation_TurnsBy4EIOverLHereAnd2EIOverLThere()
    {
        const double turn = 0.002;
        HandBeam beam = ThreeMomentCase.Work(Beam(
            L, [Support.Fixed(0) with { ImposedRotation = turn }, Support.Fixed(L)], []));

        Equal(4 * Rigidity * turn / L, beam.Couple(0));
        Equal(2 * Rigidity * turn / L, beam.Couple(1));
        Equal(6 * Rigidity * turn / (L * L), beam.Vertical(0));
    }

    [Fact]
    public void SteppedProppedCantilever_IsProppedByTheRatioOfItsTipMovements()
    {
        const double l = L / 2;
        HandBeam beam = ThreeMomentCase.Work(Beam(
            [new Span(l, 2 * Rigidity, 1e9), new Span(l, Rigidity, 1e9)],
            [Support.Fixed(0), Support.Roller(L)],
            [Uniform(0, L, W)]));

        // From the tip: integrals of w x^2/2 times x, and of x times x, over EI.
        double free = W * (Math.Pow(l, 4) / 8 + (Math.Pow(L, 4) - Math.Pow(l, 4)) / 16);
        double one = Math.Pow(l, 3) / 3 + (Math.Pow(L, 3) - Math.Pow(l, 3)) / 6;
        Equal(free / one, beam.Vertical(1));
    }

    [Fact]
    public void Shear_LetsTheProppedCantileverLeanMoreOnItsProp()
    {
        const double shear = 5e5;
        HandBeam beam = ThreeMomentCase.Work(Beam(
            [new Span(L, Rigidity, 1e9, shear)], [Support.Fixed(0), Support.Roller(L)], [Uniform(0, L, W)]));

        double free = W * Math.Pow(L, 4) / (8 * Rigidity) + W * L * L / (2 * shear);
        double one = Math.Pow(L, 3) / (3 * Rigidity) + L / shear;
        Equal(free / one, beam.Vertical(1));
    }

    [Theory]
    [InlineData(0.6)]
    [InlineData(-0.3)]
    public void SlopedProp_GivesWayAlongTheBeam(double slope)
    {
        const double axial = 1e6;
        const double pull = 7e3;
        HandBeam beam = ThreeMomentCase.Work(Beam(
            [new Span(L, Rigidity, axial)],
            [Support.Fixed(0), Support.Roller(L, slope)],
            [Uniform(0, L, W), new Load.Point(L / 3, 0, Right: pull)]));

        // Square to the surface, the tip's free movement is what the push N takes back by bending and by shortening.
        (double sine, double cosine) = Math.SinCos(slope);
        double free = W * Math.Pow(L, 4) / (8 * Rigidity) * cosine + pull * (L / 3) / axial * sine;
        double one = cosine * cosine * Math.Pow(L, 3) / (3 * Rigidity) + sine * sine * L / axial;
        Equal(free / one * cosine, beam.Vertical(1));
    }

    [Fact]
    public void WithoutStiffness_SettlementsAndSpringsAreOutOfReach()
    {
        Support[] supports = [Support.Pin(0), Support.Roller(L), Support.Roller(2 * L) with { Settlement = 0.01 }];
        Span[] spans = [new(2 * L, 1, 1)];

        Assert.False(CanWork(Beam(spans, supports, [], hasAbsoluteStiffness: false)));
        Assert.True(CanWork(Beam(spans, supports, [])));
    }

    [Fact]
    public void SeveralSlopes_OrSeveralPinsBesideOne_AreOutOfReach()
    {
        Assert.False(CanWork(Beam(
            2 * L, [Support.Pin(0), Support.Roller(L, 0.2), Support.Roller(2 * L, 0.2)], [])));
        Assert.False(CanWork(Beam(2 * L, [Support.Pin(0), Support.Pin(L), Support.Roller(2 * L, 0.2)], [])));
        Assert.True(CanWork(Beam(2 * L, [Support.Pin(0), Support.Roller(L), Support.Roller(2 * L, 0.2)], [])));
    }

    [Fact]
    public void BeamThatNothingHoldsAcross_IsNotWorked()
    {
        Support[][] all =
        [
            [],
            [Support.Guide(0), Support.Guide(L)],
            [Support.Guide(0), Support.Guide(L / 3), Support.Guide(L)],
        ];

        Assert.All(all, supports =>
        {
            BeamModel model = Beam(L, supports, [new Load.Point(2, 5e3)]);
            Assert.False(ThreeMomentMethod.Work(ThreeMomentCase.Prepare(model), 0, L));
        });
    }

    private static bool CanWork(BeamModel model) =>
        ThreeMomentMethod.CanWork(ThreeMomentCase.Prepare(model), 0, model.Length);
}
