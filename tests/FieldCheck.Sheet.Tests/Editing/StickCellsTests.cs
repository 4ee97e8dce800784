using FieldCheck.Sheet.Editing;

namespace FieldCheck.Sheet.Tests.Editing;

public sealed class StickCellsTests
{
    private static readonly FormSheet Beam = FormSheet.Empty.Span(0, FormColumn.Length, "3");

    private static readonly FormSheet UsBeam = Form.Of(Beam.Document with { Display = "us" });

    public static TheoryData<FormBlock, FormColumn> Cells()
    {
        TheoryData<FormBlock, FormColumn> cells = [];
        foreach (FormBlock block in new[] { FormBlock.Sections, FormBlock.Materials, FormBlock.Limits, FormBlock.Bracing, FormBlock.Bearings })
        {
            foreach (FormColumn column in FormColumns.Of(block))
            {
                cells.Add(block, column);
            }
        }

        return cells;
    }

    // Metric: sizes of a section in mm, stresses in MPa, what the ground carries in kN/m2; customary: in, psi or ksi.
    [Theory]
    [InlineData(FormBlock.Sections, FormColumn.Width, "75", "75 mm")]
    [InlineData(FormBlock.Sections, FormColumn.Depth, " 9.25 in ", "9.25 in")]
    [InlineData(FormBlock.Sections, FormColumn.Plies, "2", "2")]
    [InlineData(FormBlock.Sections, FormColumn.Inertia, "1940 cm4", "1940 cm4")]
    [InlineData(FormBlock.Sections, FormColumn.Flat, "f", "flat")]
    [InlineData(FormBlock.Sections, FormColumn.Depth, "deep", "deep")]
    [InlineData(FormBlock.Materials, FormColumn.AllowableBending, "12", "12 MPa")]
    [InlineData(FormBlock.Materials, FormColumn.Modulus, "11 GPa", "11 GPa")]
    [InlineData(FormBlock.Materials, FormColumn.Creep, "0.6", "0.6")]
    [InlineData(FormBlock.Materials, FormColumn.Factors, "1.25 k_mod, size=1.1", "modification 1.25, size 1.1")]
    [InlineData(FormBlock.Limits, FormColumn.Deflection, "360", "L/360")]
    [InlineData(FormBlock.Limits, FormColumn.Absolute, "12", "12 mm")]
    [InlineData(FormBlock.Limits, FormColumn.Rules, "nds", "NDS")]
    [InlineData(FormBlock.Limits, FormColumn.CaseLimits, "live 360", "live L/360")]
    [InlineData(FormBlock.Limits, FormColumn.Lasting, "live 0.3, dead 1", "live 0.3, dead 1")]
    [InlineData(FormBlock.Bracing, FormColumn.Unbraced, "2.4", "2.4 m")]
    [InlineData(FormBlock.Bracing, FormColumn.Unbraced, "br", "braced")]
    [InlineData(FormBlock.Bearings, FormColumn.Bearing, "90", "90 mm")]
    [InlineData(FormBlock.Bearings, FormColumn.BearingAllowable, "2.1", "2.1 MPa")]
    [InlineData(FormBlock.Bearings, FormColumn.Pad, "600x600", "600 mm x 600 mm")]
    [InlineData(FormBlock.Bearings, FormColumn.Pressure, "100", "100 kN/m2")]
    public void Typed_StandsWithTheUnitThatMayBeLeftOut(FormBlock block, FormColumn column, string typed, string stands) =>
        Assert.Equal(stands, Beam.Stick(block, 0, column, typed).Text(block, 0, column));

    [Theory]
    [InlineData(FormBlock.Sections, FormColumn.Depth, "9.25", "9.25 in")]
    [InlineData(FormBlock.Bracing, FormColumn.Unbraced, "8", "8 ft")]
    [InlineData(FormBlock.Bearings, FormColumn.Bearing, "3", "3 in")]
    public void Typed_InCustomaryUnits_StandsInThose(FormBlock block, FormColumn column, string typed, string stands) =>
        Assert.Equal(stands, UsBeam.Stick(block, 0, column, typed).Text(block, 0, column));

    [Theory]
    [MemberData(nameof(Cells))]
    public void WhatStands_TypedAgain_ChangesNothing_AndEmptiedLeavesTheBeamAsBefore(FormBlock block, FormColumn column)
    {
        string text = column switch
        {
            FormColumn.Shape => "IPE 200",
            FormColumn.Grade => "C24",
            FormColumn.Rules => "NDS",
            FormColumn.Flat => "flat",
            FormColumn.Factors or FormColumn.Lasting or FormColumn.CaseLimits => "live 2",
            _ => "2",
        };
        FormSheet typed = Beam.Stick(block, 0, column, text);
        string stands = typed.Text(block, 0, column)!;

        Assert.NotEqual(Beam, typed);
        Assert.Equal(typed, typed.Stick(block, 0, column, stands));
        Assert.Equal(Beam, typed.Stick(block, 0, column, ""));
    }

    [Theory]
    [MemberData(nameof(Cells))]
    public void Key_OfACell_LeadsBackToIt(FormBlock block, FormColumn column)
    {
        string row = block switch
        {
            FormBlock.Sections => "section.beam",
            FormBlock.Materials => "material.beam",
            FormBlock.Limits => "limits",
            FormBlock.Bracing => "span[1]",
            _ => "support[1]",
        };

        Assert.Equal(new FormPlace(block, 0, column), StickCells.PlaceOf(Beam.Document, $"{row}.{StickCells.KeyOf(column)}"));
    }

    [Theory]
    [InlineData("load[1].at")]
    [InlineData("span[1].length")]
    [InlineData("support[1].kind")]
    [InlineData("section.other.depth")]
    [InlineData("material.other.grade")]
    [InlineData("title")]
    [InlineData("")]
    public void Key_WithoutSuchACell_HasNone(string key) => Assert.Null(StickCells.PlaceOf(Beam.Document, key));

    [Fact]
    public void TypingWhereThereIsNoRow_ChangesNothing()
    {
        Assert.Equal(Beam, Beam.Stick(FormBlock.Sections, 1, FormColumn.Width, "75"));
        Assert.Equal(Beam, Beam.Stick(FormBlock.Materials, 1, FormColumn.Factors, "size 1.1"));
        Assert.Equal(Beam, Beam.Stick(FormBlock.Bracing, 1, FormColumn.Unbraced, "2"));
        Assert.Equal(Beam, Beam.Stick(FormBlock.Bearings, 2, FormColumn.Pad, "600x600"));
    }

    [Theory]
    [InlineData(FormColumn.Factors, FormBlock.Materials)]
    [InlineData(FormColumn.CaseLimits, FormBlock.Limits)]
    [InlineData(FormColumn.Lasting, FormBlock.Limits)]
    public void FiguresThatDoNotRead_LeaveWhatStands(FormColumn column, FormBlock block)
    {
        FormSheet typed = Beam.Stick(block, 0, column, "live 2");

        Assert.Equal(typed, typed.Stick(block, 0, column, "live"));
    }
}
