using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Reading;

public sealed class PlaceTextTests
{
    [Theory]
    [InlineData("A", "B2")]
    [InlineData("a", "B2")]
    [InlineData("  A  +  12'-6 1/2\" ", "  B2  +  12'-6 1/2\" ")]
    [InlineData("A - 4 furlong", "B2 - 4 furlong")]
    public void PlaceOnTheLabel_FollowsAndKeepsTheRest(string text, string expected) =>
        Assert.Equal(expected, PlaceText.Renamed(text, "A", "B2"));

    [Theory]
    [InlineData("AB + 4 ft")]
    [InlineData("A_1")]
    [InlineData("B")]
    [InlineData("4 ft")]
    [InlineData("end - 4 ft")]
    [InlineData("joint 1")]
    [InlineData("")]
    [InlineData("+ A")]
    public void AnyOtherPlace_StaysAsTyped(string text) => Assert.Equal(text, PlaceText.Renamed(text, "A", "B2"));

    [Theory]
    [InlineData("end")]
    [InlineData("mid 1")]
    public void WordOfPlaces_IsNoLabel(string text) =>
        Assert.Equal(text, PlaceText.Renamed(text, text.Split(' ')[0], "B2"));
}
