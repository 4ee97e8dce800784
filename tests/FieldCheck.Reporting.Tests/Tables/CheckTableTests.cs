using System.Collections.Immutable;
using FieldCheck.Reporting.Record;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Reporting.Tests.Tables;

/// <summary>Checks on the page, in sentences and in the panel.</summary>
public sealed class CheckTableTests
{
    private static readonly Dictionary<string, ImmutableArray<BeamCheck>> Sets = new()
    {
        ["passes"] = [Checked.Bending, Checked.CaseAlone],
        ["over"] = [Checked.Bending, Checked.Overhang, Checked.Bearing],
        ["not-judged"] = [Checked.Bearing],
    };

    private static readonly int[] Widths = [40, 80];

    public static TheoryData<string> Names => new(Sets.Keys);

    [Theory]
    [MemberData(nameof(Names))]
    public void Checks_AreThePage(string name)
    {
        Calculation calculation = Checked.Trench(Sets[name]);
        Picture.Matches(
            $"checks-{name}",
            [
                .. Widths.SelectMany(width => (IEnumerable<string>)
                    [$"-- {width}", .. CheckPanel.Lines(calculation, width)]),
                "-- sentences",
                .. SpokenAnswer.Checks(calculation, calculation.Beam!),
                "-- panel",
                .. ResultsPanel.Lines(calculation, 38, 9),
            ]);
        Assert.All(
            Widths, width => Assert.All(CheckPanel.Lines(calculation, width), line => Assert.InRange(line.Length, 1, width)));
    }

    [Fact]
    public void Verdicts_StandInShort_GravestFirst()
    {
        Assert.Equal(
            "OVER deflection of the right overhang 1.32, 1 NOT JUDGED",
            CheckPanel.InShort(Checked.Trench(Sets["over"])));
        Assert.Equal("OK, most used bending 0.75", CheckPanel.InShort(Checked.Trench(Sets["passes"])));
        Assert.Equal("NOT JUDGED bearing at B", CheckPanel.InShort(Checked.Trench(Sets["not-judged"])));
        Assert.Equal(
            "NOT JUDGED bearing at B, 1 more; most used bending 0.75",
            CheckPanel.InShort(Checked.Trench(Checked.Bearing, Checked.Bending, Checked.Bearing)));
        Assert.Equal(
            "OVER deflection of the right overhang 1.32, 1 more",
            CheckPanel.InShort(Checked.Trench(Checked.Overhang, Checked.Overhang)));
    }

    [Fact]
    public void NothingAskedFor_HasNoLinesAndNoVerdict()
    {
        Assert.Empty(CheckPanel.Lines(Checked.Trench(), 80));
        Assert.Null(CheckPanel.InShort(Checked.Trench()));
        Assert.DoesNotContain("CHECKS", CheckText.Lines(Checked.Trench(), new CheckRequest("", [])));
    }

    [Fact]
    public void WhatIsNotChecked_StandsBesideEveryVerdict()
    {
        Calculation calculation = Checked.Trench(Checked.Bending);
        string text = string.Join(' ', CheckText.Lines(calculation, new CheckRequest("", [])).Select(line => line.Trim()));

        Assert.Contains("CHECKS", text, StringComparison.Ordinal);
        Assert.Contains("Not checked: strength in shear, columns and props, connections.", text, StringComparison.Ordinal);
        Assert.Contains(
            "Not checked here: strength in shear, columns and props, connections.",
            SpokenAnswer.Cautions(calculation)[0],
            StringComparison.Ordinal);
    }
}
