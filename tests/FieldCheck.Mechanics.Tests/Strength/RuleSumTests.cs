using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>The sum of what a rule says of bending and of a force along; 4 kN·m of 8, and what a rule says at a support.</summary>
public sealed class RuleSumTests
{
    private static readonly Resistance Bending = new()
    {
        Kind = CheckKind.Bending,
        Clause = CheckClause.ElasticBending,
        Unit = CheckUnit.Moment,
        Limit = 8000,
    };

    private static readonly Resistance Tension = Bending with
    {
        Kind = CheckKind.BendingAndAxial,
        Clause = CheckClause.En1993Tension,
        Unit = CheckUnit.Force,
        Limit = 20e3,
        Terms = [new CheckTerm(CheckSymbol.Yield, 1, CheckUnit.Stress)],
    };

    private static readonly Resistance Squash = Tension with
    {
        Clause = CheckClause.En1993Squash,
        Limit = 10e3,
        Terms = [new CheckTerm(CheckSymbol.Yield, 2, CheckUnit.Stress)],
    };

    /// <summary>A rule that knows no strength for the other sense is asked for that of the force alone: 0.5 + 30/20, 0.5 + 30/10.</summary>
    [Theory]
    [InlineData(30e3, 2, CheckClause.En1993Tension)]
    [InlineData(-30e3, 3.5, CheckClause.En1993Squash)]
    public void ForceOfOneSense_AsksForThatStrengthAlone(double force, double used, CheckClause clause)
    {
        Resistance open = Tension with { Limit = null, Reason = NotJudgedReason.NoYield };

        SectionCheck sum = Sum(Pulled(force), [Bending], force > 0 ? Tension : open, force > 0 ? open : Squash);

        Assert.Equal((used, clause, null), (Math.Round(sum.Demand!.Value, 9), sum.Clause, sum.Reason));
    }

    /// <summary>Between two pins 120 kN along at a quarter pull by 90 and press by 30 kN: 4.5 and 3 with what bends there.</summary>
    [Fact]
    public void ForceOfBothSenses_IsNamedByTension()
    {
        BeamModel model = Checked.Model([4], [Support.Pin(0), Support.Pin(4)], new Load.Point(1, 0, 120e3));

        SectionCheck sum = Sum(model, [Bending], Tension, Squash);

        Assert.Equal((4.5, CheckClause.En1993Tension), (Math.Round(sum.Demand!.Value, 9), sum.Clause));
        Assert.Equal(1, sum.Term(CheckSymbol.Yield));
    }

    /// <summary>Nothing of bending, nothing of the force, or a limit that its reason takes back: no sum is judged.</summary>
    [Fact]
    public void WhatIsNotWhole_IsNotJudged()
    {
        Resistance taken = Bending with { Reason = NotJudgedReason.TooSlender };

        Assert.Equal((NotJudgedReason.NoLimit, CheckClause.En1993Tension), Told(Sum(Pulled(30e3), [], Tension, null)));
        Assert.Equal((NotJudgedReason.NoLimit, CheckClause.ElasticBending), Told(Sum(Pulled(30e3), [Bending], null, null)));
        Assert.Equal((NotJudgedReason.NoLimit, CheckClause.Given), Told(Sum(Pulled(30e3), [], null, null)));
        Assert.Equal((NotJudgedReason.TooSlender, CheckClause.En1993Tension), Told(Sum(Pulled(30e3), [taken], Tension, null)));

        static (NotJudgedReason, CheckClause) Told(SectionCheck check)
        {
            Assert.Null(check.Demand);
            return (check.Reason!.Value, check.Clause);
        }
    }

    [Fact]
    public void MomentThatTheRuleNamesItself_StandsOnce()
    {
        Resistance named = Bending with { Terms = [new CheckTerm(CheckSymbol.Moment, 3999, CheckUnit.Moment)] };

        SectionCheck check = Assert.Single(Of(Pulled(0), new Fixture([named], null, null)));

        Assert.Equal(3999, check.Term(CheckSymbol.Moment));
    }

    /// <summary>
    /// 4 kN on each support of the first bay, at 100 for each newton: 400 of 500. A limit that its reason takes back, or none
    /// at all, is not judged.
    /// </summary>
    [Fact]
    public void Support_IsJudgedWhereItsLimitStands()
    {
        BeamModel model = Checked.Model(
            [4, 3, 1], [Support.Pin(0), Support.Roller(4), Support.Roller(7)], Checked.Uniform(0, 4, 2000), Checked.Uniform(4, 7, 2000));
        StrengthProblem problem = Checked.Problem(model, Checked.Stick());
        Resistance web = Bending with { Kind = CheckKind.WebYielding, Unit = CheckUnit.Stress, Limit = 5e5, PerAction = 100 };
        Fixture rule = new([], null, null)
        {
            OfSeat = [web, web with { Reason = NotJudgedReason.TooSlender }, web with { Limit = null }],
        };

        BeamDemands demands = problem.Demands();
        SectionCheck[] middle = [.. new SeatChecks(problem, demands.Of(CombinationBasis.Service), rule, demands.Bays).At(1)];

        // Three-moment: M = -w·(4³ + 3³)/8·7, so that 7 w/2 and M/4 + M/3 press the middle.
        double push = 2000 * (3.5 + 91.0 / 56 * (1.0 / 4 + 1.0 / 3));
        Assert.Equal([100 * push, null, null], middle.Select(one => one.Demand is double demand ? Math.Round(demand, 6) : (double?)null), Near);
        Assert.Equal([null, NotJudgedReason.TooSlender, NotJudgedReason.NoLimit], middle.Select(one => one.Reason));
        Assert.Equal([new SeatPlace(4, 4, 3, 4)], rule.Places.Distinct());

        static bool Near(double? one, double? other) => one == other || Math.Abs(one!.Value - other!.Value) < 1e-4;
    }

    private static BeamModel Pulled(double force) => Checked.Simple(4, Checked.Uniform(0, 4, 2000), new Load.Point(4, 0, force));

    private static SectionCheck Sum(BeamModel model, ImmutableArray<Resistance> ofMember, Resistance? tension, Resistance? compression) =>
        Of(model, new Fixture(ofMember, tension, compression)).Single(one => one.Kind == CheckKind.BendingAndAxial);

    private static IEnumerable<SectionCheck> Of(BeamModel model, Fixture rule)
    {
        StrengthProblem problem = Checked.Problem(model, Checked.Stick());
        return RuleChecks.Of(MemberSpans.Of(problem.Members)[0], rule, problem.Demands().Of(CombinationBasis.Service));
    }

    /// <summary>A rule that says what it is given.</summary>
    private sealed class Fixture(ImmutableArray<Resistance> ofMember, Resistance? tension, Resistance? compression) : IStrengthRule
    {
        internal List<SeatPlace> Places { get; } = [];

        internal ImmutableArray<Resistance> OfSeat { get; init; } = [];

        CombinationBasis IStrengthRule.Basis => CombinationBasis.Service;

        ImmutableArray<Resistance> IStrengthRule.Of(Member member, MemberActions actions) => ofMember;

        ImmutableArray<Resistance> IStrengthRule.At(Member member, Seat seat, SeatPlace place)
        {
            Places.Add(place);
            return OfSeat;
        }

        Resistance? IStrengthRule.Axial(Member member, bool isTension) => isTension ? tension : compression;
    }
}
