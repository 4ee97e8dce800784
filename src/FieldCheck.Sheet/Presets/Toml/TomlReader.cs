using System.Collections.Immutable;
using FieldCheck.Sheet.Document;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Reads a text as TOML, with every problem as a value.</summary>
internal static class TomlReader
{
    private const int Deepest = 64;
    private const string TooDeep = "brackets stand more than 64 deep inside one another";
    private const string SecondMark = "a byte order mark stands here for the second time";

    /// <summary>Reads a text of at most <see cref="BeamFileText.MostBytes"/>, without byte order mark.</summary>
    internal static TomlFile Read(string text)
    {
        if (text.StartsWith('\uFEFF'))
        {
            // The parser would read over it, and every place it tells would be one too small.
            return Broken(text, [TomlProblem.At(TomlSpan.Top, "", SecondMark)]);
        }

        try
        {
            // The parser's own validation takes rows that use dotted keys alike for a clash; the tree finds clashes itself.
            DocumentSyntax document = SyntaxParser.Parse(text, validate: false);
            return document.HasErrors
                ? Broken(text, TomlGrammar.Problems(text))
                : new TomlTreeBuilder(text).Build(document);
        }
        catch (TomlException)
        {
            // Thrown, without a place, for brackets nested deeper than the parser goes; it tells every other error.
            int line = Array.FindIndex(text.Split('\n'), row => row.Count(character => character is '[' or '{') > Deepest);
            return Broken(text, [new TomlProblem(Math.Max(line, 0) + 1, 1, "", TooDeep)]);
        }
    }

    private static TomlFile Broken(string text, ImmutableArray<TomlProblem> problems) =>
        new(text, new TomlTable(TomlSpan.Top, KeyPath.Top, TomlForm.Header), [], false, problems);
}
