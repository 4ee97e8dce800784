using System.Collections.Immutable;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Sheet.Strength;

/// <summary>What the checks of a beam leave out, each in a few words.</summary>
internal static class NotCheckedWords
{
    private static readonly ImmutableArray<string> Always =
    [
        "columns and props", "connections", "bracing", "overall stability", "foundations", "vibration", "fire", "fatigue",
        "ponding", "torsion", "notches and holes",
    ];

    /// <summary>The formulas of lateral-torsional buckling have the load in the middle of the depth.</summary>
    private const string TopLoads = "loads on the top of an unbraced beam, which push it over";

    /// <summary>What was left out, what is nearest to the beam first.</summary>
    /// <param name="problem">The beam and what it is held against.</param>
    /// <param name="checks">Its checks.</param>
    /// <param name="isCompressed">True: a force along the beam presses some of it.</param>
    internal static ImmutableArray<string> Of(
        StrengthProblem problem, ImmutableArray<SectionCheck> checks, bool isCompressed)
    {
        bool isHeldAll = problem.Members.All(member => member.Lateral is LateralSupport.Braced);
        return
        [
            .. Unless(Has(CheckKind.Bending, CheckKind.LateralStability), "strength in bending"),
            .. Unless(Has(CheckKind.Shear), "strength in shear"),
            .. Unless(isHeldAll || Has(CheckKind.LateralStability), "sideways buckling between lateral supports"),
            .. Unless(Has(CheckKind.Bearing, CheckKind.WebYielding, CheckKind.PadPressure), "bearing at the supports"),
            .. Unless(
                Has(
                    CheckKind.Deflection, CheckKind.OverhangDeflection, CheckKind.FinalDeflection,
                    CheckKind.FinalOverhangDeflection, CheckKind.AbsoluteDeflection),
                "deflection"),
            .. Unless(!isCompressed, "buckling by the force along the beam"),
            .. OfRules(problem.Rules),
            .. Always,
        ];

        bool Has(params CheckKind[] kinds) => checks.Any(check => kinds.Contains(check.Kind));
    }

    private static ImmutableArray<string> OfRules(StrengthRules rules) => rules switch
    {
        StrengthRules.ElasticAllowable => ["local buckling of thin plates", "the web over supports and under point loads"],
        StrengthRules.Aisc360Asd or StrengthRules.Aisc360Lrfd =>
            ["crippling and sideways buckling of the web", "the web under point loads", TopLoads],
        StrengthRules.En1993 => ["the web over supports and under point loads", TopLoads],
        StrengthRules.Nds or StrengthRules.En1995 => ["tension across the grain"],
        _ => [],
    };

    private static ImmutableArray<string> Unless(bool isChecked, string what) => isChecked ? [] : [what];
}
