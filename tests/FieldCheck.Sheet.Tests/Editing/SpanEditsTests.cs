using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Sheet.Tests.Editing;

public sealed class SpanEditsTests
{
    private static readonly FormSheet TwoSpans = FormSheet.Empty
        .Span(0, FormColumn.Length, "3").Span(1, FormColumn.Length, "4");

    [Theory]
    [InlineData("3", "3 m")]
    [InlineData(" 12'-6 1/2\" ", "12'-6 1/2\"")]
    [InlineData("2*1.2+0.6", "(2*1.2+0.6) * 1 m")]
    [InlineData("3,5", "3,5")]
    [InlineData("twelve", "twelve")]
    public void LengthTyped_IsKeptAsTypedWithItsUnit(string typed, string kept) =>
        Assert.Equal(
            new SpanEntry { Length = kept }, FormSheet.Empty.Span(0, FormColumn.Length, typed).Document.Spans[0]);

    [Fact]
    public void TapeReadingTyped_TakesThePlaceOfTheLength()
    {
        FormSheet taped = FormSheet.Empty.Span(0, FormColumn.Length, "3").Span(0, FormColumn.Reading, "3.2");

        Assert.Equal(new SpanEntry { To = "3.2 m" }, taped.Document.Spans[0]);
        Assert.Equal(new SpanEntry { Length = "5 m" }, taped.Span(0, FormColumn.Length, "5").Document.Spans[0]);
    }

    [Fact]
    public void DerivedLengthCleared_KeepsTheTapeReading()
    {
        FormSheet taped = FormSheet.Empty.Span(0, FormColumn.Reading, "3.2");

        Assert.Equal(taped, taped.Span(0, FormColumn.Length, ""));
    }

    [Fact]
    public void TypingInTheEmptyRow_AddsASpanAndARollerAtItsJoint()
    {
        Assert.Equal([new SpanEntry { Length = "3 m" }, new SpanEntry { Length = "4 m" }], TwoSpans.Document.Spans);
        Assert.Equal(
            [("pin", "0"), ("roller", "1"), ("roller", "2")],
            TwoSpans.Document.Supports.Select(support => (support.Kind, support.Joint)));
    }

    [Fact]
    public void ClearingTheEmptyRow_AddsNothing() => Assert.Equal(TwoSpans, TwoSpans.Span(2, FormColumn.Length, " "));

    [Fact]
    public void SpanPutInBetween_RenumbersWhatGoesByJointOrSpan()
    {
        FormSheet sheet = Form.Of(TwoSpans.Document with
        {
            Hinges = [new HingeEntry { Joint = "1" }],
            Loads =
            [
                new LoadEntry { Kind = "point", Force = "1 kN", At = "mid 2" },
                new LoadEntry { Kind = "distributed", Intensity = "1 kN/m", From = "joint 1 + 1 m", To = "Joint 2" },
                new LoadEntry { Kind = "point", Force = "1 kN", At = "mid 1 - 0.5 m" },
            ],
        });

        BeamDocument put = sheet.Do(new Edit.PutRow(1, new FormRow.Span(new SpanEntry { Length = "2 m" }))).Document;

        Assert.Equal(["3 m", "2 m", "4 m"], put.Spans.Select(span => span.Length));
        Assert.Equal(["0", "1", "2", "3"], put.Supports.Select(support => support.Joint));
        Assert.Equal("1", put.Hinges[0].Joint);
        Assert.Equal(["mid 3", null, "mid 1 - 0.5 m"], put.Loads.Select(load => load.At));
        Assert.Equal(("joint 1 + 1 m", "joint 3"), (put.Loads[1].From, put.Loads[1].To));
    }

    [Fact]
    public void SpanDeleted_TakesTheSupportAtItsFarJointAndRenumbersTheRest()
    {
        FormSheet sheet = Form.Of(TwoSpans.Document with
        {
            Loads =
            [
                new LoadEntry { Kind = "point", Force = "1 kN", At = "mid 2" },
                new LoadEntry { Kind = "point", Force = "1 kN", At = "mid 1" },
                new LoadEntry { Kind = "point", Force = "1 kN", At = "joint 2" },
            ],
        });

        BeamDocument left = sheet.Do(new Edit.DeleteRow(FormBlock.Spans, 0)).Document;

        Assert.Equal(["4 m"], left.Spans.Select(span => span.Length));
        Assert.Equal([("pin", "0"), ("roller", "1")], left.Supports.Select(support => (support.Kind, support.Joint)));
        Assert.Equal(["mid 1", "joint 0", "joint 1"], left.Loads.Select(load => load.At));
    }

    [Fact]
    public void SpanDeleted_WhoseNearJointIsFree_KeepsTheSupportAtTheFarOne()
    {
        FormSheet sheet = TwoSpans.Do(new Edit.DeleteRow(FormBlock.Supports, 1));

        BeamDocument left = sheet.Do(new Edit.DeleteRow(FormBlock.Spans, 1)).Document;

        Assert.Equal([("pin", "0"), ("roller", "1")], left.Supports.Select(support => (support.Kind, support.Joint)));
    }

    [Fact]
    public void SpansSwapped_LoadsInTheMiddleGoWithThem()
    {
        FormSheet sheet = Form.Of(TwoSpans.Document with
        {
            Loads = [new LoadEntry { Kind = "point", Force = "1 kN", At = "mid 1" }],
        });

        BeamDocument swapped = sheet.Do(new Edit.SwapRows(FormBlock.Spans, 0)).Document;

        Assert.Equal(["4 m", "3 m"], swapped.Spans.Select(span => span.Length));
        Assert.Equal("mid 2", swapped.Loads[0].At);
    }

    [Fact]
    public void TapedSpansSwapped_ReadingsStayWithTheJoints()
    {
        FormSheet sheet = FormSheet.Empty
            .Span(0, FormColumn.Reading, "3").Span(0, FormColumn.Section, "big").Span(1, FormColumn.Reading, "7");

        BeamDocument swapped = sheet.Do(new Edit.SwapRows(FormBlock.Spans, 0)).Document;

        Assert.Equal([("3 m", null), ("7 m", "big")], swapped.Spans.Select(span => (span.To, span.Section)));
    }

    [Fact]
    public void TapedSpanCopied_HasTheLengthBetweenTheReadings()
    {
        FormSheet sheet = FormSheet.Empty.Span(0, FormColumn.Reading, "3").Span(1, FormColumn.Reading, "7 ft 6 in");

        BeamDocument copied = sheet.Do(new Edit.CopyRow(FormBlock.Spans, 1)).Document;

        Assert.Equal(new SpanEntry { Length = "(7 ft 6 in) - (3 m)" }, copied.Spans[2]);
    }

    [Fact]
    public void SectionNamed_GetsATableAsAShape_WhichGoesWhenNoSpanNamesIt()
    {
        FormSheet named = TwoSpans.Span(0, FormColumn.Section, "IPE200");

        Assert.Equal([new SectionEntry { Name = "IPE200", Shape = "IPE200" }], named.Document.Sections);
        Assert.Equal([], named.Span(0, FormColumn.Section, "").Document.Sections);
    }

    [Fact]
    public void SecondSectionNamed_SpansWithoutOneKeepTheFirst()
    {
        FormSheet sheet = Form.Of(TwoSpans.Document with
        {
            Sections = [new SectionEntry { Name = "bearer", Width = "75 mm", Depth = "225 mm" }],
        });

        BeamDocument named = sheet.Span(1, FormColumn.Section, "IPE200").Document;

        Assert.Equal(["bearer", "IPE200"], named.Spans.Select(span => span.Section));
        Assert.Equal(["bearer", "IPE200"], named.Sections.Select(section => section.Name));
    }

    [Fact]
    public void AskedCells_GoWithTheirRows()
    {
        FormSheet sheet = Form.Of(TwoSpans.Document with
        {
            Ask = ["span[2].length", "support[3].settlement", "span[1].length", "display"],
        });

        Rows<string> ask = sheet.Do(new Edit.DeleteRow(FormBlock.Spans, 0)).Document.Ask;

        Assert.Equal(["span[1].length", "support[2].settlement", "display"], ask);
    }
}
