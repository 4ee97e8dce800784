namespace FieldCheck.Sheet.Reading;

/// <summary>Reads a part of a whole, always in per cent: "30 %".</summary>
public static class ShareReader
{
    /// <summary>Reads a share as a ratio [–]: "30 %" is 0.3. A bare number may be either and is refused.</summary>
    /// <param name="text">As typed.</param>
    public static Reading<double> Read(string text) =>
        QuantityReader.Read(text, QuantityKind.Share).Then<double>(
            share => new Reading<double>.Accepted(share.Value));
}
