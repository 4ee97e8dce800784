using System.Diagnostics;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Editing;

/// <summary>The cells of a span's row.</summary>
internal static class SpanCells
{
    internal static string? TextOf(SpanEntry span, FormColumn column) => column switch
    {
        FormColumn.Length => span.Length,
        FormColumn.Reading => span.To,
        FormColumn.Section => span.Section,
        FormColumn.Material => span.Material,
        _ => throw new UnreachableException(),
    };

    /// <summary>
    /// The span with a text typed in a cell. A length takes the place of the tape reading, and the other way round.
    /// </summary>
    internal static SpanEntry Type(SpanEntry span, FormColumn column, string? text, UnitSystem system)
    {
        string? Length() => text is null ? null : CellShorthand.Expand(text, QuantityKind.Length, system);
        return column switch
        {
            FormColumn.Length => span with { Length = Length(), To = text is null ? span.To : null },
            FormColumn.Reading => span with { To = Length(), Length = text is null ? span.Length : null },
            FormColumn.Section => span with { Section = text },
            FormColumn.Material => span with { Material = text },
            _ => throw new UnreachableException(),
        };
    }

    internal static FormColumn ColumnOf(string key) => key switch
    {
        "to" => FormColumn.Reading,
        "section" => FormColumn.Section,
        "material" => FormColumn.Material,
        _ => FormColumn.Length,
    };
}
