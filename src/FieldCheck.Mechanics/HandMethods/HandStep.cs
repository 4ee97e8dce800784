namespace FieldCheck.Mechanics.HandMethods;

/// <summary>What a step of the working does. Closed set: the cases are the nested records.</summary>
public abstract record HandStep
{
    private HandStep()
    {
    }

    /// <summary>The beam with what holds it, and unknowns counted against equations.</summary>
    public sealed record FreeBody : HandStep;

    /// <summary>Each load as one force at its centre.</summary>
    public sealed record Loads : HandStep;

    /// <summary>What acts along the beam.</summary>
    public sealed record Along : HandStep;

    /// <summary>One part of the beam, between two hinges or ends, by statics alone.</summary>
    /// <param name="From">Its left end.</param>
    /// <param name="To">Its right end.</param>
    /// <param name="IsWhole">True: it is the whole beam.</param>
    public sealed record Part(HandNumber From, HandNumber To, bool IsWhole) : HandStep;

    /// <summary>A sloped surface's push and its part along the beam.</summary>
    /// <param name="Support">Index of the support.</param>
    public sealed record Slope(int Support) : HandStep;

    /// <summary>Several unknowns that no single equation gives, by substitution.</summary>
    public sealed record Together : HandStep;

    /// <summary>Parts that statics alone cannot solve, by the three-moment equation.</summary>
    /// <param name="From">Left end of what is worked.</param>
    /// <param name="To">Its right end.</param>
    /// <param name="Degree">How many unknowns there are beyond the equations of statics.</param>
    public sealed record ThreeMoments(HandNumber From, HandNumber To, int Degree) : HandStep;

    /// <summary>Reactions from the answer, with where each support must come to lie.</summary>
    public sealed record Compatibility : HandStep;

    /// <summary>Support moments carried on to reactions.</summary>
    public sealed record ReactionsFromMoments : HandStep;

    /// <summary>The balance of the whole beam, about another point.</summary>
    /// <param name="About">The point.</param>
    public sealed record Proof(HandNumber About) : HandStep;

    /// <summary>What every support gives, beside the other method's figures.</summary>
    public sealed record Reactions : HandStep;

    /// <summary>Shear and moment from mark to mark.</summary>
    public sealed record AlongTheBeam : HandStep;

    /// <summary>Supports that can only act one way would have to act the other way, and go out.</summary>
    /// <param name="Round">How often that has happened, counted from 1.</param>
    public sealed record LiftOff(int Round) : HandStep;
}
