using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Tests.Strength;

/// <summary>Answers to what-if questions as they are read out.</summary>
public sealed class WhatIfWordsTests
{
    private static readonly BeamDocument Joist = new()
    {
        Spans = [new() { Length = "4 m" }],
        Supports = [new() { Kind = "pin", Joint = "0" }, new() { Kind = "roller", Joint = "1" }],
        Loads =
        [
            new() { Kind = "distributed", Intensity = "1 kN/m", Case = "dead" },
            new() { Kind = "distributed", Intensity = "1 kN/m" },
        ],
        Sections = [new() { Name = "joist", Width = "80 mm", Depth = "200 mm" }],
        Materials = [new() { Name = "pine", Modulus = "11 GPa", AllowableBending = "10 MPa" }],
    };

    private static readonly Calculation Calculation =
        Calculation.Run(Joist, SectionCatalogue.BuiltIn(), new BeamSolver());

    private static readonly WhatIfWords Words = new(Calculation.Beam!, Joist);

    [Fact]
    public void Live_IsRoundedDown() => Assert.Equal(
        "Live loads may grow to 1.66 times what they are; then bending is used up.", Words.Live(Calculation.WhatIf!.Live, ["live"]));

    [Fact]
    public void LiveCasesOfOtherNames_AreSaid()
    {
        BeamDocument rack = Joist with
        {
            Loads = [Joist.Loads[0], Joist.Loads[1] with { Case = "operating" }],
            Combinations = [new() { Name = "in use", Factors = [new("dead", "1"), new("operating", "1")] }],
        };
        Calculation calculation = Calculation.Run(rack, SectionCatalogue.BuiltIn(), new BeamSolver());
        WhatIf asked = calculation.WhatIf!;
        WhatIfWords words = new(calculation.Beam!, rack);

        // The same loads as those of the joist, so the same figures under other names.
        Assert.Equal(
            "Live loads (operating) may grow to 1.66 times what they are; then bending is used up.",
            words.Live(asked.Live, asked.LiveNames));
        Assert.Equal(
            "A load of 1.33 kN (operating) may stand at 2.00 m; then bending is used up.",
            words.Heaviest(2, asked.HeaviestAt(2)));
    }

    [Fact]
    public void Heaviest_NamesPlaceCaseAndWhatEndsIt() => Assert.Equal(
        "A load of 1.33 kN (live) may stand at 2.00 m; then bending is used up.",
        Words.Heaviest(2, Calculation.WhatIf!.HeaviestAt(2)));

    [Fact]
    public void FirstBay_IsALength() => Assert.Equal(
        "The first bay may be 4.618 m under these loads; then bending is used up.",
        Words.FirstBay(Calculation.WhatIf!.LongestFirstBay));

    [Fact]
    public void Needed_IsAModulus() =>
        Assert.Equal("Needed: section modulus 400.0 cm3 for bending.", Words.Needed(Calculation.WhatIf!.Needed));

    /// <summary>
    /// 24 ft of a W14x30 unbraced under 1 kip/ft: M = 72 kip-ft; M/(φ Fy) = 72 · 12 / (0.9 · 50) = 19.20 in3 is enough for
    /// bending (AISC 360-16 F2-1, φ 0.90), yet it is over by lateral stability.
    /// </summary>
    [Fact]
    public void NeededModulus_SaysWhatForAndThatLateralStabilityIsOver()
    {
        BeamDocument slender = new()
        {
            Display = "us",
            Spans = [new() { Length = "24 ft", Unbraced = "24 ft" }],
            Supports = [new() { Kind = "pin", Joint = "0" }, new() { Kind = "roller", Joint = "1" }],
            Loads = [new() { Kind = "distributed", Intensity = "1 klf" }],
            Sections = [new() { Name = "s", Shape = "W14x30" }],
            Materials = [new() { Name = "m", Grade = "A992" }],
            Combinations = [new() { Name = "strength", Basis = "factored", Factors = [new("live", "1")] }],
            Limits = new() { Rules = "AISC 360-16 LRFD" },
        };
        Calculation calculation = Calculation.Run(slender, SectionCatalogue.BuiltIn(), new BeamSolver());

        Assert.Equal(CheckKind.LateralStability, calculation.Checks.Governing!.Figures.Kind);
        Assert.Equal(
            "Needed: plastic section modulus 19.20 in3 for bending alone. Lateral stability is over: a larger modulus alone does "
                + "not tell whether it would hold.",
            new WhatIfWords(calculation.Beam!, slender).Needed(calculation.WhatIf!.Needed));
    }

    /// <summary>σ = N/A + M/S (any book on strength): 48 kN on 160 cm2 leave 7 of 10 MPa, for 4 kN·m that is 571.5 cm3.</summary>
    [Theory]
    [InlineData("48 kN", "Needed: section modulus 571.5 cm3 for bending and axial force.")]
    [InlineData("160 kN", "The force along the beam alone is too much: no section modulus is enough.")]
    public void NeededModulus_OfBendingWithAForceAlong(string force, string told)
    {
        BeamDocument pressed = Joist with
        {
            Loads = Joist.Loads.Add(new LoadEntry { Kind = "point", At = "end", Force = force, Angle = "90 deg" }),
        };
        Calculation calculation = Calculation.Run(pressed, SectionCatalogue.BuiltIn(), new BeamSolver());

        Assert.Equal(told, new WhatIfWords(calculation.Beam!, pressed).Needed(calculation.WhatIf!.Needed));
    }

    [Fact]
    public void Props_SayHowTheBeamIsHeldSideways()
    {
        Calculation Held(string unbraced) => Calculation.Run(
            Joist with
            {
                Spans = [new() { Length = "4 m", Unbraced = unbraced }],
                Sections = [new() { Name = "joist", Shape = "IPE 200" }],
                Materials = [new() { Name = "m", Grade = "S235" }],
                Combinations = [new() { Name = "f", Basis = "factored", Factors = [new("live", "1.5")] }],
                Limits = new() { Rules = "EN 1993-1-1" },
            },
            SectionCatalogue.BuiltIn(),
            new BeamSolver());

        string Said(Calculation held) => new WhatIfWords(held.Beam!, held.Document).PropSideways(held.Checks);

        Assert.Equal(
            "A prop is not taken for a lateral support: the distances between those stay as typed.", Said(Held("2 m")));
        Assert.Equal(
            "Over a prop the bottom is pressed: braced means that it is held there too.", Said(Held("braced")));
        Assert.Equal("", Said(Calculation));
    }

    [Fact]
    public void NothingFound_IsSaidOfProps()
    {
        Assert.Equal(
            "No place was found where one rigid prop makes every judged check hold.",
            Assert.Single(Words.Props(new(null, null, [], []))));
        Assert.Equal(
            "No place was found where one prop of 500.00 kN/m makes bending hold.",
            Assert.Single(Words.Props(new(500e3, Calculation.Checks.Governing!.Figures, [], []))));
        Assert.Equal(
            "What a prop of 500.00 kN/m does hangs on the stiffness of the beam, and that is not known: give section and material.",
            Assert.Single(Words.Props(new(500e3, null, [], []) { IsOpen = true })));
    }

    [Fact]
    public void PropForTheFirstCheckAlone_SaysWhatIsStillOver()
    {
        SectionCheck bending = Calculation.Checks.Governing!.Figures;
        PropStretch stretch = new(1, 3, 2, 0.5, 4000) { Left = bending };

        Assert.Equal(
            "No place was found where one rigid prop makes every judged check hold.\n"
                + "A rigid prop between 1.00 m and 3.00 m makes bending hold; at 2.00 m it carries 4.00 kN, and bending is then used "
                + "to 0.75.",
            string.Join('\n', Words.Props(new(null, bending, [], [stretch]))));
        Assert.Equal(
            "A prop of 500.00 kN/m between 1.00 m and 3.00 m makes every judged check hold; at 2.00 m it carries 4.00 kN and the "
                + "beam is used to 0.50.",
            Assert.Single(Words.Props(new(500e3, bending, [stretch], []))));
    }

    [Fact]
    public void OtherEnds_AreSaid()
    {
        Assert.Equal("No live load stands or rolls on the beam.", Words.Live(null, []));
        Assert.Equal("Even without live loads the beam tips.", Words.Live(new(null, HeadroomEnd.Tips, null), ["live"]));
        Assert.Equal(
            "No live load, however great, makes a judged check fail.", Words.Live(new(null, HeadroomEnd.None, null), ["live"]));
        Assert.Equal(
            "Live loads must shrink to 0.49 times what they are; then the beam tips.",
            Words.Live(new(0.4999, HeadroomEnd.Tips, null), ["live"]));
        Assert.Equal(
            "Even without live loads bending is over.",
            Words.Live(new(null, HeadroomEnd.OverWithout, Calculation.Checks.Governing!.Figures), []));
        Assert.Equal("No longest first bay: so it is.", Words.FirstBay(new(null, "so it is")));
    }
}
