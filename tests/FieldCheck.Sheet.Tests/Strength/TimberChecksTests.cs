using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Tests.Strength;

/// <summary>Timber from the sheet to the verdict, worked by hand.</summary>
public sealed class TimberChecksTests
{
    /// <summary>A 2x10 joist, Douglas fir-larch No. 2, 12 ft under 66.667 plf, on 1.5 in.</summary>
    private static readonly BeamDocument Joist = new()
    {
        Display = "us",
        Spans = [new() { Length = "12 ft", Unbraced = "braced" }],
        Supports =
        [
            new() { Kind = "pin", Joint = "0", Bearing = "1.5 in" }, new() { Kind = "roller", Joint = "1", Bearing = "1.5 in" },
        ],
        Loads = [new() { Kind = "distributed", Intensity = "50 psf * 16 in", Case = "live" }],
        Sections = [new() { Name = "s", Width = "1.5 in", Depth = "9.25 in" }],
        Materials =
        [
            new() { Name = "m", Grade = "DF-L No.2", Factors = [new("duration", "1.0"), new("repetitive", "1.15")] },
        ],
        Limits = new() { Rules = "NDS" },
    };

    [Fact]
    public void Nds_JudgesBendingShearAndBearing()
    {
        // M = 66.667 x 144/8 = 1200 ft-lb, fb = 14 400/21.390625 = 673.2 psi of 1138.5; V = 400 lb, fv = 1.5 x 400/13.875 =
        // 43.24 psi of 180; R = 400 lb on 1.5 x 1.5 in = 177.8 psi of 625.
        BeamChecks checks = CalculationTests.Run(Joist).Checks;

        Assert.Equal(14_400 / 21.390625 / 1138.5, Of(checks, CheckKind.Bending).Utilisation!.Value, 1e-6);
        Assert.Equal(1.5 * 400 / 13.875 / 180, Of(checks, CheckKind.Shear).Utilisation!.Value, 1e-6);
        Assert.Equal(400 / 2.25 / 625, Of(checks, CheckKind.Bearing).Utilisation!.Value, 1e-6);
        Assert.Equal(CheckVerdict.Ok, checks.Verdict);
        Assert.Equal(CheckClause.NdsBearing, Of(checks, CheckKind.Bearing).Clause);
    }

    [Fact]
    public void Nds_WithoutDuration_IsNotJudged()
    {
        BeamDocument document = Joist with
        {
            Materials = [Joist.Materials[0] with { Factors = [] }],
        };

        BeamChecks checks = CalculationTests.Run(document).Checks;

        Assert.Equal(FactorKind.Duration, Of(checks, CheckKind.Bending).Missing);
        Assert.Equal(CheckVerdict.NotJudged, checks.Verdict);
        Assert.Equal(CheckVerdict.Ok, Of(checks, CheckKind.Bearing).Verdict);
    }

    [Fact]
    public void En1995_JudgesFactoredCombinationsOfGlulam()
    {
        // GL24h, 100 x 100 mm, 2 m, 1.5 x 2 = 3 kN/m: M = 1.5 kNm, W = 166 667 mm³, 9 N/mm²; k_h = 1.1 of glulam (solid
        // timber would have 1.0845, and 1.3 below); fm,d = 0.8 x 1.1 x 24/1.25 = 16.896 N/mm².
        BeamDocument document = Joist with
        {
            Spans = [new() { Length = "2 m", Unbraced = "braced" }],
            Loads = [new() { Kind = "distributed", Intensity = "2 kN/m", Case = "live" }],
            Combinations = [new() { Name = "6.10", Basis = "factored", Factors = [new("live", "1.5")] }],
            Sections = [new() { Name = "s", Width = "100 mm", Depth = "100 mm" }],
            Materials = [new() { Name = "m", Grade = "GL24h", Factors = [new("kmod", "0.8"), new("gamma_M", "1.25")] }],
            Limits = new() { Rules = "EN 1995-1-1" },
        };

        SectionCheck bending = Of(CalculationTests.Run(document).Checks, CheckKind.Bending);

        Assert.Equal(9 / 16.896, bending.Utilisation!.Value, 1e-9);
        Assert.Contains(new(FactorKind.Depth, 1.1), bending.Factors);
    }

    /// <summary>E' = E C_M C_i (NDS 4.3.1; 0.9 and 0.95 from memory): the joist gives by 1/0.855 more, and its work says why.</summary>
    [Fact]
    public void WetAndIncisedTimber_BendsMore()
    {
        BeamDocument dry = Joist with { Limits = new() { Rules = "NDS", Deflection = "L/360" } };
        BeamDocument wet = dry with
        {
            Materials = [dry.Materials[0] with { Factors = [new("duration", "1.0"), new("wet_service", "1"), new("incising", "0.8")] }],
        };

        SectionCheck ofDry = Of(CalculationTests.Run(dry).Checks, CheckKind.Deflection);
        SectionCheck ofWet = Of(CalculationTests.Run(wet).Checks, CheckKind.Deflection);
        SectionCheck withoutRules = Of(
            CalculationTests.Run(wet with { Limits = new() { Deflection = "L/360" } }).Checks, CheckKind.Deflection);

        // 5 w l^4/(384 E I): w = 66.667/12 lb/in, l = 144 in, I = 1.5 x 9.25^3/12 in4, E = 1 600 000 psi.
        double byHand = 5 * (66.0 + 2.0 / 3) / 12 * Math.Pow(144, 4) / (384 * 1.6e6 * 1.5 * Math.Pow(9.25, 3) / 12) * 0.0254;
        Assert.Equal(byHand, ofDry.Demand!.Value, 1e-6);
        Assert.Equal(byHand / 0.855, ofWet.Demand!.Value, 1e-6);
        Assert.Equal(byHand, withoutRules.Demand!.Value, 1e-6);
        Assert.Equal(
            0.855 * 1.6e6 * 6894.757293168361,
            ofWet.Terms.Single(term => term.Symbol == CheckSymbol.ModulusInUse).Value, 1);
        Assert.DoesNotContain(ofDry.Terms, term => term.Symbol == CheckSymbol.ModulusInUse);
    }

    [Fact]
    public void RoundTimber_IsToldWhatCanBeDone()
    {
        BeamChecks checks = CalculationTests.Run(
            Joist with
            {
                Sections = [new() { Name = "pole", Diameter = "9 in" }],
                Materials = [Joist.Materials[0] with { Grade = "DF-L P&T No.2" }],
            }).Checks;

        Assert.Equal(
            "pole is round and bears on a line, which has no width: check its saddle by hand; pad and allowable_pressure "
                + "judge what is below it",
            checks.All.First(check => check.Figures.Kind == CheckKind.Bearing).Why);
    }

    private static SectionCheck Of(BeamChecks checks, CheckKind kind) =>
        checks.All.First(check => check.Figures.Kind == kind).Figures;
}
