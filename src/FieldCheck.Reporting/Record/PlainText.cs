using System.Collections.Immutable;
using FieldCheck.Sheet;

namespace FieldCheck.Reporting.Record;

/// <summary>The check as labelled sentences, one fact a line, without pictures or columns. Plain ASCII.</summary>
public static class PlainText
{
    /// <summary>The check of one beam.</summary>
    /// <param name="calculation">What came of it.</param>
    /// <param name="request">What to show; lines are not broken, whatever its width.</param>
    public static ImmutableArray<string> Lines(Calculation calculation, CheckRequest request) =>
        throw new NotImplementedException();
}
