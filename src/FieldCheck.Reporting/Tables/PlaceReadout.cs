using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Findings;

namespace FieldCheck.Reporting.Tables;

/// <summary>What acts at one place of a beam, in words.</summary>
public static class PlaceReadout
{
    /// <summary>The words, broken into lines: both sides of a jump, and the deflection where it is known.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="response">How it answers.</param>
    /// <param name="position">The place [m from the left end], on the beam.</param>
    /// <param name="width">Columns of a line; 20 or more.</param>
    public static ImmutableArray<string> Lines(BuiltBeam beam, BeamResponse response, double position, int width)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ArgumentNullException.ThrowIfNull(response);
        ImmutableArray<string> items = PlaceTable.Items(beam, response, position);
        string place = new BeamWords(beam).PlaceInFull(position);
        return TextFlow.Join([$"At {place}: {items[0]}", .. items.Skip(1)], "   ", width, indent: 2);
    }

    /// <summary>Between what curves lie at a place over all that may happen, and what governs; each broken into lines.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="envelope">The envelope.</param>
    /// <param name="curves">Which curves.</param>
    /// <param name="position">The place [m from the left end], on the beam.</param>
    /// <param name="width">Columns of a line; 20 or more.</param>
    public static ImmutableArray<string> Band(
        BuiltBeam beam, Envelope envelope, IEnumerable<Curve> curves, double position, int width)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ArgumentNullException.ThrowIfNull(envelope);
        BeamWords words = new(beam);
        return
        [
            .. curves.SelectMany(curve =>
            {
                GovernedRange range = envelope.GovernedAt(curve, position);
                return TextFlow.Join(
                    [
                        $"{PeakRow.NameOf(curve)} here: max {Governed(words, curve, range.Max)}",
                        $"min {Governed(words, curve, range.Min)}",
                    ],
                    "   ",
                    width,
                    indent: 2);
            }),
        ];
    }

    private static string Governed(BeamWords words, Curve curve, Governed governed)
    {
        string value = PeakRow.Say(words, curve, governed.Value);
        string why = PlainAscii.Of(SituationWords.Within(words.Beam, governed.Situation));
        return why.Length == 0 ? value : $"{value}, {why}";
    }

    /// <summary>A place in words: its distance, with the label of the support that stands there.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="position">The place [m from the left end].</param>
    public static string Place(BuiltBeam beam, double position) => new BeamWords(beam).PlaceInFull(position);
}
