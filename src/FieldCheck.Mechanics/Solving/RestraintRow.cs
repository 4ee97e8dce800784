using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Solving;

/// <summary>
/// One movement that a support forbids a rigid part: left·(rise of its left end) + right·(rise of its right end) +
/// along·(shift) = 0.
/// </summary>
internal struct RestraintRow(double left, double right, double along)
{
    internal double Left = left;
    internal double Right = right;
    internal double Along = along;

    /// <summary>What a support that holds along forbids.</summary>
    internal static RestraintRow OfAlong => new(0, 0, 1);

    /// <summary>What a support that holds rotation forbids.</summary>
    internal static RestraintRow OfRotation => new(-1, 1, 0);

    /// <summary>What a support that holds across, or normal to its surface, forbids.</summary>
    /// <param name="support">The support.</param>
    /// <param name="share">Its place on the part: 0 at the left end, 1 at the right.</param>
    internal static RestraintRow OfAcross(Support support, double share)
    {
        (double sine, double cosine) = support.SurfaceSlope == 0 ? (0, 1) : Math.SinCos(support.SurfaceSlope);
        return new RestraintRow(cosine * (1 - share), cosine * share, -sine);
    }
}
