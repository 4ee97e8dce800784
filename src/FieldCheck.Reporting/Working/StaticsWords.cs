using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Reporting.Tables;

namespace FieldCheck.Reporting.Working;

/// <summary>What is said of sums of forces and moments, of slopes, and of what keeps its place.</summary>
internal static class StaticsWords
{
    /// <summary>A remark of its kind; null for any other.</summary>
    internal static ImmutableArray<string>? Of(HandRemark remark, WorkingWords words) => remark switch
    {
        HandRemark.NothingAlong nothing => [NothingAlong(nothing)],
        HandRemark.HorizontalSum sum => [$"To the right = to the left, with {words.Names.Of(sum.Unknown)} to the right:"],
        HandRemark.NoStretchBetween between => [NoStretch(between, words)],
        HandRemark.PushesSquare push => [PushesSquare(push, words)],
        HandRemark.PartUnknowns part =>
            [$"Unknown here: {words.List(part.Unknowns)}. Two unknowns, and two equations across: moments and vertical sum."],
        HandRemark.CarriesOver over => [CarriesOver(over, words)],
        HandRemark.MomentsAbout about => MomentsAbout(about, words),
        HandRemark.PassesThrough through => [PassesThrough(through, words)],
        HandRemark.VerticalSum sum => [$"Up = down, with {words.Names.Of(sum.Unknown)} up:"],
        HandRemark.SolvedTogether together =>
            [$"No single equation has one unknown only. {words.List(together.Unknowns)} follow from as many equations, by substitution."],
        HandRemark.VerticalRow row => [$"Vertical sum from {words.Place(row.From)} to {words.Place(row.To)}, up positive:"],
        HandRemark.HorizontalRow =>
            ["Horizontal sum of the whole beam. A sloped surface pushes along the beam by its vertical part times sine over cosine of its slope:"],
        HandRemark.PutsInto puts => [$"Put {words.Names.Of(puts.Unknown)} into row {puts.Row}:"],
        HandRemark.ForcesClose { IsAlong: true } => ["Forces to the right less forces to the left:"],
        HandRemark.ForcesClose => ["Forces up less forces down:"],
        HandRemark.MomentsClose => ["Every force with its arm about this point, the reactions now as numbers:"],
        HandRemark.OutOfReach reach =>
            [$"No hand method of this program reaches this beam: {Why(reach.Why)}. What follows takes the reactions from the stiffness method, says what each support then lets the beam do, and proves that they balance the loads."],
        HandRemark.StandsAtHinge stands =>
            [$"{WorkingWords.Capital(BeamWords.List([.. stands.Actors.Select(words.Names.Of)]))} at {WorkingNames.Hinge(stands.Hinge)} {(stands.Actors.Length == 1 ? "is" : "are")} taken with the part on its left."],
        HandRemark.TwoRows => ["So both equations have both unknowns. Row 1 is the vertical sum, row 2 the moments, what is known on the right:"],
        HandRemark.HoldsTheChange =>
            ["A support gives what N changes by over it: H = N left - N right, less what acts there to the right."],
        HandRemark.Moves moves => [Moves(words.Names.Support(moves.Support), moves.How)],
        HandRemark.TurnsBy turns =>
            [$"{words.Names.Support(turns.Support)} yields in turning: turn = couple / stiffness (as a slope, the other way round):"],
        _ => null,
    };

    private static string NothingAlong(HandRemark.NothingAlong nothing) => nothing.Supports.IsEmpty
        ? "Nothing acts along the beam, and nothing holds it that way: there is nothing to find."
        : "Nothing acts along the beam, so nothing pushes back: to the right = to the left = 0.";

    private static string NoStretch(HandRemark.NoStretchBetween between, WorkingWords words)
    {
        (string left, string right) = (words.Names.Support(between.From), words.Names.Support(between.To));
        string counted = between.IsEven ? "" : " A length counts by n, the first EA over its own.";
        return $"{left} and {right} both hold along, so the beam between them keeps its length: the sum of N times length over EA is nothing. So N just right of {left} is each force between them times its distance to {right}, together, over the whole distance.{counted}";
    }

    private static string Why(HandObstacle why) => why switch
    {
        HandObstacle.SlopesTied =>
            "where statics is not enough, more than one sloped surface, or one besides several supports that hold along, ties bending and stretch together",
        _ => "what settles, yields or slopes asks for stiffnesses that are not known",
    };

    private static string PushesSquare(HandRemark.PushesSquare push, WorkingWords words)
    {
        (string rises, string leans) = push.RisesRight ? ("right", "left") : ("left", "right");
        return $"The surface at {words.Names.Support(push.Support)} rises to the {rises}. It pushes square to itself: up by the cosine of its slope, to the {leans} by the sine.";
    }

    private static string CarriesOver(HandRemark.CarriesOver over, WorkingWords words)
    {
        string name = words.Names.Of(new HandName(HandRole.HingeForce, over.Hinge));
        string sense = over.IsUp ? "up" : "down";
        return $"In {WorkingNames.Hinge(over.Hinge)} the neighbour was found to take {name}; this part gets the same force the other way round, {sense} where it is positive.";
    }

    private static ImmutableArray<string> MomentsAbout(HandRemark.MomentsAbout about, WorkingWords words)
    {
        string place = words.Place(about.Point);
        string why = (about.IsAsked, about.DropsOut.IsEmpty) switch
        {
            (true, true) => "the point asked for; no unknown passes through it",
            (true, false) => $"the point asked for; {words.List(about.DropsOut)} {Pass(about.DropsOut.Length)} through it",
            (false, true) => "to begin with",
            _ => $"so that {words.List(about.DropsOut)} {Drop(about.DropsOut.Length)} out",
        };
        return [$"Moments about {place}, {why}. Force times arm, the arm being the distance from {place}:"];
    }

    private static string Moves(string support, HandMovement how) => how switch
    {
        HandMovement.None => $"{support} does not yield and does not settle: there the beam stays where it was.",
        HandMovement.AsItSettles => $"{support} does not yield: there the beam goes down by what it settles.",
        HandMovement.ByItsSpring => $"{support} yields: movement down = force / stiffness, and what it settles besides.",
        HandMovement.AlongItsSurface => $"At {support} the beam can slide along the surface: its movement down times the cosine, and to the right times the sine, together are what the support settles, nothing if it does not.",
        _ => throw new UnreachableException(),
    };

    private static string Pass(int count) => count == 1 ? "passes" : "pass";

    private static string Drop(int count) => count == 1 ? "drops" : "drop";

    private static string PassesThrough(HandRemark.PassesThrough through, WorkingWords words)
    {
        string[] names = [.. through.Actors.Select(words.Names.Of)];
        return $"{WorkingWords.Capital(BeamWords.List(names))} {Pass(names.Length)} through the point: no arm.";
    }
}
