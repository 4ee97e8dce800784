namespace FieldCheck.Mechanics.Solving;

/// <summary>Which way a support's surface runs: along it (cos, sin), normal to it (-sin, cos).</summary>
internal readonly struct SurfaceDirection
{
    private SurfaceDirection(DoubleDouble cosine, DoubleDouble sine, bool isSloped)
    {
        Cosine = cosine;
        Sine = sine;
        IsSloped = isSloped;
    }

    internal static SurfaceDirection Level => new(1, 0, false);

    internal DoubleDouble Cosine { get; }

    internal DoubleDouble Sine { get; }

    internal bool IsSloped { get; }

    /// <summary>The direction of a surface of a given slope [rad].</summary>
    /// <remarks>One Newton step on cos² + sin² = 1 keeps the two directions square to each other to 106 bits.</remarks>
    internal static SurfaceDirection Of(double slope)
    {
        (double sine, double cosine) = Math.SinCos(slope);
        DoubleDouble excess = DoubleDouble.Product(cosine, cosine) + DoubleDouble.Product(sine, sine) - 1;
        DoubleDouble scale = (DoubleDouble)1 - excess.Scaled(0.5);
        return new SurfaceDirection(scale * cosine, scale * sine, true);
    }

    /// <summary>The two parts, to the right and up, of a vector given along the surface and normal to it.</summary>
    internal (DoubleDouble Right, DoubleDouble Up) ToRightAndUp(DoubleDouble along, DoubleDouble normal) =>
        (Cosine * along - Sine * normal, Sine * along + Cosine * normal);

    /// <summary>The part normal to the surface of a vector.</summary>
    internal DoubleDouble NormalOf(DoubleDouble right, DoubleDouble up) => Cosine * up - Sine * right;

    /// <summary>The part along the surface of a vector.</summary>
    internal DoubleDouble AlongOf(DoubleDouble right, DoubleDouble up) => Cosine * right + Sine * up;
}
