namespace FieldCheck.Mechanics.Response;

/// <summary>A stretch of beam on which every quantity is one polynomial.</summary>
/// <remarks>
/// With s the distance from its left end: N = N₀ - p₀s - p₁s²/2, V = V₀ + q₀s + q₁s²/2, dM/ds = V, EI·dθ/ds = M,
/// slope = θ - V/GA, and the deflection (down) is minus the integral of the slope. Both ends are kept as well, rounded
/// once from the longer arithmetic.
/// </remarks>
internal readonly record struct Piece
{
    /// <summary>Most coefficients that a quantity has.</summary>
    internal const int MostCoefficients = 6;

    /// <summary>Its left end [m from the left end of the beam].</summary>
    internal required double From { get; init; }

    /// <summary>Its right end [m from the left end of the beam].</summary>
    internal required double To { get; init; }

    /// <summary>The distance between them [m], rounded once.</summary>
    internal required double Length { get; init; }

    /// <summary>Just inside its left end.</summary>
    internal required PieceEnd Start { get; init; }

    /// <summary>Just inside its right end.</summary>
    internal required PieceEnd End { get; init; }

    /// <summary>Load across at its left end [N/m], positive up.</summary>
    internal required double Up { get; init; }

    /// <summary>Change of it [N/m²].</summary>
    internal required double UpChange { get; init; }

    /// <summary>Load along at its left end [N/m], positive right.</summary>
    internal required double Right { get; init; }

    /// <summary>Change of it [N/m²].</summary>
    internal required double RightChange { get; init; }

    /// <summary>E·I [N·m²].</summary>
    internal required double FlexuralRigidity { get; init; }

    /// <summary>1/GA [1/N]; zero where shear does not deform the beam.</summary>
    internal required double ShearFlexibility { get; init; }

    /// <summary>The value at its left end.</summary>
    internal double AtStart(Curve curve) => At(Start, curve);

    /// <summary>The value at its right end.</summary>
    internal double AtEnd(Curve curve) => At(End, curve);

    /// <summary>The value at a distance from its left end [m].</summary>
    internal double At(double distance, Curve curve)
    {
        Span<double> polynomial = stackalloc double[MostCoefficients];
        int count = Polynomial(curve, polynomial);
        return Roots.Value(polynomial[..count], distance / Length);
    }

    /// <summary>
    /// Writes the polynomial of a quantity, the distance taken as a part of the length; constant term first.
    /// </summary>
    /// <returns>How many coefficients it has.</returns>
    internal int Polynomial(Curve curve, Span<double> to)
    {
        double h = Length;
        PieceEnd start = Start;
        switch (curve)
        {
            case Curve.Axial:
                to[0] = start.Axial;
                to[1] = -Right * h;
                to[2] = -RightChange * h * h / 2;
                return 3;
            case Curve.Shear:
                to[0] = start.Shear;
                to[1] = Up * h;
                to[2] = UpChange * h * h / 2;
                return 3;
            case Curve.Moment:
                to[0] = start.Moment;
                to[1] = start.Shear * h;
                to[2] = Up * h * h / 2;
                to[3] = UpChange * h * h * h / 6;
                return 4;
            case Curve.Slope:
                SlopePolynomial(to);
                return 5;
            default:
                SlopePolynomial(to[1..]);
                for (int k = 1; k < MostCoefficients; k++)
                {
                    to[k] *= -h / k;
                }

                to[0] = 0 - start.Rise;
                return MostCoefficients;
        }
    }

    private void SlopePolynomial(Span<double> to)
    {
        double h = Length;
        double bend = 1 / FlexuralRigidity;
        to[0] = Start.Turn - Start.Shear * ShearFlexibility;
        to[1] = (Start.Moment * bend - Up * ShearFlexibility) * h;
        to[2] = (Start.Shear * bend - UpChange * ShearFlexibility) * h * h / 2;
        to[3] = Up * bend * h * h * h / 6;
        to[4] = UpChange * bend * h * h * h * h / 24;
    }

    private double At(in PieceEnd end, Curve curve) => curve switch
    {
        Curve.Axial => end.Axial,
        Curve.Shear => end.Shear,
        Curve.Moment => end.Moment,
        Curve.Slope => end.Turn - end.Shear * ShearFlexibility,
        _ => 0 - end.Rise,
    };
}
