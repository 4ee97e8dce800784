using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Checks;

/// <summary>Why stated figures may differ. Closed set: the cases are the nested records.</summary>
public abstract record Diagnosis
{
    private Diagnosis()
    {
    }

    /// <summary>Every figure is the computed one as it was rounded: there is nothing to explain.</summary>
    public sealed record Agrees : Diagnosis;

    /// <summary>The beam does not stand under the combination, so nothing can be held against it.</summary>
    public sealed record NotComputed : Diagnosis;

    /// <summary>The figures differ.</summary>
    /// <param name="Explanations">
    /// What gives them, the likeliest first, fitted ones last; may be empty.
    /// </param>
    /// <param name="Difference">By how much they differ.</param>
    public sealed record Differs(ImmutableArray<Explanation> Explanations, StatedDifference Difference) : Diagnosis
    {
        /// <summary>
        /// Share of unrelated errors that some explanation would claim as well [–]; null where none is told, fitted ones
        /// apart.
        /// </summary>
        public double? FalseClaimRate { get; init; }

        /// <summary>False: the beam is so large that some slips were not tried.</summary>
        public bool IsEverySlipTried { get; init; } = true;
    }
}
