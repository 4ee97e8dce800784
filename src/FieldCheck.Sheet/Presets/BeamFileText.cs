using System.Collections.Immutable;
using System.Text;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets.Toml;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Presets;

/// <summary>The text of a beam file as it stands on disk: knows its lines and is what saving keeps to.</summary>
/// <param name="Name">The file, as it was named.</param>
/// <param name="Text">Its whole text, with its line ends; a byte order mark stays where it stood.</param>
public sealed record BeamFileText(string Name, string Text)
{
    /// <summary>How many bytes a file may have: 1 MiB.</summary>
    public const int MostBytes = 1 << 20;

    /// <summary>How many rows a file may have: those of all tables together, and all entries of lists.</summary>
    public const int MostRows = 10_000;

    private const char ByteOrderMark = '\uFEFF';

    /// <summary>The text without the byte order mark that it may begin with.</summary>
    internal string Unmarked => Text.StartsWith(ByteOrderMark) ? Text[1..] : Text;

    /// <summary>Reads a file's text.</summary>
    /// <param name="name">The file, as it was named; stands in every problem.</param>
    /// <param name="text">Its whole text.</param>
    public static BeamFileReading Read(string name, string text) => BeamFileReader.Read(new BeamFileText(name, text));

    /// <summary>Reads a file's bytes, which must be UTF-8, with or without a byte order mark.</summary>
    /// <param name="name">The file, as it was named; stands in every problem.</param>
    /// <param name="bytes">All its bytes; one more than <see cref="MostBytes"/> is enough to refuse it.</param>
    public static BeamFileReading ReadBytes(string name, ReadOnlySpan<byte> bytes) => BeamFileReader.Read(name, bytes);

    /// <summary>The text of a new file.</summary>
    /// <param name="name">What the file will be called.</param>
    /// <param name="document">The beam as typed.</param>
    public static BeamFileText New(string name, BeamDocument document) =>
        new(name, BeamFileWriter.New(document));

    /// <summary>The text to save for a changed document: comments, order and every unchanged value as they stood.</summary>
    /// <param name="document">The beam as typed now.</param>
    /// <remarks>
    /// Reading the new text gives the document again. Where the old text cannot be kept to because it does not open, a
    /// new one is written. Of two names alike in one table the second is written with a number: a key stands once.
    /// </remarks>
    public BeamFileText With(BeamDocument document) => BeamFileWriter.Changed(this, document);

    /// <summary>Finds the line and column of a problem that a calculation told.</summary>
    /// <param name="problem">The problem, with its key path.</param>
    public FileProblem Locate(Problem problem) => Locate([problem]).Single();

    /// <summary>Finds the lines and columns of the problems that a calculation told.</summary>
    /// <param name="problems">The problems, with their key paths.</param>
    /// <returns>The problems in order of line, at most <see cref="FileProblem.Most"/>.</returns>
    /// <remarks>
    /// A problem inside a cell is placed at its character, where the cell is a string on one line without escapes; else at
    /// the start of the cell. What is missing is placed at the header of its row or table, or at the top of the file.
    /// </remarks>
    public ImmutableArray<FileProblem> Locate(IEnumerable<Problem> problems)
    {
        TomlFile file = TomlReader.Read(Unmarked);
        return FileProblem.InOrder(problems.Select(problem => TomlPlace.Of(file, problem).In(Name)));
    }

    /// <summary>The same, of those problems alone whose cells stand in the text: what is missing may stand under a misspelt key.</summary>
    /// <param name="problems">The problems, with their key paths.</param>
    public ImmutableArray<FileProblem> LocateStanding(IEnumerable<Problem> problems)
    {
        TomlFile file = TomlReader.Read(Unmarked);
        return FileProblem.InOrder(
            problems.Where(problem => TomlPlace.CellOf(file, problem) is not null).Select(problem => TomlPlace.Of(file, problem).In(Name)));
    }

    /// <summary>The text as the bytes of a file: UTF-8, and a byte order mark only where there was one.</summary>
    public byte[] ToBytes() => Encoding.UTF8.GetBytes(Text);

    /// <summary>SHA-256 of those bytes, as 64 hexadecimal digits.</summary>
    public string Digest() => Sha256.Of(ToBytes());
}
