using System.Collections.Immutable;
using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting.Working;

/// <summary>The sentences of a working: names of steps, and what is said between the numbers.</summary>
internal sealed class WorkingWords
{
    private readonly BuiltBeam _beam;
    private readonly WorkingNames _names;
    private readonly CarriedNumbers _numbers;
    private readonly PlacesTyped _typed;

    internal WorkingWords(BuiltBeam beam, WorkingNames names, CarriedNumbers numbers, PlacesTyped typed)
    {
        _beam = beam;
        _names = names;
        _numbers = numbers;
        _typed = typed;
    }

    internal BuiltBeam Beam => _beam;

    internal PlacesTyped Typed => _typed;

    internal WorkingNames Names => _names;

    internal CarriedNumbers Numbers => _numbers;

    /// <summary>The name of a step.</summary>
    internal string Step(HandStep step) => step switch
    {
        HandStep.FreeBody => "The beam set free, and what holds it",
        HandStep.Loads => "Each load as one force at its own centre",
        HandStep.Compatibility => "Reactions taken from the answer, and where the beam must lie",
        HandStep.Along => "Forces along the beam",
        HandStep.Part { IsWhole: true } => "The whole beam: moments, then the vertical sum",
        HandStep.Part part => $"The part from {Place(part.From)} to {Place(part.To)}: moments, then the vertical sum",
        HandStep.Slope slope => $"The sloped surface at {_names.Support(slope.Support)}",
        HandStep.Together => "Several unknowns together",
        HandStep.Proof proof => $"Proof: moments about another point, {Place(proof.About)}",
        HandStep.Reactions => "What the supports give",
        HandStep.AlongTheBeam => "Shear and moment along the beam",
        HandStep.LiftOff { Round: 1 } => "A support lets go: start again without it",
        HandStep.LiftOff => "Another support lets go: start again without it",
        _ => ThreeMomentWords.Step(step, this),
    };

    /// <summary>Units and signs, before anything else.</summary>
    internal IEnumerable<string> Conventions()
    {
        HandFigures figures = _numbers.Figures;
        string spread = figures.UnitOf(HandUnit.OfIntensity);
        string thousand = figures.System == UnitSystem.Us ? " (1 kip = 1000 lbf)" : "";
        return
        [
            $"Forces in {figures.UnitOf(HandUnit.OfForce)}{thousand}, lengths in {figures.UnitOf(HandUnit.OfLength)}, moments in {figures.UnitOf(HandUnit.OfMoment)}, spread loads in {spread}. x runs to the right from the left end.",
            "Up, to the right and counter-clockwise (ccw; clockwise is cw) are positive. V is what pushes up left of a cut; M is positive where the beam sags, N where it is pulled.",
        ];
    }

    /// <summary>What a step begins with.</summary>
    internal IEnumerable<string> Opening(HandStep step) => step switch
    {
        HandStep.FreeBody => SpansTyped(),
        HandStep.Loads when _beam.Loads.Any(load => load.Load is Load.Distributed) =>
        [
            "A spread load counts as one force at its centre: in the middle of an even one, a third from the large end of a triangle. Any other is split into these.",
            "W is a force across and x where it acts; w is an intensity, c the length it is spread on, d a difference of intensities. P is a force along, T a couple.",
        ],
        HandStep.ThreeMoments => ThreeMomentOpening(),
        _ => [],
    };

    private IEnumerable<string> ThreeMomentOpening()
    {
        yield return "L is the length of a bay, which is named by its two ends. M over a place is the bending moment there; where it jumps, ML is just left and MR just right of it. y is EI of the first bay times the movement down, nothing over a firm support that does not settle.";
        if (_beam.Model.Spans.Select(span => span.FlexuralRigidity).Distinct().Count() > 1)
        {
            yield return "Sections differ: n is EI of the first bay over EI of the bay, and Lr = n L.";
        }

        if (_beam.Model.Spans.Any(span => span.ShearRigidity is not null))
        {
            yield return "GA resists shear: g = 6 EI of the first bay / (GA L).";
        }
    }

    /// <summary>Spans that were read off a tape in feet and inches, beside their decimals.</summary>
    private IEnumerable<string> SpansTyped() => _beam.Model.Spans
        .Select((span, i) => (Length: HandNumber.Given(span.Length, HandUnit.OfLength), Typed: _typed.OfSpan(i), Index: i))
        .Where(span => span.Typed.Length > 0)
        .Select(span => $"Span {span.Index + 1}: {_numbers.Say(span.Length)}{span.Typed}.");

    /// <summary>A remark in one or more sentences.</summary>
    internal ImmutableArray<string> Remark(HandRemark remark) => FreeBodyWords.Of(remark, this)
        ?? StaticsWords.Of(remark, this)
        ?? SectionForceWords.Of(remark, this)
        ?? ThreeMomentWords.Remark(remark, this);

    /// <summary>A place: the label of the support or hinge that stands there, else its distance.</summary>
    internal string Place(HandNumber place)
    {
        NamedSupport? support = _beam.Supports.FirstOrDefault(one => one.Support.Position == place.Value);
        int hinge = _beam.Model.Hinges.IndexOf(place.Value);
        return support?.Label
            ?? (hinge >= 0 ? WorkingNames.Hinge(hinge)
                : place.Value == 0 ? "the left end"
                : place.Value == _beam.Model.Length ? "the right end"
                : $"x = {_numbers.Say(place)}");
    }

    internal string List(IEnumerable<HandName> names) => BeamWords.List([.. names.Select(_names.Of)]);

    internal static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    internal string Places(IEnumerable<HandNumber> places) => BeamWords.List([.. places.Select(Place)]);

    /// <summary>The size of a load at one place as typed, as ", 850 lbf", where it is not in the units of the working.</summary>
    internal string SizeTyped(HandActor actor)
    {
        string typed = actor is HandActor.Whole load ? _typed.SizeOf(_names.Load(load.Index)) : "";
        string unit = typed[(typed.LastIndexOf(' ') + 1)..];
        bool isShown = unit == _numbers.Figures.UnitOf(HandUnit.OfForce) || unit == _numbers.Figures.UnitOf(HandUnit.OfMoment);
        return typed.Length == 0 || isShown ? "" : $", {typed}";
    }

    /// <summary>Where a load at one place was typed, in feet and inches; else empty.</summary>
    internal string PlaceTyped(HandActor? actor) =>
        actor is HandActor.Whole load ? _typed.OfLoad(_names.Load(load.Index), isStart: true) : "";

}
