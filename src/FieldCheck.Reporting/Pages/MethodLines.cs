using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Pages;

/// <summary>By what methods and rules the figures come about, for whoever asks for the standards and literature used.</summary>
internal static class MethodLines
{
    private const string Literature = "Derivations and literature: docs/methods.md and docs/sources.md of the program.";

    private const string FromTheSupports = "Deflections held against a limit are measured from the beam's own places at its supports: in a bay from the straight "
        + "line between them, on an overhang from the level of its support. Peaks are measured from the unloaded line.";

    private static readonly ImmutableArray<string> OfAnswer =
    [
        "Reactions, shear, moment and deflection: the stiffness method with exact members; peaks from roots, not from steps.",
        "Proof: the loads as entered and the reactions are summed anew, apart from the solution.",
        "Second opinion: the working by hand below has mathematics of its own; as far as it reaches, it says whether both agree.",
    ];

    internal static ImmutableArray<string> Of(Calculation calculation, BuiltBeam beam, BeamOutcome outcome) =>
    [
        .. outcome is BeamOutcome.Stands ? OfAnswer : OfNone(outcome),
        Literature,
        .. calculation.Document.Limits?.Rules is string rules && !calculation.Checks.All.IsEmpty
            ? new[] { $"Strengths are judged by {TypedLetters.Name(beam, rules)}; each check names its clause." }
            : [],
        .. calculation.Checks.All.Any(check => check.Figures.Kind is CheckKind.Deflection or CheckKind.FinalDeflection
            or CheckKind.OverhangDeflection or CheckKind.FinalOverhangDeflection)
            ? new[] { FromTheSupports }
            : [],
        .. calculation.Bands is null
            ? []
            : new[] { "Bands: plus or minus of what was measured, carried through the influence of each input." },
        .. EnvelopeTable.Telling(calculation, beam).IsEmpty
            ? []
            : new[] { "Envelope: the worst of all patterns and places, found from influence lines; what is no more than an estimate says so." },
    ];

    private static ImmutableArray<string> OfNone(BeamOutcome outcome) =>
    [
        outcome switch
        {
            BeamOutcome.CanMove => "That it can move: from what its supports and hinges hold, by the rank of the equations of its "
                + "motions, whatever the loads and the stiffness.",
            BeamOutcome.Tips => "That it tips: by the stiffness method, every support that would have to act as it cannot let go, "
                + "until what is left can move.",
            _ => "Reactions were looked for by the stiffness method, and none was found that can be relied on.",
        },
        "There is no reaction, and so neither a proof of one nor a second opinion.",
    ];
}
