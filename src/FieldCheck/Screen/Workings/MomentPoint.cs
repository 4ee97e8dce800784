using FieldCheck.Sheet.Building;

namespace FieldCheck.Screen.Workings;

/// <summary>The point that the working takes moments about; one that is a support goes where the support goes.</summary>
/// <param name="Position">Where it was chosen [m from the left end].</param>
/// <param name="Support">The label of the support that stands there; null: none does.</param>
internal sealed record MomentPoint(double Position, string? Support)
{
    /// <summary>The point at a place.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="position">The place [m from the left end].</param>
    internal static MomentPoint At(BuiltBeam beam, double position) => new(
        position, beam.Supports.FirstOrDefault(support => support.Support.Position == position)?.Label);

    /// <summary>Where it is on a beam that may be another meanwhile [m from the left end].</summary>
    /// <param name="beam">The beam.</param>
    internal double On(BuiltBeam beam) =>
        beam.Supports.FirstOrDefault(support => support.Label == Support)?.Support.Position
        ?? Math.Clamp(Position, 0, beam.Model.Length);

    /// <summary>The next support or hinge; past the last, none is chosen, and after none it is the first again.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="point">The point now; null: none is chosen.</param>
    /// <param name="right">True: to the right.</param>
    internal static MomentPoint? Next(BuiltBeam beam, MomentPoint? point, bool right)
    {
        double[] places =
        [
            .. beam.Model.Hinges.Concat(beam.Model.Supports.Select(support => support.Position)).Distinct().Order(),
        ];
        double here = point?.On(beam) ?? (right ? double.NegativeInfinity : double.PositiveInfinity);
        double[] further = [.. places.Where(place => right ? place > here : place < here)];
        return further.Length == 0 ? null : At(beam, right ? further[0] : further[^1]);
    }
}
