using FieldCheck.Sheet.Catalogue;

namespace FieldCheck.Sheet.Tests.Catalogue;

public sealed class SectionCatalogueTests
{
    private static readonly SectionCatalogue BuiltIn = SectionCatalogue.BuiltIn();

    [Theory]
    [InlineData("W10x30", "W10x30")]
    [InlineData("w10X30", "W10x30")]
    [InlineData("W10×30", "W10x30")]
    [InlineData(" W 10 x 30", "W10x30")]
    [InlineData("ipe200", "IPE 200")]
    [InlineData("IPE-200", "IPE 200")]
    [InlineData("2X10", "2x10")]
    [InlineData("hss 6x6x1/4", "HSS6x6x1/4")]
    [InlineData("rhs200x100x6.3", "RHS 200x100x6.3")]
    [InlineData("pipe 2-1/2 std", "Pipe2-1/2STD")]
    public void Shape_IsFoundHoweverItIsSpelt(string typed, string name) =>
        Assert.Equal(name, BuiltIn.Shape(typed)?.Name);

    [Theory]
    [InlineData("W1.0x30")]
    [InlineData("W10x3")]
    [InlineData("W10x300")]
    [InlineData("")]
    public void ShapeThatIsNotThere_IsNotFound(string typed) => Assert.Null(BuiltIn.Shape(typed));

    [Theory]
    [InlineData("a992", "A992")]
    [InlineData("DF-L No.2", "DF-L No.2")]
    [InlineData("dfl no 2", "DF-L No.2")]
    [InlineData("c24", "C24")]
    [InlineData("S 355", "S355")]
    public void Grade_IsFoundHoweverItIsSpelt(string typed, string name) =>
        Assert.Equal(name, BuiltIn.Grade(typed)?.Name);

    [Theory]
    [InlineData("W10x30")]
    [InlineData("W10x22")]
    [InlineData("W12x26")]
    [InlineData("W14x30")]
    [InlineData("W8x31")]
    [InlineData("W16x31")]
    [InlineData("4x4")]
    [InlineData("4x8")]
    [InlineData("2x10")]
    [InlineData("2x12")]
    [InlineData("IPE 80")]
    [InlineData("IPE 600")]
    public void CommonShapes_AreThere(string name) => Assert.Contains(name, BuiltIn.Names);

    [Fact]
    public void Catalogue_IsReadOnce() => Assert.Same(
        SectionCatalogue.BuiltIn().Shape("W10x30"), SectionCatalogue.BuiltIn().Shape("w10x30"));

    [Fact]
    public void W10x30_HasTheFiguresOfTheTable()
    {
        // AISC Manual Table 1-1 (from memory): A = 8.84 in2, Ix = 170 in4, Sx = 32.4 in3, Iy = 16.7 in4, d = 10.5 in,
        // 30 lb/ft; Sy = Iy / (bf / 2) = 16.7 / 2.905 = 5.75 in3.
        CatalogueShape shape = BuiltIn.Shape("W10x30")!;

        Assert.Equal(8.84, shape.Upright.Area!.Value / Math.Pow(0.0254, 2), 1e-9);
        Assert.Equal(170, shape.Upright.Inertia!.Value / Math.Pow(0.0254, 4), 1e-9);
        Assert.Equal(32.4, shape.Upright.SectionModulus!.Value / Math.Pow(0.0254, 3), 1e-9);
        Assert.Equal(10.5 * 0.3, shape.Upright.ShearArea!.Value / Math.Pow(0.0254, 2), 1e-9);
        Assert.Equal(30 * 14.593902937206362, shape.Upright.WeightPerLength!.Value, 1e-8);
        Assert.Equal(16.7, shape.Flat!.Inertia!.Value / Math.Pow(0.0254, 4), 1e-9);
        Assert.Equal(5.75, shape.Flat.SectionModulus!.Value / Math.Pow(0.0254, 3), 0.005);
        Assert.Equal(5.81, shape.Flat.Depth!.Value / 0.0254, 1e-9);
        Assert.Equal(shape.Upright.WeightPerLength, shape.Flat.WeightPerLength);
        Assert.Equal("from memory: confirm against the standard", shape.Status);
    }

    [Fact]
    public void Lumber_IsDressedAndHasNoWeightOfItsOwn()
    {
        CatalogueShape joist = BuiltIn.Shape("2x10")!;

        Assert.Equal(9.25, joist.Upright.Depth!.Value / 0.0254, 1e-9);
        Assert.Equal(1.5, joist.Flat!.Depth!.Value / 0.0254, 1e-9);
        Assert.Null(joist.Upright.WeightPerLength);
    }
}
