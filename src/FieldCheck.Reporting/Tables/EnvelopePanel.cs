using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Tables;

/// <summary>The greatest and least over all that may happen, and what governs, for the page and the screen.</summary>
public static class EnvelopePanel
{
    /// <summary>One block for each basis of which there is more than one answer. Plain ASCII.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="width">Columns of a line; 30 or more.</param>
    /// <returns>The lines; none where the combinations are all there is, one of each basis.</returns>
    public static ImmutableArray<string> Lines(Calculation calculation, int width)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        return calculation.Beam is BuiltBeam beam
            ? [.. EnvelopeTable.Telling(calculation, beam).SelectMany(one => Block(beam, one, width)).Skip(1)]
            : [];
    }

    /// <summary>An empty line, then one envelope.</summary>
    private static IEnumerable<string> Block(BuiltBeam beam, Envelope envelope, int width)
    {
        EnvelopeTable table = new(new BeamWords(beam));
        (ImmutableArray<string> reactions, ImmutableArray<string> peaks) = table.Lines(envelope, width);
        string basis = Record.Cautions.Basis(BasisWords.Of(envelope.Basis));
        return
        [
            "",
            .. TextFlow.Wrap($"ENVELOPE ({basis})", width, indent: 2),
            .. table.Over(envelope)
                .SelectMany(line => TextFlow.Wrap(line, width - 2, indent: 4))
                .Select(line => "  " + line),
            "Reactions over all",
            .. reactions,
            "Peaks over all",
            .. peaks,
        ];
    }
}
