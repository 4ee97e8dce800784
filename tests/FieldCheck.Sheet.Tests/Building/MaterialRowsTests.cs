using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Building;

public sealed class MaterialRowsTests
{
    [Fact]
    public void Figures_AreTakenAsGiven()
    {
        Material material = Of(new()
        {
            Name = "m",
            Modulus = "11 GPa",
            ShearModulus = "690 MPa",
            Density = "420 kg/m3",
            Yield = "36 ksi",
        });

        Assert.Equal(11e9, material.Modulus!.Value, 1e-3);
        Assert.Equal(690e6, material.ShearModulus!.Value, 1e-3);
        Assert.Equal(420 * 9.80665, material.UnitWeight!.Value, 1e-9);
        Assert.Equal(36 * 6894757.293168361, material.Yield!.Value, 1e-3);
    }

    [Fact]
    public void Grade_BringsItsFigures()
    {
        // AISC 360: E = 29 000 ksi, G = 11 200 ksi; 1 ksi = 6 894 757.293168361 Pa.
        Material material = Of(new() { Name = "m", Grade = "a992" });

        Assert.Equal(29000 * 6894757.293168361, material.Modulus!.Value, 1);
        Assert.Equal(11200 * 6894757.293168361, material.ShearModulus!.Value, 1);
    }

    [Fact]
    public void FigureBesideTheGrade_StandsInItsPlace()
    {
        Material material = Of(new() { Name = "m", Grade = "C24", Density = "500 kg/m3" });

        Assert.Equal(500 * 9.80665, material.UnitWeight!.Value, 1e-9);
        Assert.Equal(690e6, material.ShearModulus!.Value, 1e-3);
    }

    public static TheoryData<MaterialEntry, string[]> WrongMaterials => new()
    {
        { new() { Name = "m" }, ["material.m.modulus: a material needs a grade, or its modulus, as \"11 GPa\""] },
        {
            new() { Name = "m", Grade = "A36", Modulus = "200 GPa" },
            ["material.m.modulus: the grade gives the modulus: write one of the two"]
        },
        {
            new() { Name = "m", Grade = "S335" },
            ["material.m.grade: the catalogue has no grade 'S335': did you mean S235 or S355?"]
        },
        { new() { Name = "m", Modulus = "0 GPa" }, ["material.m.modulus: '0 GPa' is not greater than zero"] },
        {
            new() { Name = "m", Grade = "A36", AllowableBending = "-24 ksi", Creep = "-0.1" },
            [
                "material.m.allowable_bending: '-24 ksi' is not greater than zero",
                "material.m.creep: '-0.1' is less than zero",
            ]
        },
        {
            new() { Name = "m", Grade = "A36", Density = "-1 kg/m3" },
            ["material.m.density: '-1 kg/m3' is less than zero"]
        },
    };

    [Theory]
    [MemberData(nameof(WrongMaterials))]
    public void WrongMaterial_IsTold(MaterialEntry material, string[] problems) =>
        Assert.Equal(problems, Beams.Problems(Beams.With(material)));

    [Fact]
    public void FactorThatIsNoNumber_IsTold() => Assert.Equal(
        ["material.m.factors.duration"],
        Beams.ProblemKeys(Beams.With(
            new MaterialEntry { Name = "m", Grade = "A36", Factors = [new("duration", "long")] })));

    private static Material Of(MaterialEntry entry) => Beams.Built(Beams.With(entry)).Sticks.Single().Material!;
}
