using System.Collections.Immutable;
using System.Text;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Presets.Toml;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>What a catalogue file holds: the entries that can be used, and what is wrong with the others.</summary>
/// <param name="Shapes">Its sound shapes.</param>
/// <param name="Grades">Its sound grades.</param>
/// <param name="Problems">What is wrong, in order of line; an entry that it concerns is left out.</param>
internal sealed record CatalogueFile(
    ImmutableArray<CatalogueShape> Shapes, ImmutableArray<CatalogueGrade> Grades, ImmutableArray<FileProblem> Problems)
{
    /// <summary>Reads a file's bytes: UTF-8, at most <see cref="BeamFileText.MostBytes"/>.</summary>
    /// <param name="name">The file, as it is named in problems.</param>
    /// <param name="bytes">All its bytes.</param>
    internal static CatalogueFile ReadBytes(string name, ReadOnlySpan<byte> bytes) =>
        bytes.Length > BeamFileText.MostBytes ? Refused(FileProblem.OfWhole(name, CatalogueText.TooLarge))
        : Utf8Text.ProblemOf(bytes) is TomlProblem problem ? Refused(problem.In(name))
        : Read(name, Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF'), CatalogueText.OwnFamily);

    /// <summary>A file that cannot be used at all.</summary>
    internal static CatalogueFile Refused(FileProblem problem) => new([], [], [problem]);

    /// <summary>Reads a file's text.</summary>
    /// <param name="name">The file, as it is named in problems.</param>
    /// <param name="text">Its whole text.</param>
    /// <param name="family">The family of entries for which the file names none.</param>
    internal static CatalogueFile Read(string name, string text, string family)
    {
        TomlFile file = TomlReader.Read(text);
        ContentBinder binder = new(CatalogueContent.Schema);
        CatalogueDocument document = file.IsSound && binder.Bind(CatalogueContent.Schema, file.Root) is Content content
            ? CatalogueContent.Read(content)
            : new CatalogueDocument();
        if (document.Shapes.Count + document.Grades.Count > BeamFileText.MostRows)
        {
            return Refused(FileProblem.OfWhole(name, CatalogueText.TooManyEntries));
        }

        ImmutableArray<TomlProblem> ofForm = [.. file.Problems, .. binder.Problems];
        HashSet<string> broken = [.. ofForm.Select(problem => EntryOf(problem.Key))];
        ProblemList problems = new();
        string ofAll = document.Family ?? family;
        ImmutableArray<CatalogueShape> shapes = Sound(
            CatalogueContent.ShapeTable, CatalogueContent.Shape, document.Shapes, broken, problems,
            (row, entry) => ShapeRows.Read(row, entry.Name, ofAll));
        ImmutableArray<CatalogueGrade> grades = Sound(
            CatalogueContent.GradeTable, CatalogueContent.Grade, document.Grades, broken, problems,
            (row, entry) => GradeRows.Read(row, entry.Name, ofAll));
        IEnumerable<TomlProblem> ofFigures = problems.InOrder().Select(problem => TomlPlace.Of(file, problem));
        return new(
            shapes, grades, FileProblem.InOrder([.. ofForm.Concat(ofFigures).Select(problem => problem.In(name))]));
    }

    private static ImmutableArray<T> Sound<T>(
        string table,
        ImmutableArray<Field<CatalogueEntry>> fields,
        Rows<CatalogueEntry> entries,
        HashSet<string> broken,
        ProblemList problems,
        Func<Row, CatalogueEntry, T?> read)
        where T : class
    {
        var sound = ImmutableArray.CreateBuilder<T>(entries.Count);
        foreach (CatalogueEntry entry in entries)
        {
            KeyPath path = KeyPath.Top.Into(table).Into(entry.Name);
            int before = problems.Count;
            Row row = Row.Of(fields, entry, path.ToString(), problems);
            if (NameProblem(entry.Name) is string wrong)
            {
                row.Refuse("", wrong);
            }

            T? item = read(row, entry);
            if (item is not null && problems.Count == before && !broken.Contains(path.ToString()))
            {
                sound.Add(item);
            }
        }

        return sound.ToImmutable();
    }

    private static string? NameProblem(string name) =>
        name.Length > CatalogueText.LongestName ? CatalogueText.LongName
        : name != TextSafety.ForTerminal(name) ? CatalogueText.OddName
        : CatalogueName.Plain(name).Length == 0 ? CatalogueText.EmptyName
        : null;

    /// <summary>The entry that a key path leads to or through; empty where it leads to none.</summary>
    private static string EntryOf(string key) => KeyPath.Parse(key)?.Steps is [KeyStep.Into table, KeyStep.Into entry, ..]
        ? KeyPath.Top.Into(table.Key).Into(entry.Key).ToString()
        : "";
}
