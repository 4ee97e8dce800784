namespace FieldCheck.Mechanics.HandMethods;

/// <summary>What a term of an equation comes from. Closed set: the cases are the nested records.</summary>
public abstract record HandActor
{
    private HandActor()
    {
    }

    /// <summary>A piece of a load.</summary>
    /// <param name="Index">Index of the load over all cases, in their order.</param>
    /// <param name="Part">The piece, counted from 0.</param>
    public sealed record OfLoad(int Index, int Part) : HandActor;

    /// <summary>A load as it is given, at one place.</summary>
    /// <param name="Index">Index of the load over all cases, in their order.</param>
    public sealed record Whole(int Index) : HandActor;

    /// <summary>A force or couple that has a name.</summary>
    /// <param name="Name">Its name.</param>
    public sealed record Named(HandName Name) : HandActor;

    /// <summary>What an unknown is multiplied with in a row.</summary>
    /// <param name="Unknown">The unknown.</param>
    public sealed record Coefficient(HandName Unknown) : HandActor;

    /// <summary>What is known in a row.</summary>
    public sealed record RightSide : HandActor;

    /// <summary>All that is known in an equation.</summary>
    public sealed record Together : HandActor;
}
