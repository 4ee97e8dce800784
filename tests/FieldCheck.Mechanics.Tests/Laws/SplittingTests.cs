using CsCheck;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>How a beam is entered makes no difference: a joint, or a seam in a load, is on paper only.</summary>
public sealed class SplittingTests
{
    private const double Rounding = 1e-12;

    [Fact]
    public void SpanEnteredAsTwo_ChangesNothing() => Law.Holds(
        RandomBeam.Stable, Gen.Double[0, 1], (model, share) => SameAnswer(model, WithSpanSplit(model, share)));

    [Fact]
    public void DistributedLoadEnteredAsTwo_ChangesNothing() => Law.Holds(
        RandomBeam.Stable, Gen.Double[0, 1], (model, share) => SameAnswer(model, WithLoadsSplit(model, share)));

    [Fact]
    public void LoadEnteredAsTwoHalves_ChangesNothing() =>
        Law.Holds(RandomBeam.Stable, model => SameAnswer(model, Doubled(Magnified.By(model, 0.5)), settlements: model));

    private static void SameAnswer(BeamModel model, BeamModel entered, BeamModel? settlements = null)
    {
        BeamModel other = settlements is null ? entered : entered with { Supports = settlements.Supports };
        BeamResponse expected = Answer.To(model);
        BeamResponse actual = Answer.To(other);
        Scale scale = new(model, expected);
        foreach (Quantity quantity in Quantity.All(model, expected))
        {
            Law.Equal(quantity.Of(expected), quantity.Of(actual), Rounding * quantity.SizeOn(scale), quantity.Name);
        }
    }

    private static BeamModel WithSpanSplit(BeamModel model, double share)
    {
        int chosen = Math.Min((int)(share * model.Spans.Length), model.Spans.Length - 1);
        Span span = model.Spans[chosen];
        double first = span.Length / 4;
        Span left = new(first, span.FlexuralRigidity, span.AxialRigidity, span.ShearRigidity);
        Span right = new(span.Length - first, span.FlexuralRigidity, span.AxialRigidity, span.ShearRigidity);
        return new BeamModel(
            [.. model.Spans[..chosen], left, right, .. model.Spans[(chosen + 1)..]],
            model.Supports,
            model.Hinges,
            model.Cases,
            model.Combinations,
            model.HasAbsoluteStiffness);
    }

    private static BeamModel WithLoadsSplit(BeamModel model, double share) => model with
    {
        Cases =
        [
            .. model.Cases.Select(one => one with { Loads = [.. one.Loads.SelectMany(load => Split(load, share))] }),
        ],
    };

    private static IEnumerable<Load> Split(Load load, double share)
    {
        if (load is not Load.Distributed spread)
        {
            return [load];
        }

        double seam = spread.From + ((spread.To - spread.From) * (0.1 + (0.8 * share)));
        double between = Statics.IntensityAt(spread, seam);
        return
        [
            new Load.Distributed(spread.From, seam, spread.StartIntensity, between, spread.ActsAlong),
            new Load.Distributed(seam, spread.To, between, spread.EndIntensity, spread.ActsAlong),
        ];
    }

    private static BeamModel Doubled(BeamModel model) => model with
    {
        Cases = [.. model.Cases.Select(one => one with { Loads = one.Loads.AddRange(one.Loads) })],
    };
}
