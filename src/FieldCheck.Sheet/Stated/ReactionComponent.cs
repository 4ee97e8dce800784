using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Stated;

/// <summary>One component of a reaction, as the beam file names it.</summary>
/// <param name="Part">Which part of a reaction.</param>
/// <param name="Name">Its name: vertical, horizontal or moment.</param>
/// <param name="Kind">What a text that states it must be: a force or a moment.</param>
/// <param name="Positive">Which way a positive one acts on the beam, in words.</param>
/// <param name="Negative">Which way a negative one acts.</param>
/// <param name="Value">Its value in a reaction [N or N·m].</param>
/// <param name="Text">What a row states of it, as typed; null where nothing stands.</param>
/// <param name="IsGivenBy">Whether a support can give it.</param>
public sealed record ReactionComponent(
    ReactionPart Part,
    string Name,
    QuantityKind Kind,
    string Positive,
    string Negative,
    Func<Reaction, double> Value,
    Func<StatedEntry, string?> Text,
    Func<Support, bool> IsGivenBy)
{
    /// <summary>Across the beam, positive up.</summary>
    public static ReactionComponent Vertical { get; } = new(
        ReactionPart.Vertical, "vertical", QuantityKind.Force, "up", "down",
        reaction => reaction.Vertical, row => row.Vertical, support => support.Across is not Restraint.None);

    /// <summary>Along the beam, positive to the right.</summary>
    public static ReactionComponent Horizontal { get; } = new(
        ReactionPart.Horizontal, "horizontal", QuantityKind.Force, "right", "left",
        reaction => reaction.Horizontal, row => row.Horizontal, support => support.HoldsAlong);

    /// <summary>The moment, positive counter-clockwise.</summary>
    public static ReactionComponent Moment { get; } = new(
        ReactionPart.Moment, "moment", QuantityKind.Moment, "counter-clockwise", "clockwise",
        reaction => reaction.Moment, row => row.Moment, support => support.Rotation is not Restraint.None);

    /// <summary>All three.</summary>
    public static ImmutableArray<ReactionComponent> All { get; } = [Vertical, Horizontal, Moment];

    /// <summary>Which way a value acts on the beam, as "up".</summary>
    /// <param name="value">The value [N or N·m]; not nothing.</param>
    public string Way(double value) => value < 0 ? Negative : Positive;
}
