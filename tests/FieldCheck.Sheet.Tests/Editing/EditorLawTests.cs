using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Sheet.Tests.Editing;

/// <summary>What holds for any beam that can be typed, whether it makes sense or not.</summary>
public sealed class EditorLawTests
{
    private static readonly string[] Texts =
    [
        "", "3", "12", "0.6", "-2", "2*1.2+0.6", "12'-6 1/2\"", "7'10 1/2", "5 kNm", "12/m", "3..6/m", "1.2t", "12 psf * 5 ft",
        "12..24 psf * 5 ft", "end", "joint 1", "joint 1 + 2", "A + 1", "B - 0.5", "mid 1", "pin", "r 30 deg", "spring 500",
        "fixed", "up", "on", "off", "dead", "East", "IPE200", "x", "1,5", "12 kn/n", "max", "all", "f", "yes", "n", "1.2 dead + 1.6 live", "12, 12 at 1.2 m", "12 @ 1; 4", "30 %", "12 ± 1 kN", "½ kN", "..", "*", "joint",
    ];

    private static readonly Gen<FormBlock> Blocks = Gen.Int[0, 6].Select(index => (FormBlock)index);

    private static readonly Gen<Edit> Edits = Gen.Frequency(
        (12, Gen.Select(Blocks, Gen.Int[-1, 4], Gen.Int[0, 7], Gen.Int[0, Texts.Length - 1], (block, row, column, text) =>
            (Edit)new Edit.TypeCell(Place(block, row, column), Texts[text]))),
        (1, Gen.Select(Blocks, Gen.Int[-1, 4], (block, row) => (Edit)new Edit.CopyRow(block, row))),
        (1, Gen.Select(Blocks, Gen.Int[-1, 4], (block, row) => (Edit)new Edit.DeleteRow(block, row))),
        (1, Gen.Select(Blocks, Gen.Int[-1, 4], (block, row) => (Edit)new Edit.SwapRows(block, row))),
        (1, Gen.Select(Gen.Int[-1, 4], Gen.Bool, (row, inAll) => (Edit)new Edit.AnswerSize(row, inAll))),
        (1, Gen.Bool.Select(isUs => (Edit)new Edit.ShowUnits(isUs ? "us" : "si"))));

    [Fact]
    public void TextShown_TypedAgain_ChangesNothing() => Edits.Array[0, 30].Sample(edits =>
    {
        // Units first: "12/m" does not read among US units and stays as typed, but would be 12 kN/m once SI is shown.
        FormSheet sheet = edits.OrderBy(edit => edit is not Edit.ShowUnits).Aggregate(FormSheet.Empty, Editor.Apply);
        foreach (FormPlace place in Cells(sheet))
        {
            if (FormCells.TextOf(sheet.Document, place) is string text && !MayFillItsRow(sheet.Document, place))
            {
                BeamDocument typed = Editor.Apply(sheet, new Edit.TypeCell(place, text)).Document;
                Assert.True(typed == sheet.Document, $"{place} '{text}'");
            }
        }
    });

    [Fact]
    public void RowPutIn_AndTakenAwayAgain_LeavesTheLoadsAsTheyWere() => Gen.Select(Edits.Array[0, 20], Gen.Int[0, 4]).Sample(
        (edits, row) =>
        {
            FormSheet sheet = edits.Aggregate(FormSheet.Empty, Editor.Apply);
            int at = Math.Min(row, sheet.RowsOf(FormBlock.Loads));

            FormSheet put = Editor.Apply(sheet, new Edit.PutRow(at, FormRow.Blank(sheet.Document, FormBlock.Loads)));

            Assert.Equal(sheet, Editor.Apply(put, new Edit.DeleteRow(FormBlock.Loads, at)));
        });

    [Fact]
    public void RowsSwappedTwice_AreAsTheyWere() => Gen.Select(Edits.Array[0, 20], Blocks, Gen.Int[0, 3]).Sample(
        (edits, block, row) =>
        {
            FormSheet sheet = edits.Aggregate(FormSheet.Empty, Editor.Apply);
            Edit swap = new Edit.SwapRows(block, row);

            Assert.Equal(
                sheet.Document.Loads, Editor.Apply(Editor.Apply(sheet, swap), swap).Document.Loads);
        });

    /// <summary>
    /// A load that hangs on a support stays with it: named by a label before, it is named by that support's label after,
    /// whatever rows are put in, taken away or moved beside it.
    /// </summary>
    [Fact]
    public void LoadThatHangsOnASupport_StaysWithItWhateverIsMoved() => Gen.Select(
        Gen.Int[1, 9].Array[2, 5], Gen.Int[0, 4], Gen.Int[0, 4], Gen.Int[1, 9]).Sample((places, hung, moved, to) =>
        {
            int[] distinct = [.. places.Distinct()];
            int support = hung % distinct.Length;
            FormSheet sheet = Form.Of(new BeamDocument
            {
                Spans = [new SpanEntry { Length = "10 m" }],
                Supports = [.. distinct.Select(place => new SupportEntry { Kind = "roller", At = $"{place} m" })],
            });
            string label = FormLabels.Of(sheet.Document)[support]!;
            sheet = sheet.Load(0, FormColumn.Size, "1 kN").Load(0, FormColumn.From, label + " + 0.5");

            FormSheet after = sheet.Support(moved % distinct.Length, FormColumn.Place, $"{to}.5");

            string now = FormLabels.Of(after.Document)[support]!;
            Assert.Equal(now + " + 0.5 m", after.Document.Loads[0].At);
        });

    private static IEnumerable<FormPlace> Cells(FormSheet sheet) =>
        from block in Enum.GetValues<FormBlock>()
        from row in Enumerable.Range(0, sheet.RowsOf(block))
        from column in FormColumns.Of(sheet.Document, block)
        select new FormPlace(block, row, column);

    private static FormPlace Place(FormBlock block, int row, int column) =>
        new(block, row, Columns(block)[Math.Min(column, Columns(block).Length - 1)]);

    private static ImmutableArray<FormColumn> Columns(FormBlock block) => block == FormBlock.Combinations
        ? [.. FormColumns.Of(block), .. Enumerable.Range(0, 4).Select(FormColumns.OfCase)]
        : FormColumns.Of(block);

    /// <summary>
    /// A name that reads as factors fills a row without any, and a case it names may have come since. A name kept for a
    /// case because another had it may have become free.
    /// </summary>
    private static bool MayFillItsRow(BeamDocument document, FormPlace place) => place switch
    {
        { Block: FormBlock.Combinations, Column: FormColumn.Name } => document.Combinations[place.Row].Factors.Count == 0,
        { Block: FormBlock.Cases, Column: FormColumn.Case } => document.Renames.Any(rename =>
            rename.Name == CaseRows.Of(document)[place.Row].Name && CaseRows.IndexOf(document, rename.Text) is null),
        _ => false,
    };
}
