using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>What is told of a difference beside its explanations, and what cannot be asked.</summary>
public sealed class StatedDifferenceTests
{
    // 10 kN at 4 m: 10 kN up and 40 kNm counter-clockwise at the wall.
    private static readonly BeamModel Cantilever = Said.Simple(4, Said.Point(4, 10)) with { Supports = [Support.Fixed(0)] };

    // 12 kN at 5 m of 6 m: A 2, B 10.
    private static readonly BeamModel Uneven = Said.Simple(6, Said.Point(5, 12));

    // 2 kN too much and 10 kNm too little turn together like 2 kN at 5 m beyond the wall.
    [Fact]
    public void ForcesAndMoments_AreSummedApart()
    {
        Diagnosis.Differs differs = Differs(
            Cantilever, Said.Figure(0, ReactionPart.Vertical, "12"), Said.Figure(0, ReactionPart.Moment, "30"));

        Assert.Equal([2000, -10000], differs.Difference.Each.Select(one => Math.Round(one, 6)));
        Assert.Equal(2000, differs.Difference.Vertical!.Value, 1e-6);
        Assert.Equal(-5, differs.Difference.Place!.Value, 1e-9);
    }

    [Fact]
    public void WithoutTheMoment_TheDifferenceHasNoPlace()
    {
        Diagnosis.Differs differs = Differs(Cantilever, Said.Figure(0, ReactionPart.Vertical, "12"));

        Assert.Equal(2000, differs.Difference.Vertical!.Value, 1e-6);
        Assert.Null(differs.Difference.Place);
    }

    [Fact]
    public void WithoutAVertical_TheDifferenceHasNoSum()
    {
        Diagnosis.Differs differs = Differs(Cantilever, Said.Figure(0, ReactionPart.Moment, "30"));

        Assert.Null(differs.Difference.Vertical);
        Assert.Null(differs.Difference.Place);
    }

    // All loads doubled. The digits are those of the greatest figure.
    [Theory]
    [InlineData("4.0", "20.0", 3)]
    [InlineData("4", "20", 2)]
    [InlineData("0", "0", 1)]
    [InlineData("4.00", "20.00", 3)]
    public void FalseClaims_AreCountedByTheDigitsOfTheGreatestFigure(string a, string b, int digits)
    {
        Diagnosis.Differs differs = Assert.IsType<Diagnosis.Differs>(new ExplanationSearch().Explain(Said.Verticals(Uneven, a, b)));

        Assert.Contains(differs.Explanations, one => !one.IsFitted);
        Assert.Equal(FalseClaims.Rate(2, digits), differs.FalseClaimRate);
    }

    // 2 and 10 kN to the last digit of whole numbers: half of it is 500 N.
    [Theory]
    [InlineData(2500, 9500, true)]
    [InlineData(2501, 9500, false)]
    public void FigureWithinItsHalfDigit_Agrees(double a, double b, bool agrees)
    {
        StatedSet stated = new(
            Uneven, [1],
            [new ReactionFigure(0, ReactionPart.Vertical, a, 500), new ReactionFigure(1, ReactionPart.Vertical, b, 500)]);

        Assert.Equal(agrees, new ExplanationSearch().Explain(stated) is Diagnosis.Agrees);
    }

    public static TheoryData<StatedSet, string> NotToBeAsked() => new()
    {
        { Said.Verticals(Uneven, "2") with { Figures = [] }, "" },
        { Said.Verticals(Uneven, "2") with { Factors = [1, 1] }, "There must be one factor for each case." },
        { Said.Verticals(Uneven, "2", "10", "3"), "Every figure must be of a support of the model." },
        { Said.Verticals(Uneven, "2") with { Figures = [Said.Figure(-1, ReactionPart.Vertical, "2")] }, "Every figure must be of a support of the model." },
        { Said.Verticals(Uneven, "2") with { UncountedWeight = [1, 1] }, "There must be one weight for each span, or none." },
        { Said.Verticals(Uneven, "2") with { PermanentCases = [1] }, "Permanent cases must be cases of the model." },
        { Said.Verticals(Uneven, "2") with { PermanentCases = [0, -1] }, "Permanent cases must be cases of the model." },
    };

    [Theory]
    [MemberData(nameof(NotToBeAsked))]
    public void SetThatDoesNotSuitItsModel_IsRefused(StatedSet stated, string says) => Assert.StartsWith(
        says, Assert.ThrowsAny<ArgumentException>(() => new ExplanationSearch().Explain(stated)).Message, StringComparison.Ordinal);

    private static Diagnosis.Differs Differs(BeamModel model, params ReactionFigure[] figures) =>
        Assert.IsType<Diagnosis.Differs>(new ExplanationSearch().Explain(new StatedSet(model, [1], [.. figures])));
}
