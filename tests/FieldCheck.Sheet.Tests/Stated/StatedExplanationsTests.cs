using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Stated;
using FieldCheck.Sheet.Tests.Building;

namespace FieldCheck.Sheet.Tests.Stated;

/// <summary>Which figures are explained together, and what the search is told of the sheet.</summary>
public sealed class StatedExplanationsTests
{
    // 12 kN at 2 m of 6 m: A 8, B 4. A rectangle of 100 x 200 mm at 2500 kg/m3 weighs 0.4903 kN/m: 1.471 at each end.
    private static readonly BeamDocument Weighing = Beams.Simple with
    {
        Sections = [new() { Name = "bar", Width = "100 mm", Depth = "200 mm" }],
        Materials = [new() { Name = "stone", Modulus = "40 GPa", Density = "2500 kg/m3" }],
    };

    [Fact]
    public void FiguresThatAgree_AreNotExplained() =>
        Assert.Empty(Explained(Beams.Simple, Of("A", "8.0 kN"), Of("B", "4.0 kN")));

    [Fact]
    public void FiguresWithinTheirTolerance_AreNotExplained() => // 1.25 % too much: not as rounded, but allowed
        Assert.Empty(Explained(Beams.Simple, Of("A", "8.10 kN"), Of("B", "4.05 kN")));

    /// <summary>2 kN/m on 6 m and 12 kN at 2 m: A 14, B 10; with half of what is spread 11 and 7, with twice 20 and 16.</summary>
    [Theory]
    [InlineData("11.00 kN", "7.00 kN", true)]
    [InlineData("20.00 kN", "16.00 kN", true)]
    [InlineData("11.00 kN", "7.00 kN", false)]
    [InlineData("20.00 kN", "16.00 kN", false)]
    public void WidthIsSlippedOnlyWhereALoadHasOne(string a, string b, bool hasWidth)
    {
        LoadEntry[] spread = hasWidth
            ?
            [
                new() { Kind = "distributed", Pressure = "1 kPa", Width = "2 m" },
                new() { Kind = "distributed", Intensity = "1 kPa * 2 m" },
            ]
            : [new() { Kind = "distributed", Intensity = "2 kN/m" }, new() { Kind = "distributed", Total = "12 kN" }];

        Assert.All(spread, load =>
        {
            Slip[] slips =
            [
                .. Explained(Beams.Simple with { Loads = [load, .. Beams.Simple.Loads] }, Of("A", a), Of("B", b))
                    .SelectMany(one => one.Diagnosis.Explanations).Select(one => one.Slip),
            ];
            Assert.Equal(hasWidth, slips.OfType<Slip.TributaryWidth>().Any());
            Assert.Equal(!hasWidth && a.StartsWith("20", StringComparison.Ordinal), slips.Contains(new Slip.LoadDoubled(0)));
        });
    }

    [Fact]
    public void OwnWeightOfTheSheet_CanBeLeftOut()
    {
        BeamDocument counted = Weighing with { SelfWeight = new() { Case = "dead" } };

        Assert.Equal(new Slip.OwnWeightLeftOut(), First(Explained(counted, Of("A", "8.00 kN"), Of("B", "4.00 kN"))));
    }

    [Fact]
    public void OwnWeightThatIsKnownButNotCounted_CanBePutIn() =>
        Assert.Equal(new Slip.OwnWeightPutIn(), First(Explained(Weighing, Of("A", "9.47 kN"), Of("B", "5.47 kN"))));

    [Fact]
    public void OtherCombinationOfTheSheet_IsTried()
    {
        BeamDocument two = Beams.Simple with
        {
            Combinations =
            [
                new() { Name = "one", Factors = [new("live", "1")] },
                new() { Name = "more", Basis = "factored", Factors = [new("live", "1.55")] },
            ],
        };

        StatedEntry[] rows = [Of("A", "12.4 kN") with { Combination = "one" }, Of("B", "6.20 kN") with { Combination = "one" }];

        Assert.Equal(new Slip.OtherCombination(1), First(Explained(two, rows)));
    }

    [Fact]
    public void CaseAlone_IsExplained()
    {
        StatedExplanation only = Assert.Single(Explained(
            Beams.Simple, Of("A", "16.0 kN") with { Case = "live" }, Of("B", "8.00 kN") with { Case = "live" }));

        Assert.True(only.Against.IsCase);
        Assert.Contains(new Slip.LoadDoubled(0), only.Diagnosis.Explanations.Select(one => one.Slip));
    }

    [Fact]
    public void TwoSources_AreExplainedApart()
    {
        StatedExplanation only = Assert.Single(Explained(
            Beams.Simple,
            Of("A", "8.0 kN") with { Source = "rev B" },
            Of("A", "4.0 kN") with { Source = "rev A" },
            Of("B", "4.0 kN") with { Source = "rev B" },
            Of("B", "8.0 kN") with { Source = "rev A" }));

        Assert.Equal("rev A", only.Source);
        Assert.Equal([1, 3], only.Rows.ToArray());
        Assert.Equal(new Slip.EndsSwapped(), only.Diagnosis.Explanations[0].Slip);
    }

    [Fact]
    public void BeamThatCanMove_HasNothingToExplain() =>
        Assert.Empty(Explained(Beams.Simple with { Supports = [Beams.Pin] }, Of("A", "4 kN")));

    private static Slip First(ImmutableArray<StatedExplanation> explained) =>
        Assert.Single(explained).Diagnosis.Explanations[0].Slip;

    private static ImmutableArray<StatedExplanation> Explained(BeamDocument beam, params StatedEntry[] rows) =>
        CalculationTests.Run(beam with { Stated = [.. rows] }).Explanations;

    private static StatedEntry Of(string support, string vertical) => new() { Support = support, Vertical = vertical };
}
