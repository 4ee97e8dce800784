using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Worked apart, in newtons and millimetres, from the formulas of EN 1993-1-1; every step is held.</summary>
public sealed class En1993WorkedTests
{
    private const double Close = 1e-9;

    /// <summary>IPE 300, S235: Lc [m], λf, χ of curve c, Mb,Rd [kN·m] with the 147.674 of its section.</summary>
    [Theory]
    [InlineData(1, 0.2699234059205261, 0.9644577758145911, 147.674)]
    [InlineData(2, 0.5398468118410522, 0.820442715371014, 136.7739854722712)] // λc0/λf is more
    [InlineData(3, 0.8097702177615782, 0.6560194680385877, 106.56472081544344)] // kfl·χ is more
    [InlineData(4, 1.0796936236821044, 0.4951558896351909, 80.4338159305859)]
    [InlineData(6, 1.6195404355231564, 0.2787592143134543, 45.59132849075707)]
    public void RolledI_BySimplifiedMethod(double length, double slenderness, double factor, double moment)
    {
        Resistance found = Lateral(En1993TableTests.Rolled("IPE 300"), 235, length);

        Assert.Equal(CheckClause.En1993SimplifiedLateral, found.Clause);
        Same(0.0394488062637442, Steel.Term(found, CheckSymbol.FlangeRadius));
        Same(slenderness, Steel.Term(found, CheckSymbol.LateralSlenderness));
        Same(0.49, Steel.Term(found, CheckSymbol.Imperfection));
        Same(factor, Steel.Term(found, CheckSymbol.BucklingFactor));
        Same(moment, found.Limit!.Value / 1000);
    }

    /// <summary>
    /// The same with Iz, It and Iw of EN 10365 (from memory): by the general case with curve a where that gives more, as on
    /// longer bays it does.
    /// </summary>
    [Theory]
    [InlineData(2, CheckClause.En1993SimplifiedLateral, 136773.9854722712)] // by the general case 134550.2
    [InlineData(3, CheckClause.En1993GeneralLateral, 120199.49472208906)]
    [InlineData(6, CheckClause.En1993GeneralLateral, 71338.11135603678)]
    [InlineData(10, CheckClause.En1993GeneralLateral, 42314.531913740466)]
    public void RolledI_ByWhatGivesMore(double length, CheckClause clause, double moment)
    {
        Resistance found = Lateral(Whole("IPE 300", 603.8, 20.12, 125.9), 235, length);

        Assert.Equal(clause, found.Clause);
        Same(moment, found.Limit!.Value);
    }

    /// <summary>IPE 300 as before: Mcr, λLT and χ of curve a at 6 m, with 144.4 mm for √(Iw/Iz).</summary>
    [Fact]
    public void RolledI_ByTheGeneralCase()
    {
        Resistance found = Lateral(Whole("IPE 300", 603.8, 20.12, 125.9), 235, 6);

        General(found, 90471.06923220682, 1.2776066327415279, 0.48307834389287746, 71338.11135603678);
        Same(0.21, Steel.Term(found, CheckSymbol.Imperfection));
        Same(0.1443997, Steel.Term(found, CheckSymbol.WarpingRadius), 1e-6);
    }

    /// <summary>EN 1993-1-1 Table 6.4: rolled a and b, welded c and d, the second of each deeper than twice its width.</summary>
    [Theory]
    [InlineData(true, 0.600, 0.21)]
    [InlineData(true, 0.601, 0.34)]
    [InlineData(false, 0.600, 0.49)]
    [InlineData(false, 0.601, 0.76)]
    public void CurveOfAnI_IsByHowItIsMadeAndHowSlenderItIs(bool isRolled, double depth, double imperfection) => Same(
        imperfection,
        Steel.Term(Lateral(Steel.Plates(0.300, 0.020, 0.010, depth, isRolled), 355, 12), CheckSymbol.Imperfection));

    /// <summary>Welded, flanges 300 x 20, web 10, depth 600, S355, 6 and 12 m: curve c, 1514 kN·m by its section.</summary>
    [Theory]
    [InlineData(6, 1726345.592233101, 0.9363946083270361, 0.5776441131799183, 874391.4470027058)]
    [InlineData(12, 566994.135538078, 1.633930166583486, 0.2748281719886295, 416012.90050262824)]
    public void WeldedI_ByTheGeneralCase(double length, double critical, double slenderness, double factor, double moment) =>
        General(
            Lateral(Steel.Plates(0.300, 0.020, 0.010, 0.600, false), 355, length), critical, slenderness, factor, moment);

    /// <summary>The same of a section that does not say how it resists torsion, Lc = 6 m: curve d.</summary>
    [Fact]
    public void WeldedI_BySimplifiedMethod()
    {
        Section plates = Steel.Plates(0.300, 0.020, 0.010, 0.600, false) with { TorsionConstant = null };
        Resistance found = Lateral(plates, 355, 6);

        Same(0.08056988525656725, Steel.Term(found, CheckSymbol.FlangeRadius));
        Same(0.974615158246335, Steel.Term(found, CheckSymbol.LateralSlenderness));
        Same(0.76, Steel.Term(found, CheckSymbol.Imperfection));
        Same(0.4802039112728942, Steel.Term(found, CheckSymbol.BucklingFactor));
        Same(799.5836910292061, found.Limit!.Value / 1000);
    }

    /// <summary>Tube 100 x 200 x 8, S355, L = 10 m; bar 20 x 100, S235, 2 m; C15x33.9, fy = 235, 3 m.</summary>
    [Fact]
    public void OtherShapes_ByTheGeneralCase()
    {
        General(
            Lateral(Steel.Tube(0.100, 0.200, 0.008), 355, 10),
            472916.6910868861, 0.4657885505450024, 0.8034424465324077, 82436.02313163683);
        General(
            Lateral(Steel.Bar(0.020, 0.100), 235, 2),
            25536.80068135668, 0.6783216675785464, 0.6573904106367051, 7724.337324981286);
        General(
            Lateral(Aisc360ExampleTests.Channel(), 235, 3),
            208485.66175655918, 0.9686753893348646, 0.48332356469346865, 94551.99448846504);
    }

    /// <summary>IPE 300, S235, beside eight tenths of its 348.4 kN: ρ = 0.36.</summary>
    [Fact]
    public void HighShear_LowersBending()
    {
        Member member = Steel.Braced(En1993TableTests.Rolled("IPE 300"), Steel.European(235));
        MemberActions actions = Steel.NoActions with { Shear = 0.8 * 348415.27013115754 };

        Resistance found = Steel.Find(StrengthRules.En1993, member, CheckKind.Bending, actions)!;

        Assert.Equal(CheckClause.En1993BendingWithShear, found.Clause);
        Same(0.36, Steel.Term(found, CheckSymbol.ShearReduction));
        Same(147674, Steel.Term(found, CheckSymbol.BendingResistance));
        Same(136018.4990366, found.Limit!.Value);
    }

    /// <summary>Class, M [kN·m] and V [kN] of plates and tubes, S355.</summary>
    [Fact]
    public void OtherSections_InBendingAndShear()
    {
        Section round = new()
        {
            Area = Math.PI / 4 * (0.2191 * 0.2191 - 0.2065 * 0.2065),
            PlasticModulus = (Math.Pow(0.2191, 3) - Math.Pow(0.2065, 3)) / 6,
            Shape = new SectionShape.RoundTube(0.2191, 0.0063),
        };

        Holds(Steel.Plates(0.300, 0.015, 0.010, 0.600, false), 3, 1093.994625, 1168.2682697052078);
        Holds(Steel.Plates(0.300, 0.020, 0.010, 0.600, false), 1, 1513.72, 5600 * 355 / Math.Sqrt(3) / 1000);
        Holds(Steel.Tube(0.100, 0.200, 0.008), 1, 102.60352, 620.8901774901128);
        Holds(round, 2, 101.30689705499996, 549.5533940693294);
        Holds(Steel.Bar(0.020, 0.100), 1, 17.75, 2000.0 * 2 / 3 * 355 / Math.Sqrt(3) / 1000);
    }

    private static void Holds(Section section, int number, double moment, double shear)
    {
        Member member = Steel.Braced(section, Steel.European(355));
        Resistance bending = Steel.Find(StrengthRules.En1993, member, CheckKind.Bending)!;

        Assert.Equal(number, Steel.Term(bending, CheckSymbol.SectionClass));
        Same(moment, bending.Limit!.Value / 1000);
        Same(shear, Steel.Limit(StrengthRules.En1993, member, CheckKind.Shear) / 1000);
    }

    private static void General(
        Resistance found, double critical, double slenderness, double factor, double moment)
    {
        Assert.Equal(CheckClause.En1993GeneralLateral, found.Clause);
        Same(critical, Steel.Term(found, CheckSymbol.CriticalMoment));
        Same(slenderness, Steel.Term(found, CheckSymbol.LateralSlenderness));
        Same(factor, Steel.Term(found, CheckSymbol.BucklingFactor));
        Same(moment, found.Limit!.Value);
    }

    private static Resistance Lateral(Section section, double yield, double length) => Steel.Find(
        StrengthRules.En1993, Steel.Unbraced(section, Steel.European(yield), length), CheckKind.LateralStability)!;

    /// <summary>Iz [cm⁴], It [cm⁴] and Iw [10³ cm⁶] beside what its table gives.</summary>
    private static Section Whole(string name, double inertia, double torsion, double warping) => En1993TableTests.Rolled(name) with
    {
        LateralInertia = inertia * 1e-8,
        TorsionConstant = torsion * 1e-8,
        WarpingConstant = warping * 1e-9,
    };

    private static void Same(double expected, double actual, double close = Close) =>
        Assert.Equal(expected, actual, close * expected);
}
