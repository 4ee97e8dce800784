using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Drawing;

/// <summary>Draws the beam with its supports, its loads and, once solved, its reactions.</summary>
/// <remarks>How the sketch is to be read: docs/sketches.md.</remarks>
public static class BeamSketch
{
    private const int LeastColumns = 10;
    private const char Beam = '=';
    private const char Reading = '!';

    /// <summary>The sketch of what came of a calculation.</summary>
    /// <param name="calculation">The calculation.</param>
    /// <param name="combination">Which combination's loads and reactions are shown, counted from 0.</param>
    /// <param name="width">Columns in all, the margin among them; 20 or more.</param>
    /// <param name="style">How to draw it.</param>
    /// <returns>
    /// The rows; for a beam that can move without reactions and with the words of it below; none while there are
    /// problems.
    /// </returns>
    public static ImmutableArray<string> Draw(
        Calculation calculation, int combination, int width, SketchStyle style)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        ArgumentNullException.ThrowIfNull(style);
        if (calculation is not { Beam: BuiltBeam beam, Outcome: BeamOutcome outcome })
        {
            return [];
        }

        if (outcome is BeamOutcome.Stands stands)
        {
            return Draw(beam, stands.Combinations[combination], width, style);
        }

        int margin = MarginOf(style, width);
        string edge = new(' ', margin);
        IEnumerable<string> words = MotionWords.Of(beam, outcome)
            .Select(motion => $"{MotionWords.Verdict(outcome)}: {motion}")
            .SelectMany(sentence => TextFlow.Wrap(sentence, width - margin, indent: 2));
        return [.. Draw(beam, null, width, style), .. words.Select(line => edge + line)];
    }

    /// <summary>The sketch of a beam.</summary>
    /// <param name="beam">The beam as read.</param>
    /// <param name="answer">
    /// The combination whose loads and reactions are shown; null: all loads as read, no reactions.
    /// </param>
    /// <param name="width">Columns in all, the margin among them; 20 or more.</param>
    /// <param name="style">How to draw it.</param>
    /// <returns>
    /// Labels of the loads, loads, beam, supports with reactions, then reactions that found no place beside their
    /// support; no row longer than <paramref name="width"/>.
    /// </returns>
    public static ImmutableArray<string> Draw(
        BuiltBeam beam, CombinationResponse? answer, int width, SketchStyle style)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ArgumentNullException.ThrowIfNull(style);
        return Draw(beam, answer?.Response, LoadPictures.Of(beam, answer?.Combination), width, style);
    }

    /// <summary>The sketch of a beam with its loads as they were typed, and below it the lengths of its spans.</summary>
    internal static ImmutableArray<string> Draw(TypedBeam typed, int width, SketchStyle style) =>
        [.. Draw(typed.Beam, null, typed.Loads, width, style), .. SketchLengths.Rows(typed, width, MarginOf(style, width))];

    private static ImmutableArray<string> Draw(
        BuiltBeam beam, BeamResponse? response, ImmutableArray<LoadPicture> loads, int width, SketchStyle style)
    {
        int margin = MarginOf(style, width);
        BeamColumns columns = new(beam.Model.Length, width - margin);

        (string above, string below) = LoadRows(loads, columns);
        Canvas canvas = new(columns.Width, 2);
        canvas.Write(0, 0, above);
        DrawBeam(canvas, beam, columns);
        DrawReading(canvas, style.Reading, columns);
        ImmutableArray<string> middle = canvas.Lines(margin);
        return
        [
            .. SketchLabels.Rows(loads, columns, style.LabelRows, margin),
            .. loads.IsEmpty ? middle[1..] : middle,
            .. SketchSupports.Rows(beam, below, response, columns, margin),
        ];
    }

    private static int MarginOf(SketchStyle style, int width) =>
        Math.Clamp(style.Margin, 0, Math.Max(width - LeastColumns, 0));

    /// <summary>What is drawn above the beam and below it, column by column.</summary>
    private static (string Above, string Below) LoadRows(ImmutableArray<LoadPicture> loads, BeamColumns columns)
    {
        char[] above = new char[columns.Width];
        char[] below = new char[columns.Width];
        Array.Fill(above, LoadPicture.None);
        Array.Fill(below, LoadPicture.None);
        foreach (LoadPicture load in loads.OrderBy(load => load.Rank))
        {
            for (int column = columns.Of(load.From); column <= columns.Of(load.To); column++)
            {
                char glyph = load.Glyph(columns.Centre(column));
                char[] row = LoadPicture.IsBelow(glyph) ? below : above;
                row[column] = glyph == LoadPicture.None ? row[column] : glyph;
            }
        }

        return (new string(above), new string(below));
    }

    private static void DrawBeam(Canvas canvas, BuiltBeam beam, BeamColumns columns)
    {
        canvas.Write(1, 0, new string(Beam, columns.Width));
        foreach (double hinge in beam.Model.Hinges)
        {
            canvas[1, columns.Of(hinge)] = SupportGlyphs.Hinge;
        }

        foreach (NamedSupport named in beam.Supports)
        {
            double place = named.Support.Position;
            if (named.Support.Rotation is Restraint.Rigid && (place == 0 || place == beam.Model.Length))
            {
                canvas[1, columns.Of(place)] = SupportGlyphs.Of(beam, named);
            }
        }
    }

    private static void DrawReading(Canvas canvas, double? reading, BeamColumns columns)
    {
        if (reading is double place)
        {
            int column = columns.Of(place);
            canvas[1, column] = Reading;
            canvas[0, column] = "V()\\/".Contains(canvas[0, column], StringComparison.Ordinal) ? canvas[0, column] : Reading;
        }
    }
}
