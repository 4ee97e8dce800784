using System.Globalization;
using FieldCheck.Sheet.Presets.Toml;

namespace FieldCheck.Sheet.Presets;

/// <summary>The key <c>format</c>: which version of the beam file a file is written in.</summary>
internal static class BeamFileFormat
{
    /// <summary>The key.</summary>
    internal const string Key = "format";

    /// <summary>The only version there is.</summary>
    internal const int Version = 1;

    /// <summary>True: the file is of another version, so that nothing else can be said about its keys.</summary>
    internal static bool IsOfAnother(TomlTable root) => VersionOf(root) is not (null or Version);

    /// <summary>What is wrong with the key, if anything.</summary>
    internal static IEnumerable<TomlProblem> ProblemsOf(TomlTable root)
    {
        if (VersionOf(root) == Version)
        {
            return [];
        }

        string text = VersionOf(root) is int other
            ? $"the file is of format {other}; this program reads format {Version}"
            : root[Key] is TomlEntry entry
                ? $"expected the number {Version}, found {Expectation.Found(entry.Node)}"
                : $"missing; expected {Key} = {Version} at the top of the file";
        return [TomlProblem.At(root[Key]?.Node.Span ?? TomlSpan.Top, Key, text)];
    }

    private static int? VersionOf(TomlTable root) =>
        root[Key]?.Node is TomlCell { IsBare: true } cell
        && int.TryParse(cell.Text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int version)
            ? version
            : null;
}
