using CsCheck;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.Envelopes;

public sealed partial class InfluenceLineTests
{
    /// <summary>Laws run on several threads: one solver each.</summary>
    private static BeamSolver Solver => new();

    private static readonly Gen<(int Section, int Force, bool IsLeft)> Places =
        Gen.Select(Gen.Int[0, 64], Gen.Int[0, 64], Gen.Bool);

    /// <summary>The ordinate is what a force down of one there does, by a solve of its own.</summary>
    [Fact]
    public void Ordinates_AreTheAnswersToAForceSetDown() => Law.Holds(RandomBeam.Stable, Places, (model, drawn) =>
    {
        double section = model.Length * drawn.Section / 64;
        double force = model.Length * drawn.Force / 64;
        BeamResponse answer = To(model, force);
        Scale scale = new(Bare(model, force), answer);
        Side side = section == 0 ? Side.Right : section == model.Length || drawn.IsLeft ? Side.Left : Side.Right;
        foreach (Curve curve in Envelope.Curves.Where(curve => curve != Curve.Shear || section != force))
        {
            InfluenceLine line = InfluenceLine.Of(model, curve, section, side, Solver)!;
            SectionState state = side == Side.Left ? answer.At(section).Left : answer.At(section).Right;

            Law.Equal(Answer.Of(curve, state), line.At(force).Left, 1e-10 * SizeOf(curve), $"{curve}, left");
            Law.Equal(Answer.Of(curve, state), line.At(force).Right, 1e-10 * SizeOf(curve), $"{curve}, right");
        }

        for (int i = 0; i < model.Supports.Length; i++)
        {
            double vertical = InfluenceLine.OfReaction(model, i, Solver)!.At(force).Left;
            double moment = InfluenceLine.OfReactionMoment(model, i, Solver)!.At(force).Left;
            Law.Equal(answer.Reactions[i].Vertical, vertical, 1e-10 * scale.Force, $"reaction {i}");
            Law.Equal(answer.Reactions[i].Moment, moment, 1e-10 * scale.Moment, $"moment {i}");
        }

        double SizeOf(Curve curve) => scale.Of(curve) + (curve == Curve.Deflection ? Least(model) : 0);
    });

    /// <summary>What a force at one place moves another by is what a force there moves the one by (Maxwell).</summary>
    [Fact]
    public void Deflections_AreReciprocal() => Law.Holds(RandomBeam.Stable, Places, (model, drawn) =>
    {
        double one = model.Length * drawn.Section / 64;
        double other = model.Length * drawn.Force / 64;

        double there = Deflection(model, one).At(other).Left;
        double back = Deflection(model, other).At(one).Left;

        double size = new Scale(Bare(model, one), To(model, one), To(model, other)).Deflection + Least(model);
        Law.Equal(there, back, 1e-10 * size, "deflection");
    });

    /// <summary>x(l-x)/l, Encyclopaedia Britannica 1911, Bridges, art. 27 (Published/08, il-mid-moment).</summary>
    [Fact]
    public void MomentOfASimpleSpan()
    {
        InfluenceLine line = InfluenceLine.Of(Spans(10), Curve.Moment, 4, Side.Left, Solver)!;

        Assert.Equal(2.4, line.At(4).Left, 1e-12);
        Assert.Equal(1.2, line.At(2).Left, 1e-12);
        Assert.Equal([new Extreme(0, 0), new Extreme(2.4, 4), new Extreme(0, 10)], Rounded(line.Peaks));
        Assert.Empty(line.Zeros);
    }

    [Fact]
    public void ShearOfASimpleSpan_JumpsAtTheSection()
    {
        InfluenceLine line = InfluenceLine.Of(Spans(10), Curve.Shear, 4, Side.Left, Solver)!;

        Assert.Equal(-0.4, line.At(4).Left, 1e-12);
        Assert.Equal(0.6, line.At(4).Right, 1e-12);
        Assert.Equal([4], line.Zeros.Select(zero => Math.Round(zero, 9)));
        Assert.Equal(
            [new Extreme(0, 0), new Extreme(-0.4, 4), new Extreme(0.6, 4), new Extreme(0, 10)], Rounded(line.Peaks));
    }

    /// <summary>At the middle support of two spans l: -P·x(l²-x²)/4l², least at l/√3 on both sides, zero at the supports.</summary>
    [Fact]
    public void MomentAtTheMiddleSupportOfTwoSpans()
    {
        InfluenceLine line = InfluenceLine.Of(Spans(1, 1), Curve.Moment, 1, Side.Left, Solver)!;

        Assert.Equal(-0.5 * 0.75 / 4, line.At(0.5).Left, 1e-13);
        Assert.Equal([1], line.Zeros.Select(zero => Math.Round(zero, 9)));
        Assert.Equal(-Math.Sqrt(3) / 18, line.Peaks[1].Value, 1e-13);
        Assert.Equal(1 / Math.Sqrt(3), line.Peaks[1].Position, 1e-9);
        Assert.Equal(2 - (1 / Math.Sqrt(3)), line.Peaks[3].Position, 1e-9);
    }

    [Fact]
    public void ReactionOfTwoSpans_PassesThroughZeroAtTheOtherSupports()
    {
        InfluenceLine line = InfluenceLine.OfReaction(Spans(1, 1), 0, Solver)!;

        Assert.Equal(1, line.At(0).Right, 1e-13);
        Assert.Equal([1], line.Zeros.Select(zero => Math.Round(zero, 9)));
    }

    [Fact]
    public void SectionOffTheBeam_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(
        () => InfluenceLine.Of(Spans(1), Curve.Moment, 1.5, Side.Left, Solver));

    [Fact]
    public void BeamThatCanMove_HasNone() => Assert.Null(InfluenceLine.OfReaction(
        Spans(1) with { Supports = [Support.Pin(0)] }, 0, Solver));

    private static IEnumerable<Extreme> Rounded(IEnumerable<Extreme> peaks) =>
        peaks.Select(peak => new Extreme(Math.Round(peak.Value, 9) + 0, Math.Round(peak.Position, 9)));

    private static InfluenceLine Deflection(BeamModel model, double position) => InfluenceLine.Of(
        model, Curve.Deflection, position, position == 0 ? Side.Right : Side.Left, Solver)!;

    /// <summary>How far the beam bends at the very least, should the force stand where it bends nothing.</summary>
    private static double Least(BeamModel model) =>
        Math.Pow(model.Spans.Min(span => span.Length), 3) / model.Spans.Max(span => span.FlexuralRigidity);

    private static BeamResponse To(BeamModel model, double force) => Answer.To(Bare(model, force));

    private static BeamModel Bare(BeamModel model, double force) => model with
    {
        Supports = [.. model.Supports.Select(one => one with { Settlement = 0, ImposedRotation = 0 })],
        Cases = [new LoadCase("one", [new Load.Point(force, 1)])],
        Combinations = [new Combination("one", CombinationBasis.Service, [1])],
    };

    private static BeamModel Spans(params double[] lengths) => new(
        [.. lengths.Select(length => new Span(length, 1, 1))],
        [Support.Pin(0), .. lengths.Select((_, i) => Support.Roller(lengths.Take(i + 1).Sum()))],
        [],
        [],
        []);
}
