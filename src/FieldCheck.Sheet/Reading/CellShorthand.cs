using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Reading;

/// <summary>
/// Makes plain text of what the form lets people leave out; what needs nothing, or does not read, stays as typed.
/// </summary>
/// <remarks>
/// The plain text reads by the rules of the file. What comes out stays as it is when it goes in again.
/// </remarks>
public static class CellShorthand
{
    private const string Range = "..";

    /// <summary>
    /// Gives a bare number the unit of its cell: "12" is "12 kN", "2*1.2+0.6" is "(2*1.2+0.6) * 1 m".
    /// </summary>
    /// <param name="text">As typed.</param>
    /// <param name="unit">The unit that the cell shows; empty for a plain number.</param>
    public static string Expand(string text, string unit)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(unit);
        if (unit.Length == 0 || !TryMeasure(text, out Measured measured))
        {
            return Closed(text);
        }

        if (!measured.Value.IsBare)
        {
            return text;
        }

        string value = WithUnit(text, measured.Value, unit);
        return measured.Spread is Term spread
            ? value + text[measured.Value.End..spread.Start]
                + WithUnit(text, spread, spread.IsBare ? unit : string.Empty)
            : value;
    }

    /// <summary>Gives a bare number the unit that cells of the kind show.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="kind">What the cell asks for.</param>
    /// <param name="system">The system in use.</param>
    public static string Expand(string text, QuantityKind kind, UnitSystem system) =>
        Expand(text, CellUnits.Of(kind, system));

    /// <summary>
    /// Reads the size of a load: "12" is a force, "12/m" (in US units "12/ft") a force per length, "3..6/m" one that
    /// varies; a unit written out may stand in their place, "3..6 kip/ft".
    /// </summary>
    /// <param name="text">As typed.</param>
    /// <param name="system">The system in use; the other's "/ft" or "/m" stays as typed, and is then refused.</param>
    public static LoadText ExpandLoad(string text, UnitSystem system)
    {
        ArgumentNullException.ThrowIfNull(text);
        int range = text.IndexOf(Range, StringComparison.Ordinal);
        if (range < 0)
        {
            return new LoadText(ExpandSize(text, system));
        }

        // "3...6" may be 3 to 6 with a slip of the finger, or 3 to .6.
        bool isSlip = text.Contains(Range + ".", StringComparison.Ordinal);
        return isSlip ? new LoadText(text) : ExpandRange(text, range, system);
    }

    /// <summary>Gives the bare length of a place its unit: "2.5" is "2.5 m", "A + 4" is "A + 4 m".</summary>
    /// <param name="text">As typed.</param>
    /// <param name="unit">The unit that the cell shows.</param>
    public static string ExpandPlace(string text, string unit)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(unit);
        int sign = text.AsSpan().IndexOfAny("+-−");
        if (!char.IsAsciiLetter(text.AsSpan().TrimStart() is [char first, ..] ? first : ' ') || sign < 0)
        {
            return Expand(text, unit);
        }

        string signed = text[sign..];
        if (!TryMeasure(signed, out Measured measured) || !measured.Value.IsBare)
        {
            return text;
        }

        // What was worked out goes into a bracket with its sign: "A - 2+3" is one to the right of A.
        string joined = measured.Value.IsWritten ? string.Empty : "+ ";
        return text[..sign] + joined + Expand(signed, unit);
    }

    /// <summary>Gives the bare sides of a pad their unit: "24 x 24" is "24 in x 24 in".</summary>
    /// <param name="text">As typed.</param>
    /// <param name="unit">The unit that the cell shows.</param>
    public static string ExpandPad(string text, string unit)
    {
        ArgumentNullException.ThrowIfNull(text);
        int sign = text.AsSpan().IndexOfAny(PadSizeReader.Between);
        return sign < 0
            ? text
            : $"{Expand(text[..sign], unit).Trim()} {text[sign]} {Expand(text[(sign + 1)..], unit).Trim()}";
    }

    private static string ExpandSize(string text, UnitSystem system) => TryCutPer(text, system, out string size)
        ? Expand(size, QuantityKind.ForcePerLength, system)
        : Expand(text, QuantityKind.Force, system);

    private static LoadText ExpandRange(string text, int range, UnitSystem system)
    {
        string left = text[..range].Trim();
        string right = text[(range + Range.Length)..].Trim();
        string unit = TryCutPer(right, system, out string end)
            ? CellUnits.Of(QuantityKind.ForcePerLength, system)
            : WrittenUnit(right);
        LoadText varies = new(Expand(left, unit), Expand(end, unit));
        return IsPerLength(varies.Size) && IsPerLength(varies.End!) ? varies : new LoadText(text);
    }

    /// <summary>Takes "/m" or "/ft" off a bare number.</summary>
    private static bool TryCutPer(string text, UnitSystem system, out string size)
    {
        string per = system == UnitSystem.Us ? "/ft" : "/m";
        string trimmed = text.TrimEnd();
        bool cuts = trimmed.EndsWith(per, StringComparison.OrdinalIgnoreCase)
            && TryMeasure(trimmed[..^per.Length], out Measured measured)
            && measured.Value.IsBare;
        size = cuts ? trimmed[..^per.Length] : text;
        return cuts;
    }

    /// <summary>The unit of one number with its unit; of anything else none.</summary>
    private static string WrittenUnit(string text) =>
        TryMeasure(text, out Measured measured) && measured is { Spread: null, Value.UnitStart: > 0 }
            ? text[measured.Value.UnitStart..measured.Value.End]
            : string.Empty;

    private static bool IsPerLength(string text) =>
        QuantityReader.Read(text, QuantityKind.ForcePerLength) is Reading<Quantity>.Accepted;

    private static string WithUnit(string text, Term term, string unit)
    {
        string written = text[term.Start..term.End];
        return unit.Length == 0 ? written
            : term.IsWritten ? written + " " + unit
            : $"({written}) * 1 {unit}";
    }

    /// <summary>Adds the inch mark that is left out after feet, where it makes a length: "7'10 1/2".</summary>
    private static string Closed(string text)
    {
        string closed = text.TrimEnd() + "\"";
        return text.Any(Symbols.IsFootMark)
            && QuantityReader.Read(text, QuantityKind.Length) is Reading<Quantity>.Refused
            && QuantityReader.Read(closed, QuantityKind.Length) is Reading<Quantity>.Accepted
            ? closed
            : text;
    }

    private static bool TryMeasure(string text, out Measured measured)
    {
        TextCursor cursor = new(text, []);
        measured = default;
        return text.Length <= QuantityReader.LongestText && QuantityGrammar.TryMeasured(ref cursor, out measured);
    }
}
