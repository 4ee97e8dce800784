using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Units;

/// <summary>The unit that a cell shows in its heading and that a bare number typed there takes.</summary>
public static class CellUnits
{
    /// <summary>The unit of a kind: pressures are loads on an area, lengths are those along the beam.</summary>
    /// <param name="kind">What the cell asks for.</param>
    /// <param name="system">The system in use.</param>
    /// <returns>As it is written after a number; empty for a plain number.</returns>
    public static string Of(QuantityKind kind, UnitSystem system)
    {
        (string si, string us) = Pair(kind);
        return system == UnitSystem.Us ? us : si;
    }

    /// <summary>The unit of short lengths: sides of a section, bearing, pad, settlement.</summary>
    /// <param name="system">The system in use.</param>
    public static string ShortLength(UnitSystem system) => system == UnitSystem.Us ? "in" : "mm";

    /// <summary>The unit of stresses: moduli and strengths.</summary>
    /// <param name="system">The system in use.</param>
    public static string Stress(UnitSystem system) => system == UnitSystem.Us ? "psi" : "MPa";

    private static (string Si, string Us) Pair(QuantityKind kind) => kind switch
    {
        QuantityKind.Length => ("m", "ft"),
        QuantityKind.Force => ("kN", "lbf"),
        QuantityKind.ForcePerLength => ("kN/m", "lbf/ft"),
        QuantityKind.Pressure => ("kN/m2", "psf"),
        QuantityKind.Moment => ("kNm", "lbf-ft"),
        QuantityKind.Stiffness => ("kN/m", "lbf/in"),
        QuantityKind.RotationalStiffness => ("kNm/rad", "kip-ft/rad"),
        QuantityKind.Area => ("cm2", "in2"),
        QuantityKind.SectionModulus => ("cm3", "in3"),
        QuantityKind.Inertia => ("cm4", "in4"),
        QuantityKind.UnitWeight => ("kg/m3", "pcf"),
        QuantityKind.Angle => ("deg", "deg"),
        QuantityKind.Share => ("%", "%"),
        QuantityKind.Number => (string.Empty, string.Empty),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Is no kind of cell."),
    };
}
