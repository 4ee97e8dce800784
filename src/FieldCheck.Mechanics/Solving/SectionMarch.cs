using System.Runtime.CompilerServices;

namespace FieldCheck.Mechanics.Solving;

/// <summary>The state of a section that walks to the right through the pieces of one element.</summary>
/// <remarks>
/// Exact integration of dN/dx = -p, dV/dx = q, dM/dx = V, EI·dθ/dx = M, dv/dx = θ - V/GA with q and p linear on a
/// piece. Movements are kept times the rigidity, so that nothing is divided: docs/methods.md, "Elements".
/// </remarks>
internal struct SectionMarch
{
    private static readonly DoubleDouble Sixth = (DoubleDouble)1 / 6;
    private static readonly DoubleDouble Fifth = (DoubleDouble)1 / 5;

    /// <summary>N [N], tension.</summary>
    internal DoubleDouble Axial;

    /// <summary>V [N], the upward forces to the left.</summary>
    internal DoubleDouble Shear;

    /// <summary>M [N·m], sagging.</summary>
    internal DoubleDouble Moment;

    /// <summary>EI·θ [N·m²], θ the turn of the section counter-clockwise.</summary>
    internal DoubleDouble Turn;

    /// <summary>EI·v [N·m³], v the movement up.</summary>
    internal DoubleDouble Rise;

    /// <summary>EA·u [N·m], u the movement to the right.</summary>
    internal DoubleDouble Shift;

    /// <summary>Takes in what acts at a point.</summary>
    internal void Pass(in PointAction action)
    {
        Shear += action.Up;
        Axial -= action.Right;
        Moment -= action.TurnLeft + action.TurnRight;
    }

    /// <summary>Walks over one piece.</summary>
    /// <param name="load">What is spread over it.</param>
    /// <param name="length">Its length [m].</param>
    /// <param name="shearRatio">EI/GA [m²], or zero where shear does not deform the beam.</param>
    internal void Walk(in LineLoad load, DoubleDouble length, DoubleDouble shearRatio)
    {
        DoubleDouble linear = Shear * length;
        DoubleDouble gain = linear;
        DoubleDouble turn = Moment + linear.Scaled(0.5);
        DoubleDouble rise = Moment.Scaled(0.5) + linear * Sixth;
        if (load.Standing != 0)
        {
            DoubleDouble even = load.Up * length;
            DoubleDouble evenLever = even * length;
            DoubleDouble evenSixth = evenLever * Sixth;
            Shear += even;
            gain += evenLever.Scaled(0.5);
            turn += evenSixth;
            rise += evenSixth.Scaled(0.25);
        }

        if (!load.UpChange.IsZero)
        {
            DoubleDouble growing = load.UpChange * length * length;
            DoubleDouble growingSixth = growing * length * Sixth;
            Shear += growing.Scaled(0.5);
            gain += growingSixth;
            turn += growingSixth.Scaled(0.25);
            rise += (growingSixth * Fifth).Scaled(0.25);
        }

        Rise += length * (Turn + length * rise);
        if (!shearRatio.IsZero)
        {
            Rise -= shearRatio * gain;
        }

        Turn += length * turn;
        Moment += gain;
        WalkAlong(load, length);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void WalkAlong(in LineLoad load, DoubleDouble length)
    {
        if (!Axial.IsZero)
        {
            Shift += Axial * length;
        }

        if (!load.Right.IsZero || !load.RightChange.IsZero)
        {
            DoubleDouble even = load.Right * length;
            DoubleDouble growing = load.RightChange * length * length;
            Shift -= length * (even.Scaled(0.5) + growing * Sixth);
            Axial -= even + growing.Scaled(0.5);
        }
    }
}
