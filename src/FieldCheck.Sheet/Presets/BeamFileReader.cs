using System.Collections.Immutable;
using System.Text;
using FieldCheck.Sheet.Document.Tables;
using FieldCheck.Sheet.Presets.Toml;

namespace FieldCheck.Sheet.Presets;

/// <summary>Reads beam files.</summary>
internal static class BeamFileReader
{
    private const string TooLarge = "the file is larger than 1 MiB, the most that is read";

    /// <summary>Reads a file's bytes.</summary>
    internal static BeamFileReading Read(string name, ReadOnlySpan<byte> bytes)
    {
        TomlProblem? problem = bytes.Length > BeamFileText.MostBytes
            ? TomlProblem.At(TomlSpan.Top, "", TooLarge)
            : Utf8Text.ProblemOf(bytes);
        return problem is null
            ? Read(new BeamFileText(name, Encoding.UTF8.GetString(bytes)))
            : Refused(name, [problem], null);
    }

    /// <summary>Reads a file's text.</summary>
    internal static BeamFileReading Read(BeamFileText origin)
    {
        if (Encoding.UTF8.GetByteCount(origin.Text) > BeamFileText.MostBytes)
        {
            return Refused(origin.Name, [TomlProblem.At(TomlSpan.Top, "", TooLarge)], null);
        }

        TomlFile file = TomlReader.Read(origin.Unmarked);
        if (!file.IsSound || BeamFileFormat.IsOfAnother(file.Root))
        {
            return Refused(origin.Name, file.IsSound ? BeamFileFormat.ProblemsOf(file.Root) : file.Problems, null);
        }

        ContentBinder binder = new(FileContent.Schema);
        Content? content = binder.Bind(FileContent.Schema, file.Root);
        BeamFileReading.Opened opened = new(FileContent.Read(content!), origin);
        ImmutableArray<TomlProblem> problems =
            [.. file.Problems, .. BeamFileFormat.ProblemsOf(file.Root), .. binder.Problems];
        return problems.Length > 0 ? Refused(origin.Name, problems, opened) : opened;
    }

    private static BeamFileReading.Refused Refused(
        string name, IEnumerable<TomlProblem> problems, BeamFileReading.Opened? rest) =>
        new(FileProblem.InOrder(problems.Select(problem => problem.In(name))), rest);
}
