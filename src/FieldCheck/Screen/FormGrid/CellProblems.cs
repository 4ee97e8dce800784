using System.Collections.Immutable;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Screen.FormGrid;

/// <summary>Which cells of the form are marked, and why.</summary>
internal static class CellProblems
{
    /// <summary>Every problem with the cell it stands in; null for a key without a cell.</summary>
    /// <param name="calculation">What came of the beam.</param>
    internal static ImmutableArray<(FormPlace? Place, Problem Problem)> Of(Calculation calculation) =>
    [
        .. calculation.Problems
            .Select(problem => (PlaceOf(calculation.Document, problem.Key), AxleWords.InCell(calculation.Document, problem)))
            .Distinct(),
    ];

    /// <summary>What is wrong with a cell; null when nothing is.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="place">The cell.</param>
    internal static Problem? At(Calculation calculation, FormPlace place) => StickCells.Has(place.Block)
        ? calculation.Problems.FirstOrDefault(problem => StickCells.PlaceOf(calculation.Document, problem.Key) == place)
        : Of(calculation).FirstOrDefault(found => found.Place == place).Problem;

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
        // What has a cell in the view that the person is in is looked for there.
        FormPlace? Seen((FormPlace? Place, Problem Problem) found) => StickCells.Has(from.Block)
            ? StickCells.PlaceOf(calculation.Document, found.Problem.Key) ?? found.Place
            : found.Place;
        FormPlace[] marked =
            [.. Of(calculation).Select(Seen).OfType<FormPlace>().Distinct().OrderBy(Order)];
        return marked.FirstOrDefault(place => Order(place).CompareTo(Order(from)) > 0) ?? marked.FirstOrDefault();
    }

    // What a span names is marked where it names it; what it does not, and the limits, where they are typed.
    private static FormPlace? PlaceOf(BeamDocument document, string key) =>
        FormCells.PlaceOf(document, key) is not FormPlace place ? StickCells.PlaceOf(document, key)
        : place.Column is FormColumn.Section or FormColumn.Material && FormCells.TextOf(document, place) is null
            ? StickCells.PlaceOf(document, key) ?? place
            : place;

    private static (FormBlock Block, int Row, FormColumn Column) Order(FormPlace place) =>
        (place.Block, place.Row, place.Column);
}
