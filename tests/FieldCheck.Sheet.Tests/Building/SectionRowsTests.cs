using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Building;

public sealed class SectionRowsTests
{
    private static readonly SectionEntry Rectangle = new() { Name = "s", Width = "50 mm", Depth = "200 mm" };

    private static readonly SectionEntry BuiltUp = new()
    {
        Name = "s",
        FlangeWidth = "60 mm",
        FlangeThickness = "10 mm",
        WebThickness = "5 mm",
        Depth = "100 mm",
    };

    [Fact]
    public void Rectangle_BySize()
    {
        Section section = Of(Rectangle);

        Assert.Equal(0.05 * 0.2, section.Area!.Value, 1e-15);
        Assert.Equal(0.05 * 0.008 / 12, section.Inertia!.Value, 1e-15);
    }

    [Fact]
    public void ThreePlies_AreThreeTimesAsWide() =>
        Assert.Equal(3 * Of(Rectangle).Inertia!.Value, Of(Rectangle with { Plies = "3" }).Inertia!.Value, 1e-15);

    [Fact]
    public void Flat_SwapsWidthAndDepth()
    {
        Section flat = Of(Rectangle with { Flat = "true" });

        Assert.Equal(0.05, flat.Depth!.Value, 1e-12);
        Assert.Equal(0.2 * Math.Pow(0.05, 3) / 12, flat.Inertia!.Value, 1e-15);
    }

    // A plank of 200 x 50 mm written as it lies.
    [Theory]
    [InlineData("true")]
    [InlineData("false")]
    [InlineData(null)]
    public void RectangleWrittenWiderThanDeep_LiesFlatAlready(string? flat)
    {
        Section plank = Of(Rectangle with { Width = "200 mm", Depth = "50 mm", Flat = flat });

        Assert.Equal(0.05, plank.Depth!.Value, 1e-12);
        Assert.Equal(0.2 * Math.Pow(0.05, 3) / 12, plank.Inertia!.Value, 1e-15);
    }

    [Fact]
    public void PliesLaidFlat_BendEachOnItsOwn()
    {
        Section flat = Of(Rectangle with { Plies = "3", Flat = "true" });

        Assert.Equal(3 * 0.2 * Math.Pow(0.05, 3) / 12, flat.Inertia!.Value, 1e-15);
        Assert.Equal(3 * 0.2 * 0.05 * 0.05 / 6, flat.SectionModulus!.Value, 1e-15);
    }

    [Fact]
    public void RoundSection_IsABarOrWithAWallAPipe()
    {
        SectionEntry bar = new() { Name = "s", Diameter = "48.3 mm" };

        Assert.Equal(Section.Of(new SectionShape.Round(0.0483)), Of(bar));

        // By hand: scaffold tube 48.3 x 4 mm, A = pi x 4 x 44.3 = 556.7 mm2, I = pi/64 (48.3^4 - 40.3^4) = 137 676 mm4.
        Section pipe = Of(bar with { Wall = "4 mm" });
        Assert.Equal(556.7e-6, pipe.Area!.Value, 0.05e-6);
        Assert.Equal(137676e-12, pipe.Inertia!.Value, 1e-12);
    }

    [Fact]
    public void BuiltUpI_IsThreeRectangles()
    {
        SectionShape.I shape = new(0.06, 0.01, 0.005, 0.1);

        Assert.Equal(Section.Of(shape), Of(BuiltUp));
        Assert.Equal(Section.Of(shape, flat: true), Of(BuiltUp with { Flat = "true" }));
    }

    [Fact]
    public void Figures_AreTakenAsGiven()
    {
        Section section = Of(new()
        {
            Name = "s",
            Inertia = "100 cm4",
            Area = "10 cm2",
            SectionModulus = "20 cm3",
            Depth = "100 mm",
            ShearArea = "6 cm2",
            Weight = "8 kg/m",
        });

        Assert.Equal(100e-8, section.Inertia!.Value, 1e-18);
        Assert.Equal(10e-4, section.Area!.Value, 1e-15);
        Assert.Equal(20e-6, section.SectionModulus!.Value, 1e-15);
        Assert.Equal(6e-4, section.ShearArea!.Value, 1e-15);
        Assert.Equal(8 * 9.80665, section.WeightPerLength!.Value, 1e-12);
        Assert.Equal(0.1, section.Depth!.Value, 1e-15);
    }

    [Fact]
    public void Shape_ComesFromTheCatalogue()
    {
        CatalogueShape shape = SectionCatalogue.BuiltIn().Shape("W10x30")!;

        Assert.Equal(shape.Upright, Of(new() { Name = "s", Shape = "w10×30" }));
        Assert.Equal(shape.Flat, Of(new() { Name = "s", Shape = "W 10x30", Flat = "true" }));
    }

    public static TheoryData<SectionEntry, string[]> WrongSections => new()
    {
        {
            new() { Name = "s" },
            [
                "section.s: a section needs a shape, or width and depth, or a diameter, or the sizes of an I, "
                    + "or its inertia",
            ]
        },
        {
            new() { Name = "s", Shape = "W10x31" },
            ["section.s.shape: the catalogue has no shape 'W10x31': did you mean W10x30, W10x33 or W16x31?"]
        },
        {
            Rectangle with { Diameter = "3 in" },
            ["section.s: a section is given one way: a rectangle and a round section both stand"]
        },
        {
            Rectangle with { Inertia = "100 cm4" },
            ["section.s: a section is given one way: a rectangle and a section given by its figures both stand"]
        },
        { new() { Name = "s", Width = "3 in" }, ["section.s.depth: a rectangle needs its depth"] },
        {
            new() { Name = "s", FlangeWidth = "3 in", Depth = "6 in" },
            [
                "section.s.flange_thickness: an I section needs its flange thickness",
                "section.s.web_thickness: an I section needs its web thickness",
            ]
        },
        {
            new() { Name = "s", Area = "3 in2" },
            ["section.s.inertia: a section given by its figures needs its inertia"]
        },
        { new() { Name = "s", Wall = "3 mm" }, ["section.s.diameter: a round section needs its diameter"] },
        {
            new() { Name = "s", Diameter = "3 in", Depth = "3 in" },
            ["section.s.depth: a round section takes no depth; it takes diameter, wall and flat"]
        },
        {
            new() { Name = "s", Inertia = "100 cm4", Flat = "true" },
            [
                "section.s.flat: a section given by its figures takes no flat; it takes inertia, area, "
                    + "section_modulus, depth, shear_area and weight",
            ]
        },
        {
            new() { Name = "s", Diameter = "3 in", Wall = "1.5 in" },
            ["section.s.wall: the wall is half the diameter or more: leave it out for a solid bar"]
        },
        {
            BuiltUp with { Depth = "20 mm" },
            [
                "section.s.flange_thickness: the two flanges leave no web: together they are as thick as the section "
                    + "is deep",
            ]
        },
        {
            BuiltUp with { WebThickness = "61 mm" },
            ["section.s.web_thickness: the web is thicker than the flanges are wide"]
        },
        { Rectangle with { Plies = "0" }, ["section.s.plies: expected a whole number from 1 to 10000, found '0'"] },
        { Rectangle with { Width = "0 mm" }, ["section.s.width: '0 mm' is not greater than zero"] },
        { Rectangle with { Flat = "yes" }, ["section.s.flat: expected true or false"] },
        {
            Rectangle with { Name = "wet one", Depth = "-2 in" },
            ["section.\"wet one\".depth: '-2 in' is not greater than zero"]
        },
    };

    [Theory]
    [MemberData(nameof(WrongSections))]
    public void WrongSection_IsToldThoughNoSpanNeedsIt(SectionEntry section, string[] problems) =>
        Assert.Equal(problems, Beams.Problems(Beams.With(section)));

    [Fact]
    public void TwoSectionsOfOneName_AreTold() => Assert.Equal(
        ["section.s: another section is called 's' too"],
        Beams.Problems(Beams.Simple with { Sections = [Rectangle, Rectangle] }));

    private static Section Of(SectionEntry entry) => Beams.Built(Beams.With(entry)).Sticks.Single().Section!;
}
