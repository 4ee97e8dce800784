using System.Collections.Immutable;

namespace FieldCheck.Sheet.Building;

/// <summary>Lengths of the spans, given each by itself or as running tape readings.</summary>
internal static class SpanLengths
{
    /// <summary>A shorter share of the beam is a slip of units, and too short to tell its joints apart [–].</summary>
    private const double Shortest = 1e-6;

    /// <returns>One length a span [m], or null when one of them is not known, which has been told.</returns>
    internal static ImmutableArray<double>? Read(ImmutableArray<Row> rows, ProblemList problems)
    {
        if (rows.IsEmpty)
        {
            problems.Add("span", ProblemText.NoSpan);
            return null;
        }

        ImmutableArray<double>.Builder lengths = ImmutableArray.CreateBuilder<double>(rows.Length);
        double? reach = 0;
        foreach (Row row in rows)
        {
            row.Positive("unbraced");
            (double? length, reach) = Length(row, reach);
            if (length is double known)
            {
                lengths.Add(known);
            }
        }

        return lengths.Count == rows.Length && AreLongEnough(lengths, rows) ? lengths.MoveToImmutable() : null;
    }

    /// <summary>Length of one span and how far the tape has come at its end; null where not known.</summary>
    private static (double? Length, double? Reach) Length(Row row, double? reach)
    {
        switch (row.Has("length"), row.Has("to"))
        {
            case (true, false):
                double? length = row.Positive("length");
                return (length, reach + length);
            case (false, true):
                double? end = row.Value("to");
                if (end <= reach)
                {
                    row.Refuse("to", ProblemText.TapeGoesBack);
                    return (null, null);
                }

                return (end - reach, end);
            case (false, false):
                row.Refuse("length", ProblemText.NoLength);
                return (null, null);
            default:
                row.Refuse("to", ProblemText.LengthAndTo);
                return (null, null);
        }
    }

    private static bool AreLongEnough(ImmutableArray<double>.Builder lengths, ImmutableArray<Row> rows)
    {
        double shortest = Shortest * lengths.Sum();
        for (int span = 0; span < lengths.Count; span++)
        {
            if (lengths[span] < shortest)
            {
                rows[span].Refuse(rows[span].Has("length") ? "length" : "to", ProblemText.TooShort);
            }
        }

        return lengths.All(length => length >= shortest);
    }
}
