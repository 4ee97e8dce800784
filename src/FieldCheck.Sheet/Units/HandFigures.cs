using System.Globalization;
using FieldCheck.Mechanics.HandMethods;

namespace FieldCheck.Sheet.Units;

/// <summary>
/// Numbers as a working by hand writes them: force and length in one unit each, all else made up of these, and so many
/// decimals more than the results are shown with.
/// </summary>
/// <param name="System">Which units.</param>
/// <param name="Guard">Decimals beyond those of the results; zeros at the end are not written.</param>
public sealed record HandFigures(UnitSystem System, int Guard)
{
    // A settlement of a tenth of a millimetre still has its digits; a force that takes as many decimals is nothing.
    private const int SmallDecimals = 8;

    // A movement times a flexural rigidity is as fine as the movement.
    private const int MovementPower = 3;

    private const double DegreesPerRadian = 180 / Math.PI;

    private bool IsUs => System == UnitSystem.Us;

    /// <summary>A number in the units of the working.</summary>
    /// <param name="value">In SI [N, m or rad].</param>
    /// <param name="unit">What it is measured in.</param>
    public double FromSi(double value, HandUnit unit) => value / Factor(unit);

    /// <summary>A number of the working in SI.</summary>
    /// <param name="value">In the units of the working.</param>
    /// <param name="unit">What it is measured in.</param>
    public double ToSi(double value, HandUnit unit) => value * Factor(unit);

    /// <summary>The number as it is written.</summary>
    /// <param name="value">In the units of the working.</param>
    /// <param name="unit">What it is measured in.</param>
    public string Write(double value, HandUnit unit)
    {
        (int decimals, int finest) = DecimalsOf(unit);
        bool isForce = unit.Force > 0 && unit.Length < MovementPower;
        return new Figures(decimals, finest, isForce ? 0 : 2 + Guard)
        {
            Further = isForce ? 0 : SmallDecimals,
            MostDigits = 8 + Guard,
            Unreadable = 1e15,
        }.Write(value);
    }

    /// <summary>The number without any digit beyond those that results have: what is left of rounding reads as zero.</summary>
    /// <param name="value">In the units of the working.</param>
    /// <param name="unit">What it is measured in.</param>
    public string WriteRest(double value, HandUnit unit)
    {
        int decimals = DecimalsOf(unit).Decimals;
        return new Figures(decimals, decimals, 0) { Further = 0 }.Write(value);
    }

    /// <summary>The value that a written number stands for.</summary>
    /// <param name="written">As <see cref="Write"/> has it.</param>
    public static double Read(string written) =>
        double.TryParse(written, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) ? value : double.NaN;

    /// <summary>The unit as it is written, as "kNm"; empty for a plain number.</summary>
    /// <param name="unit">What is measured.</param>
    public string UnitOf(HandUnit unit)
    {
        if (unit.IsAngle)
        {
            return "deg";
        }

        (string force, string length) = IsUs ? ("kip", "ft") : ("kN", "m");
        string above = Product(Powered(force, unit.Force), Powered(length, unit.Length));
        string below = Product(Powered(force, -unit.Force), Powered(length, -unit.Length));
        return (above.Length, below.Length) switch
        {
            (_, 0) => above,
            (0, _) => $"1/{below}",
            _ => $"{above}/{below}",
        };
    }

    private string Product(string one, string other) =>
        IsUs && one.Length > 0 && other.Length > 0 ? $"{one}-{other}" : one + other;

    private static string Powered(string unit, int power) => power switch
    {
        <= 0 => "",
        1 => unit,
        _ => string.Create(CultureInfo.InvariantCulture, $"{unit}{power}"),
    };

    private double Factor(HandUnit unit) => unit.IsAngle
        ? 1 / DegreesPerRadian
        : Math.Pow(UnitTable.Factor(IsUs ? "kip" : "kN"), unit.Force)
            * Math.Pow(UnitTable.Factor(IsUs ? "ft" : "m"), unit.Length);

    private (int Decimals, int Finest) DecimalsOf(HandUnit unit) => unit switch
    {
        { IsAngle: true } => (1, 2 + Guard),
        { Force: 0, Length: 0 } => (0, 3 + Guard),
        { Force: 0 } => (2, 2 + Guard),
        _ when IsUs => (3, 3 + Guard),
        _ => (2, 2 + Guard),
    };
}
