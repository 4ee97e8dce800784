using System.Collections.Immutable;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Building;

public sealed class SticksTests
{
    private static readonly SectionEntry Joist = new() { Name = "joist", Shape = "2x10" };
    private static readonly SectionEntry Bearer = new() { Name = "bearer", Shape = "W10x30" };
    private static readonly MaterialEntry Timber = new() { Name = "timber", Grade = "DF-L No.2" };

    [Fact]
    public void OnlySectionAndMaterial_AreEverySpansOwn()
    {
        ImmutableArray<Stick> sticks =
            Beams.Built(Beams.TwoSpans with { Sections = [Joist], Materials = [Timber] }).Sticks;

        Assert.Equal(["joist", "joist"], sticks.Select(stick => stick.SectionName));
        Assert.Equal(["timber", "timber"], sticks.Select(stick => stick.MaterialName));
        Assert.Equal(sticks[0].Section, sticks[1].Section);
    }

    [Fact]
    public void OfSeveral_EachSpanNamesItsOwn()
    {
        ImmutableArray<Stick> sticks = Beams.Built(Document("bearer", "joist")).Sticks;

        Assert.Equal(["bearer", "joist"], sticks.Select(stick => stick.SectionName));
        Assert.NotEqual(sticks[0].Section, sticks[1].Section);
    }

    [Fact]
    public void OfSeveral_ASpanThatNamesNoneHasNone() => Assert.Equal(
        [
            "span[2].section: span 2 needs a section: statics alone does not solve this beam, and others have a "
                + "stiffness, so all must",
        ],
        Beams.Problems(Document("bearer", null)));

    [Fact]
    public void NameThatLeadsNowhere_IsOfferedTheNearest() => Assert.Equal(
        ["span[1].section: no section is called 'beerer': did you mean bearer?"],
        Beams.Problems(Document("beerer", "joist")));

    [Fact]
    public void NameOfACatalogueShape_IsShownTheWay() => Assert.Equal(
        [
            "span[1].section: no section is called 'W8x31': it is a catalogue shape, so add a section of that shape "
                + "and name it",
        ],
        Beams.Problems(Document("W8x31", "joist")));

    [Fact]
    public void NameOfACatalogueGrade_IsShownTheWay() => Assert.Equal(
        [
            "span[1].material: no material is called 'A36': it is a catalogue grade, so add a material of that grade "
                + "and name it",
        ],
        Beams.Problems(Beams.Simple with { Spans = [new() { Length = "6 m", Material = "A36" }] }));

    private static BeamDocument Document(string? first, string? second) => Beams.TwoSpans with
    {
        Spans = [new() { Length = "4 m", Section = first }, new() { Length = "5 m", Section = second }],
        Sections = [Bearer, Joist],
        Materials = [Timber],
    };
}
