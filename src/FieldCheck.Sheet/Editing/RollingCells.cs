using System.Diagnostics;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Editing;

/// <summary>The cells of a rolling load's row.</summary>
internal static class RollingCells
{
    internal static string? TextOf(RollingEntry row, FormColumn column, UnitSystem system) => column switch
    {
        FormColumn.Label => row.Label,
        FormColumn.Case => row.Case,
        FormColumn.Axles => AxleText.Of(row.Axles, system),
        FormColumn.Impact => row.Impact,
        _ => throw new UnreachableException(),
    };

    internal static RollingEntry Type(RollingEntry row, FormColumn column, string? text, UnitSystem system) => column switch
    {
        FormColumn.Label => row with { Label = text },
        FormColumn.Case => row with { Case = text },
        // What a file writes otherwise stays so while it is accepted as it is shown.
        FormColumn.Axles when text == AxleText.Of(row.Axles, system) => row,
        FormColumn.Axles => row with { Axles = text is null ? [] : AxleText.Read(text, system) },
        FormColumn.Impact => row with
        {
            Impact = text is null ? null : CellShorthand.Expand(text, QuantityKind.Share, system),
        },
        _ => throw new UnreachableException(),
    };

    internal static FormColumn ColumnOf(string key) => key switch
    {
        "label" => FormColumn.Label,
        "case" => FormColumn.Case,
        "impact" => FormColumn.Impact,
        _ => FormColumn.Axles,
    };
}
