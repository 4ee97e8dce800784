using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.Catalogue;

public sealed class CatalogueFileTests
{
    private const string Tube = "form = \"rectangular tube\"\ndepth = \"100 mm\"\nwidth = \"50 mm\"\nwall = \"5 mm\"\n";
    private const string Plates =
        "depth = \"200 mm\"\nflange_width = \"100 mm\"\nweb_thickness = \"6 mm\"\nflange_thickness = \"9 mm\"\n";
    private const string Wood = "modulus = \"11 GPa\"\nstrengths = \"characteristic\"\n";

    public static TheoryData<string, string, string> WrongShapes => new()
    {
        { "depth = \"1 m\"\n", "shape.s", "a shape needs its form: I, channel, rectangle, rectangular tube, round tube, "
            + "round bar or figures" },
        { "form = \"chanel\"\n", "shape.s.form", "expected I, channel, rectangle, rectangular tube, round tube, round bar "
            + "or figures, found 'chanel': did you mean channel?" },
        { "form = \"I\"\n" + Plates.Replace("200 mm", "0 mm", StringComparison.Ordinal),
            "shape.s.depth", "'0 mm' is not greater than zero" },
        { "form = \"I\"\n" + Plates.Replace("depth", "dept", StringComparison.Ordinal),
            "shape.s.dept", "unknown key; did you mean depth?" },
        { "form = \"I\"\n" + Plates.Replace("web_thickness", "wall", StringComparison.Ordinal),
            "shape.s.web_thickness", "form \"I\" needs its web_thickness" },
        { "form = \"I\"\n" + Plates.Replace("\"200 mm\"", "200", StringComparison.Ordinal),
            "shape.s.depth", "200 has no unit: a length is written in ft, in, m, cm or mm" },
        { "form = \"I\"\n" + Plates.Replace("9 mm", "100 mm", StringComparison.Ordinal),
            "shape.s.flange_thickness", "the two flanges leave no web: together they are as thick as the section is deep" },
        { "form = \"channel\"\n" + Plates.Replace("6 mm", "120 mm", StringComparison.Ordinal),
            "shape.s.web_thickness", "the web is thicker than the flanges are wide" },
        { "form = \"I\"\nroot_radius = \"60 mm\"\n" + Plates,
            "shape.s.root_radius", "the fillets do not fit between web and flanges" },
        { "form = \"I\"\nroot_radius = \"-1 mm\"\n" + Plates, "shape.s.root_radius", "'-1 mm' is less than zero" },
        { "form = \"I\"\nflange_to_fillet_foot = \"5 mm\"\n" + Plates, "shape.s.flange_to_fillet_foot",
            "the foot of the fillet lies inside the flange: it is measured from the flange's outer face" },
        { "form = \"channel\"\nflange_to_fillet_foot = \"101 mm\"\n" + Plates, "shape.s.flange_to_fillet_foot",
            "the fillets do not fit between web and flanges" },
        { "form = \"channel\"\nroot_radius = \"5 mm\"\n" + Plates, "shape.s.root_radius", "form \"channel\" takes no "
            + "root_radius; it takes depth, flange_width, web_thickness, flange_thickness, flange_slope, "
            + "flange_to_fillet_foot, area, "
            + "inertia, section_modulus, plastic_modulus, shear_area, weak_inertia, weak_section_modulus, "
            + "torsion_constant, weight, family, form, source and status" },
        { "form = \"channel\"\nflange_slope = \"1/5\"\n" + Plates, "shape.s.flange_slope",
            "so steep a slope leaves no flange at its edge, or no web at its root" },
        { Tube.Replace("\"5 mm\"", "\"25 mm\"", StringComparison.Ordinal),
            "shape.s.wall", "the walls leave no hollow: write it as a rectangle" },
        { Tube + "outer_radius = \"26 mm\"\n", "shape.s.outer_radius", "the corners are rounder than the tube is wide" },
        { Tube + "inner_radius = \"21 mm\"\n", "shape.s.inner_radius", "the corners are rounder than the tube is wide" },
        { Tube + "outer_radius = \"20 mm\"\ninner_radius = \"0 mm\"\n", "shape.s.outer_radius",
            "the outer corner cuts through the inner one: no wall is left there" },
        { "form = \"round tube\"\ndiameter = \"50 mm\"\nwall = \"25 mm\"\n", "shape.s.wall",
            "the wall is half the diameter or more: leave it out for a solid bar" },
        { Tube + "area = \"14 mm2\"\n", "shape.s.area",
            "this is 0.01 times what the sizes give: is a digit or the unit wrong?" },
        { Tube + "weight = \"-1 kg/m\"\n", "shape.s.weight", "'-1 kg/m' is not greater than zero" },
        { "form = \"rectangle\"\nwidth = \"50 mm\"\ndepth = \"100 mm\"\ninertia = \"418 cm4\"\n", "shape.s.inertia",
            "this is 1.003 times what the sizes give: is a digit or the unit wrong?" },
        { "form = \"figures\"\narea = \"10 cm2\"\n", "shape.s.inertia", "form \"figures\" needs its inertia" },
    };

    public static TheoryData<string, string, string> WrongGrades => new()
    {
        {
            "modulus = \"210 GPa\"\nyield_thickness = \"16 mm\"\n", "grade.g.yield_thickness",
            "needs the yield that holds up to this thickness beside it, as yield = \"235 N/mm2\""
        },
        { "modulus = \"210 GPa\"\nyield_shape = \"round tube\"\n", "grade.g.yield_shape",
            "needs the yield of this shape beside it, as yield = \"50 ksi\"" },
        { "modulus = \"11 GPa\"\nthickness_from = \"4 in\"\nthickness_to = \"2 in\"\n", "grade.g.thickness_to",
            "this is below thickness_from, and no piece is between them" },
        { "modulus = \"11 GPa\"\nwidth_from = \"4 in\"\nwidth_to = \"2 in\"\n", "grade.g.width_to",
            "this is below width_from, and no piece is between them" },
        { "modulus = \"11 GPa\"\nexcess_over = \"2 in\"\nexcess_to = \"2 in\"\n", "grade.g.excess_to",
            "this is not above excess_over, and no piece is between them" },
        { "yield = \"235 MPa\"\n", "grade.g.modulus", "a grade needs its modulus, as \"11 GPa\"" },
        { "modulus = \"-1 GPa\"\n", "grade.g.modulus", "'-1 GPa' is not greater than zero" },
        { "modulus = \"11 GPa\"\nbending = \"24 MPa\"\n", "grade.g.bending",
            "needs strengths = \"reference\" (NDS) or \"characteristic\" (EN 338, EN 14080) beside it" },
        { Wood + "bending = \"24 MPa\"\nshear = \"4 MPa\"\n", "grade.g.bearing", "strengths need bearing beside them, as \"4 N/mm2\"" },
        { Wood + "bending = \"24 MPa\"\nshear = \"-4 MPa\"\nbearing = \"2 MPa\"\n",
            "grade.g.shear", "'-4 MPa' is not greater than zero" },
        { Wood + "bending = \"24 MPa\"\nshear = \"4 MPa\"\nbearing = \"2 MPa\"\nminimum_modulus = \"12 GPa\"\n",
            "grade.g.minimum_modulus", "this is above the modulus, and cannot be its least value" },
        { Wood + "bending = \"24 MPa\"\nshear = \"4 MPa\"\nbearing = \"2 MPa\"\nsize_factor = \"dimension lumber\"\n",
            "grade.g.size_factor", "\"dimension lumber\" goes with reference strengths, \"glulam\" with characteristic ones" },
        { "modulus = \"11 GPa\"\nstrengths = \"reference\"\nbending = \"9 MPa\"\nshear = \"1 MPa\"\nbearing = \"4 MPa\"\n"
                + "size_factor = \"glulam\"\n",
            "grade.g.size_factor", "\"dimension lumber\" goes with reference strengths, \"glulam\" with characteristic ones" },
        { "modulus = \"11 GPa\"\nstrengths = \"design\"\nbending = \"24 MPa\"\nshear = \"4 MPa\"\nbearing = \"2 MPa\"\n",
            "grade.g.strengths",
            "expected reference or characteristic, found 'design'" },
    };

    [Theory]
    [MemberData(nameof(WrongShapes))]
    public void WrongShape_IsToldWithWhatWasExpected_AndLeftOut(string cells, string key, string text)
    {
        CatalogueFile file = Read("[shape.s]\nsource = \"a book\"\n" + cells);

        Assert.Equal((key, text), (file.Problems[0].Key, file.Problems[0].Text));
        Assert.Empty(file.Shapes);
    }

    [Theory]
    [MemberData(nameof(WrongGrades))]
    public void WrongGrade_IsToldWithWhatWasExpected_AndLeftOut(string cells, string key, string text)
    {
        CatalogueFile file = Read("[grade.g]\nsource = \"a book\"\n" + cells);

        Assert.Equal((key, text), (file.Problems[0].Key, file.Problems[0].Text));
        Assert.Empty(file.Grades);
    }

    [Theory]
    [InlineData("[shape.s]\nform = \"round bar\"\ndiameter = \"1 in\"\n", "shape.s")]
    [InlineData("[grade.g]\nmodulus = \"11 GPa\"\n", "grade.g")]
    public void EntryWithoutSource_IsTold(string text, string key)
    {
        FileProblem problem = Assert.Single(Read(text).Problems);

        Assert.Equal((1, key), (problem.Line, problem.Key));
        Assert.Equal("needs its source, as \"maker's table of 2024\": a figure without one helps nobody", problem.Text);
    }

    [Theory]
    [InlineData("[shapes.s]\n", "unknown table; did you mean [shape.NAME]?")]
    [InlineData("[shape]\nform = \"I\"\n", "expected a table with a name, headed [shape.NAME], found a text")]
    [InlineData("[shape.\"-\"]\nform = \"round bar\"\ndiameter = \"1 in\"\nsource = \"a\"\n",
        "a name has at least one letter or digit")]
    [InlineData("[shape.\"a\\u0007\"]\nform = \"round bar\"\ndiameter = \"1 in\"\nsource = \"a\"\n",
        "a name holds letters, digits and signs that print")]
    [InlineData("[shape.\"123456789012345678901234567890123456789012\"]\nform = \"round bar\"\ndiameter = \"1 in\"\n"
        + "source = \"a\"\n", "a name has at most 40 letters")]
    [InlineData("[shape.s]\n[shape.s]\n", "already written at line 1; a key or table stands once")]
    public void WrongFile_IsTold(string text, string expected)
    {
        CatalogueFile file = Read(text);

        Assert.Contains(expected, file.Problems.Select(problem => problem.Text));
        Assert.Empty(file.Shapes);
    }

    [Fact]
    public void FiguresAlone_GiveWhatTheySay_AndFlatOnlyWhereTheySayIt()
    {
        CatalogueFile file = Read("""
            [shape.one]
            form    = "figures"
            depth   = "200 mm"
            inertia = "4290 cm4"
            source  = "maker's table"
            [shape.both]
            form                 = "figures"
            inertia              = "4290 cm4"
            section_modulus      = "429 cm3"
            weak_inertia         = "30 cm4"
            weak_section_modulus = "7.5 cm3"
            weight               = "5 kg/m"
            source               = "maker's table"
            """);

        (CatalogueShape one, CatalogueShape both) = (file.Shapes[0], file.Shapes[1]);
        Assert.Empty(file.Problems);
        Assert.Null(one.Flat);
        Assert.Equal(0.2, one.Upright.Depth!.Value, 1e-12);
        Assert.Equal(4290e-8, one.Upright.Inertia!.Value, 1e-15);
        Assert.Equal((null, null, null), (one.Upright.SectionModulus, one.Upright.Area, one.Upright.Shape));
        Assert.Equal(30e-8, both.Upright.LateralInertia!.Value, 1e-18);
        Assert.Equal(30e-8, both.Flat!.Inertia!.Value, 1e-18);
        Assert.Equal(7.5e-6, both.Flat.SectionModulus!.Value, 1e-15);
        Assert.Equal(4290e-8, both.Flat.LateralInertia!.Value, 1e-15);
        Assert.Equal(5 * 9.80665, both.Flat.WeightPerLength!.Value, 1e-9);
        Assert.True(both.Flat.IsFlat);
    }

    [Fact]
    public void PublishedInertia_TakesItsModulusAndWarpingAlong()
    {
        CatalogueShape plain = Read("[shape.s]\nsource = \"a\"\nform = \"I\"\n" + Plates).Shapes[0];
        double strong = plain.Upright.Inertia!.Value * 1.1;
        double weak = plain.Flat!.Inertia!.Value * 0.9;
        CatalogueShape shape = Read(
            "[shape.s]\nsource = \"a\"\nform = \"I\"\n" + Plates
            + FormattableString.Invariant($"inertia = \"{strong:R} m4\"\nweak_inertia = \"{weak:R} m4\"\n")).Shapes[0];

        Assert.Equal(1.1, shape.Upright.SectionModulus!.Value / plain.Upright.SectionModulus!.Value, 1e-12);
        Assert.Equal(0.9, shape.Flat!.SectionModulus!.Value / plain.Flat.SectionModulus!.Value, 1e-12);
        Assert.Equal(0.9, shape.Upright.WarpingConstant!.Value / plain.Upright.WarpingConstant!.Value, 1e-12);
        Assert.Equal(plain.Upright.Area, shape.Upright.Area);
    }

    [Fact]
    public void FilletFoot_GivesTheRadius_AndMakesItRolled()
    {
        SectionShape Outline(string more) =>
            Read("[shape.s]\nsource = \"a\"\nform = \"I\"\n" + Plates + more).Shapes[0].Upright.Shape!;

        SectionShape.I rolled = Assert.IsType<SectionShape.I>(Outline("flange_to_fillet_foot = \"21 mm\"\n"));
        Assert.Equal(0.012, rolled.RootRadius, 1e-12);
        Assert.Equal((0.021, true), (rolled.FilletDepth, rolled.IsRolled));
        Assert.Equal(new SectionShape.I(0.1, 0.009, 0.006, 0.2, 0.015, true), Outline("root_radius = \"15 mm\"\n"));
        Assert.Equal(new SectionShape.I(0.1, 0.009, 0.006, 0.2), Outline(""));
    }

    [Fact]
    public void InnerCorner_FollowsFromTheOuterOne_WhereItIsNotWritten() => Assert.Equal(
        new SectionShape.RectangularTube(0.05, 0.1, 0.005, 0.0075, 0.0025),
        RoundedTube(Read("[shape.s]\nsource = \"a\"\n" + Tube + "outer_radius = \"7.5 mm\"\n").Shapes[0].Upright.Shape!));

    [Fact]
    public void Family_IsTheEntrysOwn_OrTheFiles_OrNone()
    {
        const string Bar = "form = \"round bar\"\ndiameter = \"1 in\"\nsource = \"a\"\n";

        Assert.Equal("your own", Read("[shape.s]\n" + Bar).Shapes[0].Family);
        Assert.Equal("bars", Read("family = \"bars\"\n[shape.s]\n" + Bar).Shapes[0].Family);
        Assert.Equal("rods", Read("family = \"bars\"\n[shape.s]\nfamily = \"rods\"\n" + Bar).Shapes[0].Family);
    }

    private static SectionShape.RectangularTube RoundedTube(SectionShape shape)
    {
        SectionShape.RectangularTube tube = Assert.IsType<SectionShape.RectangularTube>(shape);
        return tube with { InnerRadius = Math.Round(tube.InnerRadius, 12) };
    }

    private static CatalogueFile Read(string text) => CatalogueFile.Read("own.toml", text, "your own");
}
