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

    /// <summary>
    /// 0.5 kN/m on 4 m press on A with 1 kN; a load F on the overhang of 2 m takes F/2 off. Bending: 2 m·F = 5.333 kN·m.
    /// </summary>
    [Theory]
    [InlineData(null, "0.5 kN", "Live loads may grow to 4.00 times what they are; then A would have to be held down.")]
    [InlineData("up", "0.5 kN", "Live loads may grow to 4.00 times what they are; then the beam tips.")]
    [InlineData("both", "0.5 kN", "Live loads may grow to 5.33 times what they are; then bending of span 1 is used up.")]
    [InlineData(null, "3 kN", "Live loads must shrink to 0.66 times what they are; then A would have to be held down.")]
    public void Live_StopsWhereASupportWouldHaveToBeHeldDown(string? acts, string force, string said)
    {
        BeamDocument overhang = Overhang(acts, "0 m", "4 m", force);
        Calculation calculation = Calculation.Run(overhang, SectionCatalogue.BuiltIn(), new BeamSolver());

        Assert.Equal(said, new WhatIfWords(calculation.Beam!, overhang).Live(calculation.WhatIf!.Live, ["live"]));
    }

    [Theory]
    [InlineData(null, "A load of 1.50 kN (live) may stand at 6.00 m; then A would have to be held down.")]
    [InlineData("both", "A load of 2.16 kN (live) may stand at 6.00 m; then bending of span 1 is used up.")]
    public void Heaviest_StopsThereToo(string? acts, string said)
    {
        BeamDocument overhang = Overhang(acts, "0 m", "4 m", "0.5 kN");
        Calculation calculation = Calculation.Run(overhang, SectionCatalogue.BuiltIn(), new BeamSolver());

        Assert.Equal(said, new WhatIfWords(calculation.Beam!, overhang).Heaviest(6, calculation.WhatIf!.HeaviestAt(6)));
    }

    [Fact]
    public void SupportThatIsPulledAnyway_IsSaid()
    {
        BeamDocument overhang = Overhang(null, "4 m", "6 m", "0.5 kN");
        Calculation calculation = Calculation.Run(overhang, SectionCatalogue.BuiltIn(), new BeamSolver());
        WhatIfWords words = new(calculation.Beam!, overhang);

        Assert.Equal("Even without live loads A would have to be held down.", words.Live(calculation.WhatIf!.Live, ["live"]));
        Assert.Equal(
            "No more load at 6.00 m: A would have to be held down as it is.", words.Heaviest(6, calculation.WhatIf.HeaviestAt(6)));
    }

    /// <summary>Two bays of 4 m, 0.1 kN/m on the first: A lifts off where as much as 0.7 kN/m stands on the second.</summary>
    [Fact]
    public void SupportThatLiftsOffOnTheWay_IsSaid()
    {
        BeamDocument two = Joist with
        {
            Spans = [new() { Length = "4 m" }, new() { Length = "4 m" }],
            Supports = [new() { Kind = "pin", Joint = "0", Acts = "up" }, new() { Kind = "roller", Joint = "1" }, new() { Kind = "roller", Joint = "2" }],
            Loads =
            [
                new() { Kind = "distributed", Intensity = "0.1 kN/m", To = "4 m", Case = "dead" },
                new() { Kind = "distributed", Intensity = "0.2 kN/m", From = "4 m" },
            ],
        };
        Calculation calculation = Calculation.Run(two, SectionCatalogue.BuiltIn(), new BeamSolver());

        // Lifted, the first bay hangs over: M = 0.8 kN·m at B, and the second takes (w·2 − 0.2)²/2w = 5.333 kN·m.
        Assert.Equal(
            "Live loads may grow to 14.31 times what they are; then bending of span 2 is used up. From 3.49 times on A lifts off.",
            new WhatIfWords(calculation.Beam!, two).Live(calculation.WhatIf!.Live, ["live"]));
    }

    /// <summary>
    /// A prop lifts A where its bay is shorter than (√13 − 1)/6 of the other (three-moment equation); 6 m of which A and B are not
    /// said to hold down take one from 1.817 m on, those that only push from nearer by, A or B lifted off: as far
    /// as R²/2w is 5.333 kN·m, R = w·(36 − 12a)/2(6 − a), where a is 1.123 m.
    /// </summary>
    [Theory]
    [InlineData(null, "between 1.817 m and 4.183 m", "0.42.")]
    [InlineData("up", "between 1.123 m and 4.877 m", "0.42. On a part of that stretch A and B lift off.")]
    public void Props_SayWhatTheyLift(string? acts, string between, string end)
    {
        BeamDocument wide = Joist with
        {
            Spans = [new() { Length = "6 m" }],
            Supports = [.. Joist.Supports.Select(one => one with { Acts = acts })],
        };
        Calculation calculation = Calculation.Run(wide, SectionCatalogue.BuiltIn(), new BeamSolver());

        string said = Assert.Single(new WhatIfWords(calculation.Beam!, wide).Props(calculation.WhatIf!.Props(null)));

        Assert.Contains(between, said, StringComparison.Ordinal);
        Assert.EndsWith(end, said, StringComparison.Ordinal);
    }

    [Fact]
    public void PropThatOnlyHelpsABeamThatIsTied_IsSaidToDoSo()
    {
        PropStretch stretch = new(1, 3, 2, 0.5, 4000) { LetGo = [1] };

        Assert.Equal(
            "No place was found where one rigid prop makes every judged check hold and no support would have to be held down.\n"
                + "Tied down at its supports: a rigid prop between 1.00 m and 3.00 m makes every judged check hold; at 2.00 m it carries "
                + "4.00 kN and the beam is used to 0.50. With it there B lifts off.",
            string.Join('\n', Words.Props(new(null, Calculation.Checks.Governing!.Figures, [], []) { IfTied = [stretch] })));
    }

    private static BeamDocument Overhang(string? acts, string from, string to, string force) => Joist with
    {
        Spans = [new() { Length = "4 m" }, new() { Length = "2 m" }],
        Supports = [new() { Kind = "pin", Joint = "0", Acts = acts }, new() { Kind = "roller", Joint = "1" }],
        Loads =
        [
            new() { Kind = "distributed", Intensity = "0.5 kN/m", From = from, To = to, Case = "dead" },
            new() { Kind = "point", At = "end", Force = force },
        ],
    };

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
