using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Units;

/// <summary>The system that results are shown in. The only way from SI numbers to text.</summary>
public enum UnitSystem
{
    /// <summary>m, kN, kN·m, mm.</summary>
    Si,

    /// <summary>ft, kip or lbf, kip-ft, in.</summary>
    Us,
}

/// <summary>Numbers with their units as text, rounded half away from zero by one rule for every view.</summary>
/// <param name="System">Which units.</param>
public sealed record DisplayUnits(UnitSystem System)
{
    /// <summary>A value with its unit, as "12.50 kN"; the unit is chosen by kind and system.</summary>
    /// <param name="value">In SI.</param>
    /// <param name="kind">What it is.</param>
    public string Say(double value, QuantityKind kind) => throw new NotImplementedException();

    /// <summary>The number alone, with the same rounding as <see cref="Say"/>.</summary>
    /// <param name="value">In SI.</param>
    /// <param name="kind">What it is.</param>
    public string Number(double value, QuantityKind kind) => throw new NotImplementedException();

    /// <summary>The number alone with its sign always written, as "+6.81"; a value that rounds to nothing has none.</summary>
    /// <param name="value">In SI.</param>
    /// <param name="kind">What it is.</param>
    public string SignedNumber(double value, QuantityKind kind) => throw new NotImplementedException();

    /// <summary>The unit that <see cref="Say"/> writes for a kind, as "kN".</summary>
    /// <param name="kind">What it is.</param>
    public string UnitOf(QuantityKind kind) => throw new NotImplementedException();

    /// <summary>A deflection, in millimetres or inches, without sign, as "6.2 mm".</summary>
    /// <param name="metres">Its size [m].</param>
    public string Movement(double metres) => throw new NotImplementedException();

    /// <summary>Says a quantity back in the other system, or feet and inches in decimals, as "12.5 ft = 3.81 m".</summary>
    /// <param name="value">In SI.</param>
    /// <param name="kind">What it is.</param>
    public string SayBothWays(double value, QuantityKind kind) => throw new NotImplementedException();
}
