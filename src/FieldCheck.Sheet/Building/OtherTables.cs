using System.Collections.Immutable;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Building;

/// <summary>
/// Tables that the model does not hold: nothing of them may be silently wrong, whether or not something uses it yet.
/// </summary>
/// <param name="document">The beam as typed.</param>
/// <param name="cases">Its load cases.</param>
/// <param name="problems">Takes what is wrong.</param>
internal sealed class OtherTables(BeamDocument document, LoadCases cases, ProblemList problems)
{
    /// <summary>A name that a case cannot have leaves the beam unfinished, as any cell does that does not read.</summary>
    internal void CheckRenames()
    {
        foreach (NamedFigure rename in document.Renames)
        {
            string key = KeyPath.Top.Into(Fields.Renames.Key).Into(rename.Name).ToString();
            string[] names = [.. CaseRows.Of(document).Select(row => row.Name)];
            problems.Add(key, !names.Contains(rename.Name, StringComparer.Ordinal) ? ProblemText.UnknownName("case", rename.Name, names)
                : names.Contains(rename.Text, StringComparer.Ordinal) ? ProblemText.CaseIsThere(rename.Text)
                : ProblemText.NameIsFree(rename.Text));
        }
    }

    internal void CheckPatterns()
    {
        HashSet<string> before = new(StringComparer.Ordinal);
        foreach ((PatternEntry entry, string path) in Numbered(document.Patterns, "pattern"))
        {
            Row row = Row.Of(Fields.Pattern, entry, path, problems);
            if (row.Text("case") is not string name)
            {
                row.Refuse("case", ProblemText.NoCase);
            }
            else if (!before.Add(name))
            {
                row.Refuse("case", ProblemText.SamePattern(name));
            }

            CheckCase(row);
        }
    }

    internal void CheckStated(ImmutableArray<string>? labels)
    {
        string[] combinations = document.Combinations.Count == 0
            ? [CombinationRows.AllLoads]
            : [.. document.Combinations.Select(entry => entry.Name).OfType<string>()];
        foreach ((StatedEntry entry, string path) in Numbered(document.Stated, "stated"))
        {
            Row row = Row.Of(Fields.Stated, entry, path, problems);
            row.NotNegative("tolerance");
            CheckSupport(row, labels);
            CheckCase(row);
            if (!row.Has("vertical") && !row.Has("horizontal") && !row.Has("moment"))
            {
                row.Refuse("vertical", ProblemText.NothingStated);
            }

            if (entry.Combination is string name && !combinations.Contains(name, StringComparer.Ordinal))
            {
                row.Refuse("combination", ProblemText.UnknownName("combination", name, combinations));
            }

            if (row.Has("combination") && row.Has("case"))
            {
                row.Refuse("case", ProblemText.CombinationAndCase);
            }
        }
    }

    internal void CheckTolerance()
    {
        if (document.Tolerance is ToleranceEntry tolerance)
        {
            Row row = Row.Of(Fields.Tolerance, tolerance, "tolerance", problems);
            row.NotNegative("position");
            row.NotNegative("load");
        }
    }

    internal void CheckLimits()
    {
        if (document.Limits is LimitsEntry limits)
        {
            Row row = Row.Of(Fields.Limits, limits, "limits", problems);
            row.Positive("deflection_absolute");
            Figures.Check(Fields.DeflectionCases, limits, "limits", problems, cases.Doubt);
            Figures.Check(Fields.Lasting, limits, "limits", problems, cases.Doubt);
            foreach (NamedFigure share in limits.Lasting)
            {
                if (Row.Number(share.Text, Fields.Lasting.Wanted) is < 0 or > 1)
                {
                    problems.Add($"limits.lasting.{TomlText.Key(share.Name)}", ProblemText.NotAShare(share.Text));
                }
            }
        }
    }

    internal void CheckAsk()
    {
        if (document.Ask.Count > BeamDocument.MostAsked)
        {
            problems.Add("ask", ProblemText.TooManyAsked(BeamDocument.MostAsked));
            return;
        }

        for (int index = 0; index < document.Ask.Count; index++)
        {
            if (DocumentCells.Find(document, document.Ask[index]) is null)
            {
                problems.Add($"ask[{index + 1}]", ProblemText.UnknownKey(document.Ask[index]));
            }
        }
    }

    private static void CheckSupport(Row row, ImmutableArray<string>? labels)
    {
        if (row.Text("support") is not string label)
        {
            row.Refuse("support", ProblemText.NoStatedSupport);
        }
        else if (labels is { } known && !known.Contains(label.Trim(), StringComparer.OrdinalIgnoreCase))
        {
            row.Refuse("support", ReadingMessages.NoSuchSupport(label, NearSpelling.Of(label, known), known));
        }
    }

    private void CheckCase(Row row)
    {
        if (row.Text("case") is string name && cases.Doubt(name) is string doubt)
        {
            row.Refuse("case", doubt);
        }
    }

    private static IEnumerable<(T Entry, string Path)> Numbered<T>(Rows<T> entries, string table) =>
        entries.Select((entry, index) => (entry, $"{table}[{index + 1}]"));
}
