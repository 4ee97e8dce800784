namespace FieldCheck.Sheet.Reading;

/// <summary>Reads a tolerance: "2 %" or a force.</summary>
public static class ToleranceReader
{
    /// <summary>Reads a share or a force, 0 or more.</summary>
    /// <param name="text">As typed; a bare number is refused.</param>
    public static Reading<Tolerance> Read(string text) =>
        QuantityReader.Read(text, QuantityKind.Share, QuantityKind.Force).Then<Tolerance>(quantity =>
            quantity.Value < 0 ? new Reading<Tolerance>.Refused(ReadingMessages.ToleranceNegative, 0)
            : quantity.Dimension.IsNone ? new Reading<Tolerance>.Accepted(new Tolerance.OfFigure(quantity.Value))
            : new Reading<Tolerance>.Accepted(new Tolerance.OfForce(quantity.Value)));
}
