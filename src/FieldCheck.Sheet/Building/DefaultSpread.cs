using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Building;

/// <summary>Plus or minus of every cell of a sort that has none of its own.</summary>
/// <param name="Half">A share, or a value of the cell's dimension.</param>
/// <param name="Width">As typed.</param>
internal sealed record DefaultSpread(Quantity Half, string Width)
{
    /// <summary>Every measured place and length; null: taken as exact.</summary>
    internal static DefaultSpread? OfPlaces(BeamDocument document) =>
        Read(document.Tolerance?.Position, QuantityKind.Length);

    /// <summary>Every load's size; null: taken as exact.</summary>
    internal static DefaultSpread? OfLoads(BeamDocument document) =>
        Read(document.Tolerance?.Load, QuantityKind.Share, QuantityKind.Force);

    /// <summary>That of one cell; null where it does not fit: a force says nothing of an intensity or a moment.</summary>
    internal UncertainCell? Of(Quantity quantity) =>
        Half.Dimension.IsNone ? Of(quantity, Half.Value * Math.Abs(quantity.Value))
        : Half.Dimension == quantity.Dimension ? Of(quantity, Half.Value)
        : null;

    private UncertainCell Of(Quantity quantity, double half) => new(quantity.Value, half, Width, IsOwn: false);

    private static DefaultSpread? Read(string? text, params ReadOnlySpan<QuantityKind> kinds) =>
        text is not null && QuantityReader.Read(text, kinds) is Reading<Quantity>.Accepted read
            ? new DefaultSpread(read.Value, text.Trim())
            : null;
}
