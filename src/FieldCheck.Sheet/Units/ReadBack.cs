using System.Globalization;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Units;

/// <summary>Says back what a text was read as, so that no number is misread unseen.</summary>
public static class ReadBack
{
    /// <summary>What presses on floors and soil stays below this [Pa].</summary>
    private const double SmallestStress = 1e6;

    private static readonly string[] StressUnits = ["psi", "ksi", "MPa", "GPa", "N/mm"];

    /// <summary>
    /// What was typed, and what it is: <c>12'-6 1/2" = 12.542 ft = 3.823 m</c>, <c>1.2 t = 11.77 kN</c>. A length is
    /// said in both systems, so is what was typed in the shown unit already; anything else in the shown unit only.
    /// </summary>
    /// <param name="text">As typed.</param>
    /// <param name="quantity">What it was read as.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="units">The units that results are shown in.</param>
    public static string Say(string text, Quantity quantity, QuantityKind kind, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(quantity);
        ArgumentNullException.ThrowIfNull(units);
        string typed = TextSafety.ForTerminal(text.Trim());
        string own = Short(typed, quantity, kind, units.System);
        string other = Short(typed, quantity, kind, units.Other);
        (string first, string second) = kind == QuantityKind.Length && IsOnTape(typed) && units.System == UnitSystem.Si
            ? (other, own)
            : (own, other);

        List<string> said = [typed];
        AddUnlessSaid(said, first);
        if (kind == QuantityKind.Length || said.Count == 1)
        {
            AddUnlessSaid(said, second);
        }

        return string.Join(" = ", said);
    }

    /// <summary>What a load comes to over its length: <c>12 kN/m over 1.00 m = 12.00 kN in all</c>.</summary>
    /// <param name="text">The load's size as typed.</param>
    /// <param name="length">The length it stands on [m].</param>
    /// <param name="total">Its resultant [N].</param>
    /// <param name="units">The units that results are shown in.</param>
    public static string SayInAll(string text, double length, double total, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(units);
        return $"{TextSafety.ForTerminal(text.Trim())} over {units.Say(length, QuantityKind.Length)} = "
            + $"{units.Say(total, QuantityKind.Force)} in all";
    }

    /// <summary>Where a place lies: <c>A + 4 ft = 8 ft = 2.438 m from the left end</c>.</summary>
    /// <param name="text">The place as typed.</param>
    /// <param name="metres">Its distance from the left end [m].</param>
    /// <param name="units">The units that results are shown in.</param>
    public static string SayPlace(string text, double metres, DisplayUnits units) =>
        SayDistance(text, metres, units) + " from the left end";

    /// <summary>How far from the left end a place lies: <c>A + 4 ft = 8 ft = 2.438 m</c>.</summary>
    /// <param name="text">The place as typed.</param>
    /// <param name="metres">Its distance from the left end [m].</param>
    /// <param name="units">The units that results are shown in.</param>
    public static string SayDistance(string text, double metres, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(units);
        return Say(text, new Quantity(metres, Dimension.Of(QuantityKind.Length)), QuantityKind.Length, units);
    }

    /// <summary>As <see cref="DisplayUnits.Say"/>, but a length without the zeros at its end: "12.5 ft".</summary>
    internal static string Short(double value, QuantityKind kind, UnitSystem system)
    {
        DisplayUnit unit = DisplayUnit.Of(system, kind);
        return kind == QuantityKind.Length
            ? (unit with { Figures = unit.Figures with { Decimals = 0 } }).Say(value)
            : unit.Say(value);
    }

    private static string Short(string typed, Quantity quantity, QuantityKind kind, UnitSystem system)
    {
        bool isAreaLoad = kind == QuantityKind.Pressure && !IsStress(typed, quantity.Value);
        string value = Said(quantity.Value);
        return quantity.Spread is double spread ? value + " ± " + Said(spread) : value;

        string Said(double si) => kind == QuantityKind.Angle ? DisplayUnits.Degrees(si)
            : isAreaLoad ? new DisplayUnits(system).AreaLoad(si)
            : Short(si, kind, system);
    }

    /// <summary>A pressure is a stress by its size, or because it was typed in a unit of stress.</summary>
    private static bool IsStress(string typed, double pascals) =>
        Math.Abs(pascals) >= SmallestStress
        || StressUnits.Any(unit => typed.Contains(unit, StringComparison.OrdinalIgnoreCase));

    private static bool IsOnTape(string typed) =>
        typed.Any(c => Symbols.IsFootMark(c) || Symbols.IsInchMark(c))
        || string.Concat(typed.Select(c => char.IsAsciiLetter(c) ? c : ' ')).Split(' ').Any(IsFootOrInch);

    private static bool IsFootOrInch(string word) =>
        word.Equals("ft", StringComparison.OrdinalIgnoreCase) || word.Equals("in", StringComparison.OrdinalIgnoreCase);

    private static void AddUnlessSaid(List<string> said, string next)
    {
        if (!said.Any(text => IsSame(text, next)))
        {
            said.Add(next);
        }
    }

    /// <summary>"12.50ft" and "12.5 ft" say the same; "12'-6"" and "12.5 ft" do not.</summary>
    private static bool IsSame(string left, string right)
    {
        (double? Number, string Unit) first = Split(left);
        (double? Number, string Unit) second = Split(right);
        return first.Number is not null && first.Number == second.Number
            && first.Unit.Equals(second.Unit, StringComparison.OrdinalIgnoreCase);
    }

    private static (double? Number, string Unit) Split(string text)
    {
        int cut = text.Length - text.AsSpan().TrimStart("+-.0123456789").Length;
        bool reads = double.TryParse(text[..cut], NumberStyles.Float, CultureInfo.InvariantCulture, out double number);
        return (reads ? number : null, text[cut..].Trim());
    }
}
