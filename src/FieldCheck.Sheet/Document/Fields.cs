using System.Collections.Immutable;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Document;

/// <summary>
/// The keys of every table of the beam file. Reading, writing, the form and the key-path look-up all walk these lists,
/// so a key is added in one place.
/// </summary>
public static class Fields
{
    /// <summary>Keys of a span.</summary>
    public static ImmutableArray<Field<SpanEntry>> Span { get; } =
    [
        new("length", Length, row => row.Length, (row, text) => row with { Length = text }),
        new("to", Length, row => row.To, (row, text) => row with { To = text }),
        new("section", new Wanted.Name("section"), row => row.Section, (row, text) => row with { Section = text }),
        new("material", new Wanted.Name("material"), row => row.Material, (row, text) => row with { Material = text }),
        new("unbraced", new Wanted.LengthOr("braced"), row => row.Unbraced, (row, text) => row with { Unbraced = text }),
    ];

    private static Wanted Length => new Wanted.Measure(QuantityKind.Length);
}
