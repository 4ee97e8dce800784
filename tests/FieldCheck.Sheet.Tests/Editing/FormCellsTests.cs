using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Sheet.Tests.Editing;

public sealed class FormCellsTests
{
    private static readonly BeamDocument Beam = new()
    {
        Spans = [new SpanEntry { Length = "3 m" }, new SpanEntry { Length = "3 m", Section = "C24 wet" }],
        SelfWeight = new SelfWeightEntry { Case = "dead" },
    };

    [Theory]
    [InlineData("span[2].to", FormBlock.Spans, 1, FormColumn.Reading)]
    [InlineData("span[1].unbraced", FormBlock.Spans, 0, FormColumn.Length)]
    [InlineData("span", FormBlock.Spans, 0, FormColumn.Length)]
    [InlineData("support[3].joint", FormBlock.Supports, 2, FormColumn.Place)]
    [InlineData("support[1]", FormBlock.Supports, 0, FormColumn.Place)]
    [InlineData("support[1].stiffness", FormBlock.Supports, 0, FormColumn.Kind)]
    [InlineData("support[1].label", FormBlock.Supports, 0, FormColumn.Label)]
    [InlineData("load[2].at", FormBlock.Loads, 1, FormColumn.From)]
    [InlineData("load[2].pressure_end", FormBlock.Loads, 1, FormColumn.Size)]
    [InlineData("load[1].label", FormBlock.Loads, 0, FormColumn.Note)]
    [InlineData("self_weight.case", FormBlock.Loads, FormPlace.OwnWeightRow, FormColumn.Case)]
    [InlineData("section.\"C24 wet\".inertia", FormBlock.Spans, 1, FormColumn.Section)]
    [InlineData("section.other.inertia", FormBlock.Spans, 0, FormColumn.Section)]
    public void KeyOfTheFile_IsFoundInTheForm(string key, FormBlock block, int row, FormColumn column) =>
        Assert.Equal(new FormPlace(block, row, column), FormCells.PlaceOf(Beam, key));

    [Theory]
    [InlineData("title")]
    [InlineData("hinge[1].at")]
    [InlineData("load[99999999999].at")]
    [InlineData("")]
    public void KeyWithoutACell_HasNone(string key) => Assert.Null(FormCells.PlaceOf(Beam, key));

    [Fact]
    public void TextTypedForAnyKey_MakesWhatItNeeds()
    {
        FormSheet sheet = Form.Of(Beam)
            .Do(new Edit.TypeKey("hinge[1].at", "2"))
            .Do(new Edit.TypeKey("section.\"C24 wet\".inertia", "7120"))
            .Do(new Edit.TypeKey("material.pine.modulus", "11"))
            .Do(new Edit.TypeKey("limits.deflection", "L/360"))
            .Do(new Edit.TypeKey("span[1].unbraced", "2"))
            .Do(new Edit.TypeKey("shear_deformation", "t"))
            .Do(new Edit.TypeKey("hinge[9].at", "2"))
            .Do(new Edit.TypeKey("span[7].unbraced", "2"));

        Assert.Equal([new HingeEntry { At = "2 m" }], sheet.Document.Hinges);
        Assert.Equal([new SectionEntry { Name = "C24 wet", Inertia = "7120 cm4" }], sheet.Document.Sections);
        Assert.Equal([new MaterialEntry { Name = "pine", Modulus = "11 MPa" }], sheet.Document.Materials);
        Assert.Equal("L/360", sheet.Document.Limits?.Deflection);
        Assert.Equal("2 m", sheet.Document.Spans[0].Unbraced);
        Assert.Equal("true", sheet.Document.ShearDeformation);
        Assert.Equal([], sheet.Do(new Edit.TypeKey("hinge[1].at", "")).Document.Hinges);
    }

    [Fact]
    public void SidesTypedForASectionThatOnlyMightBeAShape_TakeTheShapeAway()
    {
        FormSheet named = Form.Of(Beam).Span(0, FormColumn.Section, "joist")
            .Do(new Edit.TypeKey("section.joist.width", "75"))
            .Do(new Edit.TypeKey("section.joist.depth", "225"));

        Assert.Equal(
            new SectionEntry { Name = "joist", Width = "75 mm", Depth = "225 mm" },
            named.Document.Sections.Single(section => section.Name == "joist"));
    }
}
