using System.Collections.Immutable;
using FieldCheck.Sheet;

namespace FieldCheck.Reporting.Tables;

/// <summary>The results beside the form: few words, narrow lines.</summary>
public static class ResultsPanel
{
    /// <summary>The panel for one beam.</summary>
    /// <param name="calculation">What came of it.</param>
    /// <param name="width">Columns of a line; 30 or more.</param>
    /// <param name="height">How many lines at most; 3 or more.</param>
    /// <param name="age">Which beam the results belong to.</param>
    /// <param name="combination">Which combination is shown, counted from 0.</param>
    /// <returns>The header line, then the results; when they do not all fit the last line says how many more.</returns>
    public static ImmutableArray<string> Lines(
        Calculation calculation,
        int width,
        int height,
        ResultsAge age = ResultsAge.UpToDate,
        int combination = 0) => throw new NotImplementedException();
}
