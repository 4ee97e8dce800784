using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Reading;

/// <summary>The rules are "Places" in docs/beam-file.md.</summary>
public sealed class PlaceReaderTests
{
    [Theory]
    [InlineData("4 ft", 1.2192)]
    [InlineData(" 12'-6\" ", 3.81)]
    [InlineData("4 ft + 6 in", 1.3716)]
    [InlineData("(3 m + 1 m) / 2", 2)]
    [InlineData("-1 m", -1)]
    [InlineData("½ in", 0.0127)]
    public void Distance_IsFromTheLeftEnd(string text, double metres)
    {
        Place.FromLeft place = Assert.IsType<Place.FromLeft>(Read.Accepted(PlaceReader.Read(text)));

        Read.IsWithin(1e-15, metres, place.Distance.Value);
        Assert.Null(place.Offset);
        Assert.Null(place.Label);
    }

    [Fact]
    public void Words_NameTheAnchor()
    {
        Assert.Equal(new Place.RightEnd(), Read.Accepted(PlaceReader.Read("end")));
        Assert.Equal(new Place.RightEnd(), Read.Accepted(PlaceReader.Read(" END ")));
        Assert.Equal(new Place.Joint(0), Read.Accepted(PlaceReader.Read("joint 0")));
        Assert.Equal(new Place.Joint(12), Read.Accepted(PlaceReader.Read("Joint  12")));
        Assert.Equal(new Place.Mid(1), Read.Accepted(PlaceReader.Read("mid 1")));
        Assert.Equal(new Place.SupportNamed("B_2"), Read.Accepted(PlaceReader.Read("B_2")));
        Assert.Equal(new Place.SupportNamed("joint1"), Read.Accepted(PlaceReader.Read("joint1")));
        Assert.Equal(new Place.SupportNamed("m"), Read.Accepted(PlaceReader.Read("m")));
    }

    [Theory]
    [InlineData("A + 4 ft", 1.2192)]
    [InlineData("A+4ft", 1.2192)]
    [InlineData("A - 6 in", -0.1524)]
    [InlineData("A − 6 in", -0.1524)]
    [InlineData("end - 2 m", -2)]
    [InlineData("mid 2 + 10 cm", 0.1)]
    [InlineData("joint 1 - 3 m", -3)]
    [InlineData("A - 4 m + 1 m", -3)]
    [InlineData("A - (4 m + 1 m)", -5)]
    [InlineData("A + 12 ft 6 in", 3.81)]
    public void Offset_IsPositiveTowardTheRight(string text, double metres) =>
        Read.IsWithin(1e-15, metres, Assert.IsType<Quantity>(Read.Accepted(PlaceReader.Read(text)).Offset).Value);

    [Theory]
    [InlineData("A + 4 m ± 1 in", 0.0254)]
    [InlineData("4 m +- 1 in", 0.0254)]
    [InlineData("end - 4 m ± 10 %", 0.4)]
    public void PlusOrMinus_IsTheSpreadOfThePlace(string text, double metres) =>
        Read.IsWithin(1e-15, metres, Assert.NotNull(Read.Accepted(PlaceReader.Read(text)).Spread));

    [Theory]
    [InlineData("A", "A")]
    [InlineData("b2 - 1 m", "b2")]
    [InlineData("end", null)]
    [InlineData("4 m", null)]
    public void Label_IsTheSupportItHangsOn(string text, string? label) =>
        Assert.Equal(label, Read.Accepted(PlaceReader.Read(text)).Label);

    [Theory]
    [InlineData("", 0, "empty: expected a place such as \"4 ft\", \"A + 4 ft\", \"end - 6 in\" or \"mid 1\"")]
    [InlineData(" ?", 1, "expected a place such as \"4 ft\", \"A + 4 ft\", \"end - 6 in\" or \"mid 1\", found '?'")]
    [InlineData("éa", 0, "expected a place such as \"4 ft\", \"A + 4 ft\", \"end - 6 in\" or \"mid 1\", found 'éa'")]
    [InlineData("4", 0, "4 has no unit: a length is written in ft, in, m, cm or mm")]
    [InlineData("4 kN", 0, "expected a length such as \"12 ft 6 in\", found a force")]
    [InlineData("joint", 5, "joint needs its number: joint 0 is the left end, joint 1 the far end of span 1")]
    [InlineData("joint -1", 6, "joint needs its number: joint 0 is the left end, joint 1 the far end of span 1")]
    [InlineData(
        "joint 99999999999", 6,
        "joint needs its number: joint 0 is the left end, joint 1 the far end of span 1")]
    [InlineData("mid", 3, "mid needs the number of its span: mid 1 is the middle of span 1")]
    [InlineData("mid 0", 5, "mid needs the number of its span: mid 1 is the middle of span 1")]
    [InlineData("A B", 2, "expected + or - and a length after A, found 'B'")]
    [InlineData("joint 1.5", 7, "expected + or - and a length after joint 1, found '.5'")]
    [InlineData("A * 2", 2, "expected + or - and a length after A, found '*'")]
    [InlineData("A + ", 3, "the text ends where a number is expected")]
    [InlineData("A + 4", 2, "4 has no unit: a length is written in ft, in, m, cm or mm")]
    [InlineData(" A - 4 furlong", 7, "unknown unit 'furlong': a length is written in ft, in, m, cm or mm")]
    [InlineData(
        "A + 12 ft - 6 in", 4,
        "12 ft - 6 in could join or subtract: write 12 ft 6 in to join, 12 ft - (6 in) to subtract")]
    [InlineData("end ± 1 in", 4, "± needs a measured length before it: write + 0 ft ± 1 in")]
    [InlineData("A +- 1 in", 2, "± needs a measured length before it: write + 0 ft ± 1 in")]
    [InlineData("abcdefghijklm", 0, "a label has at most 12 characters")]
    public void BrokenPlace_IsAnsweredInTheseWords(string text, int offset, string expected)
    {
        Reading<Place>.Refused refused = Read.Refused(PlaceReader.Read(text));

        Assert.Equal(expected, refused.Text);
        Assert.Equal(offset, refused.Offset);
    }

    [Fact]
    public void PlaceOfASupport_IsNotGivenFromASupport()
    {
        Assert.Equal(
            "a support's own place is not given from a support: write a distance from the left end, end, joint or mid",
            Read.Refused(PlaceReader.ReadOfSupport("A + 4 ft")).Text);
        Assert.Equal(new Place.Joint(1), Read.Accepted(PlaceReader.ReadOfSupport("joint 1")));
    }

    [Fact]
    public void TooLong_IsRefused() => Assert.Equal(
        "too long: at most 200 characters", Read.Refused(PlaceReader.Read("A" + new string(' ', 200))).Text);
}
