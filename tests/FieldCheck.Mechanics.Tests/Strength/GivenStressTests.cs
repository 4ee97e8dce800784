using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Bending, shear and the force along a member against stresses given with its material.</summary>
public sealed class GivenStressTests
{
    private static readonly Strengths Ten = new(10e6, 1e6, null);

    /// <summary>
    /// w·l²/8 over b·h²/6, and 3/2 of w·l/2 over b·h: 2 kN/m over 4 m on 50 × 200 mm gives 12 MPa and 0.6 MPa.
    /// </summary>
    [Fact]
    public void SimpleSpan_HasTheStressesOfTheTextbooks()
    {
        StrengthProblem problem = Checked.Problem(
            Checked.Simple(4, Checked.Uniform(0, 4, 2000)), Checked.Stick(Ten));

        SectionCheck bending = problem.Only(CheckKind.Bending);
        SectionCheck shear = problem.Only(CheckKind.Shear);

        Assert.Equal(12e6, bending.Demand!.Value, 1e-3);
        Assert.Equal(1.2, bending.Utilisation!.Value, 1e-12);
        Assert.Equal(CheckVerdict.Over, bending.Verdict);
        Assert.Equal(2, bending.Position!.Value, 1e-12);
        Assert.Equal(0, bending.Span);
        Assert.Equal(0, bending.Situation!.Combination);
        Assert.Equal(CombinationBasis.Service, bending.Basis);
        Assert.Equal(CheckUnit.Stress, bending.Unit);
        Assert.Equal(CheckClause.Given, bending.Clause);
        Assert.Equal(4000, bending.Term(CheckSymbol.Moment), 1e-9);
        Assert.Equal(0.05 * 0.2 * 0.2 / 6, bending.Term(CheckSymbol.SectionModulus), 1e-15);
        Assert.Equal(0.6e6, shear.Demand!.Value, 1e-4);
        Assert.Equal(0, shear.Position);
        Assert.Equal(CheckVerdict.Ok, shear.Verdict);
        Assert.Equal(EnvelopeCertainty.Exact, shear.Certainty);
        Assert.False(shear.IsBound);
    }

    /// <summary>
    /// Strength of Materials (Virginia Tech Press, 2026), example 9.1: 80 × 300 mm under 30 kN·m has 25 MPa at the edge; and
    /// example 10.3: a round bar of 40 mm under 120 kN has 127 MPa.
    /// </summary>
    [Fact]
    public void PrintedStresses_AreFound()
    {
        Section timber = Section.Of(new SectionShape.Rectangle(0.08, 0.3));
        Section bar = Section.Of(new SectionShape.Round(0.04));
        StrengthProblem bent = Checked.Problem(
            Checked.Simple(4, new Load.Point(2, 30e3)), Checked.Stick(Ten, section: timber));
        StrengthProblem sheared = Checked.Problem(
            Checked.Simple(1, new Load.Point(0.5, 240e3)), Checked.Stick(Ten, section: bar));

        Assert.Equal(25e6, bent.Only(CheckKind.Bending).Demand!.Value, 0.01e6);
        Assert.Equal(127e6, sheared.Only(CheckKind.Shear).Demand!.Value, 0.6e6);
    }

    /// <summary>A demand that meets its limit is within it, one a little greater is not.</summary>
    [Theory]
    [InlineData(1, CheckVerdict.Ok)]
    [InlineData(1 + 1e-12, CheckVerdict.Ok)]
    [InlineData(1 + 1e-7, CheckVerdict.Over)]
    [InlineData(0, CheckVerdict.Ok)]
    public void VerdictAtTheLimit_IsOk(double load, CheckVerdict verdict)
    {
        StrengthProblem problem = Checked.Problem(
            Checked.Simple(4, Checked.Uniform(0, 4, 2000 * load)), Checked.Stick(new Strengths(12e6, null, null)));

        Assert.Equal(verdict, problem.Only(CheckKind.Bending).Verdict);
    }

    [Fact]
    public void StrengthThatIsNotGiven_AsksNothing()
    {
        BeamModel model = Checked.Simple(4, Checked.Uniform(0, 4, 2000));

        Assert.Empty(Checked.Problem(model).Find());
        Assert.Empty(Checked.Problem(model, Checked.Stick()).Find());
        Assert.Equal(
            [CheckKind.Shear], Checked.Problem(model, Checked.Stick(new Strengths(null, 1e6, null))).Find().Select(one => one.Kind));
    }

    /// <summary>What is asked of one span is asked of all: one without it is not judged, never passed over.</summary>
    [Fact]
    public void SpanThatLacksAStressOfAnother_IsNotJudged()
    {
        BeamModel model = Checked.Model(
            [2, 3, 4],
            [Support.Pin(0), Support.Roller(2), Support.Roller(5), Support.Roller(9)],
            Checked.Uniform(0, 9, 1000));
        Member half = Checked.Stick(new Strengths(10e6, null, null));

        ImmutableArray<SectionCheck> checks = Checked.Problem(model, Checked.Stick(Ten), half, Checked.Stick()).Find();
        ImmutableArray<SectionCheck> nameless = Checked.Problem(model, half, Checked.Bare).Find();

        Assert.Equal<(CheckKind, int, NotJudgedReason?)>(
            [
                (CheckKind.Bending, 0, null), (CheckKind.Bending, 1, null), (CheckKind.Bending, 2, NotJudgedReason.NoLimit),
                (CheckKind.Shear, 0, null), (CheckKind.Shear, 1, NotJudgedReason.NoLimit),
                (CheckKind.Shear, 2, NotJudgedReason.NoLimit),
            ],
            checks.Select(one => (one.Kind, one.Span!.Value, one.Reason)));
        Assert.All(checks.Where(one => one.Reason is not null), one => Assert.Equal(CheckVerdict.NotJudged, one.Verdict));
        Assert.Equal<(int, NotJudgedReason?)>(
            [(0, null), (1, NotJudgedReason.NoMaterial), (2, NotJudgedReason.NoMaterial)],
            nameless.Select(one => (one.Span!.Value, one.Reason)));
    }

    [Fact]
    public void SpanWithStressesOfTheOtherBasis_LacksNone()
    {
        BeamModel model = Checked.Model(
            [2, 3], [Support.Pin(0), Support.Roller(2), Support.Roller(5)], Checked.Uniform(0, 5, 1000));

        Assert.Equal(
            [(CombinationBasis.Service, 0), (CombinationBasis.Service, 0), (CombinationBasis.Factored, 1), (CombinationBasis.Factored, 1)],
            Checked.Problem(model, Checked.Stick(Ten), Checked.Stick(design: Ten)).Find()
                .OrderBy(one => one.Basis).Select(one => (one.Basis, one.Span ?? 1)));
    }

    /// <summary>Allowable stresses never meet factored combinations, nor design ones service combinations.</summary>
    [Fact]
    public void BasisWithoutCombination_IsNotJudged()
    {
        BeamModel service = Checked.Simple(4, Checked.Uniform(0, 4, 2000));

        ImmutableArray<SectionCheck> allowable = Checked.Problem(service.Factored(), Checked.Stick(Ten)).Find();
        ImmutableArray<SectionCheck> design = Checked.Problem(service, Checked.Stick(design: Ten)).Find();

        foreach ((ImmutableArray<SectionCheck> checks, CombinationBasis basis) in new[]
        {
            (allowable, CombinationBasis.Service), (design, CombinationBasis.Factored),
        })
        {
            Assert.Equal([CheckKind.Bending, CheckKind.Shear], checks.Select(one => one.Kind));
            Assert.All(checks, one => Assert.Equal(basis, one.Basis));
            Assert.All(checks, one => Assert.Equal(NotJudgedReason.NoCombination, one.Reason));
            Assert.All(checks, one => Assert.Equal(CheckVerdict.NotJudged, one.Verdict));
            Assert.All(checks, one => Assert.Null(one.Demand));
        }

        Assert.Equal(1.2, Checked.Problem(service.Factored(), Checked.Stick(design: Ten)).Only(CheckKind.Bending).Utilisation!.Value, 1e-12);
    }

    [Fact]
    public void BeamThatStandsInNoSituation_IsNotJudged()
    {
        BeamModel tips = Checked.Model(
            [2, 2],
            [
                Support.Pin(0) with { Action = SupportAction.PushesOnly },
                Support.Roller(2) with { Action = SupportAction.PushesOnly },
            ],
            new Load.Point(4, 1000));

        Assert.Equal(NotJudgedReason.NoAnswer, Checked.Problem(tips, Checked.Stick(Ten)).Only(CheckKind.Bending).Reason);
    }

    [Fact]
    public void FiguresThatAreMissing_AreNamed()
    {
        BeamModel model = Checked.Simple(4, Checked.Uniform(0, 4, 2000));
        Member without = new(null, new Material { Allowable = Ten }, null);
        Member byFigures = Checked.Stick(Ten, section: new Section { Inertia = 1e-5, Area = 0.01 });

        Assert.Equal(NotJudgedReason.NoSection, Checked.Problem(model, without).Only(CheckKind.Bending).Reason);
        Assert.Equal(NotJudgedReason.NoSection, Checked.Problem(model, without).Only(CheckKind.Shear).Reason);
        Assert.Equal(NotJudgedReason.NoSectionModulus, Checked.Problem(model, byFigures).Only(CheckKind.Bending).Reason);

        // 3/2 of V/A would be a guess at the shape.
        SectionCheck shear = Checked.Problem(model, byFigures).Only(CheckKind.Shear);
        Assert.Equal(NotJudgedReason.NoShape, shear.Reason);
        Assert.Null(shear.Demand);
        Assert.Equal(4000, shear.Term(CheckSymbol.Shear), 1e-9);
    }

    /// <summary>One check a member, at the worst of its spans; spans of another member have their own.</summary>
    [Fact]
    public void SpansOfOneMember_HaveOneCheckWhereItGoverns()
    {
        Member weak = Checked.Stick(new Strengths(5e6, null, null));
        Member strong = Checked.Stick(Ten);
        BeamModel model = Checked.Model(
            [2, 3, 4],
            [Support.Pin(0), Support.Roller(2), Support.Roller(5), Support.Roller(9)],
            Checked.Uniform(0, 9, 1000));

        ImmutableArray<SectionCheck> bending =
            [.. Checked.Problem(model, weak, strong, weak).Find().Where(one => one.Kind == CheckKind.Bending)];

        Assert.Equal([1, 2], bending.Select(one => one.Span!.Value));
        Assert.Equal(10e6, bending[0].Limit);
        Assert.Equal(5, bending[0].Position!.Value, 1e-9);
        Assert.Equal(5e6, bending[1].Limit);
        Assert.Equal(bending[0].Demand!.Value, bending[1].Demand!.Value, 1e-3);
    }

    /// <summary>
    /// 30 kN along adds 3 MPa: with 12 MPa from bending 15 MPa, where the moment is greatest; the same of a push.
    /// </summary>
    [Theory]
    [InlineData(30e3)]
    [InlineData(-30e3)]
    public void ForceAlong_AddsToBending(double force)
    {
        StrengthProblem problem = Checked.Problem(
            Checked.Simple(4, Checked.Uniform(0, 4, 2000), new Load.Point(4, 0, force)), Checked.Stick(Ten));

        SectionCheck sum = problem.Only(CheckKind.BendingAndAxial);

        Assert.Equal(15e6, sum.Demand!.Value, 1e-3);
        Assert.Equal(2, sum.Position!.Value, 1e-9);
        Assert.Equal(30e3, sum.Term(CheckSymbol.Axial), 1e-6);
        Assert.Equal(4000, sum.Term(CheckSymbol.Moment), 1e-6);
        Assert.False(sum.IsBound);
        Assert.DoesNotContain(problem.Find(), one => one.Kind == CheckKind.Bending);
    }

    [Fact]
    public void ForceAlongWithoutAnArea_LeavesTheSumOpenAndBendingJudged()
    {
        StrengthProblem problem = Checked.Problem(
            Checked.Simple(4, Checked.Uniform(0, 4, 2000), new Load.Point(4, 0, 30e3)),
            Checked.Stick(new Strengths(10e6, null, null), section: new Section { SectionModulus = 1.0 / 3000 }));

        Assert.Equal(NotJudgedReason.NoArea, problem.Only(CheckKind.BendingAndAxial).Reason);
        Assert.Equal(1.2, problem.Only(CheckKind.Bending).Utilisation!.Value, 1e-12);
    }

    /// <summary>
    /// Along by one combination, across by the other: the worst of each together is a bound only where patterns vary.
    /// </summary>
    [Fact]
    public void SumOfSeparateWorsts_IsABoundOnlyWhereSomethingVaries()
    {
        BeamModel model = Checked.Simple(4) with
        {
            Cases =
            [
                new LoadCase("down", [Checked.Uniform(0, 4, 2000)]),
                new LoadCase("along", [new Load.Point(4, 0, 30e3)]),
            ],
            Combinations =
            [
                new Combination("down", CombinationBasis.Service, [1, 0]),
                new Combination("along", CombinationBasis.Service, [0, 1]),
            ],
        };
        StrengthProblem problem = Checked.Problem(model, Checked.Stick(Ten));

        SectionCheck exact = problem.Only(CheckKind.BendingAndAxial);
        SectionCheck bound = problem.WithPattern(0).Only(CheckKind.BendingAndAxial);

        Assert.Equal(12e6, exact.Demand!.Value, 1e-3);
        Assert.False(exact.IsBound);
        Assert.Equal(15e6, bound.Demand!.Value, 1e-3);
        Assert.True(bound.IsBound);
    }
}
