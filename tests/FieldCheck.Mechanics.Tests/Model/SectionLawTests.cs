using CsCheck;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Model;

/// <summary>What holds for the figures of every shape, upright and flat.</summary>
public sealed class SectionLawTests
{
    private static readonly Gen<(SectionShape Shape, bool Flat)> Placed = Gen.Select(AnyShape.OfAnyKind, Gen.Bool);

    [Fact]
    public void Figures_AreThoseOfFineStrips() => Placed.Sample(
        (shape, flat) =>
        {
            Section section = Section.Of(shape, flat);
            StripSection strips = StripSection.Of(shape, flat);

            Near(strips.Area, section.Area, 1e-5, "area");
            Near(strips.Inertia, section.Inertia, 1e-5, "inertia");
            Near(strips.Modulus, section.SectionModulus, 1e-5, "modulus");
            Near(strips.PlasticModulus(), section.PlasticModulus, 1e-5, "plastic modulus");
            Near(strips.PeakShearArea(), section.PeakShearArea, 1e-3, "peak shear area");
        },
        iter: 100);

    [Fact]
    public void Figures_GrowWithTheirPowerOfSize() =>
        Gen.Select(Placed, Gen.Int[-8, 8]).Sample((placed, power) =>
        {
            // A power of two, so that no rounding carries a proportion over a bound.
            double k = Math.Pow(2, power);
            Section one = Section.Of(placed.Shape, placed.Flat);
            Section other = Section.Of(placed.Shape.Times(k), placed.Flat);

            Near(one.Depth * k, other.Depth, 1e-9, "depth");
            Near(one.Area * Math.Pow(k, 2), other.Area, 1e-9, "area");
            Near(one.ShearArea * Math.Pow(k, 2), other.ShearArea, 1e-9, "shear area");
            Near(one.PeakShearArea * Math.Pow(k, 2), other.PeakShearArea, 1e-7, "peak shear area");
            Near(one.SectionModulus * Math.Pow(k, 3), other.SectionModulus, 1e-9, "modulus");
            Near(one.PlasticModulus * Math.Pow(k, 3), other.PlasticModulus, 1e-9, "plastic modulus");
            Near(one.Inertia * Math.Pow(k, 4), other.Inertia, 1e-9, "inertia");
            Near(one.LateralInertia * Math.Pow(k, 4), other.LateralInertia, 1e-9, "lateral inertia");
            Near(one.TorsionConstant * Math.Pow(k, 4), other.TorsionConstant, 1e-9, "torsion constant");
            Near(one.WarpingConstant * Math.Pow(k, 6), other.WarpingConstant, 1e-9, "warping constant");
        });

    [Fact]
    public void LaidFlat_StrongAndWeakChangePlaces() => AnyShape.OfAnyKind.Sample(shape =>
    {
        Section upright = Section.Of(shape);
        Section flat = Section.Of(shape, flat: true);

        Near(upright.Area, flat.Area, 1e-12, "area");
        Near(upright.Inertia, flat.LateralInertia, 1e-12, "inertia");
        Near(upright.LateralInertia, flat.Inertia, 1e-12, "lateral inertia");
        Near(upright.TorsionConstant, flat.TorsionConstant, 1e-12, "torsion constant");
        Near(upright.WarpingConstant, flat.WarpingConstant, 1e-12, "warping constant");
        Assert.Equal((shape, false), (upright.Shape, upright.IsFlat));
        Assert.Equal((shape, true), (flat.Shape, flat.IsFlat));
    });

    [Fact]
    public void PlasticModulus_LiesBetweenTheElasticAndWhatAllAreaAtTheEdgesWouldGive() => Placed.Sample((shape, flat) =>
    {
        Section section = Section.Of(shape, flat);

        Assert.InRange(
            section.PlasticModulus!.Value, section.SectionModulus!.Value, section.Area!.Value * section.Depth!.Value / 2);
    });

    // Nicolai's inequality, equality for ellipses (G. Polya, G. Szego, Isoperimetric Inequalities in Mathematical
    // Physics, 1951; from memory), and of all areas of one size without holes the circle is the stiffest.
    [Fact]
    public void TorsionConstantOfASolidOrOpenShape_IsNoMoreThanAnySuchShapeCanHave() =>
        Gen.OneOf(AnyShape.Rectangle, AnyShape.Round, AnyShape.Open).Sample(shape =>
        {
            Section section = Section.Of(shape is SectionShape.Rectangle plies ? plies with { Plies = 1 } : shape);
            double strong = section.Inertia!.Value;
            double weak = section.LateralInertia!.Value;
            double area = section.Area!.Value;

            Assert.InRange(section.TorsionConstant!.Value, 0, 4 * strong * weak / (strong + weak) * (1 + 1e-12));
            Assert.InRange(section.TorsionConstant.Value, 0, area * area / (2 * Math.PI) * (1 + 1e-12));
        });

    [Fact]
    public void TubeWithAlmostNoBore_IsTheBar() => AnyShape.Round.Sample(shape =>
    {
        double diameter = ((SectionShape.Round)shape).Diameter;
        Section tube = Section.Of(new SectionShape.RoundTube(diameter, diameter / 2 * (1 - 1e-9)));
        Section bar = Section.Of(shape);

        AllNear(bar, tube, "bar");
        Near(bar.TorsionConstant, tube.TorsionConstant, 1e-8, "torsion constant");
    });

    [Fact]
    public void RectangularTubeWithAlmostNoBore_IsTheRectangle() =>
        Gen.Select(Gen.Double[0.05, 0.5], Gen.Double[1, 5]).Sample((width, slenderness) =>
        {
            // No wider than deep, since a slit across it does weaken it in shear.
            double depth = width * slenderness;
            double wall = width / 2 * (1 - 1e-9);

            AllNear(
                Section.Of(new SectionShape.Rectangle(width, depth)),
                Section.Of(new SectionShape.RectangularTube(width, depth, wall, 0, 0)),
                "rectangle");
        });

    [Fact]
    public void IWithWebAsWideAsItsFlanges_IsTheRectangle() =>
        Gen.Select(AnyShape.Rectangle, Gen.Double[0.01, 0.99], Gen.Bool).Sample((shape, share, flat) =>
        {
            SectionShape.Rectangle solid = (SectionShape.Rectangle)shape with { Plies = 1 };
            SectionShape.I plates = new(solid.Width, solid.Depth / 2 * share, solid.Width, solid.Depth);

            AllNear(Section.Of(solid, flat), Section.Of(plates, flat), "rectangle");
            Assert.InRange(
                Section.Of(plates).TorsionConstant!.Value, 0, Section.Of(solid).TorsionConstant!.Value * (1 + 1e-12));
        });

    [Fact]
    public void RoundTubeFromARectangularOneWithFullCorners_HasTheSameFigures() =>
        Gen.Select(Gen.Double[0.05, 0.5], Gen.Double[0.01, 0.99]).Sample((diameter, share) =>
        {
            double wall = diameter / 2 * share;
            double full = diameter / 2 * (1 - 1e-10);
            SectionShape.RectangularTube rounded = new(diameter, diameter, wall, full, full - wall);

            AllNear(Section.Of(new SectionShape.RoundTube(diameter, wall)), Section.Of(rounded), "round tube");
        });

    private static void AllNear(Section expected, Section actual, string what)
    {
        Near(expected.Depth, actual.Depth, 1e-8, $"depth of the {what}");
        Near(expected.Area, actual.Area, 1e-8, $"area of the {what}");
        Near(expected.Inertia, actual.Inertia, 1e-8, $"inertia of the {what}");
        Near(expected.LateralInertia, actual.LateralInertia, 1e-8, $"lateral inertia of the {what}");
        Near(expected.SectionModulus, actual.SectionModulus, 1e-8, $"modulus of the {what}");
        Near(expected.PlasticModulus, actual.PlasticModulus, 1e-8, $"plastic modulus of the {what}");
        Near(expected.PeakShearArea, actual.PeakShearArea, 1e-6, $"peak shear area of the {what}");
    }

    private static void Near(double? expected, double? actual, double share, string what) => Assert.True(
        Math.Abs(expected!.Value - actual!.Value) <= share * Math.Abs(expected.Value),
        $"{what}: expected {expected:R}, found {actual:R}");
}
