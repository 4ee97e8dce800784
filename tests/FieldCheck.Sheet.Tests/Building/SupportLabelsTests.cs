using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Building;

public sealed class SupportLabelsTests
{
    [Theory]
    [InlineData(0, "A")]
    [InlineData(25, "Z")]
    [InlineData(26, "AA")]
    [InlineData(27, "AB")]
    [InlineData(51, "AZ")]
    [InlineData(52, "BA")]
    [InlineData(701, "ZZ")]
    [InlineData(702, "AAA")]
    public void Letter_CountsAsColumnsOfATableDo(int fromLeft, string letter) =>
        Assert.Equal(letter, SupportLabels.Letter(fromLeft));

    [Fact]
    public void SupportsWithoutLabels_AreLetteredFromLeftToRight() =>
        Assert.Equal(["A", "B", "C"], Labels(At("5 m"), At("1 m"), At("3 m")));

    [Fact]
    public void LabelGivenByHand_TakesTheLetterOfItsPlace() =>
        Assert.Equal(["A", "West", "C"], Labels(At("1 m"), At("3 m") with { Label = " West " }, At("5 m")));

    [Fact]
    public void ThirtyOfThem_GoOnAfterZ()
    {
        SupportEntry[] supports = [.. Enumerable.Range(1, 30).Select(place => At($"{place} m / 10"))];

        Assert.Equal("AD", Labels(supports)[^1]);
    }

    [Fact]
    public void LetterThatAnotherHasByHand_IsTold() => Assert.Equal(
        [
            "support[1].label: 'b' is the letter that support 2 goes by while it has no label of its own: "
                + "label that one too, or choose another",
        ],
        Beams.Problems(Document(At("1 m") with { Label = "b" }, At("5 m"))));

    [Fact]
    public void SameLabelInOtherCapitals_IsTold() => Assert.Equal(
        ["support[2].label: 'WEST' is the label of support 1 too: labels differ by more than capitals"],
        Beams.Problems(Document(At("1 m") with { Label = "West" }, At("5 m") with { Label = "WEST" })));

    [Theory]
    [InlineData("end")]
    [InlineData("Mid")]
    [InlineData("JOINT")]
    [InlineData("1A")]
    [InlineData("A B")]
    [InlineData("A-B")]
    [InlineData("ABCDEFGHIJKLM")]
    [InlineData("")]
    public void LabelThatMeansSomethingElse_IsTold(string label) =>
        Assert.Equal(["support[1].label"], Beams.ProblemKeys(Document(At("1 m") with { Label = label })));

    [Theory]
    [InlineData("a")]
    [InlineData("East_kerb_12")]
    public void LabelByTheRule_Stands(string label) =>
        Assert.Equal(label, Labels(At("1 m") with { Label = label }).Single());

    private static SupportEntry At(string place) => new() { Kind = "roller", At = place };

    private static BeamDocument Document(params SupportEntry[] supports) => Beams.With(supports);

    private static string[] Labels(params SupportEntry[] supports) =>
        [.. Beams.Built(Document(supports)).Supports.Select(named => named.Label)];
}
