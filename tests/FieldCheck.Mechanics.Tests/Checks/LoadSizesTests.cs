using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.Checks;

public sealed class LoadSizesTests
{
    public static TheoryData<Load, double> Sizes() => new()
    {
        { new Load.Point(1, 3000), 3000 },
        { new Load.Point(1, -3000), 3000 },
        { new Load.Point(1, 3000, -4000), 5000 },
        { new Load.Couple(1, 3000), 0 },
        { new Load.Distributed(0, 2, 500, 500), 1000 },
        { new Load.Distributed(0, 2, 0, -500), 500 },
        { new Load.Distributed(0, 2, 500, 500, ActsAlong: true), 1000 },
        { new Load.Distributed(0, 4, -100, 300), 500 }, // two triangles: 100 x 1 / 2 and 300 x 3 / 2
        { new Load.Distributed(0, 2, 0, 0), 0 },
        { new Load.Distributed(1, 3, 500, 500), 1000 },
    };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Load_CountsWithItsSize(Load load, double size) => Assert.Equal(size, Total([load], [1]), 1e-9);

    [Fact]
    public void LoadsThatCancel_StillCount() =>
        Assert.Equal(7000, Total([new Load.Point(1, 3500), new Load.Point(1, -3500)], [1]), 1e-9);

    [Theory]
    [InlineData(1.5, 4500)]
    [InlineData(-1.5, 4500)]
    [InlineData(0, 0)]
    public void Factor_CountsWithItsSize(double factor, double size) =>
        Assert.Equal(size, Total([new Load.Point(1, 3000)], [factor]), 1e-9);

    [Fact]
    public void Cases_AddUp_EachWithItsFactor() => Assert.Equal(
        (3000 * 1.5) + (2000 * 0.5),
        LoadSizes.Total(
            new BeamModel(
                [new Span(4, 1, 1)], [], [],
                [new LoadCase("dead", [new Load.Point(1, 3000)]), new LoadCase("live", [new Load.Point(2, -2000)])], []),
            [1.5, 0.5]),
        1e-9);

    [Fact]
    public void NoBeam_OrNoFactors_IsAFaultOfTheCaller()
    {
        Assert.Throws<ArgumentNullException>("model", () => LoadSizes.Total(null!, [1]));
        Assert.Throws<ArgumentNullException>("factors", () => LoadSizes.Total(Said.Simple(4), null!));
    }

    /// <summary>What all loads come to is never less than what they come to in any direction.</summary>
    [Fact]
    public void Total_IsNeverLessThanTheResultant() => Law.Holds(RandomBeam.Stable, model =>
    {
        (double right, double up, _) = Statics.Resultant(model, [], 0);

        double total = LoadSizes.Total(model, model.Combinations[0].Factors);

        Assert.True(total * (1 + 1e-12) >= double.Hypot(right, up), $"{total:R} against {right:R}, {up:R}");
    });

    private static double Total(ImmutableArray<Load> loads, ImmutableArray<double> factors) => LoadSizes.Total(
        new BeamModel([new Span(4, 1, 1)], [], [], [new LoadCase("live", loads)], []), factors);
}
