using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Sheet.Tests.Editing;

public sealed class SupportEditsTests
{
    private static readonly FormSheet Simple = FormSheet.Empty.Span(0, FormColumn.Length, "6");

    private static readonly FormSheet ThreeSupports = Form.Of(Simple.Document with
    {
        Supports =
        [
            new SupportEntry { Kind = "pin", Joint = "0" },
            new SupportEntry { Kind = "roller", At = "3 m" },
            new SupportEntry { Kind = "roller", Joint = "1" },
        ],
        Loads =
        [
            new LoadEntry { Kind = "point", Force = "1 kN", At = "B + 1 m" },
            new LoadEntry { Kind = "distributed", Intensity = "1 kN/m", From = "a", To = "C - 1 m" },
        ],
        Hinges = [new HingeEntry { At = "C - 0.5 m" }],
        Stated = [new StatedEntry { Support = "C", Vertical = "3 kN" }],
    });

    [Theory]
    [InlineData("joint 1", "1", null)]
    [InlineData("Joint  0", "0", null)]
    [InlineData("4", null, "4 m")]
    [InlineData("end - 0.5", null, "end - 0.5 m")]
    [InlineData("joint 1 - 0.5", null, "joint 1 - 0.5 m")]
    [InlineData("somewhere", null, "somewhere")]
    public void PlaceTyped_IsAJointOrAPlace(string typed, string? joint, string? at)
    {
        BeamDocument typedIn = Simple.Support(1, FormColumn.Place, typed).Document;

        Assert.Equal((joint, at), (typedIn.Supports[1].Joint, typedIn.Supports[1].At));
        Assert.Equal("6 m", typedIn.Spans[0].Length);
    }

    [Theory]
    [InlineData("p", "pin", null, null)]
    [InlineData("r", "roller", null, null)]
    [InlineData("FIX", "fixed", null, null)]
    [InlineData("roller 30", "roller", "30 deg", null)]
    [InlineData("r 30 deg", "roller", "30 deg", null)]
    [InlineData("spring 12 kip/in", "spring", null, "12 kip/in")]
    [InlineData("s 500", "spring", null, "500 kN/m")]
    [InlineData("pin 3", "pin 3", null, null)]
    [InlineData("rollr", "rollr", null, null)]
    public void KindTyped_TakesItsFigureWithIt(string typed, string kind, string? surface, string? stiffness)
    {
        SupportEntry support = Simple.Support(1, FormColumn.Kind, typed).Document.Supports[1];

        Assert.Equal((kind, surface, stiffness), (support.Kind, support.Surface, support.Stiffness));
    }

    [Fact]
    public void KindChanged_WhatItCannotHaveGoes()
    {
        SupportEntry spring = new()
        {
            Kind = "spring",
            Joint = "1",
            Stiffness = "5 kN/mm",
            RotationalStiffness = "9 kNm/rad",
            Settlement = "2 mm",
        };
        FormSheet sheet = Form.Of(Simple.Document with { Supports = [spring] });

        Assert.Equal(
            spring with { Kind = "fixed", Stiffness = null, RotationalStiffness = null },
            sheet.Support(0, FormColumn.Kind, "fixed").Document.Supports[0]);
        Assert.Equal(
            spring with { Kind = "pin", Stiffness = null },
            sheet.Support(0, FormColumn.Kind, "pin").Document.Supports[0]);
    }

    [Theory]
    [InlineData("12", "12 mm")]
    [InlineData("1/2 in", "1/2 in")]
    public void SettlementTyped_IsAShortLength(string typed, string kept) =>
        Assert.Equal(kept, Simple.Support(1, FormColumn.Settles, typed).Document.Supports[1].Settlement);

    [Fact]
    public void SupportRenamed_IsRenamedWhereverItIsUsed()
    {
        BeamDocument renamed = ThreeSupports.Support(2, FormColumn.Label, "East").Document;

        Assert.Equal("East", renamed.Supports[2].Label);
        Assert.Equal("East - 1 m", renamed.Loads[1].To);
        Assert.Equal("East - 0.5 m", renamed.Hinges[0].At);
        Assert.Equal("East", renamed.Stated[0].Support);
        Assert.Equal(("B + 1 m", "a"), (renamed.Loads[0].At, renamed.Loads[1].From));
    }

    [Fact]
    public void SupportPutIn_PlacesStayWithTheSupportsTheyHangOn()
    {
        BeamDocument added = ThreeSupports.Support(3, FormColumn.Place, "1.5").Document;

        Assert.Equal(["A", "C", "D", "B"], Labels(added));
        Assert.Equal("C + 1 m", added.Loads[0].At);
        Assert.Equal("D - 1 m", added.Loads[1].To);
        Assert.Equal("D", added.Stated[0].Support);
    }

    [Fact]
    public void SupportsPassEachOther_NamesAndPlacesSwapTogether()
    {
        BeamDocument moved = ThreeSupports.Support(0, FormColumn.Place, "5").Document;

        Assert.Equal(["B", "A", "C"], Labels(moved));
        Assert.Equal("A + 1 m", moved.Loads[0].At);
        Assert.Equal("B", moved.Loads[1].From);
    }

    [Fact]
    public void SupportInUseDeleted_ItsNameGoesToNoOther()
    {
        BeamDocument left = ThreeSupports.Do(new Edit.DeleteRow(FormBlock.Supports, 1)).Document;

        Assert.Equal(["A", "C"], Labels(left));
        Assert.Equal(("B + 1 m", "C - 1 m"), (left.Loads[0].At, left.Loads[1].To));
    }

    [Fact]
    public void SupportNobodyUsesDeleted_TheOthersGoByPositionStill()
    {
        FormSheet sheet = Form.Of(ThreeSupports.Document with { Loads = [], Hinges = [], Stated = [] });

        BeamDocument left = sheet.Do(new Edit.DeleteRow(FormBlock.Supports, 1)).Document;

        Assert.All(left.Supports, support => Assert.Null(support.Label));
        Assert.Equal(["A", "B"], Labels(left));
    }

    [Fact]
    public void PlaceThatDoesNotRead_NamesInUseAreWrittenDown()
    {
        BeamDocument lost = ThreeSupports.Support(1, FormColumn.Place, "here").Document;

        Assert.Equal(["A", "B", "C"], lost.Supports.Select(support => support.Label));
    }

    [Fact]
    public void PlaceOfAFile_AcceptedAsItStands_StaysAsItWasWritten()
    {
        FormSheet sheet = Form.Of(Simple.Document with { Supports = [new SupportEntry { Kind = "pin", At = "joint 1" }] });

        Assert.Equal(sheet.Document, sheet.Support(0, FormColumn.Place, "joint 1").Document);
    }

    [Fact]
    public void SupportCopied_HasNeitherPlaceNorName()
    {
        FormSheet sheet = Simple.Support(1, FormColumn.Acts, "u").Support(1, FormColumn.Label, "East");

        BeamDocument copied = sheet.Do(new Edit.CopyRow(FormBlock.Supports, 1)).Document;

        Assert.Equal(new SupportEntry { Kind = "roller", Acts = "up" }, copied.Supports[2]);
    }

    [Fact]
    public void FirstSupportTyped_IsAPin_FurtherOnesRoll()
    {
        FormSheet none = Form.Of(Simple.Document with { Supports = [] });

        BeamDocument two = none.Support(0, FormColumn.Place, "0").Support(1, FormColumn.Place, "end").Document;

        Assert.Equal([("pin", "0 m"), ("roller", "end")], two.Supports.Select(support => (support.Kind, support.At)));
    }

    private static string[] Labels(BeamDocument document) => [.. FormLabels.Of(document).Select(label => label ?? "?")];
}
