using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>What the working says between its numbers. Closed set: the cases are the nested records.</summary>
public abstract partial record HandRemark
{
    private HandRemark()
    {
    }

    /// <summary>A load has no part in this combination.</summary>
    /// <param name="Load">Index of the load over all cases.</param>
    public sealed record LoadLeftOut(int Load) : HandRemark;

    /// <summary>A spread load, as it is given.</summary>
    /// <param name="Load">Index of the load over all cases.</param>
    /// <param name="From">Its left end.</param>
    /// <param name="To">Its right end.</param>
    public sealed record LoadIs(int Load, HandNumber From, HandNumber To) : HandRemark;

    /// <summary>The factor of a load is negative: it acts the other way round.</summary>
    /// <param name="Load">Index of the load over all cases.</param>
    public sealed record LoadTurned(int Load) : HandRemark;

    /// <summary>A load is split in an even piece and a triangle, or in two triangles.</summary>
    /// <param name="Load">Index of the load over all cases.</param>
    /// <param name="First">Its first piece, counted from 0.</param>
    /// <param name="Shapes">The shapes, in order.</param>
    public sealed record LoadIsSplit(int Load, int First, ImmutableArray<HandShape> Shapes) : HandRemark;

    /// <summary>A couple at a hinge turns the part on one side of it.</summary>
    /// <param name="Load">Index of the load over all cases.</param>
    /// <param name="Side">Which part.</param>
    public sealed record TurnsSide(int Load, Side Side) : HandRemark;

    /// <summary>No load stands in this combination.</summary>
    public sealed record NoLoads : HandRemark;

    /// <summary>Forces that stand exactly at a hinge are taken with the part on its left.</summary>
    /// <param name="Hinge">Index of the hinge.</param>
    /// <param name="Actors">The forces.</param>
    public sealed record StandsAtHinge(int Hinge, ImmutableArray<HandActor> Actors) : HandRemark;

    /// <summary>Two equations with the same two unknowns: the vertical sum and the moments, as two rows.</summary>
    public sealed record TwoRows : HandRemark;

    /// <summary>What a support holds along is what the axial force changes by over it.</summary>
    public sealed record HoldsTheChange : HandRemark;

    /// <summary>A load leans and is taken apart.</summary>
    /// <param name="Load">Index of the load over all cases.</param>
    /// <param name="Size">The whole force, without the combination's factor.</param>
    /// <param name="Lean">How far it leans from square to the beam.</param>
    /// <param name="Along">Which way its part along the beam acts.</param>
    public sealed record LoadLeans(int Load, HandNumber Size, HandNumber Lean, HandSense Along) : HandRemark;

    /// <summary>A load reaches over places where the beam is taken apart, and is cut there.</summary>
    /// <param name="Load">Index of the load over all cases.</param>
    /// <param name="Cuts">The places.</param>
    public sealed record LoadIsCut(int Load, ImmutableArray<HandNumber> Cuts) : HandRemark;

    /// <summary>What a support can push and what it cannot.</summary>
    /// <param name="Support">Index of the support.</param>
    /// <param name="Place">Where it stands.</param>
    /// <param name="Unknowns">What it gives that is not known.</param>
    public sealed record SupportHolds(int Support, HandNumber Place, ImmutableArray<HandName> Unknowns) : HandRemark;

    /// <summary>A hinge turns freely: the bending moment there is nothing.</summary>
    /// <param name="Hinge">Index of the hinge.</param>
    /// <param name="Place">Where it is.</param>
    public sealed record HingeTurns(int Hinge, HandNumber Place) : HandRemark;

    /// <summary>Unknowns counted against equations.</summary>
    /// <param name="Unknowns">What is not known.</param>
    /// <param name="Hinges">How many hinges give an equation each.</param>
    /// <param name="CountsAlong">
    /// False: nothing holds the beam lengthways and nothing acts that way, and that equation is left out.
    /// </param>
    /// <param name="CanMove">True: however many there are, the beam can move.</param>
    public sealed record Count(ImmutableArray<HandName> Unknowns, int Hinges, bool CountsAlong, bool CanMove)
        : HandRemark
    {
        /// <summary>Equations: across, turning, along if it counts, and one for each hinge.</summary>
        public int Equations => (CountsAlong ? 3 : 2) + Hinges;

        /// <summary>True: a sloped surface ties along and across together.</summary>
        public bool IsTied => Unknowns.Any(name => name.Role == HandRole.Normal);

        /// <summary>How many of the unknowns beyond the equations lie along; 0 where a sloped surface ties both.</summary>
        public int DegreeAlong => IsTied || !CountsAlong
            ? 0
            : Unknowns.Count(name => name.Role == HandRole.Horizontal) - 1;

        /// <summary>How many lie across, or, where a sloped surface ties both, in all.</summary>
        public int DegreeAcross => Degree - DegreeAlong;

        /// <summary>Unknowns beyond the equations; negative where they do not suffice to hold the beam.</summary>
        public int Degree => Unknowns.Length - Equations;
    }

    /// <summary>Nothing acts along the beam, so nothing is needed to hold it that way.</summary>
    /// <param name="Supports">Indices of the supports that could.</param>
    public sealed record NothingAlong(ImmutableArray<int> Supports) : HandRemark;

    /// <summary>What acts along the beam adds up to nothing; one support alone holds it that way.</summary>
    /// <param name="Unknown">What is found.</param>
    public sealed record HorizontalSum(HandName Unknown) : HandRemark;

    /// <summary>Several supports hold the beam lengthways: between each two the stretch adds up to nothing.</summary>
    /// <param name="From">Index of the support at the left.</param>
    /// <param name="To">Index of the one at the right.</param>
    /// <param name="IsEven">True: the axial rigidity is the same all along, and drops out.</param>
    public sealed record NoStretchBetween(int From, int To, bool IsEven) : HandRemark;

    /// <summary>A sloped surface pushes square to itself.</summary>
    /// <param name="Support">Index of the support.</param>
    /// <param name="RisesRight">True: the surface rises to the right, so the push leans to the left.</param>
    public sealed record PushesSquare(int Support, bool RisesRight) : HandRemark;

    /// <summary>The unknowns of a part between hinges are few enough for its two equations.</summary>
    /// <param name="Unknowns">The two.</param>
    public sealed record PartUnknowns(ImmutableArray<HandName> Unknowns) : HandRemark;

    /// <summary>A hinge force found on the neighbour acts on this part the other way round.</summary>
    /// <param name="Hinge">Index of the hinge.</param>
    /// <param name="IsUp">True: positive, it lifts this part.</param>
    public sealed record CarriesOver(int Hinge, bool IsUp) : HandRemark;

    /// <summary>The point that moments are taken about, and why.</summary>
    /// <param name="Point">The point.</param>
    /// <param name="IsAsked">True: the person chose it.</param>
    /// <param name="DropsOut">Unknowns that pass through it.</param>
    public sealed record MomentsAbout(HandNumber Point, bool IsAsked, ImmutableArray<HandName> DropsOut) : HandRemark;

    /// <summary>What passes through the point and has no arm.</summary>
    /// <param name="Actors">Loads and forces.</param>
    public sealed record PassesThrough(ImmutableArray<HandActor> Actors) : HandRemark;

    /// <summary>What acts across adds up to nothing.</summary>
    /// <param name="Unknown">What is found.</param>
    public sealed record VerticalSum(HandName Unknown) : HandRemark;

    /// <summary>No single equation gives one unknown: so many are solved together.</summary>
    /// <param name="Unknowns">The unknowns.</param>
    public sealed record SolvedTogether(ImmutableArray<HandName> Unknowns) : HandRemark;

    /// <summary>The row of the vertical sum of a part.</summary>
    /// <param name="From">Left end of the part.</param>
    /// <param name="To">Its right end.</param>
    public sealed record VerticalRow(HandNumber From, HandNumber To) : HandRemark;

    /// <summary>The row of the horizontal sum: a sloped surface's part along is its vertical part times the slope's tangent.</summary>
    public sealed record HorizontalRow : HandRemark;

    /// <summary>Forces across or along, taken together, must come to nothing.</summary>
    /// <param name="IsAlong">True: along the beam.</param>
    public sealed record ForcesClose(bool IsAlong) : HandRemark;

    /// <summary>Moments about a point must come to nothing.</summary>
    /// <param name="Point">The point.</param>
    public sealed record MomentsClose(HandNumber Point) : HandRemark;

    /// <summary>A support would have to act as it cannot, and goes out with all that it holds.</summary>
    /// <param name="Support">Index of the support.</param>
    /// <param name="IsWorst">True: others would have to as well, but by less.</param>
    public sealed record LetsGo(int Support, bool IsWorst) : HandRemark;

    /// <summary>What every support gives.</summary>
    public sealed record Reactions : HandRemark;

    /// <summary>The reactions are beyond these methods: they are taken from the answer, and put to the proof.</summary>
    /// <param name="Why">Why no method serves.</param>
    public sealed record OutOfReach(HandObstacle Why) : HandRemark;

    /// <summary>How a support lets the beam move.</summary>
    /// <param name="Support">Index of the support.</param>
    /// <param name="How">How.</param>
    public sealed record Moves(int Support, HandMovement How) : HandRemark;

    /// <summary>A support turns by its couple over its stiffness.</summary>
    /// <param name="Support">Index of the support.</param>
    public sealed record TurnsBy(int Support) : HandRemark;

    /// <summary>A stretch between two marks begins.</summary>
    /// <param name="From">Its left end.</param>
    /// <param name="To">Its right end.</param>
    /// <param name="Load">What lies on it.</param>
    /// <param name="IsFirst">True: it is the first of its kind, and the rule is told.</param>
    public sealed record Stretch(HandNumber From, HandNumber To, HandStretchLoad Load, bool IsFirst) : HandRemark;

    /// <summary>Shear and moment jump at a mark by what stands there.</summary>
    /// <param name="Place">The mark.</param>
    /// <param name="HasForces">True: forces stand there.</param>
    /// <param name="HasCouples">True: couples stand there.</param>
    public sealed record Jumps(HandNumber Place, bool HasForces, bool HasCouples) : HandRemark;

    /// <summary>Shear goes through zero inside a stretch: there the moment has a peak.</summary>
    /// <param name="Load">What lies on the stretch.</param>
    /// <param name="From">Left end of the stretch.</param>
    public sealed record ZeroShear(HandStretchLoad Load, HandNumber From) : HandRemark;

    /// <summary>The load on a stretch changes its sense: it is nothing at one place.</summary>
    public sealed record LoadTurns : HandRemark;

    /// <summary>Behind the right end there is no beam: shear and moment must have come to nothing.</summary>
    public sealed record EndsWithNothing : HandRemark;

    /// <summary>In a hinge the moment must have come to nothing.</summary>
    /// <param name="Hinge">Index of the hinge.</param>
    public sealed record HingeIsFree(int Hinge) : HandRemark;

    /// <summary>Axial force from mark to mark.</summary>
    public sealed record AxialForces : HandRemark;

    /// <summary>What an unknown was expressed by is put into another row.</summary>
    /// <param name="Unknown">The unknown.</param>
    /// <param name="Row">The row, counted from 1.</param>
    public sealed record PutsInto(HandName Unknown, int Row) : HandRemark;
}
