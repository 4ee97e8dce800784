using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Building;

public sealed class HingeRowsTests
{
    [Fact]
    public void Hinges_StandFromLeftToRight()
    {
        BeamModel model = Beams.Model(
            Beams.TwoSpans with { Hinges = [new() { At = "B + 1 m" }, new() { Joint = "1" }] });

        Assert.Equal<double>([4, 5], model.Hinges);
    }

    [Fact]
    public void HingeGivenInOtherUnits_StandsExactlyAtItsSupport()
    {
        BeamModel model = Beams.Model(Beams.TwoSpans with { Hinges = [new() { At = "13 ft 1.480314960629921 in" }] });

        Assert.Equal(model.Supports[1].Position, model.Hinges.Single());
    }

    [Theory]
    [InlineData("0 m")]
    [InlineData("end")]
    [InlineData("9000 mm")]
    [InlineData("A")]
    public void HingeAtAnEnd_IsTold(string place) => Assert.Equal(
        ["hinge[1].at: a hinge at an end of the beam releases nothing: put it between the ends"],
        Beams.Problems(Beams.TwoSpans with { Hinges = [new() { At = place }] }));

    [Theory]
    [InlineData("fixed", null)]
    [InlineData("guide", null)]
    [InlineData("pin", "20 kNm/rad")]
    public void HingeAtASupportThatHoldsRotation_IsTold(string kind, string? stiffness) => Assert.Equal(
        ["hinge[1].joint: a hinge cannot stand at a support that holds rotation: the support would hold neither part"],
        Beams.Problems(Beams.TwoSpans with
        {
            Supports = [Beams.Pin, new() { Kind = kind, Joint = "1", RotationalStiffness = stiffness }],
            Hinges = [new() { Joint = "1" }],
        }));

    [Fact]
    public void TwoHingesAtOnePlace_AreTold() => Assert.Equal(
        ["hinge[2].at: hinge 1 stands at this place already"],
        Beams.Problems(Beams.TwoSpans with { Hinges = [new() { At = "2 m" }, new() { At = "200 cm" }] }));

    [Fact]
    public void TwoSupportsAtOnePlace_AreTold() => Assert.Equal(
        ["support[3].at: support 2 stands at this place already"],
        Beams.Problems(Beams.With(
            Beams.Pin, Beams.Roller, new SupportEntry { Kind = "roller", At = "19.68503937007874 ft" })));

    [Fact]
    public void HingeWithoutPlace_IsTold() => Assert.Equal(
        ["hinge[1].joint: needs joint = its number, 0 for the left end, or at = a place, as \"4 ft\""],
        Beams.Problems(Beams.TwoSpans with { Hinges = [new()] }));

    [Fact]
    public void HingeWithTwoPlaces_IsTold() => Assert.Equal(
        ["hinge[1].at: takes joint or at, not both"],
        Beams.Problems(Beams.TwoSpans with { Hinges = [new() { Joint = "1", At = "4 m" }] }));

    [Fact]
    public void JointThatTheBeamHasNot_IsTold() => Assert.Equal(
        ["support[2].joint: there is no joint 3: the beam has joints 0 to 1"],
        Beams.Problems(Beams.With(Beams.Pin, Beams.Roller with { Joint = "3" })));
}
