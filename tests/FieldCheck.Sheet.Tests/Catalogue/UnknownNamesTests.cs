using FieldCheck.Sheet.Catalogue;

namespace FieldCheck.Sheet.Tests.Catalogue;

public sealed class UnknownNamesTests
{
    private const string Steel = "A53-B (structural steel, ASTM), S235 (structural steel, EN 10025-2)";

    private const string Timber = "C14 (softwood, EN 338), GL24h (glued laminated timber, EN 14080), "
        + "HF No.2 (softwood 2 to 4 in thick, NDS), SP No.2 2x12 (southern pine 2 in thick by size, NDS), "
        + "DF-L P&T No.2 (timbers 5 in and thicker, NDS)";

    private static readonly SectionCatalogue BuiltIn = SectionCatalogue.BuiltIn();

    [Theory]
    [InlineData("steel", Steel)]
    [InlineData("Timber", Timber)]
    [InlineData("wood?", Timber)]
    [InlineData("aluminum", "6061-T6 (aluminium)")]
    [InlineData("unknown", Steel + ", " + Timber + ", 6061-T6 (aluminium)")]
    [InlineData("?", Steel + ", " + Timber + ", 6061-T6 (aluminium)")]
    public void GradeThatNobodyKnows_IsAnsweredWithTheLowest(string typed, string lowest)
    {
        string text = CatalogueText.UnknownGrade(typed, BuiltIn);

        Assert.EndsWith(
            $": where nobody knows, the lowest here are {lowest}; what is unmarked, wet, cut or split may be weaker still",
            text,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("C25", "the catalogue has no grade 'C25': did you mean C20, C22 or C24?")]
    [InlineData("S355J2", "the catalogue has no grade 'S355J2': did you mean S355?")]
    [InlineData("No.1", "the catalogue has no grade 'No.1': did you mean DF-L No.1, SPF No.1/No.2 or DF-L B&S No.1?")]
    [InlineData("hickory", "the catalogue has no grade 'hickory'")]
    [InlineData("x", "the catalogue has no grade 'x'")]
    public void OtherGrade_IsAnsweredWithNearNames(string typed, string expected) =>
        Assert.Equal(expected, CatalogueText.UnknownGrade(typed, BuiltIn));

    [Theory]
    [InlineData("W10x31", "the catalogue has no shape 'W10x31': did you mean W10x30, W10x33 or W16x31?")]
    [InlineData("hss 6x6", "the catalogue has no shape 'hss 6x6': did you mean HSS6x6x1/4, HSS6x6x3/8 or HSS6x6x1/2?")]
    [InlineData("tree trunk", "the catalogue has no shape 'tree trunk'")]
    public void OtherShape_IsAnsweredWithNearNames(string typed, string expected) =>
        Assert.Equal(expected, CatalogueText.UnknownShape(typed, BuiltIn));
}
