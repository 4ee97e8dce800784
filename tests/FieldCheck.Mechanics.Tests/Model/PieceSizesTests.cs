using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Model;

/// <summary>
/// Which pieces the figures of a grade are for, by the NDS Supplement, Table 4D, from memory: beams and stringers are more than 2 in
/// wider than thick, posts and timbers at most. Sizes in inches, dressed.
/// </summary>
public sealed class PieceSizesTests
{
    private const double Inch = 0.0254;

    private static readonly PieceSizes Stringers = new(4.5 * Inch, null, null, null) { ExcessOver = 2 * Inch };
    private static readonly PieceSizes Posts = new(4.5 * Inch, null, null, null) { ExcessTo = 2 * Inch };

    [Theory]
    [InlineData(5.5, 5.5, false)] // 6x6
    [InlineData(5.5, 7.5, false)] // 6x8
    [InlineData(5.5, 9.5, true)] // 6x10
    [InlineData(11.5, 5.5, true)] // 6x12, written wider than deep
    [InlineData(9.5, 9.5, false)] // 10x10
    [InlineData(9.5, 11.5, false)] // 10x12
    [InlineData(7.5, 11.5, true)] // 8x12
    public void Timber_IsAStringerOrAPost(double width, double depth, bool isStringer)
    {
        Section timber = Section.Of(new SectionShape.Rectangle(width * Inch, depth * Inch));

        Assert.Equal(isStringer, Stringers.Holds(timber));
        Assert.Equal(!isStringer, Posts.Holds(timber));
    }

    /// <summary>5 in square at least: a round stick of the same area is 5.08 in across for 4.5 in dressed.</summary>
    [Theory]
    [InlineData(5.0, false)]
    [InlineData(5.1, true)]
    public void RoundStick_IsTheSquareOfItsArea(double diameter, bool holds)
    {
        Section pole = Section.Of(new SectionShape.Round(diameter * Inch));

        Assert.Equal(holds, Posts.Holds(pole));
        Assert.False(Stringers.Holds(pole));
        Assert.Equal(Math.PI * diameter * diameter / 4, Math.Pow(PieceSizes.SideOf(new(diameter)), 2), 1e-12);
    }

    [Fact]
    public void WhatHasNoSizes_IsNotKnownToBeOutside()
    {
        Assert.True(Stringers.Holds(null));
        Assert.True(Stringers.Holds(new Section { Area = 0.01 }));
        Assert.Null(PieceSizes.PieceOf(Section.Of(new SectionShape.RoundTube(0.1, 0.01))));
    }
}
