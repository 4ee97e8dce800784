using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Strength;

/// <summary>Why a check is not judged, and what would mend that, in words.</summary>
/// <param name="beam">The beam.</param>
/// <param name="document">Its sheet.</param>
internal sealed class ReasonWords(BuiltBeam beam, BeamDocument document)
{
    /// <summary>The reason of a check, as "the length of the bearing is not given; it needs at least 42 mm"; null where it is judged.</summary>
    internal string? Of(SectionCheck check) => check.Reason switch
    {
        null => null,
        NotJudgedReason.NoCombination => NoCombination(check.Basis),
        NotJudgedReason.NoSection => $"span {SpanOf(check) + 1} has no section: name one",
        NotJudgedReason.NoSectionModulus => $"the section modulus of {Section(check)} is not known: give section_modulus",
        NotJudgedReason.NoArea => $"the area of {Section(check)} is not known: give area",
        NotJudgedReason.NoShape => $"the sizes of {Section(check)} are not known: give them, or a shape of the catalogue",
        NotJudgedReason.ShapeNotInRules => $"{Rules} as built in are not for a section like {Section(check)}",
        NotJudgedReason.TooSlender =>
            $"{Section(check)} is too slender for what is built in of {Rules}: it may buckle locally",
        NotJudgedReason.TooSlenderSideways =>
            $"{Section(check)} buckles sideways: its slenderness R_B is over 50, which NDS 3.3.3 does not permit; hold it at closer places",
        NotJudgedReason.NoMaterial => $"span {SpanOf(check) + 1} has no material: name one",
        NotJudgedReason.NoYield => $"the yield stress of {Material(check)} is not known: give yield, or a grade",
        NotJudgedReason.NoStrength => $"{Material(check)} has no strengths that {Rules} start from: name a grade that has",
        NotJudgedReason.GradeOfOtherSize =>
            $"the grade of {Material(check)} has its figures for pieces of other sizes: name the grade of this size",
        NotJudgedReason.NoFactor =>
            $"the factor {Missing(check)} of {Material(check)} is not given: write {Name(check)} in factors",
        NotJudgedReason.NoLateralSupport =>
            $"how span {SpanOf(check) + 1} is held sideways is not given: unbraced = a length, or \"braced\"",
        NotJudgedReason.NoBearingLength => $"the length of the bearing is not given{NeedsAtLeast(check)}",
        NotJudgedReason.NoBearingWidth => NoBearingWidth(check),
        NotJudgedReason.BearingTooShort =>
            $"the bearing is shorter than {Rules} let an end of the beam have{NeedsAtLeast(check)}",
        NotJudgedReason.MomentOnSeat =>
            "the support also turns the beam, so the pressure on it is not even: check it by hand with its moment",
        NotJudgedReason.HingeOnSeat =>
            "a hinge stands on the bearing, so two sticks share it: check each by hand on its own part, with its own end reaction",
        NotJudgedReason.NoPad => $"the size of its pad is not given{NeedsAtLeast(check)}",
        NotJudgedReason.NoStiffness =>
            "the stiffness is not known, so no movement is: every span needs its section and material",
        NotJudgedReason.NoModulus => NoModulus(check),
        NotJudgedReason.NothingToJudge => NothingToJudge(check),
        NotJudgedReason.NoAnswer => "the beam has no answer in any of the situations it is held against",
        NotJudgedReason.NoLimit => NoLimit(check),
        NotJudgedReason.LateralNotInRules =>
            $"{Rules} say nothing of sideways buckling: hold it all along (unbraced = \"braced\"), or name other rules",
        NotJudgedReason.MayBuckle =>
            $"{Force(check)} presses along span {SpanOf(check) + 1}, which may buckle, and {Rules}, as built in, leave that out: "
                + "check it by hand as a column",
        NotJudgedReason.MaterialNotInRules =>
            $"{Rules} are for steel, and the modulus of {Material(check)} is not that of steel",
        _ => throw new ArgumentOutOfRangeException(nameof(check), check.Reason, "No words for it."),
    };

    private string Force(SectionCheck check) =>
        TermOf(check, CheckSymbol.Axial) is double force ? beam.Display.Say(force, QuantityKind.Force) : "a force";

    private string Rules => document.Limits?.Rules is string rules ? $"the rules {rules}" : "the rules";

    private static string NoCombination(CombinationBasis basis) => basis == CombinationBasis.Service
        ? "it is held against service combinations, and there is none: add one"
        : "it is held against factored combinations, and there is none: add one with basis = \"factored\"";

    private static string Missing(SectionCheck check) =>
        check.Missing is FactorKind kind ? $"{FactorWords.Of(kind).Symbol} ({FactorWords.Of(kind).Words})" : "asked for";

    private static string Name(SectionCheck check) =>
        check.Missing is FactorKind kind && FactorNames.Of(kind) is string name ? name : "it";

    private string NeedsAtLeast(SectionCheck check)
    {
        double? needed = TermOf(check, CheckSymbol.NeededBearingLength);
        double? push = TermOf(check, CheckSymbol.Reaction);
        return check.Reason is NotJudgedReason.NoBearingLength or NotJudgedReason.BearingTooShort
            ? needed is double length && beam.Display.Movement(length) is string text && text != beam.Display.Movement(0)
                ? $"; it needs at least {text}"
                : ""
            : push is double force && check.Limit is double pressure
                ? $"; it needs at least {beam.Display.Say(force / pressure, QuantityKind.Area)}"
                : "";
    }

    private string NoModulus(SectionCheck check) => check.Kind switch
    {
        CheckKind.FinalDeflection or CheckKind.FinalOverhangDeflection =>
            $"how {Material(check)} creeps is not known: give creep, 0 for a material that does not",
        CheckKind.LateralStability =>
            $"the modulus of {Material(check)} for lateral stability is not known: name a grade that has it",
        _ => $"a modulus of {Material(check)} is not known: give modulus and shear_modulus",
    };

    /// <summary>A stick may bear on a line or on edges, and then no size of it helps.</summary>
    private string NoBearingWidth(SectionCheck check) => beam.Sticks[SpanOf(check)].Section switch
    {
        { Shape: SectionShape.Round or SectionShape.RoundTube } =>
            $"{Section(check)} is round and bears on a line, which has no width: check its saddle by hand; pad and "
                + "allowable_pressure judge what is below it",
        { Shape: SectionShape.I or SectionShape.Channel } =>
            $"{Section(check)} lies on the edges of its flanges, which have no width here: check them by hand; pad and "
                + "allowable_pressure judge what is below it",
        _ => $"the width of {Section(check)} on its bearing is not known: give its sizes, or a shape of the catalogue",
    };

    private static string NothingToJudge(SectionCheck check) => check.Kind switch
    {
        CheckKind.OverhangDeflection or CheckKind.FinalOverhangDeflection => "there is no overhang",
        CheckKind.Deflection or CheckKind.FinalDeflection => "there is no bay between two supports",
        _ => "there is nothing for it to speak of",
    };

    private string NoLimit(SectionCheck check)
    {
        string side = check.Basis == CombinationBasis.Service ? "allowable" : "design";
        return check.Kind switch
        {
            CheckKind.Bearing when check.Basis == CombinationBasis.Service =>
                $"nothing is given to hold it against: allowable_bearing of {Material(check)}, or bearing_allowable",
            CheckKind.Bearing => $"nothing is given to hold it against: design_bearing of {Material(check)}",
            CheckKind.PadPressure => "nothing is given to hold it against: allowable_pressure",
            CheckKind.BendingAndAxial =>
                $"{Rules}, as built in, count tension where the grade gives it, and no force that presses, because it may "
                    + $"buckle: check it by hand; without rules {side}_bending of {Material(check)} takes the force into its stress",
            CheckKind.Shear => $"nothing is given to hold it against: {side}_shear of {Material(check)}",
            _ => $"nothing is given to hold it against: {side}_bending of {Material(check)}",
        };
    }

    /// <summary>The span that a check speaks of, or that its support stands on; the first where it speaks of none.</summary>
    private int SpanOf(SectionCheck check)
    {
        double? place = check.Support is int support ? beam.Supports[support].Support.Position : check.Position;
        return check.Span ?? (place is double position
            ? Math.Max(0, beam.Model.JointPositions.Count(joint => joint < position) - 1)
            : 0);
    }

    private string Section(SectionCheck check) =>
        beam.Sticks[SpanOf(check)].SectionName is string name ? TextSafety.ForTerminal(name) : "the section";

    private string Material(SectionCheck check) =>
        beam.Sticks[SpanOf(check)].MaterialName is string name ? TextSafety.ForTerminal(name) : "the material";

    private static double? TermOf(SectionCheck check, CheckSymbol symbol) =>
        check.Terms.FirstOrDefault(term => term.Symbol == symbol)?.Value;
}
