using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Tables;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.Plotting;

/// <summary>The reading line on a beam that stands: where it is, where it can go, what is read off there.</summary>
/// <param name="Beam">The beam.</param>
/// <param name="Response">How it answers.</param>
/// <param name="Marks">Where it stops, from left to right.</param>
/// <param name="Position">Where it stands [m from the left end], on the beam.</param>
internal sealed record ReadingLine(
    BuiltBeam Beam, BeamResponse Response, ImmutableArray<BeamMark> Marks, double Position)
{
    // As many steps at most go over the whole beam, so that one is about a column of a narrow window.
    private const int MostSteps = 80;

    private const int LargeStep = 10;
    private const double Foot = 0.3048;

    private static readonly ImmutableArray<double> SiSteps =
        [.. Decades(0.001).SelectMany(decade => new[] { decade, 2 * decade, 5 * decade })];

    private static readonly ImmutableArray<double> UsSteps =
    [
        Foot / 192, Foot / 96, Foot / 48, Foot / 24, Foot / 12, Foot / 4, Foot / 2,
        .. Decades(Foot).SelectMany(decade => new[] { decade, 2 * decade, 5 * decade }),
    ];

    /// <summary>The line on what is shown; null where there is nothing to read off.</summary>
    /// <param name="state">The state.</param>
    internal static ReadingLine? On(ScreenState state) => On(state, new ShownCurves(state));

    /// <summary>The line on what is shown; null where there is nothing to read off.</summary>
    /// <param name="state">The state.</param>
    /// <param name="shown">Its curves.</param>
    internal static ReadingLine? On(ScreenState state, ShownCurves shown)
    {
        if (shown is not { Beam: BuiltBeam beam, Response: BeamResponse response })
        {
            return null;
        }

        var curves = shown.Chosen.Select(curve => KeyValuePair.Create(curve, shown[curve]!));
        double position = state.Reading ?? WhereMomentIsLargest(response);
        return new ReadingLine(
            beam, response, BeamMarks.Of(beam, curves), Math.Clamp(position, 0, beam.Model.Length));
    }

    /// <summary>Where a key moves it: to the next tape mark, past ten of them, or to an end.</summary>
    /// <param name="key">The key.</param>
    internal double Moved(KeyName? key) => key switch
    {
        KeyName.Left => Math.Max(Snapped(Stepped(-1)), NextMark(right: false)?.Position ?? 0),
        KeyName.Right => Math.Min(Snapped(Stepped(1)), NextMark(right: true)?.Position ?? Beam.Model.Length),
        KeyName.PageUp => Snapped(Stepped(-LargeStep)),
        KeyName.PageDown => Snapped(Stepped(LargeStep)),
        KeyName.Home => 0,
        KeyName.End => Beam.Model.Length,
        _ => Position,
    };

    /// <summary>The mark to the right or to the left; null at the last.</summary>
    /// <param name="right">True: to the right.</param>
    internal BeamMark? NextMark(bool right) => right
        ? Marks.FirstOrDefault(mark => mark.Position > Position)
        : Marks.LastOrDefault(mark => mark.Position < Position);

    /// <summary>What is read off, in lines.</summary>
    /// <param name="width">Columns of a line; 20 or more.</param>
    internal ImmutableArray<string> Lines(int width) => PlaceReadout.Lines(Beam, Response, Position, width);

    /// <summary>What is here, and what comes next to the right.</summary>
    /// <param name="tab">The key that leads there.</param>
    internal string MarksInWords(string tab)
    {
        string here = Marks.FirstOrDefault(mark => mark.Position == Position)?.Words ?? "";
        string next = NextMark(right: true) is BeamMark mark ? $"{tab}: {InWords(mark)}" : $"{tab}: from the left end again";
        return here.Length > 0 ? $"Here: {here}.   {next}" : next;
    }

    // What the place is called already, as "B (2.70 m)", is not said again.
    private string InWords(BeamMark mark)
    {
        string place = PlaceReadout.Place(Beam, mark.Position);
        IEnumerable<string> others = mark.Words.Split(", ")
            .Where(word => !place.Contains($"{word} (", StringComparison.Ordinal));
        return string.Join(", ", others.Prepend(place));
    }

    private double Snapped(double position) =>
        Marks.FirstOrDefault(mark => Math.Abs(mark.Position - position) <= BeamPlaces.SamePlace * Beam.Model.Length)?.Position
        ?? position;

    private double Stepped(int by)
    {
        double step = Step();
        double steps = Position / step;
        double whole = Math.Round(steps);
        bool isOnMark = Math.Abs(steps - whole) < 1e-6;
        double next = isOnMark ? whole + by : by > 0 ? Math.Ceiling(steps) + by - 1 : Math.Floor(steps) + by + 1;
        return Math.Clamp(next * step, 0, Beam.Model.Length);
    }

    private double Step()
    {
        double least = Beam.Model.Length / MostSteps;
        ImmutableArray<double> steps = Beam.Display.System == UnitSystem.Us ? UsSteps : SiSteps;
        return steps.FirstOrDefault(step => step >= least, steps[^1]);
    }

    private static IEnumerable<double> Decades(double first) => Enumerable.Range(0, 7).Select(power => first * Math.Pow(10, power));

    private static double WhereMomentIsLargest(BeamResponse response)
    {
        Extremes moment = response.ExtremesOf(Curve.Moment);
        return -moment.Min.Value > moment.Max.Value ? moment.Min.Position : moment.Max.Position;
    }
}
