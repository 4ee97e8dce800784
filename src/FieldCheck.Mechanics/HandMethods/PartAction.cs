namespace FieldCheck.Mechanics.HandMethods;

/// <summary>A force across a part, or a couple on it.</summary>
/// <param name="Actor">What it comes from.</param>
/// <param name="Number">Its size; null: not known yet.</param>
/// <param name="IsPositive">True: where the number is positive it acts up, or counter-clockwise.</param>
/// <param name="Place">Where it acts.</param>
/// <param name="IsCouple">True: a couple, which has no arm.</param>
internal sealed record PartAction(
    HandActor Actor, HandNumber? Number, bool IsPositive, HandNumber Place, bool IsCouple)
{
    /// <summary>The name of a force or couple that a support or a hinge exerts.</summary>
    internal HandName Name => ((HandActor.Named)Actor).Name;

    /// <summary>A known one, positive up or counter-clockwise.</summary>
    internal HandFormula Signed => IsPositive ? Number! : -(HandFormula)Number!;

    internal static PartAction Force(HandName name, HandNumber? number, bool isUp, HandNumber place) =>
        new(new HandActor.Named(name), number, isUp, place, false);

    internal static PartAction Turn(HandName name, HandNumber? number, HandNumber place) =>
        new(new HandActor.Named(name), number, true, place, true);

    internal static PartAction Load(HandForce force) =>
        new(force.Actor, force.Size, force.Sense == HandSense.Up, force.Place, false);

    internal static PartAction Load(HandCouple couple) =>
        new(couple.Actor, couple.Size, couple.Sense == HandSense.CounterClockwise, couple.Place, true);
}
