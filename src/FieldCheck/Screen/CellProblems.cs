using System.Collections.Immutable;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Screen;

/// <summary>Which cells of the form are marked, and why.</summary>
internal static class CellProblems
{
    /// <summary>Every problem with the cell it stands in; null for a key without a cell.</summary>
    /// <param name="calculation">What came of the beam.</param>
    internal static ImmutableArray<(FormPlace? Place, Problem Problem)> Of(Calculation calculation) =>
    [
        .. calculation.Problems
            .Select(problem => (FormCells.PlaceOf(calculation.Document, problem.Key), AxleWords.InCell(calculation.Document, problem)))
            .Distinct(),
    ];

    /// <summary>What is wrong with a cell; null when nothing is.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="place">The cell.</param>
    internal static Problem? At(Calculation calculation, FormPlace place) =>
        Of(calculation).FirstOrDefault(found => found.Place == place).Problem;

    /// <summary>True: something is missing rather than wrong.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="place">The cell that a problem stands in; null for a key without one.</param>
    internal static bool IsMissing(Calculation calculation, FormPlace? place) =>
        place is not null && FormCells.TextOf(calculation.Document, place) is null;

    /// <summary>
    /// The next cell that needs the person, in the order of the form, from a cell on and round; null when none does.
    /// </summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="from">The cell.</param>
    internal static FormPlace? Next(Calculation calculation, FormPlace from)
    {
        FormPlace[] marked =
            [.. Of(calculation).Select(found => found.Place).OfType<FormPlace>().Distinct().OrderBy(Order)];
        return marked.FirstOrDefault(place => Order(place).CompareTo(Order(from)) > 0) ?? marked.FirstOrDefault();
    }

    private static (FormBlock Block, int Row, FormColumn Column) Order(FormPlace place) =>
        (place.Block, place.Row, place.Column);
}
