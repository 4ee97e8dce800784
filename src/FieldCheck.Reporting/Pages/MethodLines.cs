using System.Collections.Immutable;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Pages;

/// <summary>By what methods and rules the figures come about, for whoever asks for the standards and literature used.</summary>
internal static class MethodLines
{
    internal static ImmutableArray<string> Of(Calculation calculation, BuiltBeam beam) =>
    [
        "Reactions, shear, moment and deflection: the stiffness method with exact members; peaks from roots, not from steps. "
            + "Derivations and literature: docs/methods.md and docs/sources.md of the program.",
        "Proof: the loads as entered and the reactions are summed anew, apart from the solution.",
        "Second opinion: the working by hand below has mathematics of its own, and says whether both agree.",
        .. calculation.Document.Limits?.Rules is string rules
            ? new[] { $"Strengths are judged by {PlainAscii.Of(rules)}; each check names its clause." }
            : [],
        .. calculation.Bands is null
            ? []
            : new[] { "Bands: plus or minus of what was measured, carried through the influence of each input." },
        .. EnvelopeTable.Telling(calculation, beam).IsEmpty
            ? []
            : new[] { "Envelope: the worst of all patterns and places, found from influence lines; what is no more than an estimate says so." },
    ];
}
