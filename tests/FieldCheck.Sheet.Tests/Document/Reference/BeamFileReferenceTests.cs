using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>
/// docs/beam-file.md lists every key that the reader knows. FIELDCHECK_ACCEPT=1 writes its tables anew; then read the
/// change.
/// </summary>
public sealed class BeamFileReferenceTests
{
    private const string Page = "docs/beam-file.md";
    private const string Begin = "<!-- keys: begin, written by BeamFileReferenceTests with FIELDCHECK_ACCEPT=1 -->";
    private const string End = "<!-- keys: end -->";

    [Fact]
    public void EveryKeyTheReaderKnows_HasANote_AndNoNoteIsOfAnother() =>
        Assert.Equal(
            BeamFileKeys.All().Select(cell => cell.Path).Order(StringComparer.Ordinal),
            KeyNotes.All.Select(note => note.Path).Order(StringComparer.Ordinal));

    [Fact]
    public void EveryTable_IsExplained() =>
        Assert.Equal(
            BeamFileKeys.Tables().Order(StringComparer.Ordinal), KeyNotes.Tables.Keys.Order(StringComparer.Ordinal));

    [Fact]
    public void EveryExample_ReadsAsWhatItsKeyAsksFor() => Assert.All(BeamFileKeys.All(), cell =>
    {
        KeyNote note = KeyNotes.All.Single(note => note.Path == cell.Path);
        string text = Toml.Value(note.Example)!.ToString();

        Assert.IsType<Reading<double?>.Accepted>(CellReading.Read(text, cell.Wanted));
    });

    [Fact]
    public void EveryDefaultThatIsAWordOfTheKey_IsOneOfItsWords() => Assert.All(
        BeamFileKeys.All().Where(cell => cell.Wanted is Wanted.OneOf),
        cell =>
        {
            string[] words = ((Wanted.OneOf)cell.Wanted).Words;
            string given = KeyNotes.All.Single(note => note.Path == cell.Path).Default;

            Assert.True(given.Length == 0 || given.Contains(' ') || given == "none" || words.Contains(given), given);
        });

    [Fact]
    public void EveryUnitNamed_IsReadForItsKind() => Assert.All(KindNotes.Units, kind => Assert.All(
        kind.Value,
        unit => Assert.IsType<Reading<Quantity>.Accepted>(QuantityReader.Read("2 " + unit, kind.Key))));

    [Fact]
    public void TablesOnThePage_AreThoseOfTheReader()
    {
        string page = RepositoryFile.Read(Page);
        int from = page.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        int to = page.IndexOf(End, StringComparison.Ordinal);
        string tables = string.Join('\n', BeamFilePage.Lines()) + "\n\n";
        if (RepositoryFile.IsAccepting)
        {
            RepositoryFile.Write(Page, page[..from] + "\n" + tables + page[to..]);
            return;
        }

        Assert.Equal("\n" + tables, page[from..to]);
    }
}
