using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Sheet.Tests.Editing;

public sealed class StickEditsTests
{
    private static readonly FormSheet Beam = FormSheet.Empty.Span(0, FormColumn.Length, "3");

    [Theory]
    [InlineData("77x231", "77 mm", "231 mm", null)]
    [InlineData("77.5 X 231", "77.5 mm", "231 mm", null)]
    [InlineData("75×225×3", "75 mm", "225 mm", "3")]
    [InlineData("1.5 * 9.25 in", "1.5 in", "9.25 in", null)]
    [InlineData("7.5x22.5x2cm", "7.5 cm", "22.5 cm", "2")]
    public void SidesInTheCellOfTheShape_AreARectangle(string typed, string width, string depth, string? plies) => Assert.Equal(
        [new SectionEntry { Name = "beam", Width = width, Depth = depth, Plies = plies }],
        Beam.Stick(FormBlock.Sections, 0, FormColumn.Shape, typed).Document.Sections);

    [Theory]
    [InlineData("2x10")]
    [InlineData("47x200")]
    [InlineData("75 x 225")]
    [InlineData("W10x30")]
    [InlineData("75x")]
    [InlineData("75x225 feet")]
    public void OtherNames_AreShapes(string typed) => Assert.Equal(
        [new SectionEntry { Name = "beam", Shape = typed }],
        Beam.Stick(FormBlock.Sections, 0, FormColumn.Shape, typed).Document.Sections);

    [Fact]
    public void ShapeTyped_TakesThePlaceOfOtherForms_AndLiesAsTheyLay()
    {
        FormSheet flat = Beam
            .Stick(FormBlock.Sections, 0, FormColumn.Shape, "75x225x2")
            .Stick(FormBlock.Sections, 0, FormColumn.Flat, "flat");

        Assert.Equal(
            [new SectionEntry { Name = "beam", Shape = "IPE 200", Flat = "true" }],
            flat.Stick(FormBlock.Sections, 0, FormColumn.Shape, "IPE 200").Document.Sections);
        Assert.Equal(
            [new SectionEntry { Name = "beam", Shape = "IPE 200", Flat = "true" }],
            flat.Do(new Edit.TakeShape(0, "IPE 200")).Document.Sections);
        Assert.Equal(
            [new SectionEntry { Name = "beam", Width = "50 mm", Depth = "100 mm", Flat = "true" }],
            flat.Stick(FormBlock.Sections, 0, FormColumn.Shape, "50x100").Document.Sections);
    }

    [Fact]
    public void ShapeCleared_LeavesWhatElseStands_AndASectionOfNothingGoes()
    {
        FormSheet shaped = Beam.Stick(FormBlock.Sections, 0, FormColumn.Shape, "IPE 200");

        Assert.Empty(shaped.Stick(FormBlock.Sections, 0, FormColumn.Shape, "").Document.Sections);
        Assert.Equal(
            [new SectionEntry { Name = "beam", Flat = "true" }],
            shaped.Stick(FormBlock.Sections, 0, FormColumn.Flat, "flat").Stick(FormBlock.Sections, 0, FormColumn.Shape, "").Document.Sections);
    }

    [Fact]
    public void SectionThatASpanNames_StaysWithoutAnythingInIt()
    {
        FormSheet named = Beam.Span(0, FormColumn.Section, "joist")
            .Stick(FormBlock.Sections, 0, FormColumn.Shape, "IPE 200").Stick(FormBlock.Sections, 0, FormColumn.Shape, "");

        Assert.Equal([new SectionEntry { Name = "joist" }], named.Document.Sections);
    }

    [Theory]
    [InlineData("k_mod 0.8", "modification")]
    [InlineData("own factor 0.8", "own factor")]
    [InlineData("c_d 0.9", "duration")]
    [InlineData("C_D 0.9", "duration")]
    [InlineData("wet service 0.85", "wet_service")]
    public void Factors_AreCalledAsTheFileCallsThem(string typed, string name) => Assert.Equal(
        name,
        Beam.Stick(FormBlock.Materials, 0, FormColumn.Factors, typed).Document.Materials[0].Factors.Single().Name);

    [Fact]
    public void LimitOfACase_TakesTheWholeNameFromItsBeginning_AndANumberAsAShareOfTheSpan()
    {
        FormSheet sheet = Beam.Load(0, FormColumn.Size, "5").Load(0, FormColumn.Case, "roof_live")
            .Stick(FormBlock.Limits, 0, FormColumn.CaseLimits, "roof 240, dead L/180")
            .Stick(FormBlock.Limits, 0, FormColumn.Lasting, "roof 0.2");

        Assert.Equal(
            [new NamedFigure("roof_live", "L/240"), new NamedFigure("dead", "L/180")], sheet.Document.Limits!.DeflectionCases);
        Assert.Equal([new NamedFigure("roof_live", "0.2")], sheet.Document.Limits!.Lasting);
    }

    [Fact]
    public void LastLimitCleared_LeavesNone()
    {
        FormSheet limited = Beam.Stick(FormBlock.Limits, 0, FormColumn.Deflection, "360");

        Assert.Equal("L/360", limited.Document.Limits!.Deflection);
        Assert.Null(limited.Stick(FormBlock.Limits, 0, FormColumn.Deflection, "").Document.Limits);
    }

    [Theory]
    [InlineData("ipe200")]
    [InlineData("IPE-200")]
    public void SpanNamingASectionOfTheFileInOtherLetters_HasThatOne(string typed)
    {
        FormSheet sheet = Beam.Span(1, FormColumn.Length, "2").Span(0, FormColumn.Section, "IPE 200").Span(1, FormColumn.Section, typed);

        Assert.Equal(["IPE 200", "IPE 200"], sheet.Document.Spans.Select(span => span.Section));
        Assert.Equal([new SectionEntry { Name = "IPE 200", Shape = "IPE 200" }], sheet.Document.Sections);
    }
}
