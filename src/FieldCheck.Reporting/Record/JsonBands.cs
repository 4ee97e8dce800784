using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Stated;

namespace FieldCheck.Reporting.Record;

/// <summary>How well reactions and peaks are known, as JSON.</summary>
internal static class JsonBands
{
    /// <summary>The bands under one combination; null where nothing is uncertain.</summary>
    internal static JsonCombinationBands? Combination(Calculation calculation, int combination)
    {
        if (calculation is not { Beam: BuiltBeam beam, Bands: ToleranceBands bands })
        {
            return null;
        }

        ImmutableArray<PeakBand> peaks = bands.Peaks(combination);
        return new(
            [
                .. from support in Enumerable.Range(0, beam.Supports.Length)
                   from component in ReactionComponent.All
                   where component.IsGivenBy(beam.Supports[support].Support)
                   select Reaction(bands, beam, combination, support, component),
            ],
            new(
                Peak(peaks.Single(peak => peak.Curve == Curve.Shear)),
                Peak(peaks.Single(peak => peak.Curve == Curve.Moment)),
                peaks.FirstOrDefault(peak => peak.Curve == Curve.Deflection) is PeakBand deflection
                    ? Peak(deflection)
                    : null),
            bands.Gap is null);
    }

    internal static string Word(BandCertainty certainty) => certainty switch
    {
        BandCertainty.Exact => "exact",
        BandCertainty.Bound => "bound",
        BandCertainty.Estimate => "estimate",
        BandCertainty.Partial => "estimate",
        _ => throw new UnreachableException(),
    };

    private static JsonReactionBand Reaction(
        ToleranceBands bands, BuiltBeam beam, int combination, int support, ReactionComponent component)
    {
        Band band = bands.Reaction(combination, support).Of(component.Part);
        return new(
            beam.Supports[support].Label,
            component.Name,
            JsonStatedFigures.Unit(component),
            JsonFigure.Of(band.Low),
            JsonFigure.Of(band.High),
            Word(band.Certainty),
            [
                .. bands.Ranking(combination, support, component.Part)
                    .Where(effect => effect.Size > 0)
                    .Select(effect => Effect(beam, effect)),
            ]);
    }

    private static JsonInputEffect Effect(BuiltBeam beam, InputEffect effect)
    {
        UncertainInput input = beam.Uncertain[effect.Input];
        return new(
            input.Key, input.Width, input.Words, JsonFigure.Of(effect.Down), JsonFigure.Of(effect.Up));
    }

    private static JsonPeakBand Peak(PeakBand peak) => new(
        JsonFigure.Of(peak.Greatest.Low),
        JsonFigure.Of(peak.Greatest.High),
        Word(peak.Greatest.Certainty),
        JsonFigure.Of(peak.Least.Low),
        JsonFigure.Of(peak.Least.High),
        Word(peak.Least.Certainty));
}
