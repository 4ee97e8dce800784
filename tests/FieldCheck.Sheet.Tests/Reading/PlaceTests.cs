using System.Collections.Immutable;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Reading;

public sealed class PlaceTests
{
    private static readonly ImmutableArray<double> Joints = [0, 4, 7, 9];

    private static readonly Dictionary<string, double> Supports = new() { ["A"] = 0, ["North"] = 5.5 };

    [Theory]
    [InlineData("3 m", 3)]
    [InlineData("end", 9)]
    [InlineData("end - 50 cm", 8.5)]
    [InlineData("joint 0", 0)]
    [InlineData("joint 3", 9)]
    [InlineData("joint 1 + 1 m", 5)]
    [InlineData("mid 1", 2)]
    [InlineData("mid 3", 8)]
    [InlineData("mid 2 - 1 m", 4.5)]
    [InlineData("A + 1 m", 1)]
    [InlineData("north", 5.5)]
    [InlineData("NORTH - 1 m", 4.5)]
    [InlineData("end + 1 m", 10)]
    public void Place_IsFoundOnTheBeam(string text, double metres) =>
        Assert.Equal(metres, Read.Accepted(Resolve(text)), 1e-12);

    [Theory]
    [InlineData("joint 4", "there is no joint 4: the beam has joints 0 to 3")]
    [InlineData("mid 4", "there is no span 4: the beam has spans 1 to 3")]
    [InlineData("Nort", "no support is called Nort: did you mean North?")]
    [InlineData("C + 1 m", "no support is called C: there is A, North")]
    public void PlaceThatIsNotThere_IsAnsweredInTheseWords(string text, string expected) =>
        Assert.Equal(expected, Read.Refused(Resolve(text)).Text);

    [Fact]
    public void NoSupports_IsSaid() => Assert.Equal(
        "no support is called A: there is none yet",
        Read.Refused(new Place.SupportNamed("A").Resolve(Joints, new Dictionary<string, double>())).Text);

    [Fact]
    public void ManySupports_AreNotListed() => Assert.Equal(
        "no support is called Z",
        Read.Refused(new Place.SupportNamed("Z").Resolve(
            Joints, Enumerable.Range(1, 9).ToDictionary(k => "S" + k, k => (double)k))).Text);

    [Fact]
    public void NumbersOutOfRange_AreRefused()
    {
        Assert.Equal(
            "there is no joint -1: the beam has joints 0 to 3",
            Read.Refused(new Place.Joint(-1).Resolve(Joints, Supports)).Text);
        Assert.Equal(
            "there is no span 0: the beam has spans 1 to 3",
            Read.Refused(new Place.Mid(0).Resolve(Joints, Supports)).Text);
    }

    [Fact]
    public void NoJoints_IsTheCallersBug() =>
        Assert.Throws<ArgumentException>(() => new Place.RightEnd().Resolve([], Supports));

    private static Reading<double> Resolve(string text) =>
        Read.Accepted(PlaceReader.Read(text)).Resolve(Joints, Supports);
}
