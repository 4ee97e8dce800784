using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>What a rule says, held against the demands of a beam; the rule here has round numbers.</summary>
public sealed class RuleCheckTests
{
    private static readonly BeamModel Span = Checked.Simple(4, Checked.Uniform(0, 4, 2000));

    private static readonly Resistance Bending = new()
    {
        Kind = CheckKind.Bending,
        Clause = CheckClause.ElasticBending,
        Unit = CheckUnit.Moment,
        Limit = 8000,
        Terms = [new CheckTerm(CheckSymbol.Yield, 250e6, CheckUnit.Stress)],
    };

    private static readonly Resistance Shear = new()
    {
        Kind = CheckKind.Shear,
        Clause = CheckClause.ElasticShear,
        Unit = CheckUnit.Stress,
        Limit = 1e6,
        PerAction = 100,
    };

    [Fact]
    public void Resistance_IsHeldAgainstTheGreatestAction()
    {
        Numbers rule = new() { OfMember = [Bending, Shear] };

        SectionCheck[] all = [.. Of(Span, rule)];

        Assert.Equal(0.5, all[0].Utilisation!.Value, 1e-12);
        Assert.Equal(2, all[0].Position!.Value, 1e-9);
        Assert.Equal([CheckSymbol.Moment, CheckSymbol.Yield], all[0].Terms.Select(term => term.Symbol));
        Assert.Equal(0.4, all[1].Utilisation!.Value, 1e-12);
        Assert.Equal(4000, all[1].Term(CheckSymbol.Shear), 1e-9);
        Assert.Equal(CheckClause.ElasticShear, all[1].Clause);
        MemberActions asked = rule.Asked!;
        Assert.Equal((4000, 0, 0, 0), (Math.Round(asked.Sagging, 9), asked.Hogging, asked.Tension, asked.Compression));
        Assert.Equal(4000, asked.Shear, 1e-9);
    }

    [Fact]
    public void WhatTheRuleCannotJudge_KeepsItsReason()
    {
        Resistance open = Bending with { Limit = null, Reason = NotJudgedReason.NoFactor, Missing = FactorKind.Duration };

        SectionCheck check = Assert.Single(Of(Span, new Numbers { OfMember = [open] }));

        Assert.Equal((NotJudgedReason.NoFactor, FactorKind.Duration), (check.Reason!.Value, check.Missing!.Value));
        Assert.Equal(CheckVerdict.NotJudged, check.Verdict);
        Assert.Equal(2, check.Position!.Value, 1e-9);
    }

    [Fact]
    public void BasisWithoutCombination_IsNotJudgedForBendingAndShear()
    {
        Numbers rule = new() { OfMember = [Bending, Shear, Bending with { Kind = CheckKind.LateralStability }] };

        SectionCheck[] all = [.. Of(Span.Factored(), rule)];

        Assert.Equal([CheckKind.Bending, CheckKind.Shear], all.Select(one => one.Kind));
        Assert.All(all, one => Assert.Equal(NotJudgedReason.NoCombination, one.Reason));
    }

    /// <summary>4 kN·m of 8 and 30 kN of 100 in tension, of 60 in compression; the lesser moment of two counts.</summary>
    [Theory]
    [InlineData(30e3, 8000, 0.8)]
    [InlineData(-30e3, 5000, 1.3)]
    [InlineData(30e3, 5000, 1.1)]
    public void ForceAlong_MakesAPlainSum(double force, double lateral, double used)
    {
        BeamModel model = Checked.Simple(4, Checked.Uniform(0, 4, 2000), new Load.Point(4, 0, force));
        Numbers rule = new()
        {
            OfMember = [Bending, Bending with { Kind = CheckKind.LateralStability, Limit = lateral }],
            InTension = Axial(100e3),
            InCompression = Axial(60e3),
        };

        SectionCheck sum = Of(model, rule).Single(one => one.Kind == CheckKind.BendingAndAxial);

        Assert.Equal(used, sum.Demand!.Value, 1e-9);
        Assert.Equal((1.0, CheckUnit.Number), (sum.Limit!.Value, sum.Unit));
        Assert.Equal(CheckClause.ElasticAxial, sum.Clause);
        Assert.Equal(30e3, sum.Term(CheckSymbol.Axial), 1e-6);
    }

    /// <summary>Buckling is left out, so that what is within the sum may still be too much: never OK.</summary>
    [Theory]
    [InlineData(-30e3, 8000)] // 0.5 + 0.5
    [InlineData(-1e3, 8000)]
    public void ForceThatPresses_IsNotJudgedWhereItIsNotTooMuch(double force, double lateral)
    {
        BeamModel model = Checked.Simple(4, Checked.Uniform(0, 4, 2000), new Load.Point(4, 0, force));
        Numbers rule = new()
        {
            OfMember = [Bending, Bending with { Kind = CheckKind.LateralStability, Limit = lateral }],
            InTension = Axial(100e3),
            InCompression = Axial(60e3),
        };

        SectionCheck sum = Of(model, rule).Single(one => one.Kind == CheckKind.BendingAndAxial);

        Assert.Equal((CheckVerdict.NotJudged, NotJudgedReason.MayBuckle), (sum.Verdict, sum.Reason));
        Assert.Null(sum.Demand);
        Assert.Equal(-force, sum.Term(CheckSymbol.Axial), 1e-6);
    }

    [Fact]
    public void ForceAlongThatTheRuleHasNoLimitFor_IsNotJudged()
    {
        BeamModel model = Checked.Simple(4, Checked.Uniform(0, 4, 2000), new Load.Point(4, 0, 30e3));
        Resistance open = Bending with { Limit = null, Reason = NotJudgedReason.NoYield };

        Assert.Equal(NotJudgedReason.NoLimit, Sum(new Numbers { OfMember = [Bending] }).Reason);
        Assert.Equal(NotJudgedReason.NoYield, Sum(new Numbers { OfMember = [open], InTension = Axial(1) }).Reason);
        Assert.Equal(30e3, Sum(new Numbers { OfMember = [Bending] }).Term(CheckSymbol.Axial), 1e-6);

        SectionCheck Sum(Numbers rule) => Of(model, rule).Single(one => one.Kind == CheckKind.BendingAndAxial);
    }

    [Fact]
    public void Support_IsHeldAgainstItsPush()
    {
        Resistance web = new()
        {
            Kind = CheckKind.WebYielding,
            Clause = CheckClause.Given,
            Unit = CheckUnit.Force,
            Limit = 10e3,
            LengthFor = push => push / 1e5,
        };
        BeamModel model = Checked.Model([4, 2], [Support.Pin(0), Support.Roller(4)], Checked.Uniform(0, 4, 2000));
        StrengthProblem problem = Checked.Problem(model, Checked.Stick());
        Numbers rule = new() { OfSeat = [web] };

        SeatChecks seats = new(problem, problem.Demands().Of(CombinationBasis.Service), rule, problem.Demands().Bays);
        SectionCheck[] all = [.. seats.At(0), .. seats.At(1)];

        Assert.Equal([0, 1], all.Select(one => one.Support!.Value));
        Assert.All(all, one => Assert.Equal(0.4, one.Utilisation!.Value, 1e-12));
        Assert.Equal(0.04, all[0].Term(CheckSymbol.NeededBearingLength), 1e-12);
        Assert.Equal([new SeatPlace(0, 0, 4, 6), new SeatPlace(4, 2, 4, 4)], rule.Places);
    }

    /// <summary>Rules on timber, chosen for a stick whose material has no grade, say what is lacking.</summary>
    [Theory]
    [InlineData(StrengthRules.Nds, CombinationBasis.Service)]
    [InlineData(StrengthRules.En1995, CombinationBasis.Factored)]
    public void RulesOfTheProblem_AreAsked(StrengthRules rules, CombinationBasis basis)
    {
        BeamModel model = basis == CombinationBasis.Service ? Span : Span.Factored();

        SectionCheck[] all = [.. (Checked.Problem(model, Checked.Stick()) with { Rules = rules }).Find()];

        Assert.Contains(all, one => one.Kind == CheckKind.Bending);
        Assert.Contains(all, one => one.Kind == CheckKind.Shear);
        Assert.Equal([0, 1], all.Where(one => one.Kind == CheckKind.Bearing).Select(one => one.Support!.Value));
        Assert.All(all, one => Assert.Equal((NotJudgedReason.NoStrength, basis), (one.Reason!.Value, one.Basis)));
    }

    private static Resistance Axial(double limit) => new()
    {
        Kind = CheckKind.BendingAndAxial,
        Clause = CheckClause.ElasticAxial,
        Unit = CheckUnit.Force,
        Limit = limit,
    };

    private static IEnumerable<SectionCheck> Of(BeamModel model, Numbers rule)
    {
        StrengthProblem problem = Checked.Problem(model, Checked.Stick());
        return RuleChecks.Of(
            MemberSpans.Of(problem.Members)[0], rule, problem.Demands().Of(CombinationBasis.Service));
    }

    private sealed class Numbers : IStrengthRule
    {
        internal List<SeatPlace> Places { get; } = [];

        internal MemberActions? Asked { get; private set; }

        internal ImmutableArray<Resistance> OfMember { get; init; } = [];

        internal ImmutableArray<Resistance> OfSeat { get; init; } = [];

        internal Resistance? InTension { get; init; }

        internal Resistance? InCompression { get; init; }

        CombinationBasis IStrengthRule.Basis => CombinationBasis.Service;

        ImmutableArray<Resistance> IStrengthRule.Of(Member member, MemberActions actions)
        {
            Asked = actions;
            return OfMember;
        }

        ImmutableArray<Resistance> IStrengthRule.At(Member member, Seat seat, SeatPlace place)
        {
            Places.Add(place);
            return OfSeat;
        }

        Resistance? IStrengthRule.Axial(Member member, bool isTension) => isTension ? InTension : InCompression;
    }
}
