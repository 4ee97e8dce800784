namespace FieldCheck.Sheet.Reading;

/// <summary>Reads a number without a unit, as a factor of a combination.</summary>
public static class NumberReader
{
    /// <summary>Reads a number; it may be worked out, as "1.2 * 0.5".</summary>
    /// <param name="text">As typed.</param>
    public static Reading<double> Read(string text) =>
        QuantityReader.Read(text, QuantityKind.Number).Then<double>(
            number => new Reading<double>.Accepted(number.Value));
}
