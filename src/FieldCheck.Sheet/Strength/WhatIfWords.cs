using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Strength;

/// <summary>Answers about a beam that differs from the one typed, in sentences in the units shown.</summary>
/// <param name="beam">The beam as typed.</param>
/// <param name="document">Its sheet.</param>
public sealed class WhatIfWords(BuiltBeam beam, BeamDocument document)
{
    /// <summary>How far the live loads may grow.</summary>
    /// <param name="live">The answer; null: there are none.</param>
    /// <param name="cases">The cases that count as live; said unless "live" is the only one.</param>
    public string Live(Headroom? live, ImmutableArray<string> cases) => live switch
    {
        null => "No live load stands or rolls on the beam.",
        { End: HeadroomEnd.OverWithout } => $"Even without live loads{Named(cases)} {First(live)} is over.",
        { End: HeadroomEnd.None } => $"No live load{Named(cases)}, however great, makes a judged check fail.",
        { End: HeadroomEnd.Tips, Most: null } => $"Even without live loads{Named(cases)} the beam tips.",
        { Most: double most } => $"Live loads{Named(cases)} {(most >= 1 ? "may grow" : "must shrink")} to "
            + $"{Times(most)} what they are; then {Ends(live)}.",
        _ => "",
    };

    /// <summary>How heavy one more point load may be.</summary>
    /// <param name="place">Its place [m from the left end].</param>
    /// <param name="heaviest">The answer; null: no combination counts a live case.</param>
    public string Heaviest(double place, PointHeadroom? heaviest)
    {
        string at = $"at {beam.Display.Say(place, QuantityKind.Length)}";
        return heaviest?.Force switch
        {
            null => "No combination counts a live case: one more load would change nothing.",
            { End: HeadroomEnd.OverWithout } over => $"No more load {at}: {First(over)} is over as it is.",
            { End: HeadroomEnd.None } => $"Any load may stand {at}: no judged check feels it.",
            { Most: null } => $"No more load {at}: the beam tips as it is.",
            { Most: double most } force =>
                $"A load of {beam.Display.Say(most, QuantityKind.Force)} ({TextSafety.ForTerminal(heaviest!.Case)}) may "
                + $"stand {at}; then {Ends(force)}.",
        };
    }

    /// <summary>How long the first bay may become.</summary>
    /// <param name="bay">The answer.</param>
    public string FirstBay(BayHeadroom bay)
    {
        ArgumentNullException.ThrowIfNull(bay);
        return bay.Length switch
        {
            null => $"No longest first bay: {bay.Why}.",
            { End: HeadroomEnd.None } => "No length of the first bay makes a judged check fail.",
            { Most: null } length => $"No length of the first bay does: {First(length)} stays over.",
            { Most: double most } length =>
                $"The first bay may be {beam.Display.Say(most, QuantityKind.Length)} under these loads; then {Ends(length)}.",
        };
    }

    /// <summary>Where a prop would make every judged check hold, or at least the first that is over.</summary>
    /// <param name="props">The answer.</param>
    public ImmutableArray<string> Props(PropAnswer props)
    {
        ArgumentNullException.ThrowIfNull(props);
        string prop = props.Stiffness is double stiffness
            ? $"prop of {beam.Display.Say(stiffness, QuantityKind.Stiffness)}"
            : "rigid prop";
        string first = props.First is SectionCheck check ? KindOf(check) : "";
        return props switch
        {
            { IsOpen: true } =>
                [$"What a {prop} does hangs on the stiffness of the beam, and that is not known: give section and material."],
            { EveryCheck.IsEmpty: false } => [.. props.EveryCheck.Select(one => $"{Stretch(prop, one, "every judged check")} and "
                + $"the beam is used to {Share(one.Utilisation)}.")],
            { FirstAlone.IsEmpty: false } =>
            [
                $"No place was found where one {prop} makes every judged check hold.",
                .. props.FirstAlone.Select(one => $"{Stretch(prop, one, first)}, and {Left(one)}."),
            ],
            { First: null } => [$"No place was found where one {prop} makes every judged check hold."],
            _ => [$"No place was found where one {prop} makes {first} hold."],
        };
    }

    /// <summary>What modulus and inertia would be enough.</summary>
    /// <param name="needed">The answer.</param>
    public string Needed(NeededFigures needed)
    {
        ArgumentNullException.ThrowIfNull(needed);
        List<string> parts = [];
        if (needed.SectionModulus is double modulus)
        {
            string kind = needed.IsPlastic ? "plastic section modulus" : "section modulus";
            parts.Add($"{kind} {beam.Display.Say(modulus, QuantityKind.SectionModulus)}");
        }

        if (needed.Inertia is double inertia)
        {
            string about = needed.IsInertiaExact ? "" : "about ";
            parts.Add($"inertia {about}{beam.Display.Say(inertia, QuantityKind.Inertia)}");
        }

        return parts.Count == 0 ? "" : $"Needed: {string.Join(", ", parts)}.";
    }

    /// <summary>What a check is about, as "bending of span 2".</summary>
    /// <param name="check">The check.</param>
    public string What(SectionCheck check) => new CheckWords(beam, document).Of(check).What;

    private string Stretch(string prop, PropStretch stretch, string what)
    {
        string Say(double place) => beam.Display.Say(place, QuantityKind.Length);
        return $"A {prop} between {Say(stretch.From)} and {Say(stretch.To)} makes {what} hold; at {Say(stretch.Best)} it "
            + $"carries {beam.Display.Say(stretch.Push, QuantityKind.Force)}";
    }

    // With the prop bays and supports are counted otherwise, so that only the kind can be named.
    private static string KindOf(SectionCheck check) => check.Kind switch
    {
        CheckKind.Bending => "bending",
        CheckKind.Shear => "shear",
        CheckKind.BendingAndAxial => "bending and axial force",
        CheckKind.LateralStability => "lateral stability",
        CheckKind.Bearing => "bearing",
        CheckKind.PadPressure => "pressure under pads",
        CheckKind.WebYielding => "the web over supports",
        CheckKind.Deflection => "deflection of the bays",
        CheckKind.OverhangDeflection => "deflection of overhangs",
        CheckKind.FinalDeflection => "final deflection of the bays",
        CheckKind.FinalOverhangDeflection => "final deflection of overhangs",
        CheckKind.AbsoluteDeflection => "deflection anywhere",
        _ => throw new ArgumentOutOfRangeException(nameof(check), check.Kind, "No words for it."),
    };

    private static string Left(PropStretch stretch) => stretch.Left is { Utilisation: double used } check
        ? $"{KindOf(check)} is then used to {Share(used)}"
        : "the beam then tips";

    private string Ends(Headroom headroom) =>
        headroom.End == HeadroomEnd.Tips ? "the beam tips" : $"{First(headroom)} is used up";

    private string First(Headroom headroom) =>
        headroom.First is SectionCheck check ? What(check) : "a check";

    private static string Named(ImmutableArray<string> cases) => cases is ["live"] or []
        ? ""
        : $" ({string.Join(", ", cases.Select(TextSafety.ForTerminal))})";

    private static string Share(double ratio) => ratio.ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>Rounded down, so that what is told never is more than what holds.</summary>
    private static string Times(double factor) =>
        (Math.Floor(factor * 100) / 100).ToString("0.00", CultureInfo.InvariantCulture) + " times";
}
