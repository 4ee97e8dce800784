using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Slips with figures, widths and whole beams, on beams small enough to work out by hand.</summary>
public sealed class ExplanationKindsTests
{
    // 3 kN at the tip of a cantilever 2 m long, 6 kNm.
    private static readonly BeamModel Cantilever = Said.Simple(2, Said.Point(2, 3)) with { Supports = [Support.Fixed(0)] };

    // 3 kN / 4.4482 = 0.6744 kip and 6 kNm / 1.35582 = 4.4254 kip·ft; taken for kip and kip·ft they would be 13.34 and 8.135.
    [Theory]
    [InlineData("0.6744", "4.425", false)]
    [InlineData("13.34", "8.135", true)]
    public void ForcesAndMomentsInAnotherUnit(string force, string moment, bool isTooGreat)
    {
        StatedSet stated = new(
            Cantilever, [1], [Said.Figure(0, ReactionPart.Vertical, force), Said.Figure(0, ReactionPart.Moment, moment)]);

        Assert.Contains(new Slip.FigureUnits(UnitMixUp.KilonewtonAndKip, isTooGreat), Said.Explanations(stated).Select(one => one.Slip));
    }

    [Fact]
    public void MomentAlone_MayBeInAnotherUnit() => Assert.Contains(
        new Slip.MomentUnits(UnitMixUp.InchAndFoot, true),
        Said.Explanations(new StatedSet(Cantilever, [1], [Said.Figure(0, ReactionPart.Moment, "72.0")])).Select(one => one.Slip));

    [Fact]
    public void WhereNoMomentIsStated_NoneIsInAnotherUnit() => Assert.DoesNotContain(
        Rough.Tried(Rough.Set(Cantilever, 1000, ReactionPart.Vertical), ExplanationUnits.Try), one => one.Slip is Slip.MomentUnits);

    // 12 kN at 2 m of 6 m: 8, 4. 3 kN/m on the right half and 2 kN/m on all: 2.25 + 6, 6.75 + 6, and that twice.
    [Fact]
    public void TwiceTheTributaryWidthOfEverySpreadLoad()
    {
        BeamModel model = Said.Simple(6, Said.Point(2, 12), Said.Spread(3, 6, 3), Said.Spread(0, 6, 2));

        Assert.Equal(new Slip.TributaryWidth(null, 2), Said.Only(Said.Verticals(model, "24.50", "29.50")).Slip);
    }

    // 1.6 x (8, 4) of 1.6 x (10.25, 10.75).
    [Fact]
    public void LoadIsLeftOut_WithItsFactor()
    {
        BeamModel model = Said.Simple(6, Said.Point(2, 12), Said.Spread(3, 6, 3)) with { Combinations = [] };
        StatedSet stated = Said.Verticals(model, "12.80", "6.40") with { Factors = [1.6] };

        Assert.Equal(new Slip.LoadLeftOut(1), Said.Only(stated).Slip);
    }

    // Three spans of 4 m with 6 kN/m, hinged over B and C: 12, 24, 24, 12. Continuous: 0.4, 1.1, 1.1 and 0.4 of 24 kN, as in any
    // table of continuous beams.
    [Fact]
    public void TwoHingesOverlooked()
    {
        BeamModel model = Said.On([4, 4, 4], [0, 4, 8, 12], Said.Spread(0, 12, 6)) with { Hinges = [4, 8] };

        Assert.Equal(new Slip.HingeOverlooked(null), Said.Only(Said.Verticals(model, "9.60", "26.40", "26.40", "9.60")).Slip);
    }

    [Fact]
    public void OneHinge_IsNotOverlookedTwice()
    {
        BeamModel model = Said.On([4, 4], [0, 4, 8], Said.Spread(0, 8, 6)) with { Hinges = [4] };

        Assert.Equal(
            [new Slip.SimpleSpans(), new Slip.HingeOverlooked(0)],
            Rough.Tried(Rough.Set(model, 1000, ReactionPart.Vertical), ExplanationModels.Try).Select(one => one.Slip));
    }

    // 6 kN/m on 4 m, built in at A: 5/8 and 3/8 of 24 kN; as a simple span half each.
    [Fact]
    public void BuiltInEnd_TurnsOnASimpleSpan()
    {
        BeamModel model = Said.Simple(4, Said.Spread(0, 4, 6)) with { Supports = [Support.Fixed(0), Support.Roller(4)] };

        Assert.Contains(new Slip.SimpleSpans(), Said.Explanations(Said.Verticals(model, "12.0", "12.0")).Select(one => one.Slip));
    }

    // A and B carry 1/6 and 5/6 of a load at 5 m of 6 m.
    [Theory]
    [InlineData(6, "2", "10", 2)] // 1 and 5 kN, doubled
    [InlineData(5.3379, "0", "1", 1)] // 0.2 and 1 kip for 0.8897 and 4.448 kN
    [InlineData(6, "2.00", "10.00", 3)]
    public void FalseClaims_AreCountedByTheDigitsWritten(double load, string a, string b, int digits)
    {
        Diagnosis.Differs differs = Assert.IsType<Diagnosis.Differs>(
            new ExplanationSearch().Explain(Said.Verticals(Said.Simple(6, Said.Point(5, load)), a, b)));

        Assert.Equal(FalseClaims.Rate(2, digits), differs.FalseClaimRate);
        Assert.True(differs.IsEverySlipTried);
    }

    // Figures taken from a file to the last bit.
    [Fact]
    public void FiguresThatWereNotRounded_HaveAllDigits()
    {
        StatedSet stated = new(
            Said.Simple(6, Said.Point(5, 6)), [1],
            [new ReactionFigure(0, ReactionPart.Vertical, 2000, 0), new ReactionFigure(1, ReactionPart.Vertical, 10_000, 0)]);

        Diagnosis.Differs differs = Assert.IsType<Diagnosis.Differs>(new ExplanationSearch().Explain(stated));

        Assert.Equal(new Slip.LoadDoubled(0), differs.Explanations[0].Slip);
        Assert.Equal(FalseClaims.Rate(2, 3), differs.FalseClaimRate);
    }

    [Fact]
    public void FewerClaimsAreFalse_TheMoreIsStated()
    {
        for (int digits = 1; digits <= 3; digits++)
        {
            Assert.Equal(FalseClaims.Rate(5, digits), FalseClaims.Rate(6, digits));
            for (int figures = 2; figures <= 5; figures++)
            {
                Assert.True(FalseClaims.Rate(figures, digits) <= FalseClaims.Rate(figures - 1, digits));
                Assert.True(digits == 1 || FalseClaims.Rate(figures, digits) < FalseClaims.Rate(figures, digits - 1));
                Assert.Equal(FalseClaims.Rate(figures, 3), FalseClaims.Rate(figures, 4));
            }
        }
    }

    [Fact]
    public void NothingStated_IsRefused() => Assert.Throws<ArgumentNullException>(() => new ExplanationSearch().Explain(null!));
}
