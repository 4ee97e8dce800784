using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Response;

/// <summary>How the beam answers one case or combination: exact polynomial pieces, reactions and their proof.</summary>
public sealed record BeamResponse
{
    /// <summary>One reaction for each support of the model, in its order.</summary>
    public required ImmutableArray<Reaction> Reactions { get; init; }

    /// <summary>The balance of loads and reactions.</summary>
    public required EquilibriumProof Proof { get; init; }

    /// <summary>Internal forces and movements just left and just right of a place.</summary>
    /// <param name="position">Distance from the left end [m]; within the beam.</param>
    /// <returns>The two states; at an end, outside counts as nothing (zero forces).</returns>
    public (SectionState Left, SectionState Right) At(double position) => throw new NotImplementedException();

    /// <summary>Greatest and least value of a quantity, from the roots of its derivative, never from sampling.</summary>
    /// <param name="curve">The quantity.</param>
    public Extremes ExtremesOf(Curve curve) => throw new NotImplementedException();

    /// <summary>Places strictly inside the beam where a quantity passes through or touches zero, jumps included [m].</summary>
    /// <param name="curve">The quantity.</param>
    public ImmutableArray<double> ZerosOf(Curve curve) => throw new NotImplementedException();

    /// <summary>Ends of the polynomial pieces [m], increasing: 0 first, the beam's length last.</summary>
    public ImmutableArray<double> Breaks => throw new NotImplementedException();

    /// <summary>Every local greatest and least value of a quantity, left to right; both sides of a jump count.</summary>
    /// <param name="curve">The quantity.</param>
    public ImmutableArray<Extreme> PeaksOf(Curve curve) => throw new NotImplementedException();
}
