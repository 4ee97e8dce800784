using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Units;

/// <summary>What results of one kind are shown in.</summary>
/// <param name="Spelling">The unit as the table spells it; empty for a plain number.</param>
/// <param name="Figures">How its numbers are rounded.</param>
internal readonly record struct DisplayUnit(string Spelling, Figures Figures)
{
    internal string Say(double value) =>
        double.IsFinite(value) && Spelling.Length > 0 ? Number(value) + " " + Spelling : Number(value);

    /// <summary>The same unit with every value that lies between two that can be shown taken one way.</summary>
    internal DisplayUnit Rounded(MidpointRounding rounding) => this with { Figures = Figures with { Rounding = rounding } };

    internal string Number(double value) => Figures.Write(In(value));

    internal string SignedNumber(double value) => Figures.WriteSigned(In(value));

    private double In(double value) => Spelling.Length == 0 ? value : value / UnitTable.Factor(Spelling);

    /// <summary>The unit of each kind in each system: one per kind, so that a column names its unit once.</summary>
    internal static DisplayUnit Of(UnitSystem system, QuantityKind kind) => (system, kind) switch
    {
        (_, QuantityKind.Number) => new(string.Empty, new(2, 2, 2)),
        (_, QuantityKind.Share) => new("%", new(0, 1, 2)),
        (_, QuantityKind.Angle) => new("mrad", new(2, 2, 3)),
        (UnitSystem.Us, _) => Us(kind),
        _ => Si(kind),
    };

    /// <summary>How far a beam moves.</summary>
    internal static DisplayUnit Movement(UnitSystem system) => system == UnitSystem.Us
        ? new("in", new(3, 3, 2))
        : new("mm", new(1, 1, 2));

    /// <summary>What lies on a floor or presses on the ground, far below a stress.</summary>
    internal static DisplayUnit AreaLoad(UnitSystem system) => system == UnitSystem.Us
        ? new("psf", new(0, 0, 3))
        : new("kPa", new(2, 2, 3));

    internal static readonly DisplayUnit Factor = new(string.Empty, new(2, 4, 4) { MostDigits = 4 });

    internal static readonly DisplayUnit Count = new(string.Empty, new(0, 2, 1));

    internal static readonly DisplayUnit Degrees = new("deg", new(1, 1, 3));

    private static DisplayUnit Si(QuantityKind kind) => kind switch
    {
        QuantityKind.Length => new("m", new(2, 3, 3)),
        QuantityKind.Force => new("kN", new(2, 2, 3)),
        QuantityKind.ForcePerLength or QuantityKind.Stiffness => new("kN/m", new(2, 2, 3)),
        QuantityKind.Pressure => new("MPa", new(1, 1, 3)),
        QuantityKind.Moment => new("kNm", new(2, 2, 3)),
        QuantityKind.RotationalStiffness => new("kNm/rad", new(1, 1, 3)),
        QuantityKind.Area => new("cm2", new(1, 1, 3)),
        QuantityKind.SectionModulus => new("cm3", new(1, 1, 3)),
        QuantityKind.Inertia => new("cm4", new(0, 0, 3)),
        QuantityKind.UnitWeight => new("kN/m3", new(2, 2, 3)),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Has no unit of its own."),
    };

    // Thousandths of a kip are pounds: no second unit is needed for a light load.
    private static DisplayUnit Us(QuantityKind kind) => kind switch
    {
        QuantityKind.Length => new("ft", new(2, 3, 3)),
        QuantityKind.Force => new("kip", new(3, 3, 3)),
        QuantityKind.ForcePerLength => new("lbf/ft", new(1, 1, 3)),
        QuantityKind.Stiffness => new("kip/in", new(2, 2, 3)),
        QuantityKind.Pressure => new("psi", new(0, 0, 3)),
        QuantityKind.Moment => new("kip-ft", new(3, 3, 3)),
        QuantityKind.RotationalStiffness => new("kip-ft/rad", new(1, 1, 3)),
        QuantityKind.Area => new("in2", new(2, 2, 3)),
        QuantityKind.SectionModulus => new("in3", new(2, 2, 3)),
        QuantityKind.Inertia => new("in4", new(1, 1, 3)),
        QuantityKind.UnitWeight => new("pcf", new(1, 1, 3)),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Has no unit of its own."),
    };
}
