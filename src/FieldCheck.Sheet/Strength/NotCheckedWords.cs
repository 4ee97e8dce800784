using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
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

    /// <summary>Between its lateral supports the section turns over; at them, and at its supports, it must not.</summary>
    private const string TwistingSupports = "supports that let the section twist";

    private const string TwistingTips = "the free tip of an overhang, which may twist";

    /// <summary>What was left out, what is nearest to the beam first.</summary>
    /// <param name="problem">The beam and what it is held against.</param>
    /// <param name="checks">Its checks.</param>
    /// <param name="pushing">The label of each support that pushes the beam up; null of one that never does.</param>
    /// <param name="isCompressed">True: a force along the beam presses some of it.</param>
    internal static ImmutableArray<string> Of(
        StrengthProblem problem, ImmutableArray<SectionCheck> checks, ImmutableArray<string?> pushing, bool isCompressed)
    {
        bool isHeldAll = problem.Members.All(member => member.Lateral is LateralSupport.Braced);
        return
        [
            .. Unless(
                Has(CheckKind.Bending, CheckKind.BendingAndAxial, CheckKind.LateralStability), "strength in bending"),
            .. Unless(Has(CheckKind.Shear), "strength in shear"),
            .. Unless(isHeldAll || Has(CheckKind.LateralStability), "sideways buckling between lateral supports"),
            .. OfSeats(problem, checks, pushing),
            .. OfDeflection(Bays.Of(problem.Beam.Model), Has),
            .. Unless(!isCompressed, "buckling by the force along the beam"),
            .. OfRules(problem.Rules),
            .. Has(CheckKind.LateralStability) ? OfTwisting(problem) : [],
            .. Always,
        ];

        bool Has(params CheckKind[] kinds) => checks.Any(check => kinds.Contains(check.Kind));
    }

    /// <summary>Bearing, and the ground under pads, support by support.</summary>
    private static IEnumerable<string> OfSeats(
        StrengthProblem problem, ImmutableArray<SectionCheck> checks, ImmutableArray<string?> pushing)
    {
        int[] all = [.. Enumerable.Range(0, pushing.Length).Where(support => pushing[support] is not null)];
        int[] bare = [.. all.Where(support => !HasAt(support, CheckKind.Bearing, CheckKind.WebYielding, CheckKind.WebCrippling))];
        int[] pads =
        [
            .. all.Where(support => problem.Seats[support].PadArea is not null && !HasAt(support, CheckKind.PadPressure)),
        ];
        return
        [
            .. Unless(bare.Length == 0, bare.Length == all.Length ? "bearing at the supports" : $"bearing at {Labels(bare)}"),
            .. Unless(pads.Length == 0, $"the ground under the {(pads.Length == 1 ? "pad" : "pads")} of {Labels(pads)}"),
        ];

        bool HasAt(int support, params CheckKind[] kinds) =>
            checks.Any(check => check.Support == support && kinds.Contains(check.Kind));

        string Labels(int[] supports) => supports is [.. { Length: > 0 } before, int last]
            ? $"{string.Join(", ", before.Select(support => pushing[support]))} and {pushing[last]}"
            : string.Concat(supports.Select(support => pushing[support]));
    }

    private static IEnumerable<string> OfDeflection(Bays bays, Func<CheckKind[], bool> has)
    {
        bool ofOverhangs = has([CheckKind.OverhangDeflection, CheckKind.FinalOverhangDeflection]);
        bool ofBays = has([CheckKind.Deflection, CheckKind.FinalDeflection]);
        int overhangs = (bays.LeftOverhang is null ? 0 : 1) + (bays.RightOverhang is null ? 0 : 1);
        return has([CheckKind.AbsoluteDeflection]) ? []
            : !ofBays && !ofOverhangs ? ["deflection"]
            :
            [
                .. Unless(ofBays || bays.Between.IsEmpty, "deflection between the supports"),
                .. Unless(
                    ofOverhangs || overhangs == 0, $"deflection of the {(overhangs == 1 ? "overhang" : "overhangs")}"),
            ];
    }

    /// <summary>What the formulas of lateral-torsional buckling take for granted.</summary>
    private static ImmutableArray<string> OfTwisting(StrengthProblem problem)
    {
        Bays bays = Bays.Of(problem.Beam.Model);
        return problem.Rules is not (StrengthRules.Aisc360Asd or StrengthRules.Aisc360Lrfd or StrengthRules.En1993) ? []
            : [TwistingSupports, .. Unless(bays.LeftOverhang is null && bays.RightOverhang is null, TwistingTips)];
    }

    private static ImmutableArray<string> OfRules(StrengthRules rules) => rules switch
    {
        StrengthRules.ElasticAllowable => ["local buckling of thin plates", "the web over supports and under point loads"],
        StrengthRules.Aisc360Asd or StrengthRules.Aisc360Lrfd =>
            ["sideways buckling of the web", "the web under point loads", TopLoads],
        StrengthRules.En1993 => ["the web over supports and under point loads", TopLoads],
        StrengthRules.Nds or StrengthRules.En1995 => ["tension across the grain"],
        _ => [],
    };

    private static ImmutableArray<string> Unless(bool isChecked, string what) => isChecked ? [] : [what];
}
