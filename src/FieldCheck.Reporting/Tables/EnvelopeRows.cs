using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Findings;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Tables;

/// <summary>The rows of an envelope: reactions and peaks, each with what governs.</summary>
/// <param name="words">The words of the beam.</param>
/// <param name="envelope">The envelope.</param>
internal sealed class EnvelopeRows(BeamWords words, Envelope envelope)
{
    /// <summary>What is said of a figure that was found among situations that were tried.</summary>
    internal const string Estimate = "estimate";

    private const string Greatest = "greatest";
    private const string Least = "least";

    private BuiltBeam Beam => words.Beam;

    /// <summary>Whether reactions and peaks are all estimates: then it is said once, above them.</summary>
    internal bool AreAllEstimates => envelope.ReactionCertainty == EnvelopeCertainty.Estimate
        && PeakTable.Curves(Beam).All(curve => envelope.CertaintyOf(curve) == EnvelopeCertainty.Estimate);

    /// <summary>The reactions of one support: across always, along and in rotation where they are something.</summary>
    internal IEnumerable<EnvelopeRow> Reactions(int support)
    {
        ReactionEnvelope reaction = envelope.Reactions[support];
        string label = Beam.Supports[support].Label;
        return
        [
            .. Range($"{label} vertical", reaction.Vertical, QuantityKind.Force, words.Vertical, support),
            .. Range($"{label} horizontal", reaction.Horizontal, QuantityKind.Force, words.Horizontal),
            .. Range($"{label} moment", reaction.Moment, QuantityKind.Moment, words.Turning),
        ];
    }

    /// <summary>The peaks along the beam that are something.</summary>
    internal IEnumerable<EnvelopeRow> Peaks() => PeakTable.Curves(Beam).SelectMany(Peaks);

    private IEnumerable<EnvelopeRow> Peaks(Curve curve)
    {
        GovernedExtremes extremes = envelope.ExtremesOf(curve);
        string name = PeakRow.NameOf(curve);
        return
        [
            .. extremes.Max.Value > 0 ? Peak(name, Greatest, curve, extremes.Max) : [],
            .. extremes.Min.Value < 0 ? Peak(name, Least, curve, extremes.Min) : [],
        ];
    }

    private IEnumerable<EnvelopeRow> Peak(string name, string end, Curve curve, GovernedExtreme extreme) =>
        PeakRow.Say(words, curve, extreme.Value) == PeakRow.Say(words, curve, 0)
            ? []
            :
            [
                new EnvelopeRow(
                    name,
                    end,
                    [
                        $"{PeakRow.Say(words, curve, extreme.Value)} at {words.Place(extreme.Position)}",
                        .. Governs(extreme.Situation),
                        .. Certainty(envelope.CertaintyOf(curve)),
                    ]),
            ];

    private IEnumerable<EnvelopeRow> Range(
        string name, GovernedRange range, QuantityKind kind, Func<double, string> say, int? support = null)
    {
        bool isNothing = words.IsNothing(range.Max.Value, kind) && words.IsNothing(range.Min.Value, kind);
        if (isNothing && support is null)
        {
            return [];
        }

        ImmutableArray<string> beside = support is int index && IsDown(range.Min.Value)
            ? ["(must be held down)", ReactionTable.IsMeantToHold(Beam.Supports[index]) ? "HELD" : "LIFTS"]
            : [];
        ImmutableArray<string> known = Certainty(envelope.ReactionCertainty);
        return say(range.Max.Value) == say(range.Min.Value)
            ? [new EnvelopeRow(name, "always", [say(range.Max.Value), .. known, .. beside])]
            :
            [
                new EnvelopeRow(name, Greatest, [say(range.Max.Value), .. Governs(range.Max.Situation), .. known]),
                new EnvelopeRow(name, Least, [say(range.Min.Value), .. Governs(range.Min.Situation), .. known, .. beside]),
            ];
    }

    private ImmutableArray<string> Certainty(EnvelopeCertainty certainty) =>
        certainty == EnvelopeCertainty.Estimate && !AreAllEstimates ? [Estimate] : [];

    private bool IsDown(double vertical) => vertical < 0 && !words.IsNothing(vertical, QuantityKind.Force);

    private ImmutableArray<string> Governs(Situation situation)
    {
        string when = SituationWords.Within(Beam, situation);
        return when.Length == 0 ? [] : [words.Sentence(when)];
    }
}
