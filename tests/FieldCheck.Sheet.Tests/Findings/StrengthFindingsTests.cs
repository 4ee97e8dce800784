using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Tests.Building;

namespace FieldCheck.Sheet.Tests.Findings;

/// <summary>What is said of the checks of a beam.</summary>
public sealed class StrengthFindingsTests
{
    /// <summary>A stick of 100 x 200 mm over 4 m, 6 kN in the middle: M = 6 kNm, S = 667 cm3, 9.0 N/mm2.</summary>
    private static readonly BeamDocument Stick = new()
    {
        Spans = [new() { Length = "4 m", Unbraced = "braced" }],
        Supports = [Beams.Pin, Beams.Roller],
        Loads = [new() { Kind = "point", At = "2 m", Force = "6 kN" }],
        Sections = [new() { Name = "stick", Width = "100 mm", Depth = "200 mm" }],
        Materials = [new() { Name = "wood", Modulus = "11 GPa", AllowableBending = "10 MPa" }],
    };

    [Fact]
    public void StrengthThatHolds_IsNoMessage()
    {
        Calculation calculation = CalculationTests.Run(Stick);

        Assert.Empty(calculation.Messages);
        Assert.Equal(CheckStatus.Holds, calculation.Status);
        Assert.Equal(0.9, Assert.Single(calculation.Checks.All).Figures.Utilisation!.Value, 1e-9);
    }

    [Fact]
    public void MoreThanItMayHave_IsAFault()
    {
        Calculation calculation = CalculationTests.Run(With("7.5 MPa"));

        Assert.Equal(
            new(Severity.Fault, "over", "OVER: bending: 9.0 MPa at x = 2.00 m, 1.20 of the 7.5 MPa it may have."),
            Assert.Single(calculation.Messages));
        Assert.Equal(CheckStatus.DoesNotHold, calculation.Status);
    }

    [Fact]
    public void CloseToTheLimit_IsMeasuredAgain()
    {
        Calculation calculation = CalculationTests.Run(With("9.1 MPa"));

        Assert.Equal(
            new(
                Severity.Note, "measure_again",
                "Bending uses 0.99 of its limit: measure again what it hangs on."),
            Assert.Single(calculation.Messages));
        Assert.Equal(CheckStatus.Holds, calculation.Status);
        Assert.Empty(CalculationTests.Run(With("9.5 MPa")).Messages);
    }

    [Fact]
    public void DesignStress_IsNeverHeldAgainstServiceCombinations() => Assert.Equal(
        [
            "NOT JUDGED: bending: it is held against factored combinations, and there is none: add one with "
                + "basis = \"factored\".",
        ],
        Texts(Stick with { Materials = [new() { Name = "wood", Modulus = "11 GPa", DesignBending = "10 MPa" }] }));

    [Fact]
    public void StrengthOfWhatNoSpanIsMadeOf_IsNotJudged() => Assert.Contains(
        "NOT JUDGED: allowable bending stress 1 MPa of spare: no span is made of it.",
        Texts(Stick with
        {
            Spans = [Stick.Spans[0] with { Material = "wood" }],
            Materials = [.. Stick.Materials, new() { Name = "spare", Modulus = "11 GPa", AllowableBending = "1 MPa" }],
        }));

    [Fact]
    public void LimitOfACaseWithoutLoads_IsNotJudged() => Assert.Contains(
        "NOT JUDGED: deflection limit L/300 under case snow: no load stands in it.",
        Texts(Stick with { Limits = new() { DeflectionCases = [new("snow", "L/300")] } }));

    [Fact]
    public void WhatLacksOneThing_IsToldTogether() => Assert.Equal(
        ["NOT JUDGED: bending, shear: span 1 has no section: name one."],
        Texts(Stick with
        {
            Sections = [],
            Materials = [new() { Name = "wood", Modulus = "11 GPa", AllowableBending = "8 MPa", AllowableShear = "1 MPa" }],
        }));

    [Fact]
    public void BracedSpanThatHogs_MustBeHeldAtItsBottomToo()
    {
        BeamDocument overhang = Stick with
        {
            Spans = [Stick.Spans[0], new() { Length = "1 m", Unbraced = "braced" }],
            Loads = [.. Stick.Loads, new() { Kind = "point", At = "end", Force = "1 kN" }],
        };

        Assert.Contains(
            "Span 1 sags in places and hogs in others: braced means that its bottom is held too where it hogs.",
            Texts(overhang));
        Assert.DoesNotContain(
            "bottom_not_held",
            CalculationTests.Run(overhang with { Loads = Stick.Loads }).Messages.Select(message => message.Code));
    }

    [Fact]
    public void BracedOverhang_MustBeHeldAtItsBottom()
    {
        BeamDocument overhang = Stick with
        {
            Spans = [Stick.Spans[0] with { Unbraced = "2 m" }, new() { Length = "1 m", Unbraced = "braced" }],
            Loads = [.. Stick.Loads, new() { Kind = "point", At = "end", Force = "1 kN" }],
        };

        Assert.Equal(
            [
                "Span 2 hogs: braced means that its bottom is held.",
                "Span 1 sags in places and hogs in others: unbraced is taken to hold its bottom too where it hogs.",
            ],
            Texts(overhang, "bottom_not_held"));
    }

    [Fact]
    public void OverhangHeldAtDistances_MustBeHeldAtItsBottom_UnlessTheyAreLongerThanIt()
    {
        BeamDocument overhang = Stick with
        {
            Spans = [Stick.Spans[0] with { Unbraced = "braced" }, new() { Length = "1 m", Unbraced = "0.5 m" }],
            Loads = [new() { Kind = "point", At = "end", Force = "1 kN" }],
        };
        BeamDocument free = overhang with { Spans = [Stick.Spans[0], new() { Length = "1 m", Unbraced = "1 m" }] };

        Assert.Equal(
            ["Span 1 hogs: braced means that its bottom is held.", "Span 2 hogs: unbraced is taken to hold its bottom."],
            Texts(overhang, "bottom_not_held"));
        Assert.DoesNotContain(Texts(free, "bottom_not_held"), text => text.StartsWith("Span 2", StringComparison.Ordinal));
    }

    /// <summary>What is asked of one span is asked of all: a material without a stress is named, and status 1.</summary>
    [Fact]
    public void SpansThatLackAStressOfAnother_AreNotJudged()
    {
        BeamDocument two = Stick with
        {
            Spans = [Stick.Spans[0] with { Material = "wood" }, new() { Length = "4 m", Material = "bare" }, new() { Length = "1 m", Material = "bare" }],
            Supports = [Beams.Pin, Beams.Roller, new() { Kind = "roller", Joint = "2" }],
            Materials = [Stick.Materials[0], new() { Name = "bare", Modulus = "11 GPa" }],
        };

        Assert.Equal(
            ["NOT JUDGED: bending of span 2, bending of span 3: nothing is given to hold it against: allowable_bending of bare."],
            Texts(two, "not_judged"));
        Assert.Equal(CheckStatus.DoesNotHold, CalculationTests.Run(two).Status);
    }

    /// <summary>2 kN lengthways over 200 cm2 is 0.1 N/mm2 beside the 9.0 of bending: one sum judges both.</summary>
    [Fact]
    public void BendingBesideAForceAlong_IsJudgedInTheSum()
    {
        Calculation calculation = CalculationTests.Run(Stick with
        {
            Loads = [.. Stick.Loads, new() { Kind = "distributed", Total = "2 kN", Axial = "true" }],
        });

        Assert.Empty(calculation.Messages.Where(message => message.Code == "not_judged"));
        Assert.DoesNotContain("strength in bending", calculation.Checks.NotChecked);
        Assert.Equal(CheckStatus.Holds, calculation.Status);
    }

    /// <summary>S235 yields at 235 N/mm2: 0.75 of it in bending and 0.45 in shear are the most that practice allows.</summary>
    [Theory]
    [InlineData("176 MPa", "105 MPa")]
    [InlineData("235 MPa", "105 MPa", "Allowable bending stress of steel: 235.0 MPa is 1.00 of its yield, 235.0 MPa, and practice "
        + "stops at 0.75. Is it the yield that was typed?")]
    [InlineData("160 MPa", "136 MPa", "Allowable shear stress of steel: 136.0 MPa is 0.58 of its yield, 235.0 MPa, and practice "
        + "stops at 0.45. Is it the yield that was typed?")]
    public void YieldTypedForAnAllowable_IsAskedAfter(string bending, string shear, params string[] told)
    {
        BeamDocument steel = Stick with
        {
            Sections = [new() { Name = "stick", Shape = "IPE 200" }],
            Materials = [new() { Name = "steel", Grade = "S235", AllowableBending = bending, AllowableShear = shear }],
        };

        Assert.Equal(told, Texts(steel, "stress_near_yield"));
        Assert.Equal(CheckStatus.Holds, CalculationTests.Run(steel).Status);
    }

    [Theory]
    [InlineData("235 MPa", "135 MPa", 0)]
    [InlineData("240 MPa", "145 MPa", 2)]
    public void DesignStressAboveTheYield_IsAskedAfter(string bending, string shear, int told) => Assert.Equal(
        told,
        Texts(
            Stick with
            {
                Materials =
                [
                    new() { Name = "steel", Modulus = "210 GPa", Yield = "235 MPa", DesignBending = bending, DesignShear = shear },
                ],
            },
            "stress_near_yield").Length);

    // NDS Supplement, Tables 4A, 4B and 4D (from memory): 2 to 4 in thick, southern pine by its width, 5 in and thicker.
    [Theory]
    [InlineData("SP No.2 2x4", "2x12", "are for pieces 88.9 mm to 101.6 mm wide")]
    [InlineData("SP No.2 2x12", "2x12", null)]
    [InlineData("DF-L P&T No.2", "2x12", "are for pieces 114.3 mm and more thick")]
    [InlineData("DF-L No.2", "2x12", null)]
    [InlineData("DF-L No.2", "6x12", "are for pieces 38.1 mm to 101.6 mm thick")]
    [InlineData("DF-L B&S No.1", "6x12", null)]
    [InlineData("DF-L B&S No.1", "10x10", "are for pieces more than 50.8 mm wider than thick")]
    [InlineData("DF-L B&S No.1", "6x8", "are for pieces more than 50.8 mm wider than thick")]
    [InlineData("DF-L P&T No.1", "6x8", null)]
    [InlineData("DF-L P&T No.1", "6x12", "are for pieces at most 50.8 mm wider than thick")]
    [InlineData("DF-L No.2", "round 8", "Section stick is round, counted as a square of 180.1 mm, and the figures of DF-L No.2 are for pieces 38.1 mm")]
    [InlineData("DF-L P&T No.1", "round 8", null)]
    public void GradeOfAnotherSize_IsTold(string grade, string shape, string? told)
    {
        BeamDocument timber = Stick with
        {
            Sections =
            [
                shape == "round 8" ? new() { Name = "stick", Diameter = "8 in" } : new() { Name = "stick", Shape = shape },
            ],
            Materials = [new() { Name = "wood", Grade = grade, Factors = [new("duration", "1.0")] }],
            Limits = new() { Rules = "NDS" },
        };

        string[] found = Texts(timber, "grade_size");

        Assert.Equal(told is null ? 0 : 1, found.Length);
        Assert.All(found, one => Assert.Contains(told!, one));
        Assert.Equal(
            told is null ? 0 : 1,
            Texts(timber, "not_judged").Count(one => one.StartsWith("NOT JUDGED: bending, shear", StringComparison.Ordinal)
                && one.EndsWith("pieces of other sizes: name the grade of this size.", StringComparison.Ordinal)));
        Assert.Empty(Texts(timber with { Limits = null }, "grade_size"));
    }

    [Fact]
    public void CaseThatNobodyCallsLasting_IsTold()
    {
        BeamDocument creeps = Stick with
        {
            Loads = [.. Stick.Loads, new() { Kind = "point", At = "1 m", Force = "1 kN", Case = "dead" }],
            Materials = [new() { Name = "wood", Modulus = "11 GPa", Creep = "0.8" }],
            Limits = new() { DeflectionFinal = "L/100" },
        };

        Assert.Equal(
            ["live: taken as not lasting, so without creep in the final deflection; lasting in [limits] says otherwise."],
            Texts(creeps, "not_lasting"));
        Assert.Empty(Texts(creeps with { Limits = creeps.Limits with { Lasting = [new("live", "0")] } }, "not_lasting"));
        Assert.Empty(Texts(creeps with { Materials = [creeps.Materials[0] with { Creep = "0" }] }, "not_lasting"));
    }

    /// <summary>
    /// 1 kN/m dead on 4 m, E 10 GPa, I 1e-4 m4: 5·1000·4^4/(384·1e6) = 3.33 mm at once, 1.8 times that in the end.
    /// </summary>
    [Fact]
    public void FinalDeflectionWithoutALimit_IsTold_AndNotJudged()
    {
        BeamDocument creeps = new()
        {
            Spans = [new() { Length = "4 m", Section = "s", Material = "wood" }],
            Supports = [new() { Kind = "pin", Joint = "0" }, new() { Kind = "roller", Joint = "1" }],
            Loads = [new() { Kind = "distributed", Intensity = "1 kN/m", Case = "dead" }],
            Sections = [new() { Name = "s", Inertia = "10000 cm4" }],
            Materials = [new() { Name = "wood", Modulus = "10 GPa", Creep = "0.8" }],
            Limits = new() { Deflection = "L/1000" },
        };
        const string said = "Final deflection of the bay: 6.0 mm with what lasting loads add in time. No limit for it is written "
            + "(deflection_final in [limits]), and it is not judged.";

        // At once 3.3 mm of 4.0 mm hold; by the same limit 6.0 mm would not.
        Assert.Equal([said], Texts(creeps, "no_final_limit"));
        Assert.Equal(CheckStatus.Holds, CalculationTests.Run(creeps).Status);
        Assert.Single(CalculationTests.Run(creeps).Checks.All);
        Assert.Empty(Texts(creeps with { Limits = creeps.Limits with { DeflectionFinal = "L/250" } }, "no_final_limit"));
        Assert.Empty(Texts(creeps with { Materials = [creeps.Materials[0] with { Creep = "0" }] }, "no_final_limit"));
        Assert.Empty(Texts(creeps with { Limits = new() { DeflectionAbsolute = "5 mm" } }, "no_final_limit"));
    }

    [Fact]
    public void FactorForDuration_StandsForAllCombinations() => Assert.Contains(
        "One k_mod stands for all combinations. It is that of the shortest action in a combination: check combinations of "
            + "longer actions, and dead load alone, with theirs.",
        Texts(Stick with
        {
            Materials = [new() { Name = "wood", Grade = "C24", Factors = [new("modification", "0.8"), new("partial", "1.3")] }],
            Combinations = [new() { Name = "strength", Basis = "factored", Factors = [new("live", "1.5")] }],
            Limits = new() { Rules = "EN 1995-1-1" },
        }));

    [Fact]
    public void CatalogueFiguresFromMemory_AreToldWhereTheyCount()
    {
        BeamDocument steel = Stick with
        {
            Materials = [new() { Name = "steel", Grade = "A36" }],
            Limits = new() { Rules = "AISC 360-16 ASD" },
        };

        Assert.Contains("Figures of A36 in the catalogue: from memory: confirm against the standard.", Texts(steel));
        Assert.DoesNotContain("from_memory", CalculationTests.Run(steel with { Limits = null }).Messages.Select(one => one.Code));
    }

    // EN 10025-2 gives 235 N/mm2 up to 16 mm; EN 10365: the flanges of HEB 220 are 16 mm thick, those of HEB 240 17 mm.
    [Theory]
    [InlineData("HEB 220", null, false)]
    [InlineData("HEB 240", null, true)]
    [InlineData("HEB 240", "225 MPa", false)]
    public void YieldOfAThinnerPlate_IsTold(string shape, string? given, bool isTold)
    {
        BeamDocument steel = Stick with
        {
            Sections = [new() { Name = "stick", Shape = shape }],
            Materials = [new() { Name = "steel", Grade = "S235", Yield = given }],
            Limits = new() { Rules = "EN 1993-1-1" },
            Combinations = [new() { Name = "strength", Basis = "factored", Factors = [new("live", "1.5")] }],
        };
        const string told = "Section stick is up to 17.0 mm thick, and the yield of S235, 235.0 MPa, holds up to 16.0 mm "
            + "(EN 10025-2, up to 16 mm thick (EN 1993-1-1 Table 3.1: up to 40 mm)): thicker plates yield sooner. "
            + "Type the yield that holds for it.";

        string[] found = [.. CalculationTests.Run(steel).Messages.Where(one => one.Code == "yield_thickness").Select(one => one.Text)];

        Assert.Equal(isTold ? [told] : [], found);
        Assert.DoesNotContain(told, Texts(steel with { Limits = new() { Deflection = "L/300" } }));
    }

    /// <summary>A500 Grade C: 50 ksi of rectangular tubes, 46 ksi of round ones; A53 Grade B is pipe (AISC Manual Table 2-4, from memory).</summary>
    [Theory]
    [InlineData("HSS6x4x1/4", "A500-C", null, false)]
    [InlineData("Pipe6STD", "A500-C", null, true)]
    [InlineData("Pipe6STD", "A500-C", "46 ksi", false)]
    [InlineData("Pipe6STD", "A53-B", null, false)]
    [InlineData("Pipe6STD", "A992", null, true)]
    [InlineData("W10x30", "A992", null, false)]
    [InlineData("W10x30", "A53-B", null, true)]
    [InlineData("W10x30", "A36", null, false)]
    [InlineData("C10x20", "A992", null, false)]
    public void YieldOfAnotherShape_IsTold(string shape, string grade, string? given, bool isTold)
    {
        BeamDocument steel = Stick with
        {
            Sections = [new() { Name = "stick", Shape = shape }],
            Materials = [new() { Name = "steel", Grade = grade, Yield = given }],
            Limits = new() { Rules = "AISC 360-16 ASD" },
        };

        Assert.Equal(isTold ? 1 : 0, Texts(steel, "yield_shape").Length);
        Assert.Empty(Texts(steel with { Limits = null }, "yield_shape"));
    }

    [Fact]
    public void YieldOfAnotherShape_IsToldWithTheGradeAndItsFigure()
    {
        BeamDocument steel = Stick with
        {
            Display = "us",
            Sections = [new() { Name = "stick", Diameter = "6.625 in", Wall = "0.25 in" }],
            Materials = [new() { Name = "steel", Grade = "A500-C" }],
            Limits = new() { Rules = "elastic allowable" },
        };

        Assert.Equal(
            ["Section stick is no rectangular tube, and the yield of A500-C, 50000 psi, is that of such (ASTM A500 Grade C, rectangular): "
                + "other shapes may yield sooner, or are not made in it. Type the yield that holds for it."],
            Texts(steel, "yield_shape"));
    }

    [Fact]
    public void FlangesLaidFlat_AreToldWhateverIsAsked()
    {
        BeamDocument flat = Stick with
        {
            Sections = [new() { Name = "stick", Shape = "IPE 200", Flat = "true" }],
            Materials = [new() { Name = "steel", Modulus = "210 GPa" }],
        };

        Assert.Equal(["Section stick lies flat: it is bent about its weak axis."], Texts(flat));
        Assert.Empty(Texts(flat with { Sections = [new() { Name = "stick", Shape = "IPE 200", Flat = "false" }] }));
        Assert.Empty(Texts(Stick with { Sections = [Stick.Sections[0] with { Flat = "true" }], Materials = flat.Materials }));
    }

    private static string[] Texts(BeamDocument document, string code) =>
        [.. CalculationTests.Run(document).Messages.Where(message => message.Code == code).Select(message => message.Text)];

    private static BeamDocument With(string allowable) =>
        Stick with { Materials = [new() { Name = "wood", Modulus = "11 GPa", AllowableBending = allowable }] };

    private static string[] Texts(BeamDocument document) =>
        [.. CalculationTests.Run(document).Messages.Select(message => message.Text)];
}
