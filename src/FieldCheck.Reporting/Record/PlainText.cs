using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Record;

/// <summary>The check as labelled sentences, one fact a line, without pictures or columns. Plain ASCII.</summary>
public static class PlainText
{
    /// <summary>The check of one beam.</summary>
    /// <param name="calculation">What came of it.</param>
    /// <param name="request">What to show; lines are not broken, whatever its width.</param>
    public static ImmutableArray<string> Lines(Calculation calculation, CheckRequest request)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        ArgumentNullException.ThrowIfNull(request);
        IEnumerable<string> result = calculation is { Beam: BuiltBeam beam, Outcome: BeamOutcome outcome }
            ?
            [
                .. Labelled("Read", InputLines.Of(calculation, isSpoken: true)),
                .. Labelled("How it is held", [DeterminacyWords.Of(outcome), .. MotionWords.Of(beam, outcome)]),
                .. outcome is BeamOutcome.Stands stands
                    ? stands.Combinations.SelectMany(answer => Answer(beam, answer, request))
                    : [],
            ]
            : Labelled("To mend", ProblemLines.Of(calculation));
        return
        [
            .. CheckHeading.Lines(calculation, request).Select(Sentence),
            .. result,
            .. Labelled("Remark", MessageLines.Of(calculation)),
            .. Labelled("Before you use these figures", Cautions.For(calculation)),
        ];
    }

    private static IEnumerable<string> Answer(BuiltBeam beam, CombinationResponse answer, CheckRequest request)
    {
        string name = PlainAscii.Of(answer.Combination.Name);
        string basis = Cautions.Basis(BasisWords.Of(answer.Combination.Basis));
        BeamResponse response = answer.Response;
        return
        [
            $"Combination {name}: {basis}.",
            .. beam.Supports.SelectMany((support, i) => Support(beam, support, response.Reactions[i])),
            .. Labelled("Proof", ProofLines.Of(new BeamWords(beam, IsSpoken: true), response.Proof)),
            .. PeakTable.Curves(beam)
                .Select(curve => PeakRow.Of(beam, response, curve, isSpoken: true))
                .SelectMany(row => row.Items.Select(item => Sentence($"Peak of {row.Name}: {item}"))),
            .. request.At
                .SelectMany(place => AskedWords.Sentences(beam, response, place))
                .Select(Sentence),
        ];
    }

    private static IEnumerable<string> Support(BuiltBeam beam, NamedSupport support, Reaction reaction)
    {
        BeamWords words = new(beam, IsSpoken: true);
        string place = words.Say(support.Support.Position, QuantityKind.Length);
        IEnumerable<string> said = [.. words.Parts(reaction), .. ReactionTable.Remarks(words, support, reaction)];
        return said.Select(part => Sentence($"Support {support.Label}, at {place}: {part}"));
    }

    private static IEnumerable<string> Labelled(string label, IEnumerable<string> lines) =>
        lines.Select(line => Sentence($"{label}: {line}"));

    private static string Sentence(string text)
    {
        string capital = char.ToUpperInvariant(text[0]) + text[1..];
        return capital[^1] is '.' or '?' or '!' ? capital : capital + ".";
    }
}
