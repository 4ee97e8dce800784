using System.Collections.Immutable;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Tests.Strength;

/// <summary>What is said of a search for sections that would do.</summary>
public sealed class WouldDoWordsTests
{
    private static readonly ImmutableArray<ShapeFamily> All =
    [
        new("IPE", 18, MaterialKind.Steel), new("W", 45, MaterialKind.Steel), new("sawn", 21, MaterialKind.Timber), new("own", 2, null),
    ];

    [Theory]
    [InlineData(false, "0 of 48 would do in the place of joist, of its material, lightest first")]
    [InlineData(true, "0 of 48 would do in the place of joist, of its material, least area first, as the density is not known")]
    public void Count_SaysTheOrder(bool isByArea, string said) => Assert.Equal(said, WouldDoWords.Count(Tried("sawn") with { IsByArea = isByArea }));

    [Theory]
    [InlineData("IPE W sawn own", MaterialKind.Timber, "")]
    [InlineData("sawn own", MaterialKind.Timber, "Steel families left out: the material is timber.")]
    [InlineData("sawn", MaterialKind.Timber, "Steel families left out: the material is timber. Left out: own.")]
    [InlineData("IPE sawn own", MaterialKind.Timber, "Left out: W.")]
    [InlineData("W own", MaterialKind.Steel, "Timber families left out: the material is steel. Left out: IPE.")]
    [InlineData("IPE W own", null, "Left out: sawn.")]
    public void LeftOut_NamesMaterialsOrFamilies(string tried, MaterialKind? material, string said) =>
        Assert.Equal(said, WouldDoWords.LeftOut(Tried(tried.Split(' ')), All, material, null));

    [Fact]
    public void MaterialWithoutShapes_IsSaid() => Assert.Equal(
        "The catalogue has no shapes of aluminium: those of other materials are tried, with their own weights.",
        WouldDoWords.LeftOut(Tried("IPE", "W", "sawn"), [.. All.Take(3)], MaterialKind.Aluminium, null));

    [Theory]
    [InlineData("W", "Only W was tried, the family of the present section.")]
    [InlineData("IPE", "Timber families left out: the material is steel. Left out: W; own.")]
    [InlineData("IPE W", "Timber families left out: the material is steel. Left out: own.")]
    public void FamilyOfThePresentSection_IsNamedWhereItAloneWasTried(string tried, string said) =>
        Assert.Equal(said, WouldDoWords.LeftOut(Tried(tried.Split(' ')), All, MaterialKind.Steel, "W"));

    [Theory]
    [InlineData(0, "")]
    [InlineData(9, "9 more left out: with them a check would be NOT JUDGED, or the grade is for other sizes.")]
    public void WhatCannotBeJudged_IsCounted(int open, string said) => Assert.Equal(said, WouldDoWords.Open(Tried("W") with { Open = open }));

    private static WouldDo Tried(params string[] families) => new("joist", [.. families], 48, []);
}
