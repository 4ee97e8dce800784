using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>While no support lets go the beam is linear: effects of loads add up and follow their size.</summary>
public sealed class SuperpositionTests
{
    private const double Rounding = 1e-13;

    [Fact]
    public void CombinationOfCases_IsTheSumOfTheirEffects() => Law.Holds(
        RandomBeam.Stable,
        Gen.Select(Gen.Double[-2, 2], Gen.Double[-2, 2]),
        (model, factors) =>
        {
            (double dead, double live) = factors;
            BeamResponse[] all = Answer.ToAll(Combined(model, [0, 0], [1, 0], [0, 1], [dead, live]));
            Scale scale = new(model, all);

            // Settlement stands in every combination once, so effects of loads are counted from the unloaded beam.
            foreach (Quantity quantity in Quantity.All(model, all[0]))
            {
                (double none, double first, double second, double both) =
                    (quantity.Of(all[0]), quantity.Of(all[1]), quantity.Of(all[2]), quantity.Of(all[3]));
                double sum = none + (dead * (first - none)) + (live * (second - none));
                Law.Equal(sum, both, Rounding * quantity.SizeOn(scale), quantity.Name);
            }
        });

    [Fact]
    public void LoadsAndSettlementsFourTimesAsLarge_EveryEffectIsExactlyFourTimesAsLarge() =>
        Law.Holds(RandomBeam.Stable, model =>
        {
            BeamResponse once = Answer.To(model);
            BeamResponse fourfold = Answer.To(Magnified.By(model, 4));

            // Exactly: a power of two only changes exponents.
            Assert.Equal(once.Breaks.AsEnumerable(), fourfold.Breaks.AsEnumerable());
            foreach (Quantity quantity in Quantity.All(model, once))
            {
                Assert.True(
                    (4 * quantity.Of(once)).Equals(quantity.Of(fourfold)),
                    $"{quantity.Name}: {quantity.Of(once):R} against {quantity.Of(fourfold):R}");
            }
        });

    private static BeamModel Combined(BeamModel model, params ImmutableArray<double>[] factors) => model with
    {
        Combinations = [.. factors.Select((row, i) => new Combination($"{i}", CombinationBasis.Service, row))],
    };
}
