using System.Collections.Immutable;
using FieldCheck.Sheet.Document;
using Tomlyn.Syntax;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Reads a text as TOML, with every problem as a value.</summary>
internal static class TomlReader
{
    private const string SecondMark = "a byte order mark stands here for the second time";

    /// <summary>Reads a text of at most <see cref="BeamFileText.MostBytes"/>, without byte order mark.</summary>
    internal static TomlFile Read(string text)
    {
        if (text.StartsWith('\uFEFF'))
        {
            // The parser would read over it, and every place it tells would be one too small.
            return Broken(text, [TomlProblem.At(TomlSpan.Top, "", SecondMark)]);
        }

        return TomlParser.Parse(text, out TomlProblem? failure) switch
        {
            null => Broken(text, [failure!]),
            { HasErrors: true } => Broken(text, TomlGrammar.Problems(text)),
            DocumentSyntax document => new TomlTreeBuilder(text).Build(document),
        };
    }

    private static TomlFile Broken(string text, ImmutableArray<TomlProblem> problems) =>
        new(text, new TomlTable(TomlSpan.Top, KeyPath.Top, TomlForm.Header), [], false, problems);
}
