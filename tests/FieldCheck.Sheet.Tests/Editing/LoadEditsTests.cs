using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Sheet.Tests.Editing;

public sealed class LoadEditsTests
{
    private static readonly FormSheet Simple = FormSheet.Empty.Span(0, FormColumn.Length, "6");

    public static TheoryData<string, LoadEntry> Sizes() => new()
    {
        { "12", new LoadEntry { Kind = "point", Force = "12 kN" } },
        { "12kN", new LoadEntry { Kind = "point", Force = "12kN" } },
        { "1.2t", new LoadEntry { Kind = "point", Force = "1.2t" } },
        { "-850 kg", new LoadEntry { Kind = "point", Force = "-850 kg" } },
        { "2 * 1.2 kN + 300 N", new LoadEntry { Kind = "point", Force = "2 * 1.2 kN + 300 N" } },
        { "12/m", new LoadEntry { Kind = "distributed", Intensity = "12 kN/m" } },
        { "12 plf", new LoadEntry { Kind = "distributed", Intensity = "12 plf" } },
        { "3..6/m", new LoadEntry { Kind = "distributed", Intensity = "3 kN/m", IntensityEnd = "6 kN/m" } },
        { "5 kNm", new LoadEntry { Kind = "couple", Moment = "5 kNm" } },
        { "12 psf * 5 ft", new LoadEntry { Kind = "distributed", Pressure = "12 psf", Width = "5 ft" } },
        { "5 ft * 12 psf", new LoadEntry { Kind = "distributed", Pressure = "12 psf", Width = "5 ft" } },
        {
            "12..24 psf * 5 ft",
            new LoadEntry { Kind = "distributed", Pressure = "12 psf", PressureEnd = "24 psf", Width = "5 ft" }
        },
        { "12 psf", new LoadEntry { Kind = "distributed", Pressure = "12 psf" } },
        { "12 kn/n", new LoadEntry { Kind = "point", Force = "12 kn/n" } },
        { "1,5 kN", new LoadEntry { Kind = "point", Force = "1,5 kN" } },
    };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void SizeTyped_TellsTheKind(string typed, LoadEntry expected) =>
        Assert.Equal(expected, Simple.Load(0, FormColumn.Size, typed).Document.Loads[0]);

    [Theory]
    [MemberData(nameof(Sizes))]
    public void SizeShown_TypedAgain_ChangesNothing(string typed, LoadEntry expected)
    {
        FormSheet once = Simple.Load(0, FormColumn.Size, typed);

        FormSheet again = once.Load(0, FormColumn.Size, once.Text(FormBlock.Loads, 0, FormColumn.Size)!);

        Assert.Equal(expected, again.Document.Loads[0]);
    }

    [Fact]
    public void BareNumberInUsUnits_IsPounds()
    {
        FormSheet us = Simple.Do(new Edit.ShowUnits("us"));

        Assert.Equal("1850 lbf", us.Load(0, FormColumn.Size, "1850").Document.Loads[0].Force);
        Assert.Equal("60 lbf/ft", us.Load(0, FormColumn.Size, "60/ft").Document.Loads[0].Intensity);
    }

    [Fact]
    public void ForceWithUnitAndAnEnd_IsTheWholeLoad()
    {
        FormSheet spread = Simple
            .Load(0, FormColumn.Size, "12kN").Load(0, FormColumn.From, "0.6").Load(0, FormColumn.To, "1.6");

        Assert.Equal(
            new LoadEntry { Kind = "distributed", Total = "12kN", From = "0.6 m", To = "1.6 m" },
            spread.Document.Loads[0]);
        Assert.False(FormCells.IsAsked(spread.Document, 0));
    }

    [Fact]
    public void ForceTypedAfterItsEnds_IsTheWholeLoad()
    {
        FormSheet spread = Simple
            .Load(0, FormColumn.To, "1.6").Load(0, FormColumn.From, "0.6").Load(0, FormColumn.Size, "12 kN");

        Assert.Equal(
            new LoadEntry { Kind = "distributed", Total = "12 kN", From = "0.6 m", To = "1.6 m" },
            spread.Document.Loads[0]);
    }

    [Theory]
    [InlineData(true, "12 kN", null)]
    [InlineData(false, null, "12 kN/m")]
    public void BareNumberAndAnEnd_IsAskedAbout(bool inAll, string? total, string? intensity)
    {
        FormSheet asked = Simple
            .Load(0, FormColumn.Size, "12").Load(0, FormColumn.From, "0.6").Load(0, FormColumn.To, "1.6");

        Assert.True(FormCells.IsAsked(asked.Document, 0));
        Assert.Equal("12", asked.Text(FormBlock.Loads, 0, FormColumn.Size));

        LoadEntry answered = asked.Do(new Edit.AnswerSize(0, inAll)).Document.Loads[0];

        Assert.Equal(
            new LoadEntry { Kind = "distributed", Total = total, Intensity = intensity, From = "0.6 m", To = "1.6 m" },
            answered);
    }

    [Fact]
    public void BareNumberTypedAfterTheEnds_IsAskedAbout()
    {
        FormSheet asked = Simple.Load(0, FormColumn.To, "1.6").Load(0, FormColumn.Size, "2*6");

        Assert.True(FormCells.IsAsked(asked.Document, 0));
        Assert.Equal("(2*6) * 1 kN", asked.Do(new Edit.AnswerSize(0, InAll: true)).Document.Loads[0].Total);
    }

    [Fact]
    public void EndTakenAwayAgain_TheLoadIsAsItWas()
    {
        FormSheet bare = Simple.Load(0, FormColumn.Size, "2*6").Load(0, FormColumn.From, "0.6");

        Assert.Equal(bare, bare.Load(0, FormColumn.To, "1.6").Load(0, FormColumn.To, ""));

        FormSheet plain = Simple.Load(0, FormColumn.Size, "12kN").Load(0, FormColumn.From, "0.6");

        Assert.Equal(plain, plain.Load(0, FormColumn.To, "1.6").Load(0, FormColumn.To, ""));
    }

    [Fact]
    public void QuestionOfACopiedRow_IsTheCopysToo()
    {
        FormSheet copied = Simple.Load(0, FormColumn.Size, "12").Do(new Edit.CopyRow(FormBlock.Loads, 0));

        Assert.True(FormCells.IsAsked(copied.Load(1, FormColumn.To, "2").Document, 1));
        FormSheet left = copied.Do(new Edit.DeleteRow(FormBlock.Loads, 0));
        Assert.Equal([0], left.BareSizes);
    }

    [Theory]
    [InlineData("3 kN/m", "5", "5 kN/m")]
    [InlineData("3 kNm", "5", "5 kNm")]
    [InlineData("12 psf * 5 ft", "2", "2 kN/m2 * 5 ft")]
    public void BareNumberOverASize_TakesTheUnitThatStandsThere(string stood, string typed, string now) =>
        Assert.Equal(now, Simple.Load(0, FormColumn.Size, stood).Load(0, FormColumn.Size, typed)
            .Text(FormBlock.Loads, 0, FormColumn.Size));

    [Fact]
    public void KindChangedByItsSize_KeepsThePlace()
    {
        FormSheet point = Simple.Load(0, FormColumn.Size, "12kN").Load(0, FormColumn.From, "A + 0.6");

        Assert.Equal(
            new LoadEntry { Kind = "distributed", Intensity = "12 kN/m", From = "A + 0.6 m" },
            point.Load(0, FormColumn.Size, "12/m").Document.Loads[0]);
        Assert.Equal(
            new LoadEntry { Kind = "couple", Moment = "5 kNm", At = "A + 0.6 m" },
            point.Load(0, FormColumn.Size, "5 kNm").Document.Loads[0]);
    }

    [Fact]
    public void EndOfATurningMoment_IsKeptAsTyped() =>
        Assert.Equal("2 m", Simple.Load(0, FormColumn.Size, "5 kNm").Load(0, FormColumn.To, "2").Document.Loads[0].To);

    [Fact]
    public void OwnWeight_IsOnOrOff()
    {
        FormSheet on = Simple.Load(FormPlace.OwnWeightRow, FormColumn.Size, "on");

        Assert.Equal(new SelfWeightEntry { Case = "dead" }, on.Document.SelfWeight);
        Assert.Equal(on, on.Load(FormPlace.OwnWeightRow, FormColumn.Size, "ON"));
        Assert.Null(on.Load(FormPlace.OwnWeightRow, FormColumn.Size, "off").Document.SelfWeight);
        Assert.Equal(
            "construction", on.Load(FormPlace.OwnWeightRow, FormColumn.Case, "construction").Document.SelfWeight?.Case);
    }

    [Fact]
    public void ColumnOfLoadsPasted_MakesARowOfEach()
    {
        FormSheet pasted = Simple.Do(new Edit.PasteCells(
            new FormPlace(FormBlock.Loads, 0, FormColumn.Size), [["5", "1"], ["8 kN", "2 m"], ["3/m"]]));

        Assert.Equal(
            [("5 kN", null, "1 m"), ("8 kN", null, "2 m"), (null, "3 kN/m", null)],
            pasted.Document.Loads.Select(load => (load.Force, load.Intensity, load.At)));
    }
}
