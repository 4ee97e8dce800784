using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Which of several sizes counts, and where: the greatest, and of equal ones that further left.</summary>
public sealed class DemandTests
{
    /// <summary>Sizes apart by less than a part in a million million are one.</summary>
    [Theory]
    [InlineData(1, 1, 2, 3, true)]
    [InlineData(2, 3, 1, 1, false)]
    [InlineData(1, 3, 1 - 5e-13, 1, true)]
    [InlineData(1, 1, 1 + 5e-13, 3, false)]
    [InlineData(1, 3, 1 - 5e-12, 1, false)]
    [InlineData(0, 1, 0, 3, false)]
    [InlineData(0, 3, 0, 1, true)]
    [InlineData(1, 1, 1, 1, false)]
    public void Greater_IsTheFurtherLeftOfEqualOnes(double one, double at, double other, double otherAt, bool isOther)
    {
        Demand first = Of(one, at);
        Demand second = Of(other, otherAt);

        Assert.Same(isOther ? second : first, Demand.Greater(first, second));
        Assert.Same(second, Demand.Greater(null, second));
    }

    [Theory]
    [InlineData(null, 1)]
    [InlineData(3, 3)]
    public void SpanOfACheck_StaysWhereItIsGiven(int? given, int span)
    {
        SectionCheck check = NeededFiguresTests.Check(CheckKind.Bending, CheckUnit.Stress, 1, 2) with { Span = given };

        Assert.Equal(span, (Of(1, 2) with { Span = 1 }).Place(check).Span);
        Assert.Equal(given, Of(1, 2).Place(check).Span);
    }

    /// <summary>A level stretch peaks where it begins, at nothing too.</summary>
    [Theory]
    [InlineData(5)]
    [InlineData(0)]
    [InlineData(-5)]
    public void PeakOfALevelStretch_IsItsLeftEnd(double level)
    {
        Peak peak = new();
        foreach (ref readonly Piece piece in Answer.To(Checked.Model([1, 3], [Support.Pin(0), Support.Roller(4)])).PiecesOn(0, 4))
        {
            peak.Take([level, 0], level, level, piece);
        }

        Assert.Equal((level, 0), (peak.Value, peak.Position));
    }

    [Fact]
    public void PeakOfAStretchThatRises_IsItsRightEnd()
    {
        Peak peak = new();
        foreach (ref readonly Piece piece in Answer.To(Checked.Model([4], [Support.Pin(0), Support.Roller(4)])).PiecesOn(0, 4))
        {
            peak.Take([1, 2], 1, 3, piece);
        }

        Assert.Equal((3, 4), (peak.Value, peak.Position));
    }

    private static Demand Of(double value, double position) => new(value, position, new Situation(0, [], null));
}
