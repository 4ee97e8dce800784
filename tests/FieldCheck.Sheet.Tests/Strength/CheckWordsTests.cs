using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;
using FieldCheck.Sheet.Tests.Building;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Tests.Strength;

/// <summary>Checks in words: what, where, under what, from where, and why not judged.</summary>
public sealed class CheckWordsTests
{
    private static readonly BeamDocument Document = new()
    {
        Spans = [new() { Length = "4 m" }, new() { Length = "3 m" }, new() { Length = "1 m" }],
        Supports = [Beams.Pin, Beams.Roller, new() { Kind = "roller", Joint = "2", Label = "Kerb" }],
        Loads = [new() { Kind = "point", At = "2 m", Force = "12 kN" }],
        Sections = [new() { Name = "stick", Shape = "IPE 200" }],
        Materials = [new() { Name = "steel", Grade = "S235" }],
        Combinations =
        [
            new() { Name = "service", Factors = [new("live", "1")] },
            new() { Name = "strength", Basis = "factored", Factors = [new("live", "1.5")] },
        ],
        Limits = new()
        {
            Deflection = "L/360",
            DeflectionOverhang = "L/180",
            DeflectionFinal = "L/250",
            DeflectionAbsolute = "20 mm",
            DeflectionCases = [new("live", "L/480")],
            Rules = "AISC 360-16 ASD",
        },
    };

    private static readonly SectionCheck Bending = new()
    {
        Kind = CheckKind.Bending,
        Basis = CombinationBasis.Service,
        Clause = CheckClause.Given,
        Unit = CheckUnit.Stress,
        Span = 1,
        Position = 4.5,
        Situation = new(0, [null], null),
        Demand = 120e6,
        Limit = 141e6,
    };

    private static readonly SectionCheck Sag = Bending with
    {
        Kind = CheckKind.Deflection,
        Unit = CheckUnit.Length,
        Span = null,
        Bay = 0,
        Demand = 0.0123,
        Limit = 0.0111,
    };

    [Fact]
    public void Check_SaysWhatWhereUnderWhatAndFromWhere()
    {
        BeamCheck check = Of(Bending);

        Assert.Equal(
            ("bending of span 2", "x = 4.50 m", "service", "allowable bending stress of steel, as given", null),
            (check.What, check.Where, check.Governs, check.Source, check.Why));
        Assert.Equal(
            ("120.0 MPa", "141.0 MPa", "0.85", "OK"),
            (check.Have(new(UnitSystem.Si)), check.Allow(new(UnitSystem.Si)), check.Used, check.Verdict));
    }

    public static TheoryData<SectionCheck, string, string> Named => new()
    {
        {
            Bending with { Kind = CheckKind.Shear, Basis = CombinationBasis.Factored }, "shear of span 2",
            "design shear stress of steel, as given"
        },
        {
            Bending with { Kind = CheckKind.LateralStability, Clause = CheckClause.NdsLateralStability },
            "lateral stability of span 2", "NDS 3.3.3, beam stability"
        },
        {
            Bending with { Kind = CheckKind.BendingAndAxial, Unit = CheckUnit.Number }, "bending and axial force of span 2",
            "sum of the shares of bending and axial force, common practice, no source"
        },
        {
            Bending with { Kind = CheckKind.Bearing, Support = 0, Span = 0 }, "bearing at A",
            "allowable bearing stress of steel, as given"
        },
        {
            Bending with { Kind = CheckKind.Bearing, Support = 2, Span = null }, "what carries Kerb",
            "allowable bearing at Kerb, as given"
        },
        {
            Bending with { Kind = CheckKind.PadPressure, Support = 0, Span = null }, "pressure under A",
            "allowable pressure under A, as given"
        },
        {
            Bending with { Kind = CheckKind.WebYielding, Support = 1, Clause = CheckClause.ElasticShear },
            "web of span 2 over B", "0.40 of yield in shear, common practice, no source"
        },
        { Sag, "deflection of bay 1", "L/360, as given" },
        { Sag with { Kind = CheckKind.OverhangDeflection, Bay = 2 }, "deflection of the overhang", "L/180, as given" },
        { Sag with { LastBay = 1 }, "deflection of bays 1 to 2 as one, past B", "L/360, as given" },
        {
            Sag with { Kind = CheckKind.OverhangDeflection, Bay = 1, LastBay = 2 }, "deflection of bay 2 to the right end as one, past Kerb",
            "L/180, as given"
        },
        {
            Sag with { Kind = CheckKind.OverhangDeflection, Bay = -1, LastBay = 1 },
            "deflection of the left end to bay 2 as one, past A, B", "L/180, as given"
        },
        { Sag with { Kind = CheckKind.FinalDeflection }, "final deflection of bay 1", "L/250, as given" },
        { Sag with { Kind = CheckKind.AbsoluteDeflection, Bay = null }, "deflection anywhere", "20 mm, as given" },
        { Sag with { Case = 0, Situation = null }, "deflection of bay 1 under live alone", "L/480 under live alone, as given" },
        {
            Sag with
            {
                Kind = CheckKind.OverhangDeflection, Bay = 2, Case = 0, Situation = null,
                Clause = CheckClause.OverhangAsTwiceItsLength,
            },
            "deflection of the overhang under live alone",
            "L/480 under live alone, as given; held against twice its length, common practice, as in a note to IBC Table "
                + "1604.3"
        },
    };

    [Theory]
    [MemberData(nameof(Named))]
    public void EveryKind_HasItsNameAndItsSource(SectionCheck figures, string what, string source)
    {
        BeamCheck check = Of(figures);

        Assert.Equal(what, check.What);
        Assert.Equal(source, check.Source);
        Assert.Equal(figures.Case is null ? "service" : "live alone", check.Governs);
    }

    [Fact]
    public void OneSpanOrOneBay_IsNotCounted()
    {
        BuiltBeam beam = Beams.Built(Beams.Simple);

        Assert.Equal("bending", new CheckWords(beam, Beams.Simple).Of(Bending with { Span = 0 }).What);
        Assert.Equal("deflection of the bay", new CheckWords(beam, Beams.Simple).Of(Sag).What);
        Assert.Equal("", new CheckWords(beam, Beams.Simple).Of(Bending with { Span = 0 }).Governs);
    }

    [Fact]
    public void BothOverhangs_AreToldApart()
    {
        BeamDocument document = Beams.Simple with
        {
            Supports = [new() { Kind = "pin", At = "1 m" }, new() { Kind = "roller", At = "5 m" }],
        };
        CheckWords words = new(Beams.Built(document), document);
        SectionCheck overhang = Sag with { Kind = CheckKind.OverhangDeflection, Situation = null };

        Assert.Equal("deflection of the left overhang", words.Of(overhang with { Bay = -1 }).What);
        Assert.Equal("deflection of the right overhang", words.Of(overhang with { Bay = 1 }).What);
    }

    [Fact]
    public void EveryReason_HasWordsThatSayWhatWouldMendIt()
    {
        string[] words =
        [
            .. Enum.GetValues<NotJudgedReason>().Select(reason => Of(Bending with { Reason = reason, Limit = null }).Why!),
        ];

        Assert.All(words, text => Assert.InRange(text.Length, 10, 140));
        Assert.Equal(words.Length, words.Distinct().Count());
        Assert.All(words, text => Assert.DoesNotContain("  ", text, StringComparison.Ordinal));
    }

    [Fact]
    public void Reason_NamesTheCellThatIsMissing()
    {
        Assert.Equal(
            "how span 2 is held sideways is not given: unbraced = a length, or \"braced\"",
            Why(Bending with { Kind = CheckKind.LateralStability, Reason = NotJudgedReason.NoLateralSupport }));
        Assert.Equal(
            "the factor C_D (load duration) of steel is not given: write duration in factors",
            Why(Bending with { Reason = NotJudgedReason.NoFactor, Missing = FactorKind.Duration }));
        Assert.Equal(
            "the length of the bearing is not given; it needs at least 42.0 mm",
            Why(Bending with
            {
                Kind = CheckKind.Bearing,
                Support = 0,
                Reason = NotJudgedReason.NoBearingLength,
                Terms = [new(CheckSymbol.NeededBearingLength, 0.042, CheckUnit.Length)],
            }));
        Assert.Equal(
            "the length of the bearing is not given",
            Why(Bending with
            {
                Kind = CheckKind.WebYielding,
                Support = 0,
                Reason = NotJudgedReason.NoBearingLength,
                Terms = [new(CheckSymbol.NeededBearingLength, 1e-9, CheckUnit.Length)],
            }));
        Assert.Equal(
            "it is held against factored combinations, and there is none: add one with basis = \"factored\"",
            Why(Bending with { Basis = CombinationBasis.Factored, Reason = NotJudgedReason.NoCombination }));
        Assert.Equal(
            "how steel creeps is not known: give creep, 0 for a material that does not",
            Why(Sag with { Kind = CheckKind.FinalDeflection, Reason = NotJudgedReason.NoModulus }));

        // 12 kN on 150 kPa: 0.08 m².
        Assert.Equal(
            "the size of its pad is not given; it needs at least 800.0 cm2",
            Why(Bending with
            {
                Kind = CheckKind.PadPressure,
                Support = 0,
                Limit = 150e3,
                Reason = NotJudgedReason.NoPad,
                Terms = [new(CheckSymbol.Reaction, 12e3, CheckUnit.Force)],
            }));
    }

    [Theory]
    [InlineData(0.744, "0.74")]
    [InlineData(0.999, "1.00")]
    [InlineData(1.0, "1.00")]
    [InlineData(1.004, "1.004")]
    [InlineData(1.00000004, "just over 1")]
    [InlineData(1.32, "1.32")]
    public void UtilisationThatIsOver_NeverReadsAsWithin(double used, string text) =>
        Assert.Equal(text, Of(Bending with { Demand = used, Limit = 1 }).Used);

    [Fact]
    public void Work_IsEveryNumberAndTheComparison() => Assert.Equal<string>(
        [
            "M = 45.20 kNm, greatest moment", "S = 433.0 cm3, section modulus", "Fy = 235.0 MPa, yield stress",
            "104.4 MPa against 141.0 MPa: 0.74 of it used",
        ],
        CheckWork.Work(
            Of(Bending with
            {
                Demand = 45.2e3 / 433e-6,
                Terms =
                [
                    new(CheckSymbol.Moment, 45.2e3, CheckUnit.Moment),
                    new(CheckSymbol.SectionModulus, 433e-6, CheckUnit.SectionModulus),
                    new(CheckSymbol.Yield, 235e6, CheckUnit.Stress),
                ],
            }),
            new(UnitSystem.Si)));

    [Fact]
    public void Work_OfTimberIsTheProductOfItsFactors_EachWithWhereItComesFrom()
    {
        BeamCheck check = Of(Bending with
        {
            Demand = 8e6,
            Limit = 24e6 * 0.8 / 1.3,
            Terms = [new(CheckSymbol.GradeStrength, 24e6, CheckUnit.Stress)],
            Factors =
            [
                new(FactorKind.Modification, 0.8), new(FactorKind.Depth, 1), new(FactorKind.System, 1),
                new(FactorKind.PartialFactor, 1.3),
            ],
        }) with
        { FactorsGiven = [FactorKind.Modification] };

        Assert.Equal(
            "24.0 MPa x k_mod 0.80 (load duration and moisture, given) x k_h 1.00 (depth, by the rules) "
                + "x k_sys 1.00 (load sharing, nothing given) / gamma_M 1.30 (partial factor of the material, by the rules) = 14.8 MPa",
            CheckWork.Work(check, new(UnitSystem.Si))[1]);
    }

    /// <summary>A factor has so many digits that the product closes: 900 x 1.25 x 0.9587 = 1078.5, not 1080.</summary>
    [Fact]
    public void Work_GivesFactorsAndNumbersInFourDigits()
    {
        BeamCheck check = Of(Bending with
        {
            Terms = [new(CheckSymbol.GradeStrength, 6.2e6, CheckUnit.Stress), new(CheckSymbol.SlendernessRatio, 24.42461, CheckUnit.Number)],
            Factors = [new(FactorKind.BeamStability, 0.958714), new(FactorKind.Duration, 1.25)],
        });

        ImmutableArray<string> lines = CheckWork.Work(check, new(UnitSystem.Si));

        Assert.StartsWith("RB = 24.42, ", lines[1]);
        Assert.Contains(" x C_L 0.9587 (beam stability, by the rules) x C_D 1.25 (", lines[2]);
    }

    [Fact]
    public void Work_SaysHowEachNumberComesFromThoseBeforeIt()
    {
        BeamCheck check = Of(Bending with
        {
            Demand = 104.4e6,
            Limit = 141e6,
            DemandBy = CheckFormula.EdgeStress,
            LimitBy = CheckFormula.EdgeShareOfYield,
            Terms =
            [
                new(CheckSymbol.NeededBearingLength, 0.042, CheckUnit.Length),
                new(CheckSymbol.EffectiveLength, 6.2, CheckUnit.Length) { By = CheckFormula.EnTimberLength },
            ],
        });

        Assert.Equal<string>(
            [
                "le = Lb + 2*d = 6.20 m, effective length for lateral buckling", "have = M/S = 104.4 MPa",
                "allowed = 0.60*Fy = 141.0 MPa", "104.4 MPa against 141.0 MPa: 0.74 of it used",
                "lb,min = 42.0 mm, length of bearing that is enough",
            ],
            CheckWork.Work(check, new(UnitSystem.Si)));
    }

    [Fact]
    public void Work_SaysWhereTheDemandIsABoundOrAnEstimate()
    {
        ImmutableArray<string> lines = CheckWork.Work(
            Of(Bending with { IsBound = true, Certainty = EnvelopeCertainty.Estimate }), new(UnitSystem.Si));

        Assert.StartsWith("the demand is put together from the worst of several situations", lines[1]);
        Assert.StartsWith("the demand is an estimate", lines[2]);
    }

    private static string Why(SectionCheck check) => Of(check).Why!;

    private static BeamCheck Of(SectionCheck check) => new CheckWords(Beams.Built(Document), Document).Of(check);
}
