using System.Collections.Immutable;
using System.Text.RegularExpressions;
using FieldCheck.Sheet.Document;
using Tomlyn.Syntax;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Says where a text breaks the grammar of TOML.</summary>
/// <remarks>
/// One slip makes a parser complain about much that follows. So only its first complaint is taken, and the rest of the
/// text is read anew from the next line on: each broken line is told once.
/// </remarks>
internal static partial class TomlGrammar
{
    private const int FewLines = 50;

    /// <summary>The slips, at most <see cref="FileProblem.Most"/>, in order of line; none for a text of sound grammar.</summary>
    internal static ImmutableArray<TomlProblem> Problems(string text)
    {
        List<TomlProblem> problems = [];
        string[] lines = text.Split('\n');
        int from = 0;
        while (from < lines.Length && problems.Count < FileProblem.Most
            && FirstComplaint(lines, from) is DiagnosticMessage complaint)
        {
            int line = from + complaint.Span.Start.Line;
            if (TomlSlip.IsLongText(complaint.Message))
            {
                problems.Add(OfLongText(lines, complaint.Message));
                break;
            }

            // A list may go on over lines; where it was left open, nothing is known about the lines that follow.
            bool isInside = TomlSlip.IsOpen(complaint.Message) && !Pair().IsMatch(lines[line]);
            string key = KeyAt(lines, isInside ? Math.Max(Array.FindLastIndex(lines, line, Opening().IsMatch), 0) : line);
            string slip = TomlSlip.Say(lines[line], complaint.Message);
            problems.Add(new TomlProblem(line + 1, complaint.Span.Start.Column + 1, key, slip));
            from = isInside ? lines.Length : line + 1;
        }

        return [.. problems];
    }

    /// <summary>A text of several lines that was not closed: the parser finds the end of the file, this where it was opened.</summary>
    private static TomlProblem OfLongText(string[] lines, string complaint)
    {
        string marks = complaint.Contains("literal", StringComparison.Ordinal) ? "'''" : "\"\"\"";
        int line = Array.FindLastIndex(lines, text => text.Contains(marks, StringComparison.Ordinal));
        int column = lines[line].LastIndexOf(marks, StringComparison.Ordinal) + 1;
        return new TomlProblem(line + 1, column, KeyAt(lines, line), TomlSlip.Say(lines[line], complaint));
    }

    /// <summary>The first complaint about the lines from one on, with its place counted from there.</summary>
    /// <remarks>
    /// A few lines are parsed first, and more only while they show nothing, so that a large file of slips takes no longer
    /// than a large sound one. What is said at the end of a part may come of the cut.
    /// </remarks>
    private static DiagnosticMessage? FirstComplaint(string[] lines, int from)
    {
        for (int count = FewLines; ; count *= FewLines)
        {
            int end = Math.Min(from + count, lines.Length);
            DiagnosticMessage? complaint = FirstComplaint(string.Join('\n', lines[from..end]));
            if (end == lines.Length || complaint?.Span.Start.Line < end - from - 1)
            {
                return complaint;
            }
        }
    }

    /// <summary>Null too where the parser gives up: what it said before is told, and the rest when that is mended.</summary>
    /// <remarks>
    /// Once at the end of the text, the parser says which list it is still in without the place: that goes to the first.
    /// </remarks>
    private static DiagnosticMessage? FirstComplaint(string text)
    {
        IEnumerable<DiagnosticMessage> complaints = TomlParser.Parse(text, out _)?.Diagnostics
            .Where(message => message.Kind == DiagnosticMessageKind.Error) ?? [];
        ILookup<bool, DiagnosticMessage> byPlace = complaints.ToLookup(HasPlace);
        DiagnosticMessage? first = byPlace[true]
            .OrderBy(message => message.Span.Start.Line)
            .ThenBy(message => message.Span.Start.Column)
            .FirstOrDefault();
        return first is not null && TomlSlip.IsAtEnd(first.Message) && byPlace[false].FirstOrDefault() is DiagnosticMessage open
            ? new DiagnosticMessage(first.Kind, first.Span, open.Message)
            : first;
    }

    private static bool HasPlace(DiagnosticMessage complaint) =>
        complaint.Span.Start.Offset > 0 || !TomlSlip.IsAtEnd(complaint.Message);

    /// <summary>The key path of a line, as far as it can be told from the headers above it.</summary>
    internal static string KeyAt(string[] lines, int line)
    {
        KeyPath path = KeyPath.Top;
        Dictionary<string, int> rows = new(StringComparer.Ordinal);
        foreach (Match header in lines[..(line + 1)].Select(text => Header().Match(text)).Where(match => match.Success))
        {
            string name = header.Groups["name"].Value;
            KeyPath? table = KeyPath.Parse(name.Replace(" ", "", StringComparison.Ordinal));
            path = table ?? KeyPath.Top;
            if (table is not null && header.Groups["open"].Length == 2)
            {
                rows[name] = rows.GetValueOrDefault(name) + 1;
                path = path.At(rows[name]);
            }
        }

        Match pair = Pair().Match(lines[line]);
        return (pair.Success ? path.Into(pair.Groups["key"].Value) : path).ToString();
    }

    [GeneratedRegex(@"^\s*(?<open>\[\[?)\s*(?<name>[\w-]+(\s*\.\s*[\w-]+)*)\s*\]", RegexOptions.CultureInvariant)]
    private static partial Regex Header();

    [GeneratedRegex(@"^\s*(?<key>[\w-]+)\s*=", RegexOptions.CultureInvariant)]
    private static partial Regex Pair();

    [GeneratedRegex(@"^\s*[\w-]+\s*=\s*[\[{]", RegexOptions.CultureInvariant)]
    private static partial Regex Opening();
}
