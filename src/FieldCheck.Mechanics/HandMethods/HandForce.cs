namespace FieldCheck.Mechanics.HandMethods;

/// <summary>A piece of a load as one force.</summary>
/// <param name="Load">Index of the load over all cases.</param>
/// <param name="Part">The piece, counted from 0.</param>
/// <param name="Size">Its size, not negative.</param>
/// <param name="Sense">Which way it acts: down, up, right or left.</param>
/// <param name="Place">Where it acts: a point, or the centre of what is spread.</param>
/// <param name="Spread">How it is spread; null for a point.</param>
internal sealed record HandForce(
    int Load, int Part, HandNumber Size, HandSense Sense, HandNumber Place, HandSpread? Spread)
{
    internal HandActor Actor => new HandActor.OfLoad(Load, Part);

    internal bool IsAcross => Sense is HandSense.Down or HandSense.Up;

    /// <summary>Its left end.</summary>
    internal HandNumber From => Spread?.From ?? Place;

    /// <summary>Its right end.</summary>
    internal HandNumber To => Spread?.To ?? Place;

    /// <summary>The force, positive up or to the right.</summary>
    internal HandFormula Signed => Sense is HandSense.Up or HandSense.Right ? Size : -(HandFormula)Size;
}

/// <summary>How a force is spread.</summary>
/// <param name="Shape">Uniform, rising or falling.</param>
/// <param name="From">Its left end.</param>
/// <param name="To">Its right end.</param>
/// <param name="Width">The length between.</param>
/// <param name="Intensity">Its greatest intensity, not negative.</param>
internal sealed record HandSpread(
    HandShape Shape, HandNumber From, HandNumber To, HandNumber Width, HandNumber Intensity);
