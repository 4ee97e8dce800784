using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>A couple that loads the beam.</summary>
/// <param name="Load">Index of the load over all cases.</param>
/// <param name="Size">Its size, not negative.</param>
/// <param name="Sense">Clockwise or counter-clockwise.</param>
/// <param name="Place">Where it acts.</param>
/// <param name="Side">At a hinge, the part that it turns.</param>
internal sealed record HandCouple(int Load, HandNumber Size, HandSense Sense, HandNumber Place, Side Side)
{
    internal HandActor Actor => new HandActor.OfLoad(Load, HandName.OnlyPart);

    /// <summary>The couple, positive counter-clockwise.</summary>
    internal HandFormula Signed => Sense == HandSense.CounterClockwise ? Size : -(HandFormula)Size;
}
