using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>The beam stays in one piece, and forces jump only by what stands at the place.</summary>
public sealed class ContinuityTests
{
    private const double Rounding = 1e-12;

    [Fact]
    public void Deflection_IsContinuous() => AtEveryPlace((_, response, x, scale) => Law.Equal(
        response.At(x).Left.Deflection, response.At(x).Right.Deflection, Rounding * scale.Deflection, $"at {x:R}"));

    [Fact]
    public void SectionRotation_IsContinuousButAtHinges() => AtEveryPlace((model, response, x, scale) =>
    {
        if (!model.Hinges.Contains(x))
        {
            double left = Bending.RotationLeftOf(model, response, x);
            Law.Equal(left, Bending.RotationRightOf(model, response, x), Rounding * scale.Slope, $"at {x:R}");
        }
    });

    [Fact]
    public void Slope_JumpsOnlyAtHingesAndWhereShearOrItsRigidityJumps() => AtEveryPlace((model, response, x, scale) =>
    {
        (SectionState left, SectionState right) = response.At(x);
        double? before = Bending.SpanEndingAt(model, x).ShearRigidity;
        double? after = Bending.SpanStartingAt(model, x).ShearRigidity;
        bool mayJump = before != after || (before is not null && left.Shear != right.Shear);
        if (!mayJump && !model.Hinges.Contains(x))
        {
            Law.Equal(left.Slope, right.Slope, Rounding * scale.Slope, $"at {x:R}");
        }
    });

    [Fact]
    public void AtAHinge_MomentIsNilButForACoupleBesideIt() => Law.Holds(RandomBeam.Stable, model =>
    {
        BeamResponse response = Answer.To(model);
        Scale scale = new(model, response);
        foreach (double x in model.Hinges)
        {
            (SectionState left, SectionState right) = response.At(x);
            double slack = Rounding * scale.Moment;
            Law.Equal(Couples(model, x, Side.Left), left.Moment, slack, $"left of {x:R}");
            Law.Equal(-Couples(model, x, Side.Right), right.Moment, slack, $"right of {x:R}");
        }
    });

    [Fact]
    public void Forces_JumpByTheLoadsAndReactionsThatStandThere() => AtEveryPlace((model, response, x, scale) =>
    {
        (SectionState left, SectionState right) = response.At(x);
        Load.Point[] points = [.. Loads(model).OfType<Load.Point>().Where(load => load.Position == x)];
        Reaction[] reactions = [.. model.Supports.Zip(response.Reactions)
            .Where(pair => pair.First.Position == x)
            .Select(pair => pair.Second)];
        double up = reactions.Sum(one => one.Vertical) - points.Sum(load => load.Down);
        double towardRight = reactions.Sum(one => one.Horizontal) + points.Sum(load => load.Right);
        double turning = reactions.Sum(one => one.Moment)
            + Couples(model, x, Side.Left) + Couples(model, x, Side.Right);

        Law.Equal(up, right.Shear - left.Shear, Rounding * scale.Force, $"V at {x:R}");
        Law.Equal(-towardRight, right.Axial - left.Axial, Rounding * scale.Force, $"N at {x:R}");
        Law.Equal(-turning, right.Moment - left.Moment, Rounding * scale.Moment, $"M at {x:R}");
    });

    private static void AtEveryPlace(Action<BeamModel, BeamResponse, double, Scale> law) =>
        Law.Holds(RandomBeam.Stable, model =>
        {
            BeamResponse response = Answer.To(model);
            Scale scale = new(model, response);
            foreach (double x in Probes.Of(model, response).Where(x => x > 0 && x < model.Length))
            {
                law(model, response, x, scale);
            }
        });

    private static double Couples(BeamModel model, double x, Side side) => Loads(model)
        .OfType<Load.Couple>()
        .Where(load => load.Position == x && load.Side == side)
        .Sum(load => load.Moment);

    private static IEnumerable<Load> Loads(BeamModel model) => model.Cases.SelectMany(one => one.Loads);
}
