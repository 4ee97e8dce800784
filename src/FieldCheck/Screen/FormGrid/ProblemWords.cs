using System.Collections.Immutable;
using FieldCheck.Screen.Details;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Screen.FormGrid;

/// <summary>What is told of a beam that cannot be worked out yet.</summary>
internal static class ProblemWords
{
    /// <summary>In a few words: "2 cells to mend", or "waiting for: load 1 from".</summary>
    /// <param name="calculation">What came of the beam; it has problems.</param>
    internal static string InShort(Calculation calculation)
    {
        ImmutableArray<(FormPlace? Place, Problem Problem)> problems = CellProblems.Of(calculation);
        int bad = problems.Where(found => !CellProblems.IsMissing(calculation, found.Place))
            .DistinctBy(found => found.Place as object ?? found.Problem.Key)
            .Count();
        if (bad > 0)
        {
            return $"{FormWords.Count(bad, "cell")} to mend";
        }

        FormSheet sheet = new(calculation.Document);
        FormPlace first = problems[0].Place!;
        return "waiting for: " + (sheet.RowsOf(FormBlock.Spans) <= 1 && first.Column == FormColumn.Length
            ? "length"
            : FormWords.Cell(sheet, first));
    }

    /// <summary>Every problem with the name of its cell, in the order of the file's tables.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="ofMissing">What can be typed in a cell where nothing stands; null: the problem's own text.</param>
    internal static ImmutableArray<string> Of(Calculation calculation, Func<FormPlace, string?> ofMissing) =>
        [.. CellProblems.Of(calculation).Select(found => Told(calculation, found, ofMissing))];

    private static string Told(
        Calculation calculation, (FormPlace? Place, Problem Problem) found, Func<FormPlace, string?> ofMissing)
    {
        // What has a cell in the Section view alone is called by it.
        FormPlace? cell = StickCells.PlaceOf(calculation.Document, found.Problem.Key) is { Block: FormBlock.Bracing or FormBlock.Bearings } own
            ? own
            : found.Place;
        if (cell is not FormPlace place)
        {
            return $"{DetailLines.WordsOf(found.Problem.Key)}: {found.Problem.Text}";
        }

        string text = FormCells.IsAsked(calculation.Document, place.Row) && place.Block == FormBlock.Loads
            ? MessageLine.Question(calculation, place.Row)
            : CellProblems.IsMissing(calculation, place)
                ? ofMissing(place) ?? found.Problem.Text
                : found.Problem.Text;
        return $"{FormWords.Cell(new FormSheet(calculation.Document), place)}: {text}";
    }
}
