using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>What the situations of one basis ask of a beam, apart from those of the other.</summary>
public sealed class BasisDemandsTests
{
    /// <summary>A bay of 4 m under 2 kN/m, and an overhang of 1 m pulled by 60 kN: 4 kN·m and 60 kN, never at one place.</summary>
    private static readonly BeamModel Apart = Checked.Model([4, 1], [Support.Roller(0), Support.Pin(4)]) with
    {
        Cases = [new LoadCase("dead", [Checked.Uniform(0, 4, 2000), new Load.Point(5, 0, 60e3)]), new LoadCase("live", [Checked.Uniform(0, 4, 1)])],
        Combinations =
        [
            new Combination("service", CombinationBasis.Service, [1, 0]), new Combination("factored", CombinationBasis.Factored, [1, 1]),
        ],
    };

    [Fact]
    public void EachBasis_IsJudgedByItsOwnStresses()
    {
        Member both = Checked.Stick(new Strengths(16e6, null, null), new Strengths(20e6, null, null));

        SectionCheck[] all = [.. Checked.Problem(Apart, both).Find()];

        Assert.Equal([CombinationBasis.Service, CombinationBasis.Factored], all.Select(one => one.Basis));
        Assert.All(all, one => Assert.Null(one.Reason));
        Assert.Equal([16e6, 20e6], all.Select(one => one.Limit!.Value));
    }

    /// <summary>Where no envelope was found, because the beam stands in none of its situations, nothing is judged.</summary>
    [Fact]
    public void WithoutEnvelopes_NothingIsJudged()
    {
        Member both = Checked.Stick(new Strengths(16e6, null, null), new Strengths(20e6, null, null));

        foreach (ImmutableArray<Envelope> none in new[] { default, ImmutableArray<Envelope>.Empty })
        {
            Assert.Equal(
                [NotJudgedReason.NoAnswer, NotJudgedReason.NoAnswer],
                SectionChecks.Find(Checked.Problem(Apart, both), none, new BeamSolver()).Select(one => one.Reason!.Value));
        }
    }

    /// <summary>12 N/mm² of bending or 6 of tension, not 18: a pattern that only the other basis counts moves nothing.</summary>
    [Fact]
    public void PatternOfTheOtherBasis_IsNoVariation()
    {
        SectionCheck sum = Checked.Problem(Apart, Checked.Stick(new Strengths(16e6, null, null))).WithPattern(1).Only(CheckKind.BendingAndAxial);

        Assert.Equal((12e6, false), (Math.Round(sum.Demand!.Value, 3), sum.IsBound));
    }

    [Fact]
    public void PatternOfACaseWithoutLoads_IsNoVariation()
    {
        BeamModel model = Apart with { Cases = [Apart.Cases[0], new LoadCase("live", [])] };
        StrengthProblem problem = Checked.Problem(model, Checked.Stick(design: new Strengths(16e6, null, null))).WithPattern(1);

        Assert.Equal((12e6, false), (Math.Round(problem.Only(CheckKind.BendingAndAxial).Demand!.Value, 3), problem.Only(CheckKind.BendingAndAxial).IsBound));
    }

    /// <summary>Where the pattern counts, bending and force are put together from the worst of each.</summary>
    [Fact]
    public void PatternOfTheBasis_IsAVariation()
    {
        SectionCheck sum = Checked.Problem(Apart, Checked.Stick(new Strengths(16e6, null, null))).WithPattern(0).Only(CheckKind.BendingAndAxial);

        Assert.Equal((18e6, true), (Math.Round(sum.Demand!.Value, 3), sum.IsBound));
    }

    /// <summary>4 kN a quarter along: 3 kN on the nearer support and 1 kN on the other, whichever side that is.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void GreatestShear_IsOfEitherSense(double place) =>
        Assert.Equal(3000, Service(Checked.Simple(4, new Load.Point(place, 4000))).GreatestShear, 1e-9);

    /// <summary>A force along of less than a thousand-millionth of the shear is rounding, of more it is none.</summary>
    [Theory]
    [InlineData(1e-7, false, false)]
    [InlineData(1e-3, true, false)]
    [InlineData(-1e-7, false, false)]
    [InlineData(-1e-3, false, true)]
    public void ForceAlong_IsMeasuredByTheShear(double force, bool hasTension, bool hasCompression)
    {
        MemberDemands member = new(Service(Checked.Simple(4, Checked.Uniform(0, 4, 2000), new Load.Point(4, 0, force))), [0]);

        Assert.Equal((hasTension, hasCompression), (member.HasTension, member.HasCompression));
    }

    /// <summary>What was found once is not looked for again.</summary>
    [Fact]
    public void Demands_AreKept()
    {
        BasisDemands own = Service(Apart);
        Assert.Same(own.On(Curve.Moment, 0), own.On(Curve.Moment, 0));
        Assert.True(own.Answers == own.Answers);

        BeamModel model = Checked.Simple(4, Checked.Uniform(0, 4, 2000)) with
        {
            Supports = [Support.Spring(0, 1e5) with { Along = Restraint.Held }, Support.Spring(4, 1e5)],
        };
        BasisDemands moving = Checked.Problem(model).WithPattern(0).Demands().Of(CombinationBasis.Service);
        DeflectionStretch bay = DeflectionStretch.Of(Bays.Of(model))[0];
        Assert.Same(moving.OfMoving(bay), moving.OfMoving(bay));
    }

    private static BasisDemands Service(BeamModel model) => Checked.Problem(model).Demands().Of(CombinationBasis.Service);
}
