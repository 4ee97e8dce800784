using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Record;

/// <summary>What came of a beam as labelled sentences, one fact a line. Plain ASCII.</summary>
public static class SpokenAnswer
{
    /// <summary>One sentence of what came of a beam: its reactions, or how it can move and the way out.</summary>
    /// <param name="calculation">What came of it; without problems.</param>
    /// <param name="combination">Which combination is told, counted from 0.</param>
    public static string InShort(Calculation calculation, int combination)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        return calculation switch
        {
            { Beam: BuiltBeam beam, Outcome: BeamOutcome.Stands stands } =>
                Sentence(ShortAnswer.Of(calculation, beam, stands, combination)),
            { Beam: BuiltBeam beam, Outcome: BeamOutcome outcome } => Sentence(
                $"{MotionWords.Verdict(outcome)}: "
                + string.Join("; ", MotionWords.Of(beam, outcome).Select(SpokenUnits.Throughout).DefaultIfEmpty("no answer could be found"))),
            _ => throw new ArgumentException("A beam that does not read has no answer.", nameof(calculation)),
        };
    }

    /// <summary>All that came of a beam: reactions, proof, peaks and remarks.</summary>
    /// <param name="calculation">What came of it.</param>
    /// <param name="combination">Which combination is told, counted from 0; null for all.</param>
    public static ImmutableArray<string> Lines(Calculation calculation, int? combination)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        return
        [
            .. calculation is { Beam: BuiltBeam beam, Outcome: BeamOutcome outcome }
                ?
                [
                    .. Outcome(beam, outcome, combination),
                    .. Envelopes(calculation, beam),
                    .. Stated(calculation, beam),
                    .. Checks(calculation, beam),
                ]
                : Labelled("To mend", ProblemLines.Of(calculation)),
            .. Labelled("Remark", MessageLines.Of(calculation).Select(SpokenUnits.Throughout)),
        ];
    }

    /// <summary>The greatest and least over all that may happen; nothing where one answer says as much.</summary>
    /// <param name="calculation">What came of the beam.</param>
    public static ImmutableArray<string> Worst(Calculation calculation)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        return calculation.Beam is BuiltBeam beam ? [.. Envelopes(calculation, beam)] : [];
    }

    /// <summary>What acts at one place, both sides of a jump; nothing for a beam that does not stand.</summary>
    /// <param name="calculation">What came of the beam.</param>
    /// <param name="place">The place.</param>
    /// <param name="combination">Which combination is told, counted from 0.</param>
    public static ImmutableArray<string> At(Calculation calculation, AskedPlace place, int combination)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        return calculation is { Beam: BuiltBeam beam, Outcome: BeamOutcome.Stands stands }
            ? [.. Places(beam, stands.Combinations[combination].Response, [place])]
            : [];
    }

    /// <summary>How far a check goes, and whose word comes first.</summary>
    /// <param name="calculation">What came of the beam.</param>
    public static ImmutableArray<string> Cautions(Calculation calculation)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        return [.. Labelled("Before you use these figures", Record.Cautions.For(calculation))];
    }

    /// <summary>Whether a beam stands, and every answer or the one asked for.</summary>
    internal static IEnumerable<string> Outcome(
        BuiltBeam beam, BeamOutcome outcome, int? combination, ImmutableArray<AskedPlace> at = default)
    {
        IEnumerable<CombinationResponse> told = outcome is BeamOutcome.Stands stands
            ? stands.Combinations.Where((_, index) => index == (combination ?? index))
            : [];
        return
        [
            .. Labelled("How it is held", [DeterminacyWords.Of(outcome), .. MotionWords.Of(beam, outcome).Select(SpokenUnits.Throughout)]),
            .. told.SelectMany(answer => Answer(beam, answer, at.IsDefault ? [] : at)),
        ];
    }

    /// <summary>The greatest and least over all that may happen, where they say more than one answer does.</summary>
    internal static IEnumerable<string> Envelopes(Calculation calculation, BuiltBeam beam)
    {
        EnvelopeTable table = new(new BeamWords(beam, IsSpoken: true));
        return EnvelopeTable.Telling(calculation, beam)
            .SelectMany(table.Facts)
            .Select(one => Sentence($"{one.Label}: {one.Fact}"));
    }

    /// <summary>Every stated figure with its verdict, whether they balance, and why they may differ.</summary>
    internal static IEnumerable<string> Stated(Calculation calculation, BuiltBeam beam) =>
    [
        .. StatedTable.Facts(calculation, beam).Select(one => Sentence($"{one.Label}: {one.Fact}")),
        .. Labelled("Why they may differ", ExplanationLines.Spoken(calculation, beam)),
    ];

    /// <summary>Every check with its verdict, and what is not checked.</summary>
    internal static IEnumerable<string> Checks(Calculation calculation, BuiltBeam beam) =>
        CheckFacts.Of(calculation, beam).Select(one => Sentence($"{one.Label}: {one.Fact}"));

    internal static IEnumerable<string> Labelled(string label, IEnumerable<string> lines) =>
        lines.Select(line => Sentence($"{label}: {line}"));

    /// <summary>A text in ASCII with every unit behind a number written out.</summary>
    /// <param name="text">The text.</param>
    public static string Aloud(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return SpokenUnits.Throughout(PlainAscii.Of(text));
    }

    /// <summary>A text with a capital at its beginning and a full stop at its end.</summary>
    /// <param name="text">The text; not empty.</param>
    public static string Sentence(string text)
    {
        string capital = char.ToUpperInvariant(text[0]) + text[1..];
        return capital[^1] is '.' or '?' or '!' ? capital : capital + ".";
    }

    private static IEnumerable<string> Answer(
        BuiltBeam beam, CombinationResponse answer, ImmutableArray<AskedPlace> at)
    {
        string name = PlainAscii.Of(answer.Combination.Name);
        string basis = Record.Cautions.Basis(BasisWords.Of(answer.Combination.Basis));
        BeamResponse response = answer.Response;
        return
        [
            $"Combination {name}: {basis}.",
            .. VariedWords.Warning(beam, answer.Combination),
            .. beam.Supports.SelectMany((support, i) => Support(beam, support, response.Reactions[i])),
            .. Labelled("Proof", ProofLines.Of(new BeamWords(beam, IsSpoken: true), response.Proof)),
            .. PeakTable.Curves(beam)
                .Select(curve => PeakRow.Of(beam, response, curve, isSpoken: true))
                .SelectMany(row => row.Items.Select(item => Sentence($"Peak of {row.Name}: {item}"))),
            .. Places(beam, response, at),
        ];
    }

    private static IEnumerable<string> Places(
        BuiltBeam beam, BeamResponse response, ImmutableArray<AskedPlace> at) =>
        at.SelectMany(place => AskedWords.Sentences(beam, response, place)).Select(Sentence);

    private static IEnumerable<string> Support(BuiltBeam beam, NamedSupport support, Reaction reaction)
    {
        BeamWords words = new(beam, IsSpoken: true);
        string place = words.Say(support.Support.Position, QuantityKind.Length);
        IEnumerable<string> said = [.. words.Parts(support.Support, reaction), .. ReactionTable.Remarks(words, support, reaction)];
        return said.Select(part => Sentence($"Support {support.Label}, at {place}: {part}"));
    }
}
