using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Members of steel for the tests, from printed dimensions in inches and kips, or from plates in metres.</summary>
internal static class Steel
{
    internal const double Inch = 0.0254;
    internal const double Foot = 0.3048;
    internal const double Kip = 4448.2216152605;
    internal const double Ksi = Kip / (Inch * Inch);
    internal const double KipFoot = Kip * Foot;
    internal const double KipInch = Kip * Inch;

    internal static readonly MemberActions NoActions = new(0, 0, 0, 0, 0);

    internal static Material American(double yieldKsi) => new() { Modulus = 29000 * Ksi, Yield = yieldKsi * Ksi };

    internal static Material European(double yield) => new() { Modulus = 210e9, ShearModulus = 81e9, Yield = yield * 1e6 };

    /// <summary>A wide flange as a table prints it [in].</summary>
    internal static Section W(
        double d, double bf, double tw, double tf, double k, double area, double ix, double sx, double zx, double iy,
        double j, double cw) => new()
        {
            Area = area * Inch * Inch,
            Inertia = ix * Math.Pow(Inch, 4),
            SectionModulus = sx * Math.Pow(Inch, 3),
            PlasticModulus = zx * Math.Pow(Inch, 3),
            LateralInertia = iy * Math.Pow(Inch, 4),
            TorsionConstant = j * Math.Pow(Inch, 4),
            WarpingConstant = cw * Math.Pow(Inch, 6),
            Depth = d * Inch,
            PeakShearArea = d * tw * Inch * Inch,
            Shape = new SectionShape.I(bf * Inch, tf * Inch, tw * Inch, d * Inch, (k - tf) * Inch, IsRolled: true)
            {
                FilletDepth = k * Inch,
            },
        };

    /// <summary>Only what a strength about one axis asks for [in].</summary>
    internal static Section Of(SectionShape shape, double area, double s, double z, bool isFlat = false) => new()
    {
        Area = area * Inch * Inch,
        SectionModulus = s * Math.Pow(Inch, 3),
        PlasticModulus = z * Math.Pow(Inch, 3),
        Shape = shape,
        IsFlat = isFlat,
    };

    /// <summary>An I of three plates [m].</summary>
    internal static Section Plates(double b, double tf, double tw, double d, bool isRolled, bool isFlat = false) =>
        Section.Of(new SectionShape.I(b, tf, tw, d, 0, isRolled), isFlat);

    /// <summary>A rectangular tube with sharp corners [m], its torsion constant by Bredt alone.</summary>
    internal static Section Tube(double width, double depth, double wall)
    {
        double cell = (width - wall) * (depth - wall);
        return Section.Of(new SectionShape.RectangularTube(width, depth, wall, 0, 0), false) with
        {
            TorsionConstant = 2 * wall * cell * cell / (width + depth - 2 * wall),
        };
    }

    /// <summary>A solid rectangle [m], its torsion constant by the short formula.</summary>
    internal static Section Bar(double width, double depth) =>
        Section.Of(new SectionShape.Rectangle(width, depth), false) with
        {
            TorsionConstant = depth * Math.Pow(width, 3) / 3 * (1 - 0.63 * width / depth),
        };

    internal static Member Braced(Section section, Material material) =>
        new(section, material, new LateralSupport.Braced());

    internal static Member Unbraced(Section section, Material material, double length) =>
        new(section, material, new LateralSupport.Unbraced(length));

    internal static Resistance? Find(StrengthRules rules, Member member, CheckKind kind, MemberActions? actions = null) =>
        StrengthRule.Of(rules)!.Of(member, actions ?? NoActions).SingleOrDefault(one => one.Kind == kind);

    internal static double Limit(StrengthRules rules, Member member, CheckKind kind, MemberActions? actions = null) =>
        Find(rules, member, kind, actions)!.Limit!.Value;

    internal static double Term(Resistance resistance, CheckSymbol symbol) =>
        resistance.Terms.Single(term => term.Symbol == symbol).Value;

    internal static CheckKind[] Kinds(StrengthRules rules, Member member) =>
        [.. StrengthRule.Of(rules)!.Of(member, NoActions).Select(one => one.Kind)];
}
