using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Fuzz;

/// <summary>The reader of beam files, and the calculation of what opens.</summary>
/// <param name="more">Texts to begin with, besides the presets.</param>
public sealed class BeamFileTarget(params IEnumerable<string> more) : FuzzTarget
{
    private const int LongestMessage = 1000;
    private const int MostRowsWorked = 40;

    private readonly MessageKinds _messages = MessageKinds.OfReaders();
    private readonly BeamSolver _solver = new();
    private readonly SectionCatalogue _catalogue = SectionCatalogue.BuiltIn();

    /// <inheritdoc/>
    public override string Name => "file";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Seeds { get; } =
        [.. PresetLibrary.BuiltIn().Select(preset => preset.Text.Text), .. more, "", "format = 1\n", "format = 1\n[[span]]\nlength = \"3 m\"\n"];

    /// <inheritdoc/>
    public override int MostKept => 140;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Words => BeamFileWords.All;

    /// <inheritdoc/>
    public override string Change(string text, string other, Random random) => random.Next(3) == 0
        ? TextChange.One(text, other, Words, random)
        : BeamFileChange.One(text, other, random);

    /// <inheritdoc/>
    public override IReadOnlySet<string> Check(string text)
    {
        switch (BeamFileText.Read("a.toml", text))
        {
            case BeamFileReading.Refused refused:
                Promise(refused.Problems.Length is > 0 and <= FileProblem.Most, "one to twenty problems are told");
                string[] lines = text.Split('\n');
                foreach (FileProblem problem in refused.Problems)
                {
                    CheckProblem(lines, problem);
                }

                return Kinds("refused: ", refused.Problems.SelectMany(problem => _messages.Of(problem.Text)));
            case BeamFileReading.Opened opened:
                return CheckOpened(text, opened);
            default:
                throw new BrokenPromiseException("a file is opened or refused");
        }
    }

    private static HashSet<string> Kinds(string before, IEnumerable<string> kinds) =>
        new(kinds.Select(kind => before + kind), StringComparer.Ordinal);

    private static void CheckProblem(string[] lines, FileProblem problem)
    {
        Promise(problem.Line >= 1 && problem.Line <= lines.Length, "a problem names a line of the file");
        Promise(problem.Column >= 1 && problem.Column <= lines[problem.Line - 1].Length + 2, "a problem names a column of its line");
        Promise(problem.Text.Length is > 0 and <= LongestMessage, "a message is short");
        Promise(problem.ToString().Length <= 2 * LongestMessage, "a problem is short");
    }

    private HashSet<string> CheckOpened(string text, BeamFileReading.Opened opened)
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
            ? ["opened"]
            : Worked(opened);
    }

    private HashSet<string> Worked(BeamFileReading.Opened opened)
    {
        Calculation calculation = Calculation.Run(opened.Document, _catalogue, _solver);
        foreach (string said in calculation.Problems.Select(problem => problem.Text).Concat(calculation.Messages.Select(message => message.Text)))
        {
            Promise(said.Length is > 0 and <= LongestMessage, "a message is short");
            Promise(said == TextSafety.ForTerminal(said), "a message is harmless");
        }

        if (calculation.Outcome is BeamOutcome outcome)
        {
            return Kinds(
                $"{outcome.GetType().Name}: ",
                calculation.Messages.Select(message => $"{message.Code} {message.Severity}").Append(calculation.Status.ToString()));
        }

        Promise(!calculation.Problems.IsEmpty, "a beam that is not worked has a problem");
        Promise(!opened.Origin.Locate(calculation.Problems).IsEmpty, "a problem has a place");
        return Kinds("not worked: ", calculation.Problems.SelectMany(problem => _messages.Of(problem.Text)));
    }
}
