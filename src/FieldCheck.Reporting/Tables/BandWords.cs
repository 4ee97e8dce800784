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

    private const string TooMuch =
        "too much is uncertain for this to be followed at every key: fieldcheck check FILE says it";

    private static readonly (string Word, string Meaning)[] Legend =
    [
        (Word(BandCertainty.Exact), "nothing can come out beyond"),
        (Word(BandCertainty.Bound), "nothing can come out beyond, perhaps not even so far"),
        (Word(BandCertainty.Estimate), "from the corners of what was measured, not proved between them"),
        (Word(BandCertainty.Partial), "an estimate without a part in which the beam tips or has no answer, see the remarks"),
    ];

    private readonly BeamWords _words = new(beam, isSpoken);

    /// <summary>All sentences; none where nothing is uncertain.</summary>
    internal static ImmutableArray<string> Of(Calculation calculation, bool isSpoken = false)
    {
        if (For(calculation, isSpoken) is not BandWords words)
        {
            return [];
        }

        ImmutableArray<string> lines =
        [
            .. Enumerable.Range(0, words.CombinationCount).SelectMany(combination => (ImmutableArray<string>)
            [
                .. words.LeavesOut(combination),
                .. words.Under(
                    combination, [.. words.Reactions(combination), .. words.Peaks(combination), .. words.Matters(combination)]),
            ]),
        ];
        return [.. lines, .. Meanings(lines), "of a peak this is said of the end farther out"];
    }

    /// <summary>
    /// For the form, where every key asks anew: what there is to say instead of it if it would take too long; else null.
    /// </summary>
    internal static string? TooMuchFor(Calculation calculation) =>
        calculation is { Beam: BuiltBeam beam } && AlteredBeam.IsTooMuchToFollow(beam)
            ? TooMuch
            : null;

    /// <summary>What matters most for every reaction, for the form; none where nothing is uncertain.</summary>
    internal static ImmutableArray<string> MattersMost(Calculation calculation) =>
        TooMuchFor(calculation) is string tooMuch ? [tooMuch]
        : For(calculation, isSpoken: false) is BandWords words
            ?
            [
                .. Enumerable.Range(0, words.CombinationCount)
                    .SelectMany(combination => words.Under(combination, words.Matters(combination))),
            ]
            : [];

    /// <summary>Words for the bands of a beam; null where nothing is uncertain.</summary>
    internal static BandWords? For(Calculation calculation, bool isSpoken) =>
        calculation is { Beam: BuiltBeam beam, Bands: ToleranceBands bands }
            ? new BandWords(beam, bands, isSpoken)
            : null;

    /// <summary>What the words behind the bands mean, of those that stand in some lines.</summary>
    internal static IEnumerable<string> Meanings(ImmutableArray<string> lines) => Legend
        .Where(word => lines.Any(line => line.EndsWith($", {word.Word}", StringComparison.Ordinal)))
        .Select(word => $"{word.Word}: {word.Meaning}");

    /// <summary>What the bands under a combination leave out; none where nothing of it varies.</summary>
    internal ImmutableArray<string> LeavesOut(int combination) =>
        VariedWords.LeftOut(beam, beam.Model.Combinations[combination]) is string leftOut
            ?
            [
                $"under {TypedLetters.Name(beam, beam.Model.Combinations[combination].Name)}, {VariedWords.NotTheWorst}: {leftOut}; "
                    + "how well the worst is known is not told",
            ]
            : [];

    /// <summary>The band of every part of a reaction that is, or may be, more than nothing.</summary>
    internal ImmutableArray<string> Reactions(int combination) => [.. Parts(combination).Select(Sentence)];

    /// <summary>The bands of the peaks.</summary>
    internal ImmutableArray<string> Peaks(int combination) => [.. bands.Peaks(combination).SelectMany(Peak)];

    /// <summary>What matters most for each of those reactions, the greatest first.</summary>
    internal ImmutableArray<string> Matters(int combination) =>
        [.. Parts(combination).Select(part => Ranking(combination, part)).OfType<string>()];

    private int CombinationCount => beam.Model.Combinations.Length;

    private IEnumerable<string> Under(int combination, ImmutableArray<string> lines) => CombinationCount > 1
        ? lines.Select(line => $"under {TypedLetters.Name(beam, beam.Model.Combinations[combination].Name)}: {line}")
        : lines;

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

    /// <summary>What matters most for a part of a reaction, the greatest first; null where nothing does.</summary>
    private string? Ranking(int combination, ReactionOfSupport one)
    {
        string label = beam.Supports[one.Support].Label;
        string what = one.Part switch
        {
            ReactionPart.Vertical => label,
            ReactionPart.Horizontal => $"the thrust at {label}",
            _ => $"the moment at {label}",
        };
        QuantityKind kind = KindOf(one.Part);
        InputEffect[] effects =
        [
            .. bands.Ranking(combination, one.Support, one.Part)
                .Where(effect => !_words.IsNothing(effect.Size, kind))
                .Take(MostNamed),
        ];
        IEnumerable<string> named = effects.Select((effect, place) => place == 0
            ? $"{Input(effect.Input)} moves {what} by {_words.Say(effect.Size, kind)}"
            : $"{Input(effect.Input)} by {_words.Say(effect.Size, kind)}");
        return effects.Length == 0 ? null : string.Join(", then ", named);
    }

    private string Input(int index) =>
        $"{TypedLetters.Sentence(beam, beam.Uncertain[index].Width)} {TypedLetters.Sentence(beam, beam.Uncertain[index].Words)}";

    /// <summary>What is known of a band, in a word or two.</summary>
    internal static string Word(BandCertainty certainty) => certainty switch
    {
        BandCertainty.Exact => "exact",
        BandCertainty.Bound => "at most",
        BandCertainty.Estimate => "estimate",
        BandCertainty.Partial => "NOT WHOLE",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static QuantityKind KindOf(ReactionPart part) =>
        part == ReactionPart.Moment ? QuantityKind.Moment : QuantityKind.Force;

    private readonly record struct ReactionOfSupport(int Support, ReactionPart Part, Band Band);
}
