namespace FieldCheck.Sheet.Reading;

/// <summary>Reads the size of a pad: "24 in x 24 in".</summary>
public static class PadSizeReader
{
    internal static readonly char[] Between = ['x', 'X', '×'];

    /// <summary>Reads two lengths with "x" or "×" between them.</summary>
    /// <param name="text">As typed; each side has its unit.</param>
    public static Reading<PadSize> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (string.IsNullOrWhiteSpace(text))
        {
            return Refuse(ReadingMessages.EmptyText(ReadingMessages.PadExpected), 0);
        }

        int sign = text.IndexOfAny(Between);
        if (sign < 0)
        {
            return Refuse(ReadingMessages.PadShape("no x"), text.Length);
        }

        return QuantityReader.Read(text[..sign], QuantityKind.Length).Then(
            first => QuantityReader.Read(text[(sign + 1)..], QuantityKind.Length).At(sign + 1).Then<PadSize>(
                second => first.Value > 0 && second.Value > 0
                    ? new Reading<PadSize>.Accepted(new PadSize(first, second))
                    : Refuse(ReadingMessages.PadNotPositive, first.Value > 0 ? sign + 1 : 0)));
    }

    private static Reading<PadSize>.Refused Refuse(string text, int offset) => new(text, offset);
}
