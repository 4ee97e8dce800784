using System.Collections.Immutable;
using FieldCheck.Reporting;
using FieldCheck.Reporting.Working;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Screen.Workings;

/// <summary>
/// The working that is shown. Its lines are made when they are first asked for, and anew for another width only: they
/// may be thousands, and a picture is drawn at every key.
/// </summary>
internal sealed class ShownWorking
{
    private const int Narrowest = 40;
    private const int Widest = 100;

    private readonly Calculation _calculation;
    private readonly int _combination;
    private readonly double? _about;
    private readonly WorkingOptions _options;
    private (int Width, ImmutableArray<WorkingLine> Lines)? _made;

    private ShownWorking(ScreenState state)
    {
        _calculation = state.Shown;
        _combination = state.CombinationShown;
        _about = _calculation.Beam is BuiltBeam beam ? state.About?.On(beam) : null;
        _options = state.Preferences.Working;
    }

    /// <summary>The working that a state shows; the one that is known where nothing that it depends on is another.</summary>
    /// <param name="known">One that is known; null: none is.</param>
    /// <param name="state">The state, its results following it.</param>
    internal static ShownWorking Of(ShownWorking? known, ScreenState state)
    {
        ShownWorking shown = new(state);
        return known is not null && known.IsTheSameAs(shown) ? known : shown;
    }

    /// <summary>The lines in a window; none where there are cells to mend.</summary>
    /// <param name="width">Columns of the window; 1 or more.</param>
    internal ImmutableArray<WorkingLine> Lines(int width)
    {
        if (_made is not (int made, ImmutableArray<WorkingLine> lines) || made != width)
        {
            lines = _calculation.Outcome is not null ? Made(width) : [];
            _made = (width, lines);
        }

        return lines;
    }

    /// <summary>The page that is saved: the full form with the names of its steps.</summary>
    /// <param name="file">The name of the beam's file; empty where it has none.</param>
    /// <param name="width">Columns of a line.</param>
    internal string Page(string file, int width) => string.Concat(
        PrintedWorking.Lines(_calculation, file, _combination, new WorkingRequest(width) { About = _about })
            .Select(line => line + "\n"));

    private bool IsTheSameAs(ShownWorking other) => ReferenceEquals(_calculation, other._calculation)
        && (_combination, _about, _options) == (other._combination, other._about, other._options);

    // In a window narrower than a line of it, every sentence is broken anew, so that nothing is lost.
    private ImmutableArray<WorkingLine> Made(int width)
    {
        bool isNarrow = width < Narrowest;
        ImmutableArray<WorkingLine> lines = WorkingText.Lines(
            _calculation,
            _combination,
            new WorkingRequest(isNarrow ? SpokenWorking.Width : Math.Min(width, Widest))
            {
                About = _about,
                IsShort = _options.IsShort,
                HasStepNames = _options.HasStepNames,
                HasTables = !isNarrow,
            });
        return isNarrow ? [.. lines.SelectMany(line => Broken(line, width))] : lines;
    }

    private static IEnumerable<WorkingLine> Broken(WorkingLine line, int width) => TextFlow
        .Wrap(line.Text, width, indent: Math.Min(2, width - 1))
        .Select(text => line with { Text = text });
}
