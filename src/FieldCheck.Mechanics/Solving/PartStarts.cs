namespace FieldCheck.Mechanics.Solving;

/// <summary>
/// Of an answer the reactions and the state at the left end of each element, as far as it reaches; beyond, all is nothing.
/// </summary>
/// <param name="FirstSupport">The first support that it reaches.</param>
/// <param name="Reactions">Of each support from there on the reaction right, up and turning.</param>
/// <param name="FirstElement">The first element that it reaches.</param>
/// <param name="States">Of each element from there on N, V, M, turn and rise at its left end.</param>
internal sealed record PartStarts(int FirstSupport, double[] Reactions, int FirstElement, double[] States)
{
    /// <summary>Figures a support.</summary>
    internal const int ASupport = 3;

    /// <summary>Figures an element.</summary>
    internal const int AnElement = 5;

    /// <summary>The first support after all that it reaches.</summary>
    internal int EndSupport => FirstSupport + Reactions.Length / ASupport;

    /// <summary>The first element after all that it reaches.</summary>
    internal int EndElement => FirstElement + States.Length / AnElement;

    /// <summary>A part of a reaction.</summary>
    internal double Reaction(int support, int part) => support >= FirstSupport && support < EndSupport
        ? Reactions[ASupport * (support - FirstSupport) + part]
        : 0;

    /// <summary>N, V, M, turn or rise at the left end of an element.</summary>
    internal double State(int element, int state) => element >= FirstElement && element < EndElement
        ? States[AnElement * (element - FirstElement) + state]
        : 0;
}
