using FieldCheck.Screen;
using FieldCheck.Screen.Combining;
using FieldCheck.Screen.Files;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Tests.Screen;

/// <summary>The Cases view: what is cut or scrolled away is said to be.</summary>
public sealed class CasesViewTests
{
    private static readonly BeamDocument Snowed = Beams.Trench with
    {
        Loads = [.. Beams.Trench.Loads, new LoadEntry { Kind = "point", Force = "1 kN", At = "2 m", Case = "snow_on_the_canopy_roof" }],
        Combinations = [new CombinationEntry { Name = "all", Factors = [new("live", "1"), new("snow_on_the_canopy_roof", "1")] }],
    };

    [Fact]
    public void Page_SaysWhichLinesAreSeen()
    {
        BeamDocument beam = Snowed with { Patterns = [new PatternEntry { Case = "live" }] };
        Desk desk = new Desk(beam, new BeamOrigin("trench")).Happen(new ScreenEvent.Resized(80, 20)).Press("F8");
        string[] lines = [.. EnvelopeLines.Of(desk.State, 80)];
        int room = Below(desk).Length;
        Assert.True(lines.Length > 2 * room - 3);

        Assert.Equal(lines[..(room - 1)], Below(desk)[..^1]);
        desk.Press("PgDn");
        int top = room - 3;
        Assert.Equal(
            [$"ENVELOPE  up to date   lines {top + 1}-{top + room - 2} of {lines.Length - 1}", .. lines[(top + 1)..(top + room - 1)]],
            Below(desk)[..^1]);
        desk.Press("PgDn PgDn PgDn PgDn");
        Assert.Equal(
            $"ENVELOPE  up to date   lines {lines.Length - room + 1}-{lines.Length - 1} of {lines.Length - 1}", Below(desk)[0]);
        Assert.Equal(lines[^1], Below(desk)[^1]);
    }

    [Fact]
    public void NameThatAnotherCaseHas_IsMarkedInItsCell()
    {
        Desk desk = new Desk(Snowed, new BeamOrigin("trench")).Press("F8 Up live Enter Down");

        string[] lines = [.. desk.Show(80, 24).Lines.Select(line => line.ToString().TrimEnd())];

        Assert.Equal(" ! !live    -           -           1 load", lines[4]);
        Assert.Contains("RESULTS  1 cell to mend", lines);
    }

    [Theory]
    [InlineData(80, " snow_on_the_canopy_roof")]
    [InlineData(60, " snow_on_the_canop..")]
    [InlineData(50, " snow_on..")]
    public void NameOfACase_IsCutWithAMark(int width, string heading)
    {
        Desk desk = new Desk(Snowed, new BeamOrigin("trench")).Happen(new ScreenEvent.Resized(width, 24)).Press("F8");

        string line = desk.Show(width, 24).Lines.Select(line => line.ToString().TrimEnd())
            .Single(line => line.StartsWith("Combinations", StringComparison.Ordinal));

        Assert.EndsWith(heading, line);
    }

    // From the line that says how old the envelopes are to the one above what is told.
    private static string[] Below(Desk desk)
    {
        string[] lines = [.. desk.Show(80, 20).Lines.Select(line => line.ToString().TrimEnd())];
        int first = Array.FindIndex(lines, line => line.StartsWith("ENVELOPE", StringComparison.Ordinal));
        return lines[first..^2];
    }
}
