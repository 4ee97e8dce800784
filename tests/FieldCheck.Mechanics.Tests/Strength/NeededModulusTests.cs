using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>
/// The modulus that a sum of bending and a force along needs: from N/A + M/S = σ it is M/(σ - N/A) where one place governs
/// throughout. The plank has A = 10,000 mm² and S = 333,333 mm³.
/// </summary>
public sealed class NeededModulusTests
{
    private static readonly Strengths Ten = new(10e6, null, null);

    /// <summary>Plates 100 × 10 and 180 × 6 mm: A = 3080 mm², of class 1 (EN 1993-1-1 table 5.2: c/tf = 4.7, c/tw = 30).</summary>
    private static readonly Section Plates = Steel.Plates(0.1, 0.01, 0.006, 0.2, isRolled: false);

    /// <summary>The modulus of what the rule judges by: plastic only for a moment that its plastic modulus stands for.</summary>
    [Theory]
    [InlineData(CheckUnit.Moment, CheckSymbol.PlasticModulus, true)]
    [InlineData(CheckUnit.Moment, CheckSymbol.SectionModulus, false)]
    [InlineData(CheckUnit.Stress, CheckSymbol.PlasticModulus, false)]
    public void Bending_NeedsTheModulusOfItsKind(CheckUnit unit, CheckSymbol symbol, bool isPlastic)
    {
        Section section = new() { SectionModulus = 2e-4, PlasticModulus = 3e-4 };
        SectionCheck check = NeededFiguresTests.Check(
            CheckKind.Bending,
            unit,
            1.5,
            1,
            new CheckTerm(CheckSymbol.Yield, 235e6, CheckUnit.Stress),
            new CheckTerm(symbol, 1, CheckUnit.SectionModulus));
        StrengthProblem problem = Checked.Problem(NeededFiguresTests.Hinged(4, 4), Checked.Stick(), Checked.Stick(section: section));

        ModulusNeed need = NeededModulus.OfBending(problem, check with { Span = 1 })!;

        Assert.Equal((CheckKind.Bending, isPlastic), (need.Kind, need.IsPlastic));
        Assert.Equal(1.5 * (isPlastic ? 3e-4 : 2e-4), need.Modulus, 1e-15);
        Assert.Equal(
            isPlastic, NeededModulus.OfBending(Checked.Problem(Checked.Simple(4), Checked.Stick(section: section)), check)!.IsPlastic);
    }

    [Fact]
    public void ModulusThatIsNotKnown_IsNotGuessed()
    {
        SectionCheck check = NeededFiguresTests.Check(CheckKind.Bending, CheckUnit.Stress, 1.5, 1);

        Assert.Null(NeededModulus.OfBending(Checked.Problem(Checked.Simple(4)), check));
        Assert.Null(NeededModulus.OfSum(Checked.Problem(Checked.Simple(4)), check, Checked.Problem(Checked.Simple(4)).Demands()));
    }

    /// <summary>w·l²/8 = 4 kN·m and 30 kN along: 4000/(10e6 - 30e3/0.01).</summary>
    [Theory]
    [InlineData(30e3)]
    [InlineData(-30e3)]
    public void ForceAlong_LeavesLessForBending(double force)
    {
        ModulusNeed need = NeededFiguresTests.Of(Checked.Problem(Pulled(force), Checked.Stick(Ten))).Modulus!;

        Assert.Equal((CheckKind.BendingAndAxial, false), (need.Kind, need.IsPlastic));
        Assert.Equal(4000 / (10e6 - 30e3 / 0.01), need.Modulus, 1e-15);
    }

    /// <summary>110 kN on 0.01 m² are 11 N/mm², more than the 10 that are allowed.</summary>
    [Fact]
    public void ForceThatIsTooMuchAlone_NoModulusIsEnoughFor() => Assert.Equal(
        double.PositiveInfinity, NeededFiguresTests.Of(Checked.Problem(Pulled(110e3), Checked.Stick(Ten))).Modulus!.Modulus);

    /// <summary>
    /// 1 kN·m with 60 kN are 9 N/mm² on the plank, 2.6 kN·m alone 7.8 N/mm²; yet the first needs 1000/4e6 = 250,000 mm³ and
    /// the second 2600/10e6 = 260,000 mm³.
    /// </summary>
    [Fact]
    public void WhereAnotherSituationGovernsByThen_ThatOneCounts()
    {
        BeamModel model = Checked.Simple(4) with
        {
            Cases =
            [
                new LoadCase("pulled", [Checked.Uniform(0, 4, 500), new Load.Point(4, 0, 60e3)]),
                new LoadCase("bent", [Checked.Uniform(0, 4, 1300)]),
            ],
            Combinations =
            [
                new Combination("first", CombinationBasis.Service, [1, 0]), new Combination("second", CombinationBasis.Service, [0, 1]),
            ],
        };

        StrengthProblem problem = Checked.Problem(model, Checked.Stick(Ten));

        Assert.Equal(9e6, problem.Only(CheckKind.BendingAndAxial).Demand!.Value, 1);
        Assert.Equal(2.6e-4, NeededFiguresTests.Of(problem).Modulus!.Modulus, 1e-15);
    }

    /// <summary>
    /// An overhang that is pulled but not bent, 6 N/mm², beside a bay that is bent by 100 N·m: 0.3 N/mm². The bay needs
    /// 100/10e6 = 10,000 mm³, a thirty-third of what stands.
    /// </summary>
    [Fact]
    public void WhereOnlyTheForceGoverns_TheBentPlaceIsFound()
    {
        BeamModel model = Checked.Model([4, 1], [Support.Roller(0), Support.Pin(4)], Checked.Uniform(0, 4, 50), new Load.Point(5, 0, 60e3));

        Assert.Equal(1e-5, NeededFiguresTests.Of(Checked.Problem(model, Checked.Stick(Ten))).Modulus!.Modulus, 1e-17);
    }

    /// <summary>EN 1993-1-1 6.2.1(7): N/(A·fy) + M/(Wpl·fy) = 1, with 100 kN and 4 kN·m.</summary>
    [Fact]
    public void RuleByThePlasticModulus_NeedsThePlasticOne()
    {
        Member beam = Steel.Braced(Plates, Steel.European(235));

        ModulusNeed need = NeededFiguresTests
            .Of(Checked.Problem(Pulled(100e3).Factored(), beam) with { Rules = StrengthRules.En1993 })
            .Modulus!;

        Assert.Equal((CheckKind.BendingAndAxial, true), (need.Kind, need.IsPlastic));
        Assert.Equal(4000 / (235e6 - 100e3 / 0.00308), need.Modulus, 1e-15);
    }

    /// <summary>The same on the elastic section with 0.6·fy, a limit on a stress.</summary>
    [Fact]
    public void RuleByTheElasticModulus_NeedsTheElasticOne()
    {
        Member beam = Steel.Braced(Plates, Steel.European(235));

        ModulusNeed need = NeededFiguresTests
            .Of(Checked.Problem(Pulled(100e3), beam) with { Rules = StrengthRules.ElasticAllowable })
            .Modulus!;

        Assert.Equal((CheckKind.BendingAndAxial, false), (need.Kind, need.IsPlastic));
        Assert.Equal(4000 / (141e6 - 100e3 / 0.00308), need.Modulus, 1e-15);
    }

    /// <summary>EN 1995-1-1 6.2.3: fm,d = 24·0.8/1.3 and ft,d = 14.5·0.8/1.3 N/mm², not one strength for both.</summary>
    [Fact]
    public void Timber_HasAStrengthOfItsOwnInTension()
    {
        Material pine = Timber.Of(Timber.C24, (FactorKind.Modification, 0.8), (FactorKind.PartialFactor, 1.3));
        Member beam = new(Checked.Plank, pine, new LateralSupport.Braced());

        ModulusNeed need = NeededFiguresTests
            .Of(Checked.Problem(Pulled(20e3).Factored(), beam) with { Rules = StrengthRules.En1995 })
            .Modulus!;

        double share = 1 - 20e3 / 0.01 / (14.5e6 * 0.8 / 1.3);
        Assert.Equal(4000 / (24e6 * 0.8 / 1.3 * share), need.Modulus, 1e-15);
    }

    /// <summary>Two spans of unlike sections, joined by a hinge and pulled: the thinner one, of 6 m, is asked for by its own area.</summary>
    [Fact]
    public void SumOfOneMember_IsThatOfItsOwnSpans()
    {
        BeamModel bent = NeededFiguresTests.Hinged(4, 6);
        BeamModel model = bent with { Cases = [new LoadCase("live", bent.Cases[0].Loads.Add(new Load.Point(10, 0, 30e3)))] };
        Member wide = Checked.Stick(Ten, section: Section.Of(new SectionShape.Rectangle(0.1, 0.2)));
        StrengthProblem problem = Checked.Problem(model, wide, Checked.Stick(Ten));
        ImmutableArray<SectionCheck> sums = [.. problem.Find().Where(one => one.Kind == CheckKind.BendingAndAxial)];

        Assert.Equal([0, 1], sums.Select(one => one.Span!.Value));
        Assert.Equal(4000 / (10e6 - 30e3 / 0.02), NeededModulus.OfSum(problem, sums[0], problem.Demands())!.Modulus, 1e-15);
        Assert.Equal(9000 / (10e6 - 30e3 / 0.01), NeededModulus.OfSum(problem, sums[1], problem.Demands())!.Modulus, 1e-15);
    }

    /// <summary>2 kN/m on 4 m, pulled or pushed at the roller.</summary>
    private static BeamModel Pulled(double force) => Checked.Simple(4, Checked.Uniform(0, 4, 2000), new Load.Point(4, 0, force));
}
