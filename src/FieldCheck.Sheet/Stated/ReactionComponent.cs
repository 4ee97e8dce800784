using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Reporting.Record;

/// <summary>One component of a reaction, as the JSON names it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Unit">The unit its numbers are in.</param>
/// <param name="Kind">What a text that states it must be.</param>
/// <param name="Value">Its value in a reaction.</param>
/// <param name="Text">What a row states of it, as typed.</param>
/// <param name="IsGivenBy">Whether a support can give it.</param>
internal sealed record ReactionComponent(
    string Name,
    string Unit,
    QuantityKind Kind,
    Func<Reaction, double> Value,
    Func<StatedEntry, string?> Text,
    Func<Support, bool> IsGivenBy)
{
    /// <summary>All three.</summary>
    internal static IReadOnlyList<ReactionComponent> All { get; } =
    [
        new("vertical", "N", QuantityKind.Force, reaction => reaction.Vertical, row => row.Vertical, HoldsAcross),
        new("horizontal", "N", QuantityKind.Force, reaction => reaction.Horizontal, row => row.Horizontal, HoldsAlong),
        new("moment", "Nm", QuantityKind.Moment, reaction => reaction.Moment, row => row.Moment, HoldsRotation),
    ];

    private static bool HoldsAcross(Support support) => support.Across is not Restraint.None;

    private static bool HoldsAlong(Support support) =>
        support.Along is not Restraint.None || (support.SurfaceSlope != 0 && HoldsAcross(support));

    private static bool HoldsRotation(Support support) => support.Rotation is not Restraint.None;
}
