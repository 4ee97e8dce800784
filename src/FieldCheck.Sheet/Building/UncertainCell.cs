using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Building;

/// <summary>What stands in a measured cell, and how well it is known.</summary>
/// <param name="Value">The value in SI; of a place the length that was measured.</param>
/// <param name="HalfWidth">Plus or minus, in SI; greater than zero.</param>
/// <param name="Width">The same as typed, without its sign.</param>
/// <param name="IsOwn">True: it stands in the cell; false: it is the beam's default.</param>
internal sealed record UncertainCell(double Value, double HalfWidth, string Width, bool IsOwn)
{
    private static readonly string[] Signs = ["±", "+-", "+−", "+–"];

    /// <summary>Reads a cell that reads.</summary>
    /// <param name="text">As typed; null where nothing stands.</param>
    /// <param name="wanted">What the cell asks for.</param>
    /// <param name="tolerance">The default for what has no plus or minus of its own; null: none.</param>
    /// <returns>The cell; null where nothing is measured or it is taken as exact.</returns>
    internal static UncertainCell? Read(string? text, Wanted wanted, DefaultSpread? tolerance)
    {
        Quantity? read = text is null ? null : Measured(text, wanted);
        if (read is null)
        {
            return null;
        }

        UncertainCell? cell = read.Spread is double half
            ? new UncertainCell(read.Value, half, WidthIn(text!), IsOwn: true)
            : tolerance?.Of(read);
        return cell is { HalfWidth: > 0 } ? cell : null;
    }

    /// <summary>Whether any plus or minus stands in a text: most beams have none, and cost nothing.</summary>
    internal static bool HasSign(string? text) =>
        text is not null && Signs.Any(sign => text.Contains(sign, StringComparison.Ordinal));

    private static Quantity? Measured(string text, Wanted wanted) => wanted switch
    {
        Wanted.Measure of when QuantityReader.Read(text, of.Kind) is Reading<Quantity>.Accepted accepted =>
            accepted.Value,
        Wanted.PlaceOnBeam when PlaceReader.Read(text) is Reading<Place>.Accepted { Value: Place place } =>
            place is Place.FromLeft left ? left.Distance : place.Offset,
        _ => null,
    };

    private static string WidthIn(string text)
    {
        foreach (string sign in Signs)
        {
            int at = text.LastIndexOf(sign, StringComparison.Ordinal);
            if (at >= 0)
            {
                return text[(at + sign.Length)..].Trim();
            }
        }

        return text.Trim();
    }
}
