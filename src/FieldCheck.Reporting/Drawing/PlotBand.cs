using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Drawing;

/// <summary>Between what a quantity lies along a beam over all that may happen, to be drawn round one curve of it.</summary>
public sealed record PlotBand
{
    /// <summary>The greatest and least value at each of some places [m from the left end], in SI.</summary>
    public required Func<ImmutableArray<double>, ImmutableArray<EnvelopeBand>> At { get; init; }

    /// <summary>The greatest value of all and where it stands.</summary>
    public required Extreme Max { get; init; }

    /// <summary>The least value of all and where it stands.</summary>
    public required Extreme Min { get; init; }

    /// <summary>True: another value may be somewhat greater or less.</summary>
    public bool IsEstimate { get; init; }

    /// <summary>The envelope of one quantity of a beam.</summary>
    /// <param name="envelope">The envelope.</param>
    /// <param name="curve">Which quantity.</param>
    public static PlotBand Of(Envelope envelope, Curve curve)
    {
        ArgumentNullException.ThrowIfNull(envelope);
        GovernedExtremes extremes = envelope.ExtremesOf(curve);
        return new PlotBand
        {
            At = places => envelope.BandAt(curve, places.AsSpan()),
            Max = new Extreme(extremes.Max.Value, extremes.Max.Position),
            Min = new Extreme(extremes.Min.Value, extremes.Min.Position),
            IsEstimate = envelope.CertaintyOf(curve) == EnvelopeCertainty.Estimate,
        };
    }

    /// <summary>Which line of a drawing is which, told without colour: the edges are drawn with stars.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="envelope">The envelope.</param>
    /// <param name="combination">The combination whose curve is drawn, counted from 0.</param>
    public static string Legend(BuiltBeam beam, Envelope envelope, int combination)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ArgumentNullException.ThrowIfNull(envelope);
        string drawn = PlainAscii.Of(beam.Model.Combinations[combination].Name);
        string over = EnvelopeSummary.Over(beam, envelope);
        string others = over.StartsWith($"{drawn}, ", StringComparison.Ordinal) ? over[(drawn.Length + 2)..] : over;
        return $"curve: {drawn}   {PlotInk.Edge} {BasisWords.Of(envelope.Basis)} envelope: {others}";
    }
}
