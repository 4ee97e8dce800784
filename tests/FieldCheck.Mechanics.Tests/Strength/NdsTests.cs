using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using static FieldCheck.Mechanics.Tests.Strength.Timber;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Factors and formulas of NDS 3.3, 3.4 and 4.3: from memory but for those that docs/sources.md calls read.</summary>
public sealed class NdsTests
{
    private static readonly Nds Rule = new();
    private static readonly (FactorKind, double) Construction = (FactorKind.Duration, 1.25);

    [Fact]
    public void Joist_IsWorkedByHand()
    {
        // 2x10: S = 1.5 x 9.25²/6 = 21.390625 in³; C_F = 1.1; Fb' = 900 x 1.25 x 1.1 x 1.15 = 1423.125 psi;
        // Fv' = 180 x 1.25 = 225 psi; fv = 1.5 V/13.875.
        Member joist = new(
            Rectangle(1.5 * Inch, 9.25 * Inch),
            Of(Fir, Construction, (FactorKind.Repetitive, 1.15)),
            new LateralSupport.Braced());

        var all = Rule.Of(joist, Any);

        Assert.Equal([CheckKind.Bending, CheckKind.Shear], all.Select(one => one.Kind));
        Resistance bending = all.One(CheckKind.Bending);
        IsWithin(1e-12, 1423.125 * Psi, bending.Limit);
        IsWithin(1e-12, 1 / (21.390625 * Inch * Inch * Inch), bending.PerAction);
        Assert.Equal(
            "Duration 1.25, WetService 1, Temperature 1, Size 1.1, FlatUse 1, Incising 1, Repetitive 1.15",
            bending.Product());
        IsWithin(1e-12, 900 * Psi, bending.Term(CheckSymbol.GradeStrength));
        Assert.Equal((CheckUnit.Stress, null, CheckClause.NdsBending), (bending.Unit, bending.Reason, bending.Clause));
        Resistance shear = all.One(CheckKind.Shear);
        IsWithin(1e-12, 225 * Psi, shear.Limit);
        IsWithin(1e-12, 1.5 / (13.875 * Inch * Inch), shear.PerAction);
        Assert.Equal("Duration 1.25, WetService 1, Temperature 1, Incising 1", shear.Product());
        Assert.Equal(CombinationBasis.Service, Rule.Basis);
        Assert.Null(Rule.Axial(joist, isTension: false));
    }

    [Fact]
    public void EveryFactorGiven_StandsInTheProduct()
    {
        Member joist = new(
            Rectangle(1.5 * Inch, 9.25 * Inch),
            Of(
                Fir,
                Construction, (FactorKind.WetService, 1), (FactorKind.Temperature, 0.8), (FactorKind.Size, 1.0),
                (FactorKind.FlatUse, 1.05), (FactorKind.Incising, 0.8), (FactorKind.Repetitive, 1.15)),
            new LateralSupport.Braced());

        var all = Rule.Of(joist, Any);

        // Fb C_F = 900 psi is weak enough for C_M = 1.
        Assert.Equal(
            "Duration 1.25, WetService 1, Temperature 0.8, Size 1, FlatUse 1.05, Incising 0.8, Repetitive 1.15",
            all.One(CheckKind.Bending).Product());
        IsWithin(1e-12, 900 * 1.25 * 0.8 * 1.05 * 0.8 * 1.15 * Psi, all.One(CheckKind.Bending).Limit);
        Assert.Equal("Duration 1.25, WetService 0.97, Temperature 0.8, Incising 0.8", all.One(CheckKind.Shear).Product());
    }

    // 900 x 1.5 (2x4) = 1350 psi; 900 x 1.2 (2x8) = 1080 psi; 1150 psi is the bound.
    [Theory]
    [InlineData(3.5, 1, 0.85)]
    [InlineData(7.25, 1, 1)]
    [InlineData(3.5, 0, 1)]
    public void WetServiceOfBending_GoesByFbTimesSize(double depth, double wet, double factor)
    {
        Member joist = new(
            Rectangle(1.5 * Inch, depth * Inch), Of(Fir, Construction, (FactorKind.WetService, wet)), null);

        StrengthFactor service = Rule.Of(joist, Any).One(CheckKind.Bending).Factors[1];

        Assert.Equal(new(FactorKind.WetService, factor), service);
    }

    // NDS Supplement, Table 4D, from memory: wet timbers 5 in by 5 in and larger keep Fb and Fv, and 0.67 of Fc⊥.
    [Theory]
    [InlineData(5.5, 11.5, 1, 1)]
    [InlineData(4.5, 4.5, 1, 1)]
    [InlineData(3.5, 11.5, 0.85, 0.97)]
    public void WetTimber_KeepsItsBendingAndShear(double width, double depth, double bending, double shear)
    {
        TimberStrengths posts = Fir with { TakesSizeFactor = false, Bending = 1500 * Psi };
        Member timber = new(Rectangle(width * Inch, depth * Inch), Of(posts, Construction, (FactorKind.WetService, 1)), null);

        var all = Rule.Of(timber, Any);

        Assert.Equal(new(FactorKind.WetService, bending), all.One(CheckKind.Bending).Factors[1]);
        Assert.Equal(new(FactorKind.WetService, shear), all.One(CheckKind.Shear).Factors[1]);
    }

    [Fact]
    public void DurationNotGiven_IsNotJudged()
    {
        Member joist = new(Rectangle(1.5 * Inch, 9.25 * Inch), Of(Fir), null);

        Assert.All(
            Rule.Of(joist, Any),
            one => Assert.Equal(
                (null, NotJudgedReason.NoFactor, FactorKind.Duration), (one.Limit, one.Reason, one.Missing)));
        Assert.Equal(3, Rule.Of(joist, Any).Length);
    }

    // Fir takes the table of C_F; timbers of 5 in and more, and boards, do not stand in it.
    [Theory]
    [InlineData(5.5, 9.5, FactorKind.Size)]
    [InlineData(0.75, 5.5, FactorKind.Size)]
    public void PieceThatNoTableHas_AsksForTheFactor(double width, double depth, FactorKind missing)
    {
        Member beam = new(Rectangle(width * Inch, depth * Inch), Of(Fir, Construction), null);

        Resistance bending = Rule.Of(beam, Any).One(CheckKind.Bending);
        Resistance given = Rule.Of(beam with { Material = Of(Fir, Construction, (missing, 1)) }, Any).One(CheckKind.Bending);

        Assert.Equal((null, NotJudgedReason.NoFactor, missing), (bending.Limit, bending.Reason, bending.Missing));
        IsWithin(1e-12, 1125 * Psi, given.Limit);
    }

    [Fact]
    public void GradeWithoutSizeFactor_TakesOne()
    {
        Member beam = new(
            Rectangle(1.5 * Inch, 9.25 * Inch), Of(Fir with { TakesSizeFactor = false }, Construction), null);

        Assert.Contains(new(FactorKind.Size, 1), Rule.Of(beam, Any).One(CheckKind.Bending).Factors);
    }

    // Sawn timbers 5 in and thicker: (12/d)^(1/9) beyond 12 in (NDS 4.3.6, from memory); a 24 in one, dressed, has 0.928.
    [Theory]
    [InlineData(7.5, 23.5, false, 0.928043)]
    [InlineData(5.5, 11.5, false, 1)]
    [InlineData(5.5, 13.5, false, 0.986998)]
    [InlineData(5.5, 13.5, true, 1)]
    [InlineData(13.5, 5.5, true, 0.986998)]
    [InlineData(1.5, 13.5, false, 1)]
    public void DeepTimber_TakesItsSizeFactor(double width, double depth, bool flat, double factor)
    {
        Member beam = new(
            Rectangle(width * Inch, depth * Inch, flat: flat),
            Of(Fir with { TakesSizeFactor = false }, Construction, (FactorKind.FlatUse, 1)), null);

        double size = Rule.Of(beam, Any).One(CheckKind.Bending).Factors.Single(one => one.Kind == FactorKind.Size).Value;

        Assert.Equal(factor, size, 1e-6);
    }

    [Fact]
    public void RoundTimber_IsAsDeepAsTheSquareOfItsArea()
    {
        // 16 in: the square has 16 x 0.886227 = 14.17963 in; (12/14.17963)^(1/9) = 0.981626.
        Section round = Section.Of(new SectionShape.Round(16 * Inch));
        Member pole = new(round, Of(Fir with { TakesSizeFactor = false }, Construction), null);

        double size = Rule.Of(pole, Any).One(CheckKind.Bending).Factors.Single(one => one.Kind == FactorKind.Size).Value;

        Assert.Equal(0.981626, size, 1e-6);
    }

    // E' = E C_M C_t C_i (NDS 4.3.1): 0.9 wet, 0.95 incised, and the temperature factor, all from memory.
    [Fact]
    public void ModulusInUse_HasTheFactorsOfWetHotAndIncisedTimber()
    {
        Material wet = Of(Fir, (FactorKind.WetService, 1), (FactorKind.Incising, 0.8), (FactorKind.Temperature, 0.8));

        Assert.Equal(0.9 * 0.95 * 0.8, ServiceModulus.FactorOf(wet, StrengthRules.Nds), 1e-15);
        Assert.Equal(1, ServiceModulus.FactorOf(wet, StrengthRules.None));
        Assert.Equal(1, ServiceModulus.FactorOf(Of(Fir, (FactorKind.WetService, 0), (FactorKind.Duration, 1.6)), StrengthRules.Nds));
        Assert.Equal(1, ServiceModulus.FactorOf(Of(C24, (FactorKind.WetService, 1)), StrengthRules.Nds));
        Assert.Equal(1, ServiceModulus.FactorOf(Of(null, (FactorKind.WetService, 1)), StrengthRules.Nds));
    }

    // A plank may be told as flat, or as wider than deep: 2x10 on its face takes C_F 1.1 and C_fu 1.2.
    [Theory]
    [InlineData(1.5, 9.25, true)]
    [InlineData(9.25, 1.5, false)]
    public void PlankLaidFlat_TakesTheFlatUseFactor(double width, double depth, bool flat)
    {
        Member plank = new(Rectangle(width * Inch, depth * Inch, flat: flat), Of(Fir, Construction), null);

        var all = Rule.Of(plank, Any);

        Assert.Equal(
            "Duration 1.25, WetService 1, Temperature 1, Size 1.1, FlatUse 1.2, Incising 1, Repetitive 1",
            all.One(CheckKind.Bending).Product());
        Assert.DoesNotContain(all, one => one.Kind == CheckKind.LateralStability);
    }

    [Fact]
    public void ScaffoldPlank_BendsAsTheFieldNoteSays()
    {
        // Notes on scaffold planks: a dressed 2x10 laid flat over 8 ft under 250 lb in the middle has 1823 psi; its own
        // weight, 3.37 lb/ft, is in. S = 9.25 x 1.5²/6 = 3.46875 in³; M = 250 x 8/4 + 3.37 x 8²/8 = 526.96 ft-lb.
        Member plank = new(Rectangle(1.5 * Inch, 9.25 * Inch, flat: true), Of(Fir, Construction), null);

        double stress = (250 * 8 / 4 + 3.37 * 8 * 8 / 8) * Pound * Foot * Rule.Of(plank, Any).One(CheckKind.Bending).PerAction;

        Assert.Equal(1823, stress / Psi, 0.5);
    }

    public static TheoryData<string, NotJudgedReason> Unknown => new()
    {
        { "section", NotJudgedReason.NoSection },
        { "material", NotJudgedReason.NoMaterial },
        { "steel", NotJudgedReason.NoStrength },
        { "basis", NotJudgedReason.NoStrength },
        { "shape", NotJudgedReason.ShapeNotInRules },
    };

    [Theory]
    [MemberData(nameof(Unknown))]
    public void WhatIsNotKnown_IsTold(string what, NotJudgedReason reason)
    {
        Section section = Rectangle(1.5 * Inch, 9.25 * Inch);
        Member joist = what switch
        {
            "section" => new(null, Of(Fir, Construction), null),
            "material" => new(section, null, null),
            "steel" => new(section, Of(null, Construction), null),
            "basis" => new(section, Of(C24, Construction), null),
            _ => new(section with { Shape = new SectionShape.RoundTube(0.1, 0.01) }, Of(Fir, Construction), null),
        };

        Assert.All(Rule.Of(joist, Any), one => Assert.Equal((null, reason), (one.Limit, one.Reason)));
        Assert.Equal(reason, Assert.Single(Rule.At(joist, new Seat(0.1, null, null, null), default)).Reason);
    }

    [Fact]
    public void FiguresAlone_AreJudgedByWhatTheyAre()
    {
        Section figures = new() { SectionModulus = 4e-4 };
        Material timber = Of(Fir with { TakesSizeFactor = false }, Construction);

        var all = Rule.Of(new(figures, timber, null), Any);

        IsWithin(1e-12, 1125 * Psi, all.One(CheckKind.Bending).Limit);
        IsWithin(1e-12, 2500, all.One(CheckKind.Bending).PerAction);
        Assert.Equal(NotJudgedReason.NoShape, all.One(CheckKind.Shear).Reason);
        Assert.Equal(NotJudgedReason.NoShape, all.One(CheckKind.LateralStability).Reason);
        Assert.Equal(
            NotJudgedReason.NoSectionModulus,
            Rule.Of(new(new Section(), timber, null), Any).One(CheckKind.Bending).Reason);
    }

    // Table 4A, "size factors": pieces 2 and 3 in thick, and 4 in; sizes between rows take the smaller factor.
    [Theory]
    [InlineData(1.5, 3.5, 1.5)]
    [InlineData(1.5, 4.5, 1.4)]
    [InlineData(1.5, 5.5, 1.3)]
    [InlineData(2.5, 7.25, 1.2)]
    [InlineData(3.5, 7.25, 1.3)]
    [InlineData(1.5, 9.25, 1.1)]
    [InlineData(3.5, 9.25, 1.2)]
    [InlineData(1.5, 11.25, 1.0)]
    [InlineData(3.5, 11.25, 1.1)]
    [InlineData(1.5, 13.25, 0.9)]
    [InlineData(3.5, 15.25, 1.0)]
    [InlineData(1.5, 8.0, 1.2)]
    [InlineData(1.5, 8.1, 1.1)]
    [InlineData(3.2, 9.25, 1.1)]
    [InlineData(1.496, 5.512, 1.3)]
    [InlineData(1.4, 5.5, null)]
    [InlineData(4.5, 5.5, null)]
    public void SizeFactor_IsThatOfTheTable(double thickness, double face, double? factor) =>
        Assert.Equal(factor, LumberTables.SizeFactor(thickness * Inch, face * Inch));

    // Table 4A, "flat use factors", from memory.
    [Theory]
    [InlineData(1.5, 2.5, 1.0)]
    [InlineData(1.5, 3.5, 1.1)]
    [InlineData(1.5, 4.5, 1.1)]
    [InlineData(1.5, 5.5, 1.15)]
    [InlineData(1.5, 7.25, 1.15)]
    [InlineData(1.5, 9.25, 1.2)]
    [InlineData(1.5, 15.25, 1.2)]
    [InlineData(3.5, 3.5, 1.0)]
    [InlineData(3.5, 5.5, 1.05)]
    [InlineData(3.5, 9.25, 1.1)]
    [InlineData(3.2, 9.25, 1.1)]
    [InlineData(1.5, 9.0, 1.15)]
    [InlineData(5.5, 9.25, null)]
    public void FlatUseFactor_IsThatOfTheTable(double thickness, double face, double? factor) =>
        Assert.Equal(factor, LumberTables.FlatUseFactor(thickness * Inch, face * Inch));
}
