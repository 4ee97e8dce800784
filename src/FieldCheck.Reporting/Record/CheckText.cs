using System.Collections.Immutable;
using FieldCheck.Sheet;

namespace FieldCheck.Reporting.Record;

/// <summary>The whole check as text: what one would pin to a wall. Plain ASCII.</summary>
public static class CheckText
{
    /// <summary>The check of one beam.</summary>
    /// <param name="calculation">What came of it.</param>
    /// <param name="request">What to show.</param>
    /// <returns>Lines, none longer than the width asked for.</returns>
    public static ImmutableArray<string> Lines(Calculation calculation, CheckRequest request) =>
        throw new NotImplementedException();
}
