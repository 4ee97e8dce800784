using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>What the checks of a plank come to together: 2 kN/m on 4 m are 4 kN·m and 4 kN, 12 N/mm² and 0.6 N/mm².</summary>
public sealed class JudgementTests
{
    private static readonly BeamModel Span = Checked.Simple(4, Checked.Uniform(0, 4, 2000));

    [Fact]
    public void GreatestUtilisation_Governs()
    {
        Judgement found = Of(Checked.Problem(Span, Checked.Stick(new Strengths(16e6, 2e6, null))));

        Assert.Equal((CheckKind.Bending, 0.75), (found.Governing!.Kind, Math.Round(found.Utilisation, 12)));
        Assert.Equal((0, null), (found.NotJudged, found.FirstNotJudged));
        Assert.True(found.Holds);
        Assert.False(found.Tips);
    }

    [Theory]
    [InlineData(CheckKind.Bending, 1.2)]
    [InlineData(CheckKind.Shear, 0.3)]
    [InlineData(CheckKind.Deflection, 0)]
    public void OneKindAlone_IsAskedFor(CheckKind only, double used)
    {
        Judgement found = Of(Checked.Problem(Span, Checked.Stick(new Strengths(10e6, 2e6, null))), only);

        Assert.Equal(used, found.Utilisation, 1e-12);
        Assert.Equal(used == 0 ? null : only, found.Governing?.Kind);
        Assert.Equal(used < 1, found.Holds);
    }

    /// <summary>The stick has no length to bear by: bearing at both ends is open, bending is judged.</summary>
    [Fact]
    public void WhatIsNotJudged_IsCountedAndNamed()
    {
        Judgement found = Of(Checked.Problem(Span, Checked.Stick(new Strengths(16e6, null, 2e6))));

        Assert.Equal(2, found.NotJudged);
        Assert.Equal((CheckKind.Bearing, 0), (found.FirstNotJudged!.Kind, found.FirstNotJudged.Support!.Value));
        Assert.Equal((CheckKind.Bending, 0.75), (found.Governing!.Kind, Math.Round(found.Utilisation, 12)));
    }

    [Fact]
    public void NothingAsked_IsNotUsedUpAtAll() => Assert.Equal(new Judgement(0, null), Of(Checked.Problem(Span)));

    /// <summary>An overhang on supports that only push: loaded at its end the beam tips, in one basis of two or in both, alone or beside a combination that stands.</summary>
    [Theory]
    [InlineData(1, 0, false)]
    [InlineData(0, 1, false)]
    [InlineData(1, 1, false)]
    [InlineData(1, 0, true)]
    [InlineData(0, 1, true)]
    public void BeamThatTips_HoldsNothing(double service, double factored, bool standsOtherwise)
    {
        Support[] supports = [Support.Pin(0), Support.Roller(4)];
        BeamModel model = Checked.Model(
            [4, 2], [.. supports.Select(one => one with { Action = SupportAction.PushesOnly })]) with
        {
            Cases = [new LoadCase("dead", [Checked.Uniform(0, 4, 100)]), new LoadCase("live", [new Load.Point(6, 1000)])],
            Combinations =
            [
                new Combination("service", CombinationBasis.Service, [1, service]),
                new Combination("factored", CombinationBasis.Factored, [1, factored]),
                .. standsOtherwise
                    ? new CombinationBasis[] { CombinationBasis.Service, CombinationBasis.Factored }
                        .Select(basis => new Combination("dead", basis, [1, 0]))
                    : [],
            ],
        };

        Judgement found = Of(Checked.Problem(model, Checked.Stick(new Strengths(16e6, null, null))));

        Assert.Equal(new Judgement(double.PositiveInfinity, null), found);
        Assert.True(found.Tips);
        Assert.False(found.Holds);
    }

    [Fact]
    public void BeamWithoutCombinations_HoldsNothing() => Assert.Equal(
        new Judgement(double.PositiveInfinity, null), Of(Checked.Problem(Span with { Combinations = [] }, Checked.Stick())));

    /// <summary>A check that is no longer judged is no proof that the beam holds; that it tips stays the graver word.</summary>
    [Fact]
    public void MoreOpenThanUsual_DoesNotHold()
    {
        SectionCheck open = NeededFiguresTests.Check(CheckKind.Bearing, CheckUnit.Stress, 1, 2) with { Reason = NotJudgedReason.NoFactor };
        Judgement held = new(0.5, null) { NotJudged = 2, FirstNotJudged = open };
        Judgement tips = held with { Utilisation = double.PositiveInfinity };

        Assert.Equal(held with { Utilisation = double.PositiveInfinity, Governing = open }, held.WithNoMoreOpenThan(1));
        Assert.Equal(held, held.WithNoMoreOpenThan(2));
        Assert.Equal(held, held.WithNoMoreOpenThan(3));
        Assert.Equal(tips, tips.WithNoMoreOpenThan(1));
    }

    [Fact]
    public void NoProblem_IsAnError() =>
        Assert.Throws<ArgumentNullException>("problem", () => Judgement.Of(null!, new BeamSolver()));

    private static Judgement Of(StrengthProblem problem, CheckKind? only = null) => Judgement.Of(problem, new BeamSolver(), only);
}
