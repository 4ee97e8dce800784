using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting;
using FieldCheck.Reporting.Tables;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Screen.Workings;

/// <summary>What is said below the working.</summary>
internal static class WorkingWords
{
    private const string Between = "   ";

    /// <summary>Which lines are seen, and of what working: as much of it as finds room.</summary>
    /// <param name="state">The state.</param>
    internal static Notice Where(ScreenState state)
    {
        if (state.Shown is not { Beam: BuiltBeam beam, Outcome: BeamOutcome.Stands stands })
        {
            return MessageLine.OfResults(state);
        }

        int count = state.Worked.Lines(state.Size.Width).Length;
        int top = WorkingKeys.Top(state, state.WorkingTop);
        int last = Math.Min(top + ScreenPicture.BodyHeight(state.Size.Height), count);
        int combinations = stands.Combinations.Length;
        string name = PlainAscii.Of(stands.Combinations[state.CombinationShown].Combination.Name);
        string[] items =
        [
            $"lines {top + 1}-{last} of {count}",
            state.Age == ResultsAge.BeforeThisCell ? "before this cell" : "",
            state.About is MomentPoint about ? $"moments about {about.Support ?? PlaceReadout.Place(beam, about.On(beam))}" : "",
            combinations > 1
                ? $"{name}, {state.CombinationShown + 1} of {combinations} ({state.Table.KeyOf(CommandName.NextCombination)} next)"
                : "",
            state.Preferences.Working == new WorkingOptions() ? "" : Form(state.Preferences.Working),
        ];
        string said = "";
        foreach (string item in items.Where(item => item.Length > 0))
        {
            string longer = said.Length == 0 ? item : said + Between + item;
            said = longer.Length <= state.Size.Width ? longer : said;
        }

        return new Notice(said, state.Age == ResultsAge.UpToDate ? Role.Faint : Role.Warn);
    }

    /// <summary>In which form the working is shown.</summary>
    /// <param name="options">How it is wanted.</param>
    internal static string Form(WorkingOptions options) =>
        (options.IsShort ? "Short form" : "Full form") + (options.HasStepNames ? "." : ", without the names of its steps.");
}
