using System.Collections.Immutable;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Tests.Tables;

/// <summary>
/// Equal spans of 4 m. One of two loaded gives 7/16, 10/16 and -1/16 of wL, and a moment over the middle of wL2/16 (Hicks,
/// Civil Engineering Formulas, Table 2.1); both loaded 10/8 wL and wL2/8.
/// </summary>
public sealed class EnvelopePanelTests
{
    /// <summary>3 kN/m that may stand on either bay: wL is 12 kN, wL2 is 48 kN m.</summary>
    private static readonly BeamDocument TwoBays = Bays(2, "3 kN/m");

    [Fact]
    public void TwoBaysOfGoods_AreToldWithWhatGoverns() => Picture.Matches("envelope-two-bays", Lines(TwoBays));

    [Fact]
    public void TwoBasesAndTwoPatterns_AreNeverMixed() => Picture.Matches("envelope-two-bases", Lines(TwoBays with
    {
        Supports = TwoBays.Supports.SetItem(0, TwoBays.Supports[0] with { Acts = "both" }),
        Loads =
        [
            .. TwoBays.Loads,
            new() { Kind = "distributed", Intensity = "1 kN/m", Case = "dead" },
            new() { Kind = "point", At = "end", Force = "2 kN", Case = "snow" },
            new() { Kind = "point", At = "mid 1", Force = "1 kN", Case = "snow" },
        ],
        Spans = TwoBays.Spans.Add(new() { Length = "1 m" }),
        Patterns = [.. TwoBays.Patterns, new() { Case = "snow" }],
        Combinations =
        [
            new() { Name = "dead + live", Factors = [new("dead", "1"), new("live", "1")] },
            new() { Name = "dead + snow", Factors = [new("dead", "1"), new("snow", "1")] },
            new()
            {
                Name = "strength", Basis = "factored", Factors = [new("dead", "1.2"), new("live", "1.6"), new("snow", "0.5")],
            },
        ],
    }));

    /// <summary>Two that roll under one combination are never on the beam together; under two combinations nobody would think so.</summary>
    [Theory]
    [InlineData("live", true)]
    [InlineData("snow", false)]
    public void SeveralThatRoll_AreSaidToRollOneAtATime(string other, bool isTold)
    {
        BeamDocument document = TwoBays with
        {
            Patterns = [],
            Rolling = [Rolling("Cart", "live"), Rolling("Hoist", other)],
            Combinations =
            [
                new() { Name = "goods", Factors = [new("live", "1")] }, new() { Name = "winter", Factors = [new("snow", "1")] },
            ],
        };

        Assert.Equal(
            "  over 2 combinations; Cart anywhere, either way round, or nowhere; Hoist anywhere, either way round, or nowhere"
                + (isTold ? "; one of what rolls at a time" : ""),
            EnvelopePanel.Lines(Sheets.Run(document), 150)[1]);
        Assert.Equal(
            $"SERVICE  2 combinations, Cart, Hoist{(isTold ? ", one at a time" : "")}",
            EnvelopeSummary.Lines(Sheets.Run(document), 150)[0]);

        static RollingEntry Rolling(string label, string of) =>
            new() { Label = label, Case = of, Axles = [new() { Offset = "0 m", Force = "4 kN" }] };
    }

    [Fact]
    public void OneCombinationOfEachBasis_SaysNothingMore() => Assert.Empty(Lines(TwoBays with { Patterns = [] }));

    [Fact]
    public void BasisInWhichNothingVaries_IsLeftOut() => Assert.DoesNotContain(
        Lines(TwoBays with
        {
            Combinations =
            [
                new() { Name = "goods", Factors = [new("live", "1")] },
                new() { Name = "bare", Basis = "factored", Factors = [new("dead", "1.2")] },
            ],
        }),
        line => line.Contains("factored", StringComparison.Ordinal));

    /// <summary>30 supports: those with the most and the least, and one line of the others.</summary>
    [Fact]
    public void ManySupports_AreToldInFewRows()
    {
        ImmutableArray<string> lines = Lines(Bays(30, "3 kN/m"));

        Assert.InRange(lines.Length, 20, 60);
        Assert.Contains(lines, line => line.Contains("supports: between", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith("  B vertical ", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(40)]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(132)]
    public void Lines_KeepToTheirWidth(int width) => Assert.All(
        EnvelopePanel.Lines(Sheets.Run(TwoBays), width), line => Assert.InRange(line.Length, 0, width));

    internal static BeamDocument Bays(int count, string intensity) => new()
    {
        Spans = [.. Enumerable.Range(0, count).Select(_ => new SpanEntry { Length = "4 m" })],
        Supports =
        [
            .. Enumerable.Range(0, count + 1).Select(joint => new SupportEntry
            {
                Kind = joint == 0 ? "pin" : "roller",
                Joint = joint.ToString(System.Globalization.CultureInfo.InvariantCulture),
            }),
        ],
        Loads = [new() { Kind = "distributed", Intensity = intensity }],
        Patterns = [new() { Case = "live" }],
    };

    private static ImmutableArray<string> Lines(BeamDocument document) => EnvelopePanel.Lines(Sheets.Run(document), 80);
}
