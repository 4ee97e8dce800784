using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Sheet.Catalogue;

namespace FieldCheck.Sheet.Tests.Catalogue;

public sealed class NameSearchTests
{
    private static readonly SectionCatalogue BuiltIn = SectionCatalogue.BuiltIn();

    [Theory]
    [InlineData("w10", new[] { "W10x12", "W10x15", "W10x19" })]
    [InlineData("W10x30", new[] { "W10x30" })]
    [InlineData("ipe 2", new[] { "IPE 200", "IPE 220", "IPE 240", "IPE 270" })]
    [InlineData("2x", new[] { "2x4", "2x6", "2x8", "2x10", "2x12" })]
    [InlineData("hss 6 x 6", new[] { "HSS6x6x1/4", "HSS6x6x3/8", "HSS6x6x1/2" })]
    [InlineData("x33", new[] { "C15x33.9", "W10x33" })]
    [InlineData("board", new[] { "38x225 board", "63x225 board" })]
    public void Shapes_AreFoundByWhatIsTyped(string typed, string[] first) =>
        Assert.Equal(first, BuiltIn.Search(typed).Take(first.Length).Select(found => found.Name));

    [Theory]
    [InlineData("c24", new[] { "C24" })]
    [InlineData("no.2", new[] { "DF-L No.2", "HF No.2" })]
    [InlineData("glued", new[] { "GL24h", "GL28h", "GL32h" })]
    [InlineData("338 c2", new[] { "C20", "C22", "C24", "C27" })]
    public void Grades_AreFoundByWhatIsTyped(string typed, string[] first) =>
        Assert.Equal(first, BuiltIn.SearchGrades(typed).Take(first.Length).Select(found => found.Name));

    [Fact]
    public void ExactName_ComesFirst_ThenWhatBeginsSo_ThenWhatHoldsIt_ThenItsFamily()
    {
        ImmutableArray<CatalogueName> names =
            [new("xx", "ab"), new("zab", "q"), new("abc", "q"), new("none", "q"), new("AB", "q"), new("b a", "q")];

        Assert.Equal(["AB", "abc", "zab", "xx"], NameSearch.Of("a b", names).Select(found => found.Name).Take(4));
        Assert.Equal("b a", NameSearch.Of("a b", names)[^1].Name);
    }

    [Theory]
    [InlineData("W99")]
    [InlineData("--")]
    [InlineData("ipe w10")]
    public void WhatFitsNothing_FindsNothing(string typed) => Assert.Empty(BuiltIn.Search(typed));

    [Fact]
    public void NothingTyped_FindsAllInOrder() =>
        Assert.Equal(BuiltIn.Names, BuiltIn.Search(" ").Select(found => found.Name));

    [Fact]
    public void AnyPieceOfAName_FindsIt()
    {
        Gen.Select(Gen.Int[0, BuiltIn.Names.Length - 1], Gen.Int[0, 20], Gen.Int[1, 20]).Sample((which, start, length) =>
        {
            string name = BuiltIn.Names[which];
            int from = Math.Min(start, name.Length - 1);
            string piece = name.Substring(from, Math.Min(length, name.Length - from));
            return CatalogueName.Plain(piece).Length == 0
                || piece.Contains('.', StringComparison.Ordinal)
                || BuiltIn.Search(piece.ToUpperInvariant()).Any(found => found.Name == name);
        });
    }
}
