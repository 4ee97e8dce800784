using System.Collections.Immutable;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>What the working says between its numbers. Closed set: the cases are the nested records.</summary>
public abstract record HandRemark
{
    private HandRemark()
    {
    }

    /// <summary>A load has no part in this combination.</summary>
    /// <param name="Load">Index of the load over all cases.</param>
    public sealed record LoadLeftOut(int Load) : HandRemark;

    /// <summary>A load leans and is taken apart.</summary>
    /// <param name="Load">Index of the load over all cases.</param>
    /// <param name="Size">The whole force, without the combination's factor.</param>
    /// <param name="Lean">How far it leans from square to the beam.</param>
    /// <param name="Across">Which way its part across the beam acts.</param>
    /// <param name="Along">Which way its part along the beam acts.</param>
    public sealed record LoadLeans(int Load, HandNumber Size, HandNumber Lean, HandSense Across, HandSense Along)
        : HandRemark;

    /// <summary>A load reaches over places where the beam is taken apart, and is cut there.</summary>
    /// <param name="Load">Index of the load over all cases.</param>
    /// <param name="Cuts">The places.</param>
    public sealed record LoadIsCut(int Load, ImmutableArray<HandNumber> Cuts) : HandRemark;

    /// <summary>What an unknown was expressed by is put into another row.</summary>
    /// <param name="Unknown">The unknown.</param>
    /// <param name="Row">The row, counted from 1.</param>
    public sealed record PutsInto(HandName Unknown, int Row) : HandRemark;
}
