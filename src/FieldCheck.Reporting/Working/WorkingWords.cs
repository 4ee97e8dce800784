using System.Collections.Immutable;
using System.Diagnostics;
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
        ],
        _ => [],
    };

    /// <summary>Spans that were read off a tape in feet and inches, beside their decimals.</summary>
    private IEnumerable<string> SpansTyped() => _beam.Model.Spans
        .Select((span, i) => (Length: HandNumber.Given(span.Length, HandUnit.OfLength), Typed: _typed.OfSpan(i), Index: i))
        .Where(span => span.Typed.Length > 0)
        .Select(span => $"Span {span.Index + 1}: {_numbers.Say(span.Length)}{span.Typed}.");

    /// <summary>A remark in one or more sentences.</summary>
    internal ImmutableArray<string> Remark(HandRemark remark) => remark switch
    {
        HandRemark.SupportHolds holds => [SupportHolds(holds)],
        HandRemark.HingeTurns hinge =>
            [$"{Capital(WorkingNames.Hinge(hinge.Hinge))} at x = {_numbers.Say(hinge.Place)}: it turns freely, so the bending moment there is nothing."],
        HandRemark.Count count => Count(count),
        HandRemark.LoadLeftOut load => [$"{Capital(_names.LoadName(load.Load))} has no part in this combination."],
        HandRemark.LoadIs load => [LoadIs(load)],
        HandRemark.LoadLeans leans =>
            [$"{Capital(_names.LoadName(leans.Load))} is {_numbers.Say(leans.Size)}, leaning {_numbers.Say(leans.Lean)} from square to the beam, to the {(leans.Along == HandSense.Right ? "right" : "left")}: cosine for the part across, sine for the part along."],
        HandRemark.LoadIsCut cut =>
            [$"It reaches over {Places(cut.Cuts)}, where the beam is taken apart: cut there."],
        HandRemark.NothingAlong nothing => [NothingAlong(nothing)],
        HandRemark.HorizontalSum sum =>
            [$"To the right = to the left, with {_names.Of(sum.Unknown)} to the right:"],
        HandRemark.NoStretchBetween between => [NoStretch(between)],
        HandRemark.PushesSquare push => [PushesSquare(push)],
        HandRemark.PartUnknowns part =>
            [$"Unknown here: {List(part.Unknowns)}. Two unknowns, and two equations across: moments and vertical sum."],
        HandRemark.CarriesOver over => [CarriesOver(over)],
        HandRemark.MomentsAbout about => MomentsAbout(about),
        HandRemark.PassesThrough through => [PassesThrough(through)],
        HandRemark.VerticalSum sum => [$"Up = down, with {_names.Of(sum.Unknown)} up:"],
        HandRemark.SolvedTogether together =>
            [$"No single equation has one unknown only. {BeamWords.List([.. together.Unknowns.Select(_names.Of)])} follow from as many equations, by substitution."],
        HandRemark.VerticalRow row => [$"Vertical sum from {Place(row.From)} to {Place(row.To)}, up positive:"],
        HandRemark.HorizontalRow =>
            ["Horizontal sum of the whole beam. A sloped surface pushes along the beam by its vertical part times sine over cosine of its slope:"],
        HandRemark.ForcesClose { IsAlong: true } => ["Forces to the right less forces to the left:"],
        HandRemark.ForcesClose => ["Forces up less forces down:"],
        HandRemark.MomentsClose => ["Every force with its arm about this point, the reactions now as numbers:"],
        HandRemark.LetsGo lets => [LetsGo(lets)],
        HandRemark.PutsInto puts => [$"Put {_names.Of(puts.Unknown)} into row {puts.Row}:"],
        HandRemark.OutOfReach =>
            ["No hand method of this program reaches this beam. What follows takes the reactions from the stiffness method, says what each support then lets the beam do, and proves that they balance the loads."],
        HandRemark.Moves moves => [Moves(_names.Support(moves.Support), moves.How)],
        HandRemark.TurnsBy turns =>
            [$"{_names.Support(turns.Support)} yields in turning: turn = couple / stiffness (as a slope, the other way round):"],
        HandRemark.Stretch stretch => [Stretch(stretch)],
        HandRemark.Jumps jumps => [$"At {Place(jumps.Place)}, what stands there added:"],
        HandRemark.ZeroShear { Load: HandStretchLoad.Uniform } =>
            ["The shear changes its sign here: it is nothing where V = w s, and there the moment has a peak."],
        HandRemark.ZeroShear =>
            ["The shear changes its sign here: it is nothing where w s + k s^2 / 2 = V, that is at s = 2 V / (w + root(w^2 + 2 k V)), the root with the sign of V; there the moment has a peak."],
        HandRemark.LoadTurns => ["The load changes from down to up on this stretch: it is nothing at one place, a mark of its own."],
        HandRemark.EndsWithNothing => ["Behind the right end there is no beam: V and M must have come to nothing."],
        HandRemark.HingeIsFree hinge => [$"In {WorkingNames.Hinge(hinge.Hinge)} the moment must have come to nothing:"],
        HandRemark.AxialForces => ["Axial force N, tension positive: behind each force along the beam, less what acts to the right."],
        _ => ThreeMomentWords.Remark(remark, this),
    };

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

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private string Places(IEnumerable<HandNumber> places) => BeamWords.List([.. places.Select(Place)]);

    private string SupportHolds(HandRemark.SupportHolds holds)
    {
        NamedSupport support = _beam.Supports[holds.Support];
        string[] can = [.. holds.Unknowns.Select(name => $"{HoldWords(name, support.Support)} ({_names.Of(name)}{Parts(name)})")];
        string[] cannot = [.. Cannot(support.Support)];
        string does = can.Length == 0 ? "It gives nothing." : $"It {BeamWords.List(can)}.";
        string doesNot = cannot.Length == 0 ? "" : $" It cannot hold {BeamWords.List(cannot, "or")}.";
        return $"{support.Label}, {support.Kind}, at x = {_numbers.Say(holds.Place)}{_typed.OfSupport(holds.Support)}. {does}{doesNot}";
    }

    /// <summary>A push square to a slope is worked by its parts across and along.</summary>
    private string Parts(HandName name) => name.Role == HandRole.Normal
        ? $", in parts {_names.Of(new HandName(HandRole.Vertical, name.Index))} across and {_names.Of(new HandName(HandRole.Horizontal, name.Index))} along"
        : "";

    private static string HoldWords(HandName name, Support support) => name.Role switch
    {
        HandRole.Horizontal => "pushes or pulls along",
        HandRole.Couple => "holds against turning",
        HandRole.Normal => support.Action switch
        {
            SupportAction.PushesOnly => "only pushes, square to its surface",
            SupportAction.HoldsDownOnly => "only pulls, square to its surface",
            _ => "pushes or pulls square to its surface",
        },
        _ => support.Action switch
        {
            SupportAction.PushesOnly => "only pushes up",
            SupportAction.HoldsDownOnly => "only holds down",
            _ => "pushes up or holds down",
        },
    };

    private static IEnumerable<string> Cannot(Support support)
    {
        if (support.Along is Restraint.None)
        {
            yield return support.SurfaceSlope != 0 ? "along its surface" : "along the beam";
        }

        if (support.Across is Restraint.None)
        {
            yield return "up or down";
        }

        if (support.Rotation is Restraint.None)
        {
            yield return "against turning";
        }
    }

    private ImmutableArray<string> Count(HandRemark.Count count)
    {
        string hinges = count.Hinges == 0 ? "" : $", and one for each hinge ({count.Hinges})";
        string along = count.IsHeldAlong ? "along, across and turning" : "across and turning; along nothing holds it";
        return
        [
            $"Unknowns: {(count.Unknowns.IsEmpty ? "none" : List(count.Unknowns))}: {count.Unknowns.Length}.",
            $"Equations: {along}{hinges}: {count.Equations}.",
            Follows(count),
        ];
    }

    private static string Follows(HandRemark.Count count)
    {
        (int extraAlong, int extraAcross) = (count.DegreeAlong, count.Degree - count.DegreeAlong);
        return count switch
        {
            { CanMove: true, Degree: >= 0 } => "Enough in number, but not in the right places: it can move.",
            { Degree: < 0 } => "Fewer unknowns than equations: nothing is left to hold it, it can move.",
            { Degree: 0 } => "As many unknowns as equations: statics alone gives the reactions.",
            _ when extraAcross <= 0 =>
                $"Across, as many as equations: statics alone is enough there. Along, {Many(extraAlong)}: the stretch of the beam has to be asked too.",
            _ when extraAlong <= 0 => $"That is {Many(extraAcross)}: statics alone is not enough, the bending of the beam has to be asked too.",
            _ => $"That is {Many(extraAcross)} across, and {Many(extraAlong)} along: statics alone is not enough, the bending and the stretch of the beam have to be asked too.",
        };
    }

    private static string Many(int extra) => extra == 1 ? "one unknown too many" : $"{extra} unknowns too many";

    private string LoadIs(HandRemark.LoadIs load)
    {
        NamedLoad named = _names.Load(load.Load);
        return $"{Capital(_names.LoadInFull(load.Load))}: {new LoadWords(new BeamWords(_beam)).Size(named.Load)}"
            + $" from x = {_numbers.Say(load.From)}{_typed.OfLoad(named, isStart: true)}"
            + $" to x = {_numbers.Say(load.To)}{_typed.OfLoad(named, isStart: false)}.";
    }

    /// <summary>Where a load at one place was typed, in feet and inches; else empty.</summary>
    internal string PlaceTyped(HandActor? actor) =>
        actor is HandActor.Whole load ? _typed.OfLoad(_names.Load(load.Index), isStart: true) : "";

    private static string NothingAlong(HandRemark.NothingAlong nothing) => nothing.Supports.IsEmpty
        ? "Nothing acts along the beam, and nothing holds it that way: there is nothing to find."
        : "Nothing acts along the beam, so nothing pushes back: to the right = to the left = 0.";

    private string NoStretch(HandRemark.NoStretchBetween between)
    {
        string even = between.IsEven
            ? "With one E A all along, N times length adds up to nothing"
            : "N times length over E A adds up to nothing; a length counts by the first E A over its own";
        return $"{_names.Support(between.From)} and {_names.Support(between.To)} both hold along, so the beam between them keeps its length. {even}: N just right of {_names.Support(between.From)} is what acts between, each force times its distance to {_names.Support(between.To)}, over the whole distance.";
    }

    private string PushesSquare(HandRemark.PushesSquare push)
    {
        (string rises, string leans) = push.RisesRight ? ("right", "left") : ("left", "right");
        return $"The surface at {_names.Support(push.Support)} rises to the {rises}. It pushes square to itself: up by the cosine of its slope, to the {leans} by the sine.";
    }

    private string CarriesOver(HandRemark.CarriesOver over)
    {
        string name = _names.Of(new HandName(HandRole.HingeForce, over.Hinge));
        string sense = over.IsUp ? "up" : "down";
        return $"In {WorkingNames.Hinge(over.Hinge)} the neighbour was found to take {name}; this part gets the same force the other way round, {sense} where it is positive.";
    }

    private ImmutableArray<string> MomentsAbout(HandRemark.MomentsAbout about)
    {
        string place = Place(about.Point);
        string why = (about.IsAsked, about.DropsOut.IsEmpty) switch
        {
            (true, true) => "the point asked for; no unknown passes through it",
            (true, false) => $"the point asked for; {List(about.DropsOut)} {Pass(about.DropsOut.Length)} through it",
            (false, true) => "to begin with",
            _ => $"so that {List(about.DropsOut)} {Drop(about.DropsOut.Length)} out",
        };
        return [$"Moments about {place}, {why}. Force times arm, the arm being the distance from {place}:"];
    }

    private static string Moves(string support, HandMovement how) => how switch
    {
        HandMovement.None => $"{support} does not yield and does not settle: there the beam stays where it was.",
        HandMovement.AsItSettles => $"{support} does not yield: there the beam goes down by what it settles.",
        HandMovement.ByItsSpring => $"{support} yields: movement down = force / stiffness, and what it settles besides.",
        HandMovement.AlongItsSurface => $"At {support} the beam can slide along the surface; square to it, it moves only by what the support settles.",
        _ => throw new UnreachableException(),
    };

    private static string Pass(int count) => count == 1 ? "passes" : "pass";

    private static string Drop(int count) => count == 1 ? "drops" : "drop";

    private string PassesThrough(HandRemark.PassesThrough through)
    {
        string[] names = [.. through.Actors.Select(_names.Of)];
        return $"{Capital(BeamWords.List(names))} {Pass(names.Length)} through the point: no arm.";
    }

    private string LetsGo(HandRemark.LetsGo lets)
    {
        string[] labels = [.. lets.Supports.Select(_names.Support)];
        bool pushes = _beam.Supports[lets.Supports[0]].Support.Action == SupportAction.PushesOnly;
        string would = pushes ? "would have to pull the beam down, and it can only push" : "would have to push, and it can only hold down";
        return $"{BeamWords.List(labels)} {would}. It lets go: the working starts again without it.";
    }

    private string Stretch(HandRemark.Stretch stretch)
    {
        string place = $"From {Place(stretch.From)} to {Place(stretch.To)}";
        (string load, string rule) = stretch.Load switch
        {
            HandStretchLoad.Nothing => ("no load", "V stays, M grows by V times the length"),
            HandStretchLoad.Uniform =>
                ("an even load w", "V falls by w times the length, M grows by the mean V times the length"),
            HandStretchLoad.Varying =>
                ("a load from w left to w right", "V falls by the mean w times the length c, M grows by V c - (2 w left + w right) c^2 / 6"),
            _ => throw new UnreachableException(),
        };
        return stretch.IsFirst ? $"{place}, {load}: {rule}." : $"{place}, {load}:";
    }
}
