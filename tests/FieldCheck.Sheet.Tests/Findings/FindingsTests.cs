using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Tests.Building;

namespace FieldCheck.Sheet.Tests.Findings;

public sealed class FindingsTests
{
    /// <summary>4 m on a pin and a roller, an overhang of 2 m, 3 kN at its end: the pin is pulled by 1.5 kN.</summary>
    private static readonly BeamDocument Overhang = new()
    {
        Spans = [new() { Length = "4 m" }, new() { Length = "2 m" }],
        Supports = [Beams.Pin, Beams.Roller],
        Loads = [new() { Kind = "point", At = "end", Force = "3 kN" }],
    };

    [Fact]
    public void PulledSupport_IsAskedAfter()
    {
        Calculation calculation = CalculationTests.Run(Overhang);

        Message message = calculation.Messages.Single();
        Assert.Equal(new(Severity.Caution, "uplift", "A must hold 1.50 kN down: is it tied?"), message);
        Assert.Equal(CheckStatus.DoesNotHold, calculation.Status);
    }

    [Fact]
    public void PulledSupportThatIsSaidToHold_IsANote()
    {
        Calculation calculation = CalculationTests.Run(
            Overhang with { Supports = [Beams.Pin with { Acts = "both" }, Beams.Roller] });

        Assert.Equal(
            new(Severity.Note, "holds_down", "A holds 1.50 kN down, as written."), calculation.Messages.Single());
        Assert.Equal(CheckStatus.Holds, calculation.Status);
    }

    [Fact]
    public void OfSeveralCombinations_TheWorstIsNamed() => Assert.Equal(
        ["A must hold 2.40 kN down under strength: is it tied?"],
        Texts(
            Overhang with
            {
                Combinations =
                [
                    new() { Name = "service", Factors = [new("live", "1")] },
                    new() { Name = "strength", Basis = "factored", Factors = [new("live", "1.6")] },
                ],
            },
            "uplift"));

    [Fact]
    public void PulledOffASlope_IsSaidAlongItsNormal()
    {
        // By hand: the roller stands on a slope of 30 deg at the left end; moments about the pin at 4 m give
        // N cos 30 x 4 = -3 x 2, so N = -1.732 kN.
        BeamDocument document = Overhang with
        {
            Supports =
            [
                new() { Kind = "roller", Joint = "0", Surface = "30 deg" }, new() { Kind = "pin", Joint = "1" },
            ],
        };

        Assert.Equal(["A must hold 1.73 kN along the normal of its surface: is it tied?"], Texts(document, "uplift"));
    }

    [Fact]
    public void SupportThatOnlyPushes_LiftsOff() => Assert.Equal(
        ["C lifts off under all loads: it carries nothing there."],
        Texts(
            Beams.TwoSpans with
            {
                Supports = Beams.TwoSpans.Supports.SetItem(2, new() { Kind = "roller", Joint = "2", Acts = "up" }),
                Loads = [new() { Kind = "distributed", Intensity = "2 kN/m", To = "B" }],
            },
            "lifts_off"));

    [Fact]
    public void StrapThatIsPushed_GoesSlack() => Assert.Equal(
        ["C goes slack under all loads: it carries nothing there."],
        Texts(
            Overhang with
            {
                Supports = Overhang.Supports.Add(new() { Kind = "roller", At = "2 m", Acts = "down", Label = "C" })
                    .SetItem(1, Beams.Roller with { Label = "R" }),
                Loads = [new() { Kind = "point", At = "2 m", Force = "3 kN" }],
            },
            "lifts_off"));

    [Fact]
    public void BeamOnRollersOnly_IsNotHeldLengthways() => Assert.Equal(
        ["Nothing holds the beam lengthways, and no load asks for it."],
        Texts(
            Beams.Simple with { Supports = [Beams.Pin with { Kind = "roller" }, Beams.Roller] },
            "not_held_lengthways"));

    [Fact]
    public void StiffnessTakenForGranted_IsSaid() => Assert.Equal(
        ["No stiffness is given and statics alone does not do: the beam was taken as uniform along its length."],
        Texts(Beams.TwoSpans, "uniform_stiffness_assumed"));

    [Fact]
    public void AreaTakenForGranted_IsSaid() => Assert.Equal(
        ["Not every area is given: forces along the beam were shared out as if its area were uniform."],
        Texts(
            Beams.Simple with { Supports = [Beams.Pin, Beams.Roller with { Kind = "pin" }] },
            "uniform_area_assumed"));

    [Fact]
    public void CaseInNoCombinationOfABasis_IsSaid()
    {
        BeamDocument document = Beams.Simple with
        {
            Loads = [.. Beams.Simple.Loads, new() { Kind = "point", At = "1 m", Force = "1 kN", Case = "snow" }],
            Combinations =
            [
                new() { Name = "a", Factors = [new("live", "1")] },
                new() { Name = "b", Factors = [new("live", "1"), new("snow", "0.5")] },
                new() { Name = "c", Basis = "factored", Factors = [new("live", "1.6"), new("snow", "0")] },
            ],
        };

        Assert.Equal(
            ["Case snow stands in no factored combination: its loads are left out of them."],
            Texts(document, "case_left_out"));
        Assert.Equal(CheckStatus.Holds, CalculationTests.Run(document).Status);
    }

    /// <summary>4 kN/m down on the whole beam; what lifts may be away, unless a combination or a pattern says when.</summary>
    [Theory]
    [InlineData("wind", "-1 kN/m", true)]
    [InlineData("wind", "1 kN/m", false)]
    [InlineData("dead", "-1 kN/m", false)]
    public void CaseThatRelieves_IsSaidWhereNoCombinationIsWritten(string name, string intensity, bool isSaid)
    {
        BeamDocument document = Beams.Simple with
        {
            Loads =
            [
                new() { Kind = "distributed", From = "0 m", To = "6 m", Intensity = "4 kN/m", Case = "live" },
                new() { Kind = "distributed", From = "0 m", To = "6 m", Intensity = intensity, Case = name },
            ],
        };
        string said = $"Case {name} acts against the other loads and is counted whole beside them: "
            + "what comes of the beam without it was not looked at. Combinations say what may be away.";

        Assert.Equal(isSaid ? [said] : [], Texts(document, "relieving_case").Where(text => text.StartsWith($"Case {name}", StringComparison.Ordinal)));
        Assert.Equal(CheckStatus.Holds, CalculationTests.Run(document).Status);
        Assert.Empty(Texts(document with { Patterns = [new() { Case = name }, new() { Case = "live" }] }, "relieving_case"));
        Assert.Empty(Texts(
            document with { Combinations = [new() { Name = "a", Factors = [new("live", "1"), new(name, "1")] }] }, "relieving_case"));
    }

    [Fact]
    public void CaseOfOwnWeightOrOfARollingLoad_IsLeftOutToo_ButNotThatOfAPatternAlone()
    {
        BeamDocument document = Beams.Simple with
        {
            Sections = [new() { Name = "s", Inertia = "1000 cm4", Weight = "0.2 kN/m" }],
            SelfWeight = new() { Case = "dead" },
            Rolling = [new() { Case = "truck", Axles = [new() { Offset = "0 m", Force = "4 kN" }] }],
            Patterns = [new() { Case = "snow" }],
            Combinations = [new() { Name = "a", Factors = [new("live", "1")] }],
        };

        Assert.Equal(
            [
                "Case dead stands in no service combination: its loads are left out of them.",
                "Case truck stands in no service combination: its loads are left out of them.",
            ],
            Texts(document, "case_left_out"));
    }

    [Fact]
    public void BeamWithoutLoads_SaysSo() =>
        Assert.Equal(["No load stands on the beam."], Texts(Beams.Simple with { Loads = [] }, "no_loads"));

    [Fact]
    public void GradeAlone_IsNotJudgedAndAsksNothing()
    {
        Calculation calculation = CalculationTests.Run(Beams.With(new MaterialEntry { Name = "m", Grade = "A992" }));

        Assert.Equal(
            new(
                Severity.Note, "strength_not_judged",
                "The strength of A992 was not judged: no rules and no allowable or design stress are written."),
            calculation.Messages.Single());
        Assert.Equal(CheckStatus.Holds, calculation.Status);
    }

    [Fact]
    public void EverythingAskedForThatIsNotJudged_IsNamed()
    {
        BeamDocument document = Beams.Simple with
        {
            Supports =
            [
                Beams.Pin with { BearingAllowable = "500 psi" },
                Beams.Roller with { Pad = "2 ft x 2 ft", AllowablePressure = "3 ksf" },
            ],
            Materials = [new() { Name = "m", Modulus = "11 GPa", AllowableBending = "8 MPa", DesignShear = "2 MPa" }],
            Limits = new() { DeflectionAbsolute = "10 mm", DeflectionCases = [new("live", "L/480")] },
            Stated = [new() { Support = "A", Horizontal = "1 kN", Moment = "0 kNm", Basis = "unknown" }],
        };

        Assert.Equal(
            [
                "NOT JUDGED: 1 kN stated as the horizontal reaction of A: its basis is unknown; ask whether it is service or "
                    + "factored.",
                "NOT JUDGED: 0 kNm stated as the moment reaction of A: its basis is unknown; ask whether it is service or "
                    + "factored.",
                "NOT JUDGED: bending, what carries A: span 1 has no section: name one.",
                "NOT JUDGED: shear: it is held against factored combinations, and there is none: add one with "
                    + "basis = \"factored\".",
                "NOT JUDGED: deflection of the bay under live alone, deflection anywhere: the stiffness is not known, so no "
                    + "movement is: every span needs its section and material.",
            ],
            Texts(document, "not_judged"));
        Assert.Equal(CheckStatus.DoesNotHold, CalculationTests.Run(document).Status);
    }

    [Fact]
    public void TolerancesThatNothingTakes_AreSaidSo()
    {
        BeamDocument intensity = Beams.TwoSpans with { Tolerance = new() { Load = "300 N" } };
        BeamDocument places = Beams.Simple with { Tolerance = new() { Position = "1 in" } };

        Assert.Equal(["The tolerances are kept; nothing measured takes them."], Texts(intensity, "not_carried"));
        Assert.Empty(Texts(places, "not_carried"));
    }

    [Fact]
    public void PlusOrMinusOfARollingLoad_IsSaidNotToBeCarried() => Assert.Equal(
        ["The plus or minus of Hoist is kept; no band takes it."],
        Texts(
            Beams.Simple with
            {
                Rolling = [new() { Label = "Hoist", Axles = [new() { Offset = "0 m", Force = "4 kN ± 10 %" }] }],
            },
            "not_carried"));

    [Theory]
    [InlineData("live", "snow", true)]
    [InlineData("live", "wind", false)]
    [InlineData("wind", "wind", false)]
    public void RollingLoadsOfOneCombination_AreSaidToRollOneAtATime(string one, string other, bool isTold) =>
        Assert.Equal(
            isTold
                ?
                [
                    "Hoist and Cart roll under both: only one of them at a time is on the beam. Where two may be on it together, make "
                        + "them one rolling load, as far apart as they may come.",
                ]
                : [],
            Texts(
                Beams.Simple with
                {
                    Rolling = [Rolling("Hoist", one), Rolling("Cart", other)],
                    Combinations =
                    [
                        new() { Name = "dead", Factors = [new("dead", "1")] },
                        new() { Name = "both", Factors = [new("live", "1"), new("snow", "1")] },
                    ],
                },
                "one_rolls"));

    [Fact]
    public void InertiasWithoutModuli_AreSaidToBeOfOneModulus()
    {
        BeamDocument ratios = Beams.TwoSpans with
        {
            Spans = [new() { Length = "4 m", Section = "a" }, new() { Length = "5 m", Section = "b" }],
            Sections = [new() { Name = "a", Inertia = "4000 cm4" }, new() { Name = "b", Inertia = "1000 cm4" }],
        };

        Assert.Equal(
            ["No modulus is given: the inertias were taken as if all of the beam had the same one."],
            Texts(ratios, "one_modulus_assumed"));
        Assert.Empty(Texts(ratios with { Materials = [new() { Name = "m", Modulus = "11 GPa" }] }, "one_modulus_assumed"));
        Assert.Empty(Texts(Beams.TwoSpans, "one_modulus_assumed"));
    }

    // 12 kN at 2 m of 6 m, live, and 6 kN at 3 m, dead: A gives 3 kN at least, and 11 kN at most.
    [Theory]
    [InlineData("min", "5 kN", "stated_high",
        "HIGH (unsafe side): 5 kN stated as the vertical reaction of A; computed 3.00 kN up under empty. Less is left to hold the beam "
            + "down than stated.")]
    [InlineData("max", "15 kN", "stated_high", "HIGH: 15 kN stated as the vertical reaction of A; computed 11.00 kN up under full.")]
    [InlineData("max", "5 kN", "stated_low", "LOW (unsafe side): 5 kN stated as the vertical reaction of A; computed 11.00 kN up under full.")]
    public void LeastPushStatedTooGreat_IsTheUnsafeSide(string extreme, string stated, string code, string said) => Assert.Equal(
        [said],
        Texts(
            Beams.Simple with
            {
                Loads = [.. Beams.Simple.Loads, new() { Kind = "point", At = "3 m", Force = "6 kN", Case = "dead" }],
                Combinations =
                [
                    new() { Name = "empty", Factors = [new("dead", "1")] },
                    new() { Name = "full", Factors = [new("dead", "1"), new("live", "1")] },
                ],
                Stated = [new() { Support = "A", Vertical = stated, Extreme = extreme }],
            },
            code));

    // A pull that is overstated holds down more than need be: 9 kN of 7.5 kN, by the overhang of 2 m on 4 m with 15 kN.
    [Fact]
    public void LeastOfASupportThatIsPulled_IsNotUnsafeWhereItIsMore() => Assert.Equal(
        ["HIGH: -9 kN stated as the vertical reaction of A; computed 7.50 kN down."],
        Texts(
            Overhang with
            {
                Loads = [new() { Kind = "point", At = "end", Force = "15 kN" }],
                Stated = [new() { Support = "A", Vertical = "-9 kN", Extreme = "min" }],
            },
            "stated_high"));

    private static RollingEntry Rolling(string label, string of) =>
        new() { Label = label, Case = of, Axles = [new() { Offset = "0 m", Force = "4 kN" }] };

    private static string[] Texts(BeamDocument document, string code) =>
    [
        .. CalculationTests.Run(document).Messages
            .Where(message => message.Code == code)
            .Select(message => message.Text),
    ];
}
