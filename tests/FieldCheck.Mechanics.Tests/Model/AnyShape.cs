using CsCheck;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Model;

/// <summary>Draws shapes of every kind, slender and stout, with and without fillets.</summary>
internal static class AnyShape
{
    private static readonly Gen<double> Size = Gen.Double[0.05, 0.5];

    private static readonly Gen<double> Share = Gen.Double[0.01, 0.99];

    private static readonly Gen<double> ShareOrNone = Gen.OneOf(Gen.Const(0.0), Share);

    internal static readonly Gen<SectionShape> Rectangle = Gen.Select(
        Size, Size, Gen.Int[1, 4], (width, depth, plies) => (SectionShape)new SectionShape.Rectangle(width, depth, plies));

    internal static readonly Gen<SectionShape> Round =
        Size.Select(diameter => (SectionShape)new SectionShape.Round(diameter));

    internal static readonly Gen<SectionShape> RoundTube = Gen.Select(
        Size, Share, (diameter, share) => (SectionShape)new SectionShape.RoundTube(diameter, diameter / 2 * share));

    internal static readonly Gen<SectionShape> RectangularTube = Gen.Select(
        Size, Size, Gen.Double[0.01, 0.9], ShareOrNone, ShareOrNone, (width, depth, wall, inner, outer) =>
        {
            double thickness = Math.Min(width, depth) / 2 * wall;
            double innerRadius = (Math.Min(width, depth) / 2 - thickness) * inner;
            double most = Math.Min(innerRadius + 3.4 * thickness, Math.Min(width, depth) / 2);
            return (SectionShape)new SectionShape.RectangularTube(width, depth, thickness, most * outer, innerRadius);
        });

    internal static readonly Gen<SectionShape> I = Gen.Select(
        Size, Size, Share, Share, ShareOrNone, (width, depth, flange, web, radius) =>
        {
            double tf = depth / 2 * flange;
            double tw = width * web;
            double most = Math.Min(depth / 2 - tf, (width - tw) / 2);
            return (SectionShape)new SectionShape.I(width, tf, tw, depth, most * radius);
        });

    internal static readonly Gen<SectionShape> Channel = Gen.Select(
        Size, Size, Share, Share, ShareOrNone, (width, depth, flange, web, slope) =>
        {
            double tf = depth / 2 * flange;
            double most = Math.Min(tf, depth / 2 - tf) * 2 / (width * (1 - web));
            return (SectionShape)new SectionShape.Channel(width, tf, width * web, depth) { FlangeSlope = most * slope };
        });

    /// <summary>I sections with fillets in proportions like those that are rolled, and somewhat beyond.</summary>
    internal static readonly Gen<SectionShape> RolledI = Gen.Select(
        Gen.Double[0.005, 0.05], Gen.Double[2, 30], Gen.Double[3, 60], Gen.Double[0.3, 1.2], Gen.Double[0.1, 2.5],
        (flange, width, depth, web, radius) =>
        {
            double most = Math.Min(width - web, depth - 2) / 2;
            return (SectionShape)new SectionShape.I(
                flange * width, flange, flange * web, flange * depth, flange * Math.Min(radius, most * 0.99));
        });

    internal static readonly Gen<SectionShape> Open = Gen.OneOf(I, RolledI, Channel);

    internal static readonly Gen<SectionShape> OfAnyKind =
        Gen.OneOf(Rectangle, Round, RoundTube, RectangularTube, I, RolledI, Channel);

    /// <summary>The same shape, every size times a number.</summary>
    internal static SectionShape Times(this SectionShape shape, double k) => shape switch
    {
        SectionShape.Rectangle s => s with { Width = k * s.Width, Depth = k * s.Depth },
        SectionShape.Round s => new SectionShape.Round(k * s.Diameter),
        SectionShape.RoundTube s => new SectionShape.RoundTube(k * s.Diameter, k * s.Wall),
        SectionShape.RectangularTube s => new SectionShape.RectangularTube(
            k * s.Width, k * s.Depth, k * s.Wall, k * s.OuterRadius, k * s.InnerRadius),
        SectionShape.I s => new SectionShape.I(
            k * s.FlangeWidth, k * s.FlangeThickness, k * s.WebThickness, k * s.Depth, k * s.RootRadius),
        SectionShape.Channel s => new SectionShape.Channel(
            k * s.FlangeWidth, k * s.FlangeThickness, k * s.WebThickness, k * s.Depth)
        {
            FlangeSlope = s.FlangeSlope,
        },
        _ => throw new ArgumentException("Unknown shape.", nameof(shape)),
    };
}
