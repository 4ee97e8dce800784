using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Tables;

/// <summary>How well the figures are known, in sentences: bands of reactions and peaks, and what matters most.</summary>
/// <param name="beam">The beam.</param>
/// <param name="bands">The bands.</param>
/// <param name="isSpoken">True: units are written out, for reading aloud.</param>
internal sealed class BandWords(BuiltBeam beam, ToleranceBands bands, bool isSpoken)
{
    /// <summary>How many inputs are named for one reaction.</summary>
    private const int MostNamed = 3;

    private readonly BeamWords _words = new(beam, isSpoken);

    /// <summary>All sentences; none where nothing is uncertain.</summary>
    internal static ImmutableArray<string> Of(Calculation calculation, bool isSpoken = false) =>
        calculation is { Beam: BuiltBeam beam, Bands: ToleranceBands bands }
            ? new BandWords(beam, bands, isSpoken).All()
            : [];

    private ImmutableArray<string> All() =>
    [
        .. Enumerable.Range(0, beam.Model.Combinations.Length).SelectMany(Combination),
        "exact: nothing can come out beyond; estimate: from the corners of what was measured, not proved between them. "
            + "Of a peak this is said of the end farther out",
    ];

    private IEnumerable<string> Combination(int combination)
    {
        string under = beam.Model.Combinations.Length > 1
            ? $"under {PlainAscii.Of(beam.Model.Combinations[combination].Name)}: "
            : "";
        return
        [
            .. Parts(combination).Select(part => under + Sentence(part)),
            .. bands.Peaks(combination).SelectMany(peak => Peak(peak)).Select(line => under + line),
            .. Parts(combination).SelectMany(part => Ranking(combination, part)).Select(line => under + line),
        ];
    }

    /// <summary>The parts of reactions that are, or may be, more than nothing.</summary>
    private IEnumerable<ReactionOfSupport> Parts(int combination) =>
        from support in Enumerable.Range(0, beam.Supports.Length)
        let reaction = bands.Reaction(combination, support)
        from part in (ReactionPart[])[ReactionPart.Vertical, ReactionPart.Horizontal, ReactionPart.Moment]
        let band = reaction.Of(part)
        where !_words.IsNothing(band.Low, KindOf(part)) || !_words.IsNothing(band.High, KindOf(part))
        select new ReactionOfSupport(support, part, band);

    private string Sentence(ReactionOfSupport one)
    {
        string label = beam.Supports[one.Support].Label;
        string name = one.Part switch
        {
            ReactionPart.Vertical => $"{label} vertical",
            ReactionPart.Horizontal => $"{label} horizontal",
            _ => $"{label} moment",
        };
        QuantityKind kind = KindOf(one.Part);
        return $"{name} {Between(_words.Signed(one.Band.Low, kind), _words.SaySigned(one.Band.High, kind), one.Band)}";
    }

    private IEnumerable<string> Peak(PeakBand peak)
    {
        string name = PeakRow.NameOf(peak.Curve);
        return
        [
            .. IsShown(peak.Curve, peak.Greatest.High) ? (string[])[$"greatest {name} {Said(peak.Curve, peak.Greatest)}"] : [],
            .. IsShown(peak.Curve, peak.Least.Low) ? (string[])[$"least {name} {Said(peak.Curve, peak.Least)}"] : [],
        ];
    }

    private string Said(Curve curve, Band band) =>
        Between(PeakRow.Say(_words, curve, band.Low), PeakRow.Say(_words, curve, band.High), band);

    private bool IsShown(Curve curve, double value) =>
        PeakRow.Say(_words, curve, value) != PeakRow.Say(_words, curve, 0);

    private static string Between(string low, string high, Band band) => $"{low} to {high}, {Word(band.Certainty)}";

    private IEnumerable<string> Ranking(int combination, ReactionOfSupport one)
    {
        string label = beam.Supports[one.Support].Label;
        string what = one.Part switch
        {
            ReactionPart.Vertical => label,
            ReactionPart.Horizontal => $"the thrust at {label}",
            _ => $"the moment at {label}",
        };
        QuantityKind kind = KindOf(one.Part);
        return bands.Ranking(combination, one.Support, one.Part)
            .Take(MostNamed)
            .Where(effect => !_words.IsNothing(effect.Size, kind))
            .Select(effect => $"{Input(effect.Input)} moves {what} by {_words.Say(effect.Size, kind)}");
    }

    private string Input(int index) =>
        $"{PlainAscii.Of(beam.Uncertain[index].Width)} {PlainAscii.Of(beam.Uncertain[index].Words)}";

    private static string Word(BandCertainty certainty) => certainty switch
    {
        BandCertainty.Exact => "exact",
        BandCertainty.Bound => "at most",
        BandCertainty.Estimate => "estimate",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static QuantityKind KindOf(ReactionPart part) =>
        part == ReactionPart.Moment ? QuantityKind.Moment : QuantityKind.Force;

    private readonly record struct ReactionOfSupport(int Support, ReactionPart Part, Band Band);
}
