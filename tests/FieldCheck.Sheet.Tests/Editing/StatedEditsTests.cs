using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Sheet.Tests.Editing;

/// <summary>What is stated: rows that go by the supports, and their cells.</summary>
public sealed class StatedEditsTests
{
    /// <summary>Typed right to left, so that the order of the rows is not that of the supports: C, A, B.</summary>
    private static readonly FormSheet Three = Form.Of(new BeamDocument
    {
        Spans = [new SpanEntry { Length = "6 m" }],
        Supports =
        [
            new SupportEntry { Kind = "roller", At = "5 m" },
            new SupportEntry { Kind = "pin", At = "1 m" },
            new SupportEntry { Kind = "roller", At = "3 m" },
        ],
    });

    [Fact]
    public void Rows_GoByTheSupportsFromLeftToRight_AndAnEmptyOneForEachOfWhichNothingIsStated()
    {
        FormSheet sheet = Of(new() { Support = "C" }, new() { Support = "x" }, new() { Support = " a " }, new() { Support = "C" }, new());

        Assert.Equal(
            (StatedRow[])[new("A", 2), new("B", null), new("C", 0), new("C", 3), new("x", 1), new(null, 4)],
            StatedRows.Of(sheet.Document));
    }

    [Fact]
    public void Figure_TypedInAnEmptyRow_MakesTheRowOfTheFile()
    {
        FormSheet typed = Three.Stated(1, FormColumn.Vertical, "14.6").Stated(0, FormColumn.Vertical, "10.3");

        Assert.Equal(
            [new StatedEntry { Support = "A", Vertical = "10.3 kN" }, new StatedEntry { Support = "B", Vertical = "14.6 kN" }],
            typed.Document.Stated);
        Assert.Equal("14.6 kN", typed.Text(FormBlock.Stated, 1, FormColumn.Vertical));
        Assert.Null(typed.Text(FormBlock.Stated, 2, FormColumn.Vertical));
    }

    [Theory]
    [InlineData("si", FormColumn.Vertical, "-1.2", "-1.2 kN")]
    [InlineData("us", FormColumn.Vertical, "2250", "2250 lbf")]
    [InlineData("si", FormColumn.Horizontal, "3", "3 kN")]
    [InlineData("us", FormColumn.Moment, "3", "3 lbf-ft")]
    [InlineData("si", FormColumn.Moment, "3 kip-ft", "3 kip-ft")]
    [InlineData("si", FormColumn.Allow, "5", "5 %")]
    [InlineData("si", FormColumn.Allow, "0.2 kN", "0.2 kN")]
    [InlineData("si", FormColumn.Basis, "f", "factored")]
    [InlineData("si", FormColumn.Source, "sheet, rev B", "sheet, rev B")]
    [InlineData("si", FormColumn.Vertical, "ten", "ten")]
    public void Cell_TakesWhatItsColumnIsFor(string display, FormColumn column, string typed, string stands)
    {
        FormSheet sheet = Form.Of(Three.Document with { Display = display }).Stated(0, column, typed);

        Assert.Equal(stands, sheet.Text(FormBlock.Stated, 0, column));
        Assert.Equal("A", sheet.Document.Stated[0].Support);
    }

    [Theory]
    [InlineData("max", null, null, "max")]
    [InlineData("mi", null, null, "min")]
    [InlineData("uls", "ULS", null, null)]
    [InlineData("service", "service", null, null)]
    [InlineData("sn", null, "snow", null)]
    [InlineData("wind", null, "wind", null)]
    [InlineData("elsewhere", "elsewhere", null, null)]
    public void Under_IsACombinationACaseOrAnExtreme(string typed, string? combination, string? load, string? extreme)
    {
        FormSheet sheet = Form.Of(Three.Document with
        {
            Combinations = [new CombinationEntry { Name = "ULS" }],
            Loads = [new LoadEntry { Case = "snow" }],
            Stated = [new StatedEntry { Support = "A", Vertical = "1 kN", Combination = "old", Case = "old", Extreme = "old" }],
        });
        Assert.Equal("old, old, old", sheet.Text(FormBlock.Stated, 0, FormColumn.Under));

        StatedEntry stated = sheet.Stated(0, FormColumn.Under, typed).Document.Stated[0];

        Assert.Equal((combination, load, extreme), (stated.Combination, stated.Case, stated.Extreme));
    }

    [Fact]
    public void LastFigureEmptied_TakesTheRowOutOfTheFile()
    {
        FormSheet sheet = Of(new() { Support = "A", Vertical = "1 kN", Moment = "2 kNm", Source = "sheet" }, new() { Support = "B", Vertical = "3 kN" });

        FormSheet one = sheet.Stated(0, FormColumn.Vertical, "");
        Assert.Equal(new StatedEntry { Support = "A", Moment = "2 kNm", Source = "sheet" }, one.Document.Stated[0]);
        FormSheet none = one.Stated(0, FormColumn.Moment, " ");
        Assert.Equal([sheet.Document.Stated[1]], none.Document.Stated);
        Assert.Equal((StatedRow[])[new("A", null), new("B", 0), new("C", null)], StatedRows.Of(none.Document));
    }

    [Fact]
    public void RowWithoutAFigure_KeepsWhatElseIsTypedInIt()
    {
        FormSheet sheet = Three.Stated(1, FormColumn.Source, "sheet");

        Assert.Equal([new StatedEntry { Support = "B", Source = "sheet" }], sheet.Document.Stated);
        Assert.Equal(sheet, sheet.Stated(1, FormColumn.Vertical, ""));
        Assert.Equal(sheet, sheet.Stated(0, FormColumn.Vertical, ""));
    }

    [Fact]
    public void Rows_AreCopiedSwappedAndTakenAway_AndWhatIsAskedForGoesWithThem()
    {
        FormSheet sheet = Of(new() { Support = "B", Vertical = "2 kN" }, new() { Support = "A", Vertical = "1 kN" });
        sheet = sheet with { Document = sheet.Document with { Ask = ["stated[1].vertical", "stated[2].vertical"] } };

        FormSheet copied = sheet.Do(new Edit.CopyRow(FormBlock.Stated, 1)).Stated(2, FormColumn.Vertical, "3");
        Assert.Equal([("B", "2 kN"), ("B", "3 kN"), ("A", "1 kN")], Figures(copied));
        Assert.Equal(["stated[1].vertical", "stated[3].vertical"], copied.Document.Ask);

        FormSheet swapped = copied.Do(new Edit.SwapRows(FormBlock.Stated, 1));
        Assert.Equal([("B", "3 kN"), ("B", "2 kN"), ("A", "1 kN")], Figures(swapped));
        Assert.Equal(["stated[2].vertical", "stated[3].vertical"], swapped.Document.Ask);
        Assert.Equal(copied, copied.Do(new Edit.SwapRows(FormBlock.Stated, 0)));
        Assert.Equal(copied, copied.Do(new Edit.SwapRows(FormBlock.Stated, 2)));

        FormSheet deleted = swapped.Do(new Edit.DeleteRow(FormBlock.Stated, 1));
        Assert.Equal([("B", "2 kN"), ("A", "1 kN")], Figures(deleted));
        Assert.Equal(sheet, deleted);
        Assert.Equal(sheet, sheet.Do(new Edit.DeleteRow(FormBlock.Stated, 2)));
        Assert.Equal(sheet, sheet.Do(new Edit.CopyRow(FormBlock.Stated, 2)));
    }

    [Fact]
    public void Column_PastedBesideTheSupports_FillsThem_AndWhatIsOverNamesNone()
    {
        FormSheet pasted = Three.Do(new Edit.PasteCells(
            new FormPlace(FormBlock.Stated, 0, FormColumn.Vertical), [["1"], ["2", "0.5"], ["3"], ["4"], ["5"]]));

        Assert.Equal([("A", "1 kN"), ("B", "2 kN"), ("C", "3 kN"), (null, "4 kN"), (null, "5 kN")], Figures(pasted));
        Assert.Equal("0.5 kN", pasted.Document.Stated[1].Horizontal);
    }

    [Fact]
    public void SupportRenamed_TakesWhatIsStatedWithIt()
    {
        FormSheet renamed = Three.Stated(2, FormColumn.Vertical, "3").Support(0, FormColumn.Label, "Wall");

        Assert.Equal([("Wall", "3 kN")], Figures(renamed));
        Assert.Equal((StatedRow[])[new("A", null), new("B", null), new("Wall", 0)], StatedRows.Of(renamed.Document));
    }

    [Theory]
    [InlineData("stated[1].vertical", 2, FormColumn.Vertical)]
    [InlineData("stated[2].support", 0, FormColumn.Support)]
    [InlineData("stated[2].extreme", 0, FormColumn.Under)]
    [InlineData("stated[2].tolerance", 0, FormColumn.Allow)]
    [InlineData("stated[2]", 0, FormColumn.Vertical)]
    public void Key_HasItsCell(string key, int row, FormColumn column)
    {
        FormSheet sheet = Of(new() { Support = "C" }, new() { Support = "A" });

        Assert.Equal(new FormPlace(FormBlock.Stated, row, column), FormCells.PlaceOf(sheet.Document, key));
        Assert.Null(FormCells.PlaceOf(sheet.Document, "stated[3].vertical"));
    }

    private static FormSheet Of(params StatedEntry[] stated) => Form.Of(Three.Document with { Stated = [.. stated] });

    private static (string?, string?)[] Figures(FormSheet sheet) =>
        [.. sheet.Document.Stated.Select(row => (row.Support, row.Vertical))];
}
