using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Solving;

/// <summary>
/// A straight piece of one section between two nodes: exact stiffness, with shear flexibility where given.
/// </summary>
/// <remarks>
/// Derived in docs/methods.md, "Elements". With Φ = 12EI/(GA·L²): sway k = 12EI/(L³(1+Φ)), its moment k·L/2, and end
/// stiffnesses kL²/4 ± EI/L.
/// </remarks>
internal readonly struct Element
{
    private readonly DoubleDouble _length;
    private readonly DoubleDouble _inverseLength;
    private readonly double _flexural;
    private readonly double _axial;
    private readonly DoubleDouble _swayPerRigidity;

    internal Element(Span span, DoubleDouble length)
    {
        _length = length;
        _flexural = span.FlexuralRigidity;
        _axial = span.AxialRigidity;
        _inverseLength = (DoubleDouble)1 / length;
        ShearRatio = DoubleDouble.Zero;
        DoubleDouble sway = _inverseLength * _inverseLength * 12;
        if (span.ShearRigidity is double shear)
        {
            ShearRatio = (DoubleDouble)_flexural / shear;
            sway /= (DoubleDouble)1 + sway * ShearRatio;
        }

        _swayPerRigidity = sway * _inverseLength;
        Sway = _swayPerRigidity * _flexural;
        SwayMoment = (Sway * length).Scaled(0.5);
        DoubleDouble quarter = (SwayMoment * length).Scaled(0.5);
        DoubleDouble bending = _inverseLength * _flexural;
        NearTurn = quarter + bending;
        FarTurn = quarter - bending;
        Stretch = _inverseLength * _axial;
    }

    /// <summary>EI/GA [m²], or zero where shear does not deform it.</summary>
    internal DoubleDouble ShearRatio { get; }

    /// <summary>End force per movement across of the other end [N/m].</summary>
    internal DoubleDouble Sway { get; }

    /// <summary>End moment per movement across [N].</summary>
    internal DoubleDouble SwayMoment { get; }

    /// <summary>End moment per turn of the same end [N·m/rad].</summary>
    internal DoubleDouble NearTurn { get; }

    /// <summary>End moment per turn of the other end [N·m/rad].</summary>
    internal DoubleDouble FarTurn { get; }

    /// <summary>End force along per movement along [N/m].</summary>
    internal DoubleDouble Stretch { get; }

    /// <summary>E·I [N·m²].</summary>
    internal double FlexuralRigidity => _flexural;

    /// <summary>Forces inside its ends, from the movements of its nodes and what its own loads do.</summary>
    /// <param name="own">Where a walk over its loads arrives that starts from nothing at all.</param>
    /// <param name="left">The movement of its left node.</param>
    /// <param name="right">The movement of its right node.</param>
    internal ElementForces Forces(in SectionMarch own, in NodeMovement left, in NodeMovement right)
    {
        DoubleDouble half = _length.Scaled(0.5);
        DoubleDouble chord = (left.TurnRight + right.TurnLeft) * half - (right.Up - left.Up);
        DoubleDouble turn = (right.TurnLeft - left.TurnRight) * _flexural - own.Turn;
        DoubleDouble shear = _swayPerRigidity * (chord * _flexural + own.Rise - own.Turn * half);
        DoubleDouble moment = turn * _inverseLength - shear * half;
        DoubleDouble axial = ((right.Right - left.Right) * _axial - own.Shift) * _inverseLength;
        return new ElementForces(
            new SectionForces(axial, shear, moment),
            new SectionForces(axial + own.Axial, shear + own.Shear, moment + shear * _length + own.Moment));
    }
}
