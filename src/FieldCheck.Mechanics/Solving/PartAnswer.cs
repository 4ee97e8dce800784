using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Solving;

/// <summary>The answer to a part of the loads alone, as far as it reaches.</summary>
/// <param name="FirstSupport">The first support that it reaches.</param>
/// <param name="Reactions">The reactions from there on; all others are nothing.</param>
/// <param name="FirstPiece">The first piece that it reaches, of the grid of all parts.</param>
/// <param name="Pieces">The pieces from there on; on all others everything is nothing.</param>
internal sealed record PartAnswer(
    int FirstSupport, ImmutableArray<Reaction> Reactions, int FirstPiece, ImmutableArray<Piece> Pieces)
{
    private static readonly Reaction Nothing = new(0, 0, 0, null, false);

    /// <summary>The reaction of any support.</summary>
    internal Reaction ReactionOf(int support)
    {
        int at = support - FirstSupport;
        return at >= 0 && at < Reactions.Length ? Reactions[at] : Nothing;
    }
}
