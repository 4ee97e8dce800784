namespace FieldCheck.Sheet.Reading;

/// <summary>Reads quantities as people write them: units, arithmetic, feet and inches, plus-or-minus.</summary>
public static class QuantityReader
{
    /// <summary>Reads a text that must be of one kind.</summary>
    /// <param name="text">As typed, or as it stands in a file.</param>
    /// <param name="kind">What the cell asks for.</param>
    public static Reading<Quantity> Read(string text, QuantityKind kind) => throw new NotImplementedException();
}
