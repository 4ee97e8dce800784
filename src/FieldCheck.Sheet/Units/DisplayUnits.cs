using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Units;

/// <summary>
/// Numbers with their units as text, rounded half away from zero by one rule for every view: the only way from SI
/// numbers to text.
/// </summary>
/// <remarks>
/// Each kind has one unit and so many decimals; a small value gets further ones until it shows three digits, less the
/// zeros at its end. What is too small even for that reads as zero, and zero has no sign. A value that is not a number,
/// or infinite, reads "--".
/// </remarks>
/// <param name="System">Which units.</param>
public sealed record DisplayUnits(UnitSystem System)
{
    /// <summary>The unit of <see cref="Movement"/>: "mm" or "in".</summary>
    public string MovementUnit => DisplayUnit.Movement(System).Spelling;

    /// <summary>A value with its unit, as "12.50 kN"; the unit is chosen by kind and system.</summary>
    /// <param name="value">In SI.</param>
    /// <param name="kind">What it is.</param>
    public string Say(double value, QuantityKind kind) => DisplayUnit.Of(System, kind).Say(value);

    /// <summary>A value that holds, rounded down, so that what is told holds too.</summary>
    /// <param name="value">In SI; zero or more.</param>
    /// <param name="kind">What it is.</param>
    public string SayAtMost(double value, QuantityKind kind) =>
        DisplayUnit.Of(System, kind).Rounded(MidpointRounding.ToZero).Say(value);

    /// <summary>A value that is needed, rounded up, so that what is told is enough.</summary>
    /// <param name="value">In SI; zero or more.</param>
    /// <param name="kind">What it is.</param>
    public string SayAtLeast(double value, QuantityKind kind) =>
        DisplayUnit.Of(System, kind).Rounded(MidpointRounding.ToPositiveInfinity).Say(value);

    /// <summary>The number alone, with the same rounding as <see cref="Say"/>.</summary>
    /// <param name="value">In SI.</param>
    /// <param name="kind">What it is.</param>
    public string Number(double value, QuantityKind kind) => DisplayUnit.Of(System, kind).Number(value);

    /// <summary>The number alone, always with its sign, as "+6.81"; a value that rounds to nothing has none.</summary>
    /// <param name="value">In SI.</param>
    /// <param name="kind">What it is.</param>
    public string SignedNumber(double value, QuantityKind kind) => DisplayUnit.Of(System, kind).SignedNumber(value);

    /// <summary>The unit that <see cref="Say"/> writes for a kind, as "kN"; empty for a plain number.</summary>
    /// <param name="kind">What it is.</param>
    public string UnitOf(QuantityKind kind) => DisplayUnit.Of(System, kind).Spelling;

    /// <summary>A deflection, in millimetres or inches, without sign, as "6.2 mm".</summary>
    /// <param name="metres">Its size [m].</param>
    public string Movement(double metres) => DisplayUnit.Movement(System).Say(Math.Abs(metres));

    /// <summary>The number of a deflection, with its sign, in <see cref="MovementUnit"/>.</summary>
    /// <param name="metres">Positive down [m].</param>
    public string MovementNumber(double metres) => DisplayUnit.Movement(System).Number(metres);

    /// <summary>A load on an area, a pressure on soil, in kPa or psf; <see cref="Say"/> is for stresses.</summary>
    /// <param name="pascals">The pressure [Pa].</param>
    public string AreaLoad(double pascals) => DisplayUnit.AreaLoad(System).Say(pascals);

    /// <summary>An angle in degrees, as a load leans; <see cref="Say"/> is for slopes of the beam, in mrad.</summary>
    /// <param name="radians">The angle [rad].</param>
    public static string Degrees(double radians) => DisplayUnit.Degrees.Say(radians);

    /// <summary>A factor that others are multiplied by, fine enough that the product closes.</summary>
    /// <param name="value">The factor [-].</param>
    public static string Factor(double value) => DisplayUnit.Factor.Say(value);

    /// <summary>A number that is whole as a rule, without decimals then.</summary>
    /// <param name="value">The number [-].</param>
    public static string Count(double value) => DisplayUnit.Count.Say(value);

    /// <summary>Says a quantity in this system and then in the other, as "12.5 ft = 3.81 m".</summary>
    /// <param name="value">In SI.</param>
    /// <param name="kind">What it is.</param>
    public string SayBothWays(double value, QuantityKind kind)
    {
        string own = ReadBack.Short(value, kind, System);
        string other = ReadBack.Short(value, kind, Other);
        return own == other ? own : own + " = " + other;
    }

    /// <summary>The system that results are not shown in.</summary>
    internal UnitSystem Other => System == UnitSystem.Si ? UnitSystem.Us : UnitSystem.Si;
}
