using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Catalogue;

namespace FieldCheck.Sheet.Tests.Catalogue;

public sealed class PublishedGradesTests
{
    private const double Psi = 6894.757293168361;

    private static readonly SectionCatalogue BuiltIn = SectionCatalogue.BuiltIn();

    public static TheoryData<string> Names => [.. BuiltIn.GradeNames];

    [Theory]
    [MemberData(nameof(Names))]
    public void Grade_HasASourceAndIsOrdinaryStuff(string name)
    {
        CatalogueGrade grade = BuiltIn.Grade(name)!;

        Assert.NotEmpty(grade.Source);
        Assert.NotEmpty(grade.Status);
        Assert.NotEmpty(grade.Standard);
        Assert.NotEmpty(grade.Family);

        // Bounds of the materials that beams are made of: softwood to steel; G = E / 2(1 + v) for metals, about
        // E / 16 for timber (common practice, no source).
        double modulus = grade.Material.Modulus!.Value;
        Assert.InRange(modulus, 6e9, 215e9);
        Assert.InRange(grade.Material.ShearModulus / modulus ?? 0.1, 1.0 / 20, 0.40);
        Assert.InRange(grade.Material.UnitWeight ?? 5e3, 3e3, 78e3);
        Assert.InRange(grade.Material.Yield ?? 235e6, 200e6, 500e6);
        Assert.True(grade.Material.Yield is null != grade.Material.Timber is null);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void StrengthsOfTimber_StandInTheOrderThatWoodHas(string name)
    {
        // Wood shears before it bends apart and is soft across the grain; its modulus for stability is that of the weakest
        // twentieth or less, by 1.66 the NDS says, and E0.05 is 0.67 or 0.84 of the mean (EN 338, EN 14080).
        if (BuiltIn.Grade(name)!.Material is { Timber: TimberStrengths timber } material)
        {
            Assert.InRange(timber.Shear / timber.Bending, 0.1, 0.25);
            Assert.InRange(timber.Bearing / timber.Bending, 0.07, 0.9);
            Assert.InRange(timber.Tension!.Value / timber.Bending, 0.45, 0.85);
            Assert.InRange(timber.MinimumModulus!.Value / material.Modulus!.Value, 0.35, 0.85);
        }
    }

    // EN 338:2016 Table 1 (read in a textbook that prints it), EN 14080:2013 and NDS Supplement Tables 4A, 4B and 4D (from memory).
    [Theory]
    [InlineData("C16", 8.5e6)]
    [InlineData("C24", 14.5e6)]
    [InlineData("GL28h", 22.3e6)]
    [InlineData("DF-L No.2", 575 * Psi)]
    [InlineData("SP No.2 2x8", 550 * Psi)]
    [InlineData("DF-L B&S No.1", 675 * Psi)]
    public void TensionAlongTheGrain_IsThatOfTheStandard(string name, double tension) =>
        Assert.Equal(tension, BuiltIn.Grade(name)!.Material.Timber!.Tension!.Value, 1);

    [Theory]
    [InlineData("C14", 14, 3.0, 2.0, 4700)]
    [InlineData("C16", 16, 3.2, 2.2, 5400)]
    [InlineData("C24", 24, 4.0, 2.5, 7400)]
    [InlineData("C30", 30, 4.0, 2.7, 8000)]
    [InlineData("GL24h", 24, 3.5, 2.5, 9600)]
    public void CharacteristicStrengths_AreThoseOfTheStandard(
        string name, double bending, double shear, double bearing, double modulus)
    {
        // EN 338:2016 Table 1 (read in a textbook that prints it) and EN 14080:2013 (from memory), N/mm2.
        TimberStrengths timber = BuiltIn.Grade(name)!.Material.Timber!;

        Assert.Equal(TimberBasis.Characteristic, timber.Basis);
        Assert.False(timber.TakesSizeFactor);
        Assert.Equal(name.StartsWith("GL", StringComparison.Ordinal), timber.IsGlulam);
        Assert.Equal(bending * 1e6, timber.Bending, 1);
        Assert.Equal(shear * 1e6, timber.Shear, 1);
        Assert.Equal(bearing * 1e6, timber.Bearing, 1);
        Assert.Equal(modulus * 1e6, timber.MinimumModulus!.Value, 1);
    }

    [Theory]
    [InlineData("DF-L No.2", 900, 180, 625, 580_000, true)]
    [InlineData("HF No.2", 850, 150, 405, 470_000, true)]
    [InlineData("SPF No.1/No.2", 875, 135, 425, 510_000, true)]
    [InlineData("SP No.2 2x10", 800, 175, 565, 510_000, false)]
    [InlineData("DF-L P&T No.1", 1200, 170, 625, 580_000, false)]
    public void ReferenceStrengths_AreThoseOfTheSupplement(
        string name, double bending, double shear, double bearing, double modulus, bool takesSizeFactor)
    {
        // NDS Supplement Tables 4A, 4B and 4D, psi: from memory. Southern pine has the size inside its figures.
        TimberStrengths timber = BuiltIn.Grade(name)!.Material.Timber!;

        Assert.Equal((TimberBasis.Reference, takesSizeFactor), (timber.Basis, timber.TakesSizeFactor));
        Assert.Equal(bending * Psi, timber.Bending, 1);
        Assert.Equal(shear * Psi, timber.Shear, 1);
        Assert.Equal(bearing * Psi, timber.Bearing, 1);
        Assert.Equal(modulus * Psi, timber.MinimumModulus!.Value, 1e3);
        Assert.True(BuiltIn.Grade(name)!.IsFromMemory);
    }

    [Fact]
    public void NoTwoNames_AreFoundAsOne() => Assert.Equal(
        36, ShippedFile.Tables("presets/materials/").Select(table => CatalogueName.Plain(table.Name)).Distinct().Count());

    [Fact]
    public void EveryGradeOfTheFile_IsFound() => Assert.Equal(
        ShippedFile.Tables("presets/materials/").Select(table => table.Name), BuiltIn.GradeNames);
}
