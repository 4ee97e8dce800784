using System.Collections.Immutable;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>One line of the working, without its words. Closed set: the cases are the nested records.</summary>
public abstract record HandLine
{
    private HandLine()
    {
    }

    /// <summary>A step begins.</summary>
    /// <param name="Title">What it does.</param>
    public sealed record Begins(HandStep Title) : HandLine;

    /// <summary>Something is said.</summary>
    /// <param name="What">What.</param>
    public sealed record Says(HandRemark What) : HandLine;

    /// <summary>A number is found.</summary>
    /// <param name="Number">The number, with the formula it follows from.</param>
    /// <param name="Sense">Which way it acts where its sign does not say so.</param>
    /// <param name="Actor">What it comes from, for one that has no name.</param>
    /// <param name="At">Where it acts, where that needs no line of its own.</param>
    public sealed record Finds(
        HandNumber Number, HandSense Sense = HandSense.None, HandActor? Actor = null, HandNumber? At = null) : HandLine;

    /// <summary>An unknown force stands in a sum of moments.</summary>
    /// <param name="Unknown">The unknown.</param>
    /// <param name="Arm">Its arm; null: it passes through the point.</param>
    /// <param name="Sense">Which way it turns when it is positive.</param>
    public sealed record Turns(HandName Unknown, HandNumber? Arm, HandSense Sense) : HandLine;

    /// <summary>Unknowns with what is known beside them come to nothing.</summary>
    /// <param name="Terms">The unknowns; one or more.</param>
    /// <param name="Together">All that is known.</param>
    public sealed record Balances(ImmutableArray<HandTerm> Terms, HandNumber Together) : HandLine;

    /// <summary>An equation is set up.</summary>
    /// <param name="Equation">The equation.</param>
    /// <param name="Row">Its number in a small system, counted from 1; 0: it stands alone.</param>
    public sealed record Sets(HandEquation Equation, int Row = 0) : HandLine;

    /// <summary>An unknown is expressed by others, to be put into the rows that follow.</summary>
    /// <param name="Unknown">The unknown.</param>
    /// <param name="Constant">Its part that is known.</param>
    /// <param name="Others">What is taken away from it: others with their coefficients.</param>
    /// <param name="Row">The row it comes from, counted from 1.</param>
    public sealed record Expresses(
        HandName Unknown,
        HandNumber Constant,
        ImmutableArray<HandTerm> Others,
        int Row) : HandLine;

    /// <summary>A sum that must come to nothing is formed.</summary>
    /// <param name="Sum">The sum.</param>
    /// <param name="Scale">Sum of the sizes of its terms [N or N·m]: what rounding is measured by.</param>
    public sealed record Closes(HandNumber Sum, double Scale) : HandLine;

    /// <summary>Shear and moment at every mark, in a table.</summary>
    /// <param name="All">The marks, left to right.</param>
    public sealed record Marks(ImmutableArray<HandMark> All) : HandLine;
}
