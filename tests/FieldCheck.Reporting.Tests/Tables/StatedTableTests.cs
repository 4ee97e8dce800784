using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Reporting.Record;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Stated;

namespace FieldCheck.Reporting.Tests.Tables;

/// <summary>Stated figures on the page, in sentences and in the panel.</summary>
public sealed class StatedTableTests
{
    private const string Sheet = "Hire firm's sheet, rev B";

    /// <summary>The trench bearer carries 9.90 kN at A and 16.50 kN at B.</summary>
    private static readonly Dictionary<string, BeamDocument> Documents = new()
    {
        ["agrees"] = Stated(Sheets.Trench, Of("A", "9.9 kN"), Of("B", "16.5 kN")),
        ["low"] = Stated(Sheets.Trench, Of("A", "10.3 kN"), Of("B", "14.6 kN")),
        ["basis-unknown"] = Stated(
            Sheets.Trench, Of("A", "13.9 kN") with { Basis = "unknown" }, Of("B", "23.1 kN") with { Basis = "unknown" }),

        // A is pulled down by 6 kN, B carries 10 kN; the sheet has A pushing.
        ["wrong-way"] = Stated(Sheets.Overhang, Of("A", "6.0 kN"), Of("B", "10.0 kN")),
        ["not-stated"] = Stated(Sheets.Overhang, Of("B", "2250 lbf")),
        // B may be 14.85 to 18.15 kN, A, which the overhang lifts, 8.82 to 10.98 kN.
        ["within-band"] = Stated(
            Sheets.Trench with { Tolerance = new() { Load = "10 %" } }, Of("A", "10.3 kN"), Of("B", "14.9 kN")),

        // 10.3 kN give or take 0.5 kN agrees with 9.90 kN; 14.6 kN give or take 1 kN does not with 16.50 kN.
        ["plus-or-minus"] = Stated(Sheets.Trench, Of("A", "10.3 kN ± 0.5 kN"), Of("B", "14.6 kN +- 1 kN")),
        ["several"] = Stated(
            Sheets.Everything with { Patterns = [], Rolling = [] },
            Of("Jack", "12 kN") with { Combination = "in use" },
            Of("A", "-1.20 kip") with { Combination = "storm", Horizontal = "0.5 kN", Moment = "9 kNm" },
            Of("C", "3 1/2 kN") with { Basis = "service", Extreme = "max", Source = "Drawing 12" },
            Of("D", "0 kN") with { Case = "wind", Source = null }),
    };

    private static readonly int[] Widths = [40, 80, 120];

    public static TheoryData<string> Names => new(Documents.Keys);

    [Theory]
    [MemberData(nameof(Names))]
    public void Figures_AreThePage(string name)
    {
        Calculation calculation = Sheets.Run(Documents[name]);
        Picture.Matches(
            $"stated-{name}",
            [
                .. Widths.SelectMany(width => (IEnumerable<string>)
                    [$"-- {width}", .. StatedTable.Lines(calculation, calculation.Beam!, width)]),
                "-- sentences",
                .. SpokenAnswer.Stated(calculation, calculation.Beam!),
                "-- panel",
                .. ResultsPanel.Lines(calculation, 38, 9),
                "-- messages",
                .. MessageLines.Of(calculation),
            ]);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Figures_KeepToEveryWidthAndToAscii(string name)
    {
        Calculation calculation = Sheets.Run(Documents[name]);
        for (int width = 30; width <= 120; width++)
        {
            ImmutableArray<string> lines = StatedTable.Lines(calculation, calculation.Beam!, width);

            Assert.All(lines, line => Assert.InRange(line.Length, 1, width));
            Assert.All(string.Concat(lines), c => Assert.InRange(c, ' ', '~'));
        }

        Assert.All(
            SpokenAnswer.Stated(calculation, calculation.Beam!), line => Assert.Matches(@"^[A-Z0-9][ -~]*[.?!]$", line));
    }

    [Fact]
    public void Check_HasThemOnlyWhereSomethingIsStated()
    {
        Assert.Contains("STATED FIGURES", CheckText.Lines(Sheets.Run(Documents["low"]), new CheckRequest("", [])));
        Assert.DoesNotContain("STATED FIGURES", CheckText.Lines(Sheets.Run(Sheets.Trench), new CheckRequest("", [])));
        Assert.Contains(
            "Stated figure, B vertical: LOW (unsafe side).",
            PlainText.Lines(Sheets.Run(Documents["low"]), new CheckRequest("", [])));
    }

    /// <summary>What was typed is shown as typed; how it was read, where that is not plain to see.</summary>
    [Theory]
    [InlineData("9.9 kN", "stated 9.9 kN up")]
    [InlineData("0.0 kN", "stated 0.0 kN ")]
    [InlineData("-9.9 kN", "stated -9.9 kN, read as 9.90 kN down")]
    [InlineData("9900 N", "stated 9900 N, read as 9.90 kN up")]
    [InlineData("2.2 kip", "stated 2.2 kip, read as 9.79 kN up")]
    [InlineData("9 1/2 kN", "stated 9 1/2 kN, read as 9.50 kN up")]
    [InlineData("4 kN + 5.9 kN", "stated 4 kN + 5.9 kN, read as 9.90 kN up")]
    public void Figure_StandsAsTyped(string typed, string shown)
    {
        Calculation calculation = Sheets.Run(Stated(Sheets.Trench, Of("A", typed)));

        Assert.Contains(shown, StatedTable.Lines(calculation, calculation.Beam!, 120)[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("10.3 kN", "14.6 kN", "Stated: LOW at B, HIGH at A")]
    [InlineData("9.9 kN", "16.5 kN", "Stated: AGREES")]
    [InlineData("3 kN", "3 kN", "Stated: LOW at A and B")]
    [InlineData("9.9 kN", "20 kN", "Stated: HIGH at B")]
    public void Panel_SaysItInOneLine(string a, string b, string line) => Assert.Contains(
        line, ResultsPanel.Lines(Sheets.Run(Stated(Sheets.Trench, Of("A", a), Of("B", b))), 38, 9));

    /// <summary>A stated 14.6 kN lies inside a band of 14 to 19 kN round the computed 16.50 kN, and so it holds.</summary>
    [Fact]
    public void FigureInsideTheBand_SaysSo()
    {
        Calculation exact = Sheets.Run(Stated(Sheets.Trench, Of("B", "14.6 kN")));
        StatedFigure figure = exact.Stated.Single();
        ReactionComparison compared = ReactionComparison.Of(
            figure.Stated,
            figure.Comparison!.Value.Computed,
            new(50, 0.02, 0, 26400),
            new Band(14000, 19000, BandCertainty.Exact));
        Calculation calculation = exact with { Stated = [figure with { Comparison = compared }] };

        Assert.Equal(
            [
                "  WITHIN BAND   B vertical   stated 14.6 kN up   computed 16.50 kN up",
                "      difference -1.90 kN (-11.5 %)   allowed 0.38 kN",
                "      band +14.00 kN to +19.00 kN, exact",
            ],
            StatedTable.Lines(calculation, calculation.Beam!, 72).Skip(1));
        Assert.Contains("Stated: WITHIN BAND at B", ResultsPanel.Lines(calculation, 38, 9));
        Assert.Equal(
            (19000.0, 14000.0, "within_band"),
            JsonStatedFigures.Of(calculation) is [{ } json]
                ? (json.BandHigh!.Value, json.BandLow!.Value, json.Verdict)
                : default);
    }

    [Fact]
    public void SourceThatNotEveryRowNames_StandsInItsOwn()
    {
        Calculation calculation = Sheets.Run(Stated(
            Sheets.Trench, Of("A", "9.9 kN"), Of("B", "16.5 kN") with { Source = null }));

        string[] lines = [.. StatedTable.Lines(calculation, calculation.Beam!, 160)];

        Assert.EndsWith("by Hire firm's sheet, rev B", lines[0], StringComparison.Ordinal);
        Assert.EndsWith("allowed 0.38 kN", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public void EscapeBytesInAFigureOrItsSource_DoNotReachThePage()
    {
        Calculation calculation = Sheets.Run(Stated(
            Sheets.Trench, Of("A", "9.9 kN") with { Source = "\u001b[31m rev\u202e" }));

        Assert.Equal(
            "  stated by ?[31m rev?", StatedTable.Lines(calculation, calculation.Beam!, 80)[0]);
    }

    private static StatedEntry Of(string support, string vertical) =>
        new() { Support = support, Vertical = vertical, Source = Sheet };

    private static BeamDocument Stated(BeamDocument document, params StatedEntry[] rows) =>
        document with { Stated = [.. rows] };
}
