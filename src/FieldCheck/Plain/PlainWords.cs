using FieldCheck.Reporting.Record;
using FieldCheck.Reporting.Tables;
using FieldCheck.Screen;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Plain;

/// <summary>Sentences about the beam as it stands now.</summary>
internal static class PlainWords
{
    /// <summary>What a word alone does in place of a text: it empties the cell.</summary>
    internal const string Nothing = "-";

    /// <summary>A text with a capital at its beginning and a full stop at its end.</summary>
    /// <param name="text">The text; not empty.</param>
    internal static string Sentence(string text) => SpokenAnswer.Sentence(text);

    /// <summary>One sentence of what came of the beam.</summary>
    /// <param name="form">The beam, its results following it.</param>
    internal static string Outcome(ScreenState form)
    {
        Calculation calculation = form.Settled;
        if (calculation.Beam is not null)
        {
            string answer = SpokenAnswer.InShort(calculation, form.CombinationShown);
            return CheckPanel.InShort(calculation) is string verdict ? $"{answer} Section: {verdict}." : answer;
        }

        string inShort = ProblemWords.InShort(calculation);
        bool isBad = calculation.Problems.Any(problem =>
            !CellProblems.IsMissing(calculation, FormCells.PlaceOf(calculation.Document, problem.Key)));
        return Sentence(isBad ? $"{inShort}: {FirstBad(calculation)}" : inShort);
    }

    /// <summary>One sentence of what came of the stated figures; of the beam where there is nothing to say of them.</summary>
    /// <param name="form">The beam, its results following it.</param>
    internal static string Verdicts(ScreenState form) => StatedPanel.InShort(form.Settled) is string verdicts
        ? Sentence($"stated figures: {verdicts}")
        : Outcome(form);

    /// <summary>What the beam is, in one sentence.</summary>
    /// <param name="form">The beam.</param>
    internal static string Summary(ScreenState form)
    {
        BeamDocument document = form.Document;
        string example = form.Origin.IsExample && !form.IsUnsaved ? "This is the built-in example, " : "";
        string title = document.Title is string text ? $": {text.ReplaceLineEndings(" ").TrimEnd('.')}" : "";
        return $"{example}{form.Origin.Name}{title}. {FormWords.Count(document.Spans.Count, "span")}, "
            + $"{FormWords.Count(document.Supports.Count, "support")}, {FormWords.Count(document.Loads.Count, "load")}.";
    }

    /// <summary>What is asked about the size of a load, on one line without gaps.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="row">The load, counted from 0.</param>
    internal static string SizeQuestion(Calculation calculation, int row) =>
        WithoutGaps(MessageLine.Question(calculation, row));

    /// <summary>A text whose gaps, which part it to the eye, are commas, which part it to the ear.</summary>
    /// <param name="text">The text.</param>
    internal static string WithoutGaps(string text) => text
        .Replace(":  ", ": ", StringComparison.Ordinal)
        .Replace("   ", ", ", StringComparison.Ordinal);

    private static string FirstBad(Calculation calculation)
    {
        var told = CellProblems.Of(calculation)
            .Zip(ProblemWords.Of(calculation, PlainHints.OfMissing))
            .Where(pair => !CellProblems.IsMissing(calculation, pair.First.Place))
            .Select(pair => WithoutGaps(pair.Second))
            .ToArray();
        return told.Length == 1 ? told[0] : $"{told[0]}. For all of them: problems";
    }
}
