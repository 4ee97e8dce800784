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
        { End: HeadroomEnd.None } => $"No live load{Named(cases)}, however great, makes a judged check fail.{LetGo(live, Times)}",
        { End: HeadroomEnd.Tips, Most: null } => $"Even without live loads{Named(cases)} the beam tips.",
        { End: HeadroomEnd.Pulled, Most: null } => $"Even without live loads{Named(cases)} {Pulled(live)}.",
        { Most: double most } => $"Live loads{Named(cases)} {(most >= 1 ? "may grow" : "must shrink")} to "
            + $"{Times(most)} what they are; then {Ends(live)}.{LetGo(live, Times)}",
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
            { End: HeadroomEnd.None } any => $"Any load may stand {at}: no judged check feels it.{LetGo(any, Force)}",
            { End: HeadroomEnd.Pulled, Most: null } pulled => $"No more load {at}: {Pulled(pulled)} as it is.",
            { Most: null } => $"No more load {at}: the beam tips as it is.",
            { Most: double most } force =>
                $"A load of {Force(most)} ({TextSafety.ForTerminal(heaviest!.Case)}) may "
                + $"stand {at}; then {Ends(force)}.{LetGo(force, Force)}",
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
            { End: HeadroomEnd.NotJudged, Most: null } length =>
                $"No length of the first bay was found that does: {First(length)} cannot be judged.",
            { End: HeadroomEnd.Pulled, Most: null } length => $"No length of the first bay was found that does: {Pulled(length)}.",
            { Most: null, Nearest: double nearest } length => "No length of the first bay was found that does; at "
                + $"{beam.Display.Say(nearest, QuantityKind.Length)}, which comes nearest of those tried, {First(length)} is used to "
                + $"{Share(length.First!.Utilisation!.Value)}.",
            { Most: null } length => $"No length of the first bay was found that does: {First(length)} stays over.",
            { Most: double most } length =>
                $"The first bay may be {beam.Display.SayAtMost(most, QuantityKind.Length)} {Least(length)}under these loads{Held(bay.Lateral)}; then "
                    + $"{Ends(length)}.",
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
                + $"the beam is used to {Share(one.Utilisation)}.{LetGo(one)}")],
            { FirstAlone.IsEmpty: false } =>
            [
                $"No place was found where one {prop} makes every judged check hold.",
                .. props.FirstAlone.Select(one => $"{Stretch(prop, one, first)}, and {Left(one)}.{LetGo(one)}"),
            ],
            { IfTied.IsEmpty: false } =>
            [
                $"No place was found where one {prop} makes every judged check hold and no support would have to be held down.",
                .. props.IfTied.Select(one => $"Tied down at its supports: {Lowered(Stretch(prop, one, "every judged check"))} and "
                    + $"the beam is used to {Share(one.Utilisation)}.{LetGo(one)}"),
            ],
            { First: null } => [$"No place was found where one {prop} makes every judged check hold."],
            _ => [$"No place was found where one {prop} makes {first} hold."],
        };
    }

    /// <summary>How the beam is held sideways with a prop; empty where nothing hangs on that.</summary>
    /// <param name="checks">The checks of the beam.</param>
    public string PropSideways(BeamChecks checks)
    {
        ArgumentNullException.ThrowIfNull(checks);
        bool isUnbraced = checks.All.Any(check => check.Figures.Kind == CheckKind.LateralStability);
        bool isBraced = checks.All.Any(check => CheckKindWords.IsOfStrength(check.Figures.Kind))
            && document.Spans.Any(span => StrengthRows.Lateral(span) is LateralSupport.Braced);
        return isUnbraced ? "A prop is not taken for a lateral support: the distances between those stay as typed."
            : isBraced ? "Over a prop the bottom is pressed: braced means that it is held there too."
            : "";
    }

    /// <summary>What modulus and inertia would be enough.</summary>
    /// <param name="needed">The answer.</param>
    public string Needed(NeededFigures needed)
    {
        ArgumentNullException.ThrowIfNull(needed);
        List<string> parts = [];
        if (needed.Modulus is ModulusNeed { Modulus: < double.PositiveInfinity } modulus)
        {
            string kind = modulus.IsPlastic ? "plastic section modulus" : "section modulus";
            parts.Add($"{kind} {beam.Display.SayAtLeast(modulus.Modulus, QuantityKind.SectionModulus)} for "
                + (needed.ModulusOf is SectionCheck of ? What(of) : CheckKindWords.Of(modulus.Kind)) + (needed.Lateral is null ? "" : " alone"));
        }

        if (needed.Inertia is double inertia)
        {
            string about = needed.IsInertiaExact ? "" : "about ";
            string sag = needed.InertiaOf is SectionCheck of ? What(of) : "deflection";
            parts.Add($"inertia {about}{beam.Display.SayAtLeast(inertia, QuantityKind.Inertia)} for {sag}");
        }

        string figures = parts.Count == 0 ? "" : $"Needed: {string.Join(", ", parts)}.";
        return string.Join(' ', new[] { figures, Beside(needed) }.Where(text => text.Length > 0));
    }

    private static string Beside(NeededFigures needed) => needed switch
    {
        { Modulus.Modulus: double.PositiveInfinity } => "The force along the beam alone is too much: no section modulus is enough.",
        { Lateral: CheckVerdict.Over } => "Lateral stability is over: a larger modulus alone does not tell whether it would hold.",
        { Lateral: CheckVerdict.NotJudged } => "Lateral stability is not judged and may need more.",
        _ => "",
    };

    /// <summary>What a check is about, as "bending of span 2".</summary>
    /// <param name="check">The check.</param>
    public string What(SectionCheck check) => new CheckWords(beam, document).Of(check).What;

    // Rounded inward, so that a prop at either place told holds.
    private string Stretch(string prop, PropStretch stretch, string what) =>
        $"A {prop} between {beam.Display.SayAtLeast(stretch.From, QuantityKind.Length)} and "
            + $"{beam.Display.SayAtMost(stretch.To, QuantityKind.Length)} makes {what} hold; at "
            + $"{beam.Display.Say(stretch.Best, QuantityKind.Length)} it carries "
            + beam.Display.SayAtLeast(stretch.Push, QuantityKind.Force);

    // With the prop bays and supports are counted otherwise, so that only the kind can be named.
    private static string KindOf(SectionCheck check) => CheckKindWords.Of(check.Kind);

    private static string Left(PropStretch stretch) => stretch.Left is { Utilisation: double used } check
        ? $"{KindOf(check)} is then used to {Share(used)}"
        : "the beam then tips";

    private string Least(Headroom length) =>
        length.Least is double least ? $"and no shorter than {beam.Display.SayAtLeast(least, QuantityKind.Length)} " : "";

    private string Held(BayLateral? lateral) => lateral switch
    {
        null => "",
        { IsWholeBay: true } => ", held sideways at its ends only",
        _ => $", with {beam.Display.Say(lateral.Unbraced, QuantityKind.Length)} between lateral supports, as typed",
    };

    private string Ends(Headroom headroom) => headroom.End switch
    {
        HeadroomEnd.Tips => "the beam tips",
        HeadroomEnd.Pulled => Pulled(headroom),
        HeadroomEnd.NotJudged => $"{First(headroom)} can no longer be judged",
        _ => $"{First(headroom)} is used up",
    };

    private string Pulled(Headroom headroom) => $"{beam.Supports[headroom.Support!.Value].Label} would have to be held down";

    // Legitimate, and another beam from there on.
    private string LetGo(Headroom headroom, Func<double, string> say) => string.Concat(
        headroom.LetGo.Select(one => $" From {say(one.From)} on {beam.Supports[one.Support].Label} lifts off."));

    private string LetGo(PropStretch stretch) =>
        (stretch.LetGo.IsEmpty ? "" : $" With it there {LiftsOff(stretch.LetGo)}.")
        + (stretch.LetGoNearAnEnd.IsEmpty ? "" : $" On a part of that stretch {LiftsOff(stretch.LetGoNearAnEnd)}.");

    private string LiftsOff(ImmutableArray<int> supports) =>
        $"{string.Join(" and ", supports.Select(support => beam.Supports[support].Label))} {(supports.Length == 1 ? "lifts" : "lift")} off";

    private static string Lowered(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..];

    private string First(Headroom headroom) =>
        headroom.First is SectionCheck check ? What(check) : "a check";

    private static string Named(ImmutableArray<string> cases) => cases is ["live"] or []
        ? ""
        : $" ({string.Join(", ", cases.Select(TextSafety.ForTerminal))})";

    private static string Share(double ratio) => ratio.ToString("0.00", CultureInfo.InvariantCulture);

    private string Force(double force) => beam.Display.SayAtMost(force, QuantityKind.Force);

    private string Times(double factor) => beam.Display.SayAtMost(factor, QuantityKind.Number) + " times";
}
