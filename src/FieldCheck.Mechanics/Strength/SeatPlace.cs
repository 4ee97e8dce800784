using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Where a support stands on the stick, for rules on bearing. A stick ends where the beam does, and at a hinge.</summary>
/// <param name="Position">Its place [m from the left end].</param>
/// <param name="ToEnd">From it to the nearer end of the stick [m].</param>
/// <param name="ShortestBay">The shortest bay beside it [m]; infinite where there is none.</param>
/// <param name="ToFarEnd">From it to the other end of the stick [m].</param>
/// <param name="ToHinge">From it to the nearest hinge [m]; infinite where there is none.</param>
internal readonly record struct SeatPlace(
    double Position,
    double ToEnd,
    double ShortestBay,
    double ToFarEnd = double.PositiveInfinity,
    double ToHinge = double.PositiveInfinity)
{
    /// <summary>The place of a support.</summary>
    /// <param name="model">The beam.</param>
    /// <param name="bays">Its bays.</param>
    /// <param name="at">Where the support stands [m from the left end].</param>
    internal static SeatPlace Of(BeamModel model, Bays bays, double at)
    {
        double left = at - model.Hinges.Where(hinge => hinge < at).Append(0).Max();
        double right = model.Hinges.Where(hinge => hinge > at).Append(model.Length).Min() - at;
        double hinge = model.Hinges.Select(one => Math.Abs(one - at)).Append(double.PositiveInfinity).Min();
        return new(
            at,
            Math.Min(hinge, Math.Min(left, right)),
            bays.Between
                .Where(bay => bay.From == at || bay.To == at)
                .Select(bay => bay.To - bay.From)
                .DefaultIfEmpty(double.PositiveInfinity)
                .Min(),
            Math.Max(left, right),
            hinge);
    }

    /// <summary>Whether a hinge stands on a bearing of some length, so that two sticks share it.</summary>
    /// <param name="length">Length of the bearing [m]; null: not known, and only a hinge at its middle surely does.</param>
    internal bool HasHingeWithin(double? length) => ToHinge == 0 || ToHinge < length / 2 * (1 - 1e-9);
}
