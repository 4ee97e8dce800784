using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Tests.Tables;

public sealed class StatedPanelTests
{
    [Fact]
    public void Lines_AreThoseOfThePageAndWhyTheFiguresDiffer_AndTheVerdictsStandInShort()
    {
        Calculation calculation = Sheets.Run(Sheets.Trench with
        {
            Stated =
            [
                new StatedEntry { Support = "A", Vertical = "10.3 kN" },
                new StatedEntry { Support = "B", Vertical = "14.6 kN" },
            ],
        });

        ImmutableArray<string> lines = StatedPanel.Lines(calculation, 60);
        ImmutableArray<string> table = StatedTable.Lines(calculation, calculation.Beam!, 60);
        Assert.Equal<string>(table, lines[..table.Length]);
        Assert.Equal("WHY THEY MAY DIFFER", lines[table.Length]);
        string why = string.Join(' ', lines[(table.Length + 1)..].Select(line => line.Trim()));
        Assert.Equal(string.Join(' ', ExplanationLines.Of(calculation, calculation.Beam!)), why);
        Assert.All(lines, line => Assert.InRange(line.Length, 1, 60));
        Assert.Contains("LOW (unsafe side)   B vertical", string.Concat(StatedPanel.Lines(calculation, 60)), StringComparison.Ordinal);
        Assert.Equal("LOW at B, HIGH at A", StatedPanel.InShort(calculation));
    }

    // Live load that may stand on either bay or not: what is held against all of it agrees, and is in doubt.
    [Fact]
    public void FigureThatIsInDoubt_SaysSoBelowAndInShort()
    {
        BeamDocument live = Sheets.Trench with { Patterns = [new() { Case = "live" }] };
        double a = ((BeamOutcome.Stands)Sheets.Run(live).Outcome!).Combinations[0].Response.Reactions[0].Vertical;
        Calculation calculation = Sheets.Run(live with
        {
            Stated = [new StatedEntry { Support = "A", Vertical = string.Create(CultureInfo.InvariantCulture, $"{a:0} N") }],
        });

        string said = Assert.Single(calculation.Messages, message => message.Code == MessageCodes.StatedNotWorst).Text;

        Assert.EndsWith(
            $"  CAUTION: {said}", string.Join(' ', StatedPanel.Lines(calculation, 2000)), StringComparison.Ordinal);
        Assert.Equal("AGREES, in doubt", StatedPanel.InShort(calculation));
    }

    [Fact]
    public void NothingStated_HasNoLinesAndNoVerdict()
    {
        Calculation calculation = Sheets.Run(Sheets.Trench);

        Assert.Empty(StatedPanel.Lines(calculation, 60));
        Assert.Null(StatedPanel.InShort(calculation));
    }

    [Fact]
    public void BeamThatDoesNotRead_HasNoLines()
    {
        Calculation calculation = Sheets.Run(Sheets.Trench with { Stated = [new StatedEntry { Support = "A", Vertical = "ten" }] });

        Assert.Null(calculation.Beam);
        Assert.Empty(StatedPanel.Lines(calculation, 60));
        Assert.Null(StatedPanel.InShort(calculation));
    }
}
