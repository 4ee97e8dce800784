using System.Text.RegularExpressions;
using FieldCheck.Sheet.Document;
using Tomlyn.Syntax;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>What the parser takes and a beam file may not hold: TOML 1.1 where 1.0 says otherwise, and no real numbers.</summary>
internal static partial class TomlVersion
{
    private const string OneLine = "a table in { } stands on one line: TOML 1.0 takes no line break in it";
    private const string NoLastComma = "no comma before }: TOML 1.0 takes none there";
    private const string Seconds = "a time needs its seconds in TOML 1.0, as 07:30:00; or write it in quotes";
    private const string NoEscape = "TOML 1.0 has no \\e and no \\x; write \\u001b, \\u0041";
    private const string NotFinite = "not a number that a beam can have; write digits, as 1.25";

    internal static IEnumerable<TomlProblem> ProblemsOf(InlineTableSyntax table, string text, KeyPath path)
    {
        int at = TomlSpan.Of(table.OpenBrace!).End;
        bool isBroken = false;
        foreach (KeyValueSyntax pair in table.Items.Select(item => item.KeyValue!))
        {
            isBroken |= HasLineBreak(text, at, TomlSpan.Of(pair).Start);
            at = TomlSpan.Of(pair.Value!).End;
        }

        if (isBroken || HasLineBreak(text, at, TomlSpan.Of(table.CloseBrace!).Start))
        {
            return [TomlProblem.At(TomlSpan.Of(table), path.ToString(), OneLine)];
        }

        return table.Items.LastOrDefault()?.Comma is SyntaxToken comma
            ? [TomlProblem.At(TomlSpan.Of(comma), path.ToString(), NoLastComma)]
            : [];
    }

    internal static IEnumerable<TomlProblem> ProblemsOf(ValueSyntax scalar, string text, KeyPath path)
    {
        TomlSpan span = TomlSpan.Of(scalar);
        string? problem = scalar switch
        {
            FloatValueSyntax number => double.IsFinite(number.Value) ? null : NotFinite,
            DateTimeValueSyntax => TimeWithoutSeconds().IsMatch(span.In(text)) ? Seconds : null,
            StringValueSyntax { Token.TokenKind: TokenKind.String or TokenKind.StringMulti } =>
                NewEscape().IsMatch(span.In(text)) ? NoEscape : null,
            _ => null,
        };
        return problem is null ? [] : [TomlProblem.At(span, path.ToString(), problem)];
    }

    private static bool HasLineBreak(string text, int start, int end) => text.AsSpan(start, end - start).Contains('\n');

    [GeneratedRegex(@"(^|[Tt ])\d\d:\d\d(?!:)", RegexOptions.CultureInvariant)]
    private static partial Regex TimeWithoutSeconds();

    [GeneratedRegex(@"(?<!\\)(\\\\)*\\[ex]", RegexOptions.CultureInvariant)]
    private static partial Regex NewEscape();
}
