using System.Diagnostics;

namespace FieldCheck.Sheet.Reading;

/// <summary>Exponents of length, force and angle. Force stands for mass too: "lb" on a beam is a force.</summary>
/// <param name="Length">Exponent of length.</param>
/// <param name="Force">Exponent of force.</param>
/// <param name="Angle">Exponent of angle.</param>
public readonly record struct Dimension(sbyte Length, sbyte Force, sbyte Angle)
{
    /// <summary>
    /// What a value of the kind is made of. A number and a share have none; a stiffness has that of a force per length.
    /// </summary>
    /// <param name="kind">What a cell asks for.</param>
    public static Dimension Of(QuantityKind kind) => kind switch
    {
        QuantityKind.Length => new(1, 0, 0),
        QuantityKind.Force => new(0, 1, 0),
        QuantityKind.ForcePerLength or QuantityKind.Stiffness => new(-1, 1, 0),
        QuantityKind.Pressure => new(-2, 1, 0),
        QuantityKind.Moment => new(1, 1, 0),
        QuantityKind.RotationalStiffness => new(1, 1, -1),
        QuantityKind.Area => new(2, 0, 0),
        QuantityKind.SectionModulus => new(3, 0, 0),
        QuantityKind.Inertia => new(4, 0, 0),
        QuantityKind.UnitWeight => new(-3, 1, 0),
        QuantityKind.Angle => new(0, 0, 1),
        QuantityKind.Number or QuantityKind.Share => default,
        _ => throw new UnreachableException(),
    };

    internal bool IsNone => this == default;

    internal Dimension Times(Dimension other) =>
        new((sbyte)(Length + other.Length), (sbyte)(Force + other.Force), (sbyte)(Angle + other.Angle));

    internal Dimension Over(Dimension other) =>
        new((sbyte)(Length - other.Length), (sbyte)(Force - other.Force), (sbyte)(Angle - other.Angle));

    /// <summary>The largest exponent, whatever its sign.</summary>
    internal int Height => Math.Max(Math.Abs((int)Length), Math.Max(Math.Abs((int)Force), Math.Abs((int)Angle)));
}
