using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Editing;

/// <summary>
/// The axles of a rolling load in one text: "12 kN, 12 kN at 1.2 m". Each has its force and its distance from the first;
/// of the first none need be written.
/// </summary>
/// <remarks>
/// A comma parts two axles only with a blank behind it, so that "12,5 kN" is one force, refused for its comma.
/// </remarks>
internal static class AxleText
{
    private const string At = "at";

    internal static string? Of(Rows<AxleEntry> axles, UnitSystem system) =>
        axles.Count == 0 ? null : string.Join(", ", axles.Select((axle, index) => Of(axle, index == 0, system)));

    internal static Rows<AxleEntry> Read(string text, UnitSystem system)
    {
        string[] axles = text.Replace(";", ", ", StringComparison.Ordinal).TrimEnd(' ', ',')
            .Split(", ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return [.. axles.Select((axle, index) => Read(axle, index == 0, system))];
    }

    private static string Of(AxleEntry axle, bool isFirst, UnitSystem system)
    {
        bool isPlain = axle.Offset is null || (isFirst && axle.Offset == Nothing(system));
        return isPlain && axle.Force is not null ? axle.Force : $"{axle.Force} {At} {axle.Offset}".Trim();
    }

    private static AxleEntry Read(string text, bool isFirst, UnitSystem system)
    {
        (string force, string? offset) = Parted(text);
        return new AxleEntry
        {
            Force = force.Length == 0 ? null : CellShorthand.Expand(force, QuantityKind.Force, system),
            Offset = !string.IsNullOrEmpty(offset) ? CellShorthand.Expand(offset, QuantityKind.Length, system)
                : isFirst && offset is null ? Nothing(system)
                : null,
        };
    }

    // "12 kN at 1.2 m" and "12 kN @ 1.2 m".
    private static (string Force, string? Offset) Parted(string text)
    {
        string spaced = $" {text.Replace("@", $" {At} ", StringComparison.Ordinal)} ";
        int at = spaced.LastIndexOf($" {At} ", StringComparison.OrdinalIgnoreCase);
        return at < 0 ? (text, null) : (spaced[..at].Trim(), spaced[(at + At.Length + 2)..].Trim());
    }

    private static string Nothing(UnitSystem system) => CellShorthand.Expand("0", QuantityKind.Length, system);
}
