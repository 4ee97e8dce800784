using System.Globalization;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>Spans put in, taken away and swapped: the joints that go by number are numbered anew.</summary>
internal static class SpanRows
{
    /// <summary>Puts a span in, and a roller at its far joint.</summary>
    /// <returns>The beam, and the row at which the first new support stands, with how many there are.</returns>
    internal static (BeamDocument Document, int SupportRow, int Count) Put(
        BeamDocument document, int row, SpanEntry entry)
    {
        BeamDocument numbered = JointNumbers.Renumber(
            document, joint => joint > row ? joint + 1 : joint, span => span > row ? span + 1 : span);
        SupportEntry[] supports = document.Supports.Count > 0
            ? [At(row + 1, "roller")]
            : [At(0, "pin"), At(row + 1, "roller")];
        int place = RowAfter(numbered.Supports, row);
        Rows<SupportEntry> before = numbered.Supports;
        return (
            numbered with
            {
                Spans = numbered.Spans.Insert(row, entry),
                Supports = [.. before.Take(place), .. supports, .. before.Skip(place)],
            },
            place,
            supports.Length);
    }

    /// <summary>
    /// Takes a span away. Its two joints become one; where both had a support or a hinge, that of the far joint goes.
    /// </summary>
    internal static BeamDocument Delete(BeamDocument document, int row)
    {
        BeamDocument left = document with
        {
            Spans = document.Spans.RemoveAt(row),
            Supports = [.. document.Supports.Where(support => !GoesWith(document, support, row))],
            Hinges = document.Hinges.Any(hinge => StandsAt(hinge.Joint, row))
                ? [.. document.Hinges.Where(hinge => !StandsAt(hinge.Joint, row + 1))]
                : document.Hinges,
        };
        return JointNumbers.Renumber(
            left,
            joint => joint > row ? joint - 1 : joint,
            span => span == row + 1 ? null : span > row ? span - 1 : span);
    }

    /// <summary>True: a support goes when a span is taken away.</summary>
    internal static bool GoesWith(BeamDocument document, SupportEntry support, int row) =>
        StandsAt(support.Joint, row + 1) && document.Supports.Any(other => StandsAt(other.Joint, row));

    /// <summary>
    /// Swaps a span with the next. Tape readings stay where they are, since they belong to the joints and not to the
    /// spans.
    /// </summary>
    internal static BeamDocument Swap(BeamDocument document, int row)
    {
        SpanEntry upper = document.Spans[row];
        SpanEntry lower = document.Spans[row + 1];
        bool isTaped = upper.To is not null || lower.To is not null;
        Rows<SpanEntry> spans = document.Spans
            .SetItem(row, isTaped ? lower with { Length = upper.Length, To = upper.To } : lower)
            .SetItem(row + 1, isTaped ? upper with { Length = lower.Length, To = lower.To } : upper);
        return JointNumbers.Renumber(
            document with { Spans = spans },
            joint => joint,
            span => span == row + 1 ? row + 2 : span == row + 2 ? row + 1 : span);
    }

    /// <summary>
    /// A span like another; where that one's length follows from the tape, the difference of the readings.
    /// </summary>
    internal static SpanEntry CopyOf(BeamDocument document, int row)
    {
        SpanEntry span = document.Spans[row];
        string? before = row > 0 ? document.Spans[row - 1].To : null;
        return span.To is null ? span
            : row == 0 ? span with { Length = span.To, To = null }
            : span with { Length = before is null ? null : $"({span.To}) - ({before})", To = null };
    }

    private static int RowAfter(Rows<SupportEntry> supports, int joint)
    {
        int row = supports.Count;
        while (row > 0 && !(Number(supports[row - 1].Joint) <= joint))
        {
            row--;
        }

        return row > 0 ? row : supports.Count;
    }

    private static SupportEntry At(int joint, string kind) =>
        new() { Kind = kind, Joint = joint.ToString(CultureInfo.InvariantCulture) };

    private static bool StandsAt(string? joint, int number) => Number(joint) == number;

    private static int? Number(string? joint) =>
        int.TryParse(joint, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : null;
}
