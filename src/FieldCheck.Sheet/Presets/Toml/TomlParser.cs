using System.Text;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Calls the parser, and makes problems of what it throws instead of telling it.</summary>
internal static class TomlParser
{
    private const int Deepest = 64;
    private const string TooDeep = "brackets stand more than 64 deep inside one another";

    /// <summary>Parses a text, grammar only.</summary>
    /// <param name="text">The text.</param>
    /// <param name="failure">Why there is no document.</param>
    /// <returns>The document, which may have errors; null where the parser gave up.</returns>
    internal static DocumentSyntax? Parse(string text, out TomlProblem? failure)
    {
        try
        {
            failure = null;

            // The parser's own validation takes rows that use dotted keys alike for a clash; the tree finds clashes itself.
            return SyntaxParser.Parse(text, validate: false);
        }
        catch (TomlException)
        {
            failure = AtLine(text, line => line.Count(character => character is '[' or '{') > Deepest, TooDeep);
        }
        catch (ArgumentOutOfRangeException)
        {
            // The parser's answer to half a surrogate pair outside a string; no file that is UTF-8 holds one.
            failure = AtLine(text, line => line.EnumerateRunes().Contains(Rune.ReplacementChar), TomlSlip.LostCharacter);
        }

        return null;
    }

    /// <summary>The parser names no place when it gives up, so the first line that explains it is taken.</summary>
    private static TomlProblem AtLine(string text, Predicate<string> explains, string problem)
    {
        string[] lines = text.Split('\n');
        int line = Math.Max(Array.FindIndex(lines, explains), 0);
        return new TomlProblem(line + 1, 1, TomlGrammar.KeyAt(lines, line), problem);
    }
}
