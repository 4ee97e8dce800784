using System.Collections.Immutable;
using FieldCheck.Reporting.Record;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Tests.Tables;

/// <summary>The part of the check that says how well it is known.</summary>
public sealed class BandWordsTests
{
    /// <summary>12 ft; 1200 lb at 4 ft and 100 plf from 6 ft on. A 950 lb; 847 to 1056 lb by the corners.</summary>
    private static readonly BeamDocument Shelf = new()
    {
        Display = "us",
        Spans = [new() { Length = "12 ft" }],
        Supports = [new() { Kind = "pin", Joint = "0" }, new() { Kind = "roller", Joint = "1" }],
        Loads =
        [
            new() { Kind = "point", At = "4 ft ± 1 in", Force = "1200 lb ± 10 %" },
            new() { Kind = "distributed", From = "6 ft +- 2 in", Intensity = "100 plf ± 5 plf" },
        ],
    };

    [Fact]
    public void LoadsKnownToPlusOrMinus_AreExact() => Picture.Matches("known-exact", Known(Shelf));

    [Fact]
    public void LengthsToo_AreEstimates() => Picture.Matches(
        "known-estimate",
        Known(Shelf with
        {
            Supports = [new() { Kind = "fixed", Joint = "0" }, new() { Kind = "roller", At = "11 ft ± 1/2 in" }],
            Combinations =
            [
                new() { Name = "service", Factors = [new("live", "1.0")] },
                new() { Name = "strength", Basis = "factored", Factors = [new("live", "1.6")] },
            ],
        }));

    [Fact]
    public void NothingUncertain_NothingSaid() => Assert.Empty(Known(Sheets.Trench));

    [Fact]
    public void Aloud_OneFactALine() => Assert.Contains(
        "How well it is known: 10 % of load 1 moves A by 0.080 kips, then 2 in at the left end of load 2 by 0.00845 kips, then 1 in at load 1 by 0.00833 kips.",
        PlainText.Lines(Sheets.Run(Shelf), new CheckRequest("", [])));

    private static ImmutableArray<string> Known(BeamDocument document) =>
    [
        .. CheckText.Lines(Sheets.Run(document), new CheckRequest("", []))
            .SkipWhile(line => line != "HOW WELL IT IS KNOWN")
            .TakeWhile(line => line.Length > 0),
    ];
}
