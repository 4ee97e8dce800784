using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Fuzz;

/// <summary>The reader of beam files, and the calculation of what opens.</summary>
/// <param name="more">Texts to begin with, besides the presets.</param>
public sealed class BeamFileTarget(params IEnumerable<string> more) : FuzzTarget
{
    private const int LongestMessage = 1000;
    private const int MostRowsWorked = 40;

    private readonly BeamSolver _solver = new();
    private readonly SectionCatalogue _catalogue = SectionCatalogue.BuiltIn();

    /// <inheritdoc/>
    public override string Name => "file";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Seeds { get; } =
        [.. PresetLibrary.BuiltIn().Select(preset => preset.Text.Text), .. more, "", "format = 1\n", "format = 1\n[[span]]\nlength = \"3 m\"\n"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> Words => BeamFileWords.All;

    /// <inheritdoc/>
    public override string Change(string text, string other, Random random) => random.Next(3) == 0
        ? TextChange.One(text, other, Words, random)
        : BeamFileChange.One(text, other, random);

    /// <inheritdoc/>
    public override string Check(string text)
    {
        BeamFileReading reading = BeamFileText.Read("a.toml", text);
        switch (reading)
        {
            case BeamFileReading.Refused refused:
                Promise(refused.Problems.Length is > 0 and <= FileProblem.Most, "one to twenty problems are told");
                foreach (FileProblem problem in refused.Problems)
                {
                    CheckProblem(text, problem);
                }

                return "refused: " + Kind(refused.Problems[0].Text);
            case BeamFileReading.Opened opened:
                return CheckOpened(text, opened);
            default:
                throw new BrokenPromiseException("a file is opened or refused");
        }
    }

    private static void CheckProblem(string text, FileProblem problem)
    {
        string[] lines = text.Split('\n');
        Promise(problem.Line >= 1 && problem.Line <= lines.Length, "a problem names a line of the file");
        Promise(problem.Column >= 1 && problem.Column <= lines[problem.Line - 1].Length + 2, "a problem names a column of its line");
        Promise(problem.Text.Length is > 0 and <= LongestMessage, "a message is short");
        Promise(problem.ToString().Length <= 2 * LongestMessage, "a problem is short");
    }

    private string CheckOpened(string text, BeamFileReading.Opened opened)
    {
        BeamDocument document = opened.Document;
        Promise(opened.Origin.With(document).Text == text, "what did not change is saved as it stands");
        Promise(
            BeamFileText.Read("a.toml", BeamFileText.New("a.toml", document).Text) is BeamFileReading.Opened again
                && again.Document.Equals(document),
            "a beam written anew reads as it was");
        BeamDocument changed = document with { Title = document.Title == "x" ? "y" : "x" };
        Promise(
            BeamFileText.Read("a.toml", opened.Origin.With(changed).Text) is BeamFileReading.Opened saved
                && saved.Document.Equals(changed),
            "a change that was saved reads as it was made");
        return document.Spans.Count + document.Loads.Count + document.Supports.Count + document.Combinations.Count > MostRowsWorked
            ? "opened"
            : "opened: " + Worked(opened);
    }

    private string Worked(BeamFileReading.Opened opened)
    {
        Calculation calculation = Calculation.Run(opened.Document, _catalogue, _solver);
        if (calculation.Outcome is BeamOutcome outcome)
        {
            return outcome.GetType().Name;
        }

        Promise(!calculation.Problems.IsEmpty, "a beam that is not worked has a problem");
        foreach (Problem problem in calculation.Problems)
        {
            Promise(problem.Text.Length is > 0 and <= LongestMessage, "a message is short");
            Promise(problem.Text == TextSafety.ForTerminal(problem.Text), "a message is harmless");
        }

        Promise(!opened.Origin.Locate(calculation.Problems).IsEmpty, "a problem has a place");
        return Kind(calculation.Problems[0].Text);
    }
}
