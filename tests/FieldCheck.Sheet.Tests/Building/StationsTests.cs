using FieldCheck.Mechanics.Model;

namespace FieldCheck.Sheet.Tests.Building;

public sealed class StationsTests
{
    [Theory]
    [InlineData("4 m", 4)]
    [InlineData("end", 9)]
    [InlineData("end - 500 mm", 8.5)]
    [InlineData("joint 1", 4)]
    [InlineData("joint 1 + 1 m", 5)]
    [InlineData("mid 2", 6.5)]
    [InlineData("B", 4)]
    [InlineData("b - 1 m", 3)]
    [InlineData("C", 9)]
    public void Place_IsMeasuredFromWhatItNames(string place, double position) =>
        Assert.Equal(position, PositionOf(place), 1e-12);

    [Fact]
    public void PlaceWithinABillionthOfTheBeam_IsTheSupportItself()
    {
        Assert.Equal(4.0, PositionOf("4.000000003 m"));
        Assert.Equal(4.0, PositionOf("3.999999997 m"));
        Assert.NotEqual(4.0, PositionOf("4.0000001 m"));
    }

    [Theory]
    [InlineData("end + 1 m", "this is at 10.00 m, off the beam, which runs from 0 to 9.00 m")]
    [InlineData("A - 500 mm", "this is at -0.50 m, off the beam, which runs from 0 to 9.00 m")]
    [InlineData("joint 5", "there is no joint 5: the beam has joints 0 to 2")]
    [InlineData("mid 3", "there is no span 3: the beam has spans 1 to 2")]
    [InlineData("D + 1 m", "no support is called D: there is A, B, C")]
    public void PlaceOffTheBeam_IsTold(string place, string text) => Assert.Equal(
        ["load[1].at: " + text],
        Beams.Problems(Beams.TwoSpans with { Loads = [new() { Kind = "point", At = place, Force = "1 kN" }] }));

    [Fact]
    public void RoundingJustOffTheEnd_IsTheEnd() => Assert.Equal(9.0, PositionOf("29 ft 6.330708661417323 in"));

    [Fact]
    public void SupportGivenFromASupport_IsTold() => Assert.Equal(
        ["support[2].at"],
        Beams.ProblemKeys(Beams.With(Beams.Pin, Beams.Roller with { Joint = null, At = "A + 4 m" })));

    [Fact]
    public void LabelOfASupportWhosePlaceDoesNotRead_IsNotDoubted() => Assert.Equal(
        ["support[2].at"],
        Beams.ProblemKeys(Beams.Simple with
        {
            Supports = [Beams.Pin, Beams.Roller with { Joint = null, At = "4 furlong" }],
            Loads = [new() { Kind = "point", At = "B", Force = "1 kN" }],
        }));

    private static double PositionOf(string place)
    {
        BeamModel model = Beams.Model(
            Beams.TwoSpans with { Loads = [new() { Kind = "point", At = place, Force = "1 kN" }] });
        return ((Load.Point)model.Cases.Single().Loads.Single()).Position;
    }
}
