using FieldCheck.Screen.FormGrid;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Plain;

/// <summary>What can be typed in a cell, where there are no keys to step through its words.</summary>
internal static class PlainHints
{
    /// <summary>What can be typed, with examples.</summary>
    /// <param name="place">The cell.</param>
    internal static string Of(FormPlace place) => place.Column switch
    {
        FormColumn.Basis when place.Block == FormBlock.Combinations => "service (without load factors) or factored",
        FormColumn.Pattern => "yes or no: whether its loads may stand in some bays and not in others",
        FormColumn.OwnWeight => "yes or no: whether the weight of the sections belongs to this case",
        FormColumn.Kind => $"{Words(place)}; or roller 30 deg, spring 500",
        FormColumn.Acts => $"{Words(place)}: which way it can hold; empty where that is not known",
        FormColumn.Basis => $"{Words(place)}: what is stated as unknown is not judged",
        FormColumn.Under => "the combination or case it is stated for, or max or min of all",
        FormColumn.Flat => "on edge, or flat (bent about its weak axis)",
        FormColumn.Rules => Words(place),
        FormColumn.Unbraced => "the length free to go sideways, or braced",
        FormColumn.Size when place.IsOwnWeight => "on or off: whether the weight of the sections counts as a load",
        _ => CellHints.Of(place),
    };

    /// <summary>The same for a cell that cannot do without; null where the reason must be told besides.</summary>
    /// <param name="place">The cell.</param>
    internal static string? OfMissing(FormPlace place) => CellHints.OfMissing(place) is null ? null : Of(place);

    private static string Words(FormPlace place) => string.Join(", ", FormCells.ChoicesOf(place));
}
