using System.Globalization;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Tests.Strength;

/// <summary>
/// A simple span under a spread load, judged by one stress, against M = w L²/8 and M = P L/4 (statics; the formulas stand
/// in every handbook), and the laws that every answer obeys: put in, it is used up just so.
/// </summary>
public sealed class WhatIfTests
{
    private const double Length = 4;

    private const double Dead = 1000;

    private const double Live = 1000;

    /// <summary>80 × 200 mm on edge at 10 N/mm²: 5.333 kN·m.</summary>
    private const double Moment = 10e6 * 0.08 * 0.2 * 0.2 / 6;

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

    [Fact]
    public void LiveLoads_GrowUntilBendingIsUsedUp()
    {
        Headroom live = Ask(Joist).Live!;

        Assert.Equal((Moment * 8 / (Length * Length) - Dead) / Live, live.Most!.Value, 1e-9);
        Assert.Equal(CheckKind.Bending, live.First!.Kind);
    }

    [Fact]
    public void DeadAndOwnWeight_DoNotGrow()
    {
        BeamDocument heavy = Joist with
        {
            Materials = [Joist.Materials[0] with { Density = "5 kN/m3" }],
            SelfWeight = new() { Case = "own" },
        };

        Assert.Equal(
            (Moment * 8 / (Length * Length) - Dead - 5000 * 0.08 * 0.2) / Live, Ask(heavy).Live!.Most!.Value, 1e-9);
    }

    [Fact]
    public void NoLiveLoad_HasNoHeadroom() =>
        Assert.Null(Ask(Joist with { Loads = [Joist.Loads[0]] }).Live);

    [Fact]
    public void HeaviestPointLoad_AddsItsMomentAtMidspan()
    {
        PointHeadroom found = Ask(Joist).HeaviestAt(Length / 2)!;

        Assert.Equal((Moment - (Dead + Live) * Length * Length / 8) * 4 / Length, found.Force.Most!.Value, 1e-6);
        Assert.Equal("live", found.Case);
    }

    [Fact]
    public void HeaviestPointLoad_CountsTheFactorOfItsCase()
    {
        BeamDocument doubled = Joist with
        {
            Loads = [Joist.Loads[0]],
            Combinations = [new() { Name = "twice", Factors = [new("dead", "1"), new("live", "2")] }],
        };

        PointHeadroom found = Ask(doubled).HeaviestAt(Length / 2)!;

        Assert.Equal((Moment - Dead * Length * Length / 8) * 4 / Length / 2, found.Force.Most!.Value, 1e-6);
    }

    [Fact]
    public void HeaviestPointLoad_WithoutACaseCalledLive_IsOfTheCaseThatItMayBeLeastIn()
    {
        BeamDocument factored = Joist with
        {
            Loads =
            [
                Joist.Loads[0],
                new() { Kind = "point", At = "0 m", Force = "1 N", Case = "once" },
                new() { Kind = "point", At = "0 m", Force = "1 N", Case = "twice" },
            ],
            Combinations =
            [
                new() { Name = "first", Factors = [new("dead", "1"), new("once", "1")] },
                new() { Name = "second", Factors = [new("dead", "1"), new("twice", "2")] },
            ],
        };

        PointHeadroom found = Ask(factored).HeaviestAt(Length / 2)!;

        Assert.Equal("twice", found.Case);
        Assert.Equal((Moment - Dead * Length * Length / 8) * 4 / Length / 2, found.Force.Most!.Value, 1e-6);
    }

    [Fact]
    public void CaseThatNoCombinationCounts_HasNoHeaviestLoad()
    {
        BeamDocument deadOnly = Joist with
        {
            Loads = [Joist.Loads[0]],
            Combinations = [new() { Name = "dead", Factors = [new("dead", "1")] }],
        };

        Assert.Null(Ask(deadOnly).HeaviestAt(1));
    }

    [Fact]
    public void FirstBay_GrowsByTheRootOfItsMoment()
    {
        BayHeadroom found = Ask(Joist).LongestFirstBay;

        Assert.Equal(Math.Sqrt(8 * Moment / (Dead + Live)), found.Length!.Most!.Value, 1e-8);
    }

    [Fact]
    public void FirstBayThatIsOver_Shrinks()
    {
        BeamDocument wide = Joist with { Spans = [new() { Length = "6 m" }] };

        Assert.Equal(
            Math.Sqrt(8 * Moment / (Dead + Live)), Ask(wide).LongestFirstBay.Length!.Most!.Value, 1e-8);
    }

    [Fact]
    public void FirstBayOfTwoSpans_SaysWhyItIsNotOne()
    {
        BeamDocument joined = Joist with
        {
            Spans = [new() { Length = "1 m" }, new() { Length = "3 m" }],
            Supports = [Joist.Supports[0], Joist.Supports[1] with { Joint = "2" }],
        };

        Assert.Equal(
            new BayHeadroom(null, "the first bay is not one span of the form"), Ask(joined).LongestFirstBay);
    }

    [Fact]
    public void NeededModulus_IsTheMomentOverTheStress() => Assert.Equal(
        (Dead + Live) * Length * Length / 8 / 10e6, Ask(Joist).Needed.Modulus!.Modulus, 1e-12);

    [Fact]
    public void NeededInertia_IsThatOfTheSagThatIsAllowed()
    {
        BeamDocument limited = Joist with { Limits = new() { Deflection = "L/360" } };

        NeededFigures needed = Ask(limited).Needed;

        // I = 5 w L³ · 360 / (384 E), from 5 w L⁴ / (384 E I) = L / 360.
        Assert.Equal(
            5 * (Dead + Live) * Math.Pow(Length, 3) * 360 / (384 * 11e9), needed.Inertia!.Value, 1e-12);
        Assert.True(needed.IsInertiaExact);
    }

    [Fact]
    public void Prop_MayStandWhereTheLongerPartStillCarriesItself()
    {
        BeamDocument over = Joist with { Spans = [new() { Length = "6 m" }] };

        PropStretch found = Assert.Single(Ask(over).Props(null).EveryCheck);

        Assert.Equal(6, found.From + found.To, 1e-3);
        foreach ((double place, bool holds) in new[] { (found.From + 0.001, true), (found.From - 0.02, false) })
        {
            Calculation propped = WithProp(over, place);
            Assert.Equal(
                holds, propped.Checks.Verdict == CheckVerdict.Ok && propped.Messages.All(message => message.Code != MessageCodes.Uplift));
        }

        // At midspan: 5/4 w L/2 on the prop, two spans of 3 m.
        Assert.Equal(3, found.Best, 1e-9);
        Assert.Equal(1.25 * (Dead + Live) * 3, found.Push, 1e-6);
    }

    /// <summary>
    /// At midspan the sag of the bare beam, 5 w L⁴ / (384 E I), is taken back by the prop's push over the beam's stiffness
    /// there, 48 E I / L³, and over its own (two cases of any table of beam formulas).
    /// </summary>
    [Theory]
    [InlineData(2e5)]
    [InlineData(1e6)]
    [InlineData(1e9)]
    public void PropThatGivesWay_CarriesWhatItsStiffnessTakes(double stiffness)
    {
        BeamDocument wide = Joist with { Spans = [new() { Length = "6 m" }] };
        const double rigidity = 11e9 * 0.08 * 0.2 * 0.2 * 0.2 / 12;
        double sag = 5 * (Dead + Live) * Math.Pow(6, 4) / (384 * rigidity);
        double push = sag / (Math.Pow(6, 3) / (48 * rigidity) + 1 / stiffness);
        double end = ((Dead + Live) * 6 - push) / 2;
        double sagging = end * end / (2 * (Dead + Live));
        double over = (Dead + Live) * 36 / 8 - push * 6 / 4;

        PropStretch found = Assert.Single(Ask(wide).Props(stiffness).EveryCheck);

        Assert.Equal(6, found.From + found.To, 1e-3);
        Assert.Equal(3, found.Best, 1e-9);
        Assert.Equal(push, found.Push, 1e-6 * push);
        Assert.Equal(Math.Max(sagging, Math.Abs(over)) / Moment, found.Utilisation, 1e-6);
    }

    [Fact]
    public void PropThatIsTooSoft_HelpsNowhere()
    {
        WhatIf over = Ask(Joist with { Spans = [new() { Length = "6 m" }] });

        Assert.Empty(over.Props(1).EveryCheck);
        Assert.Empty(over.Props(1).FirstAlone);
    }

    [Fact]
    public void FirstCheckAlone_HoldsWhereAnotherStaysOver()
    {
        BeamDocument over = Joist with
        {
            Spans = [new() { Length = "8 m" }],
            Materials = [Joist.Materials[0] with { AllowableShear = "0.28 MPa" }],
        };

        PropAnswer found = Ask(over).Props(null);

        Assert.Empty(found.EveryCheck);
        Assert.Equal(CheckKind.Bending, found.First!.Kind);
        PropStretch alone = Assert.Single(found.FirstAlone);
        Assert.Equal(4, alone.Best, 1e-9);

        // Two bays of 4 m: w L²/8 over the prop; 5/8 w L beside it, 3/2 of that over the area as stress.
        Assert.Equal((Dead + Live) * 2 / Moment, alone.Utilisation, 1e-6);
        Assert.Equal(CheckKind.Shear, alone.Left!.Kind);
        Assert.Equal(1.5 * 0.625 * (Dead + Live) * 4 / (0.08 * 0.2) / 0.28e6, alone.Left.Utilisation!.Value, 1e-6);
    }

    [Fact]
    public void PropThatGivesWay_UnderABeamOfUnknownStiffness_IsLeftOpen()
    {
        BeamDocument unknown = Joist with
        {
            Materials = [],
            Sections = [],
            Supports = [Joist.Supports[0] with { Pad = "100 mm x 100 mm", AllowablePressure = "1 kPa" }, Joist.Supports[1]],
        };

        PropAnswer found = Ask(unknown).Props(1e6);

        Assert.True(found.IsOpen);
        Assert.Empty(found.EveryCheck);
    }

    [Fact]
    public void SectionsThatDo_PassWhenTheyArePutIn_LightestFirst()
    {
        BeamDocument steel = Joist with
        {
            Sections = [new() { Name = "joist", Shape = "IPE 100" }],
            Materials = [new() { Name = "steel", Grade = "S235", AllowableBending = "100 MPa" }],
            Limits = new() { Deflection = "L/360" },
            SelfWeight = new() { Case = "dead" },
        };

        WouldDo found = Ask(steel).SectionsThatDo(["IPE"]);

        Assert.Equal("joist", found.Replaced);
        Assert.NotEmpty(found.Passing);
        Assert.Equal(found.Passing.OrderBy(one => one.WeightPerLength), found.Passing);
        string[] passing = [.. found.Passing.Select(one => one.Shape.Name)];
        SectionCatalogue catalogue = SectionCatalogue.BuiltIn();
        string[] holding =
        [
            .. catalogue.Names.Where(name => name.StartsWith("IPE", StringComparison.Ordinal)).Where(name => Run(
                steel with { Sections = [new() { Name = "joist", Shape = name }] }).Checks.Verdict == CheckVerdict.Ok),
        ];
        Assert.Equal(holding.Order(StringComparer.Ordinal), passing.Order(StringComparer.Ordinal));
        Assert.True(found.Tried > passing.Length, "Some must be too small.");
    }

    /// <summary>
    /// A 2x6 by a grade for 2x6 alone, and plies of 2x12 by a grade that has a size factor for what is up to 4 in thick only: of the
    /// sections with which no check is over, those count that are judged as those are, and the others are counted apart.
    /// </summary>
    [Theory]
    [InlineData("SP No.2 2x6", "1.5 in", "5.5 in", "20 plf")]
    [InlineData("SPF No.1/No.2", "3 in", "11.25 in", "300 plf")]
    public void SectionsThatCannotBeJudgedAsThePresentOne_AreLeftOut(string grade, string width, string depth, string load)
    {
        BeamDocument joist = new()
        {
            Display = "us",
            Spans = [new() { Length = "9 ft", Unbraced = "braced" }],
            Supports =
            [
                new() { Kind = "pin", Joint = "0", Bearing = "3 in" }, new() { Kind = "roller", Joint = "1", Bearing = "3 in" },
            ],
            Loads = [new() { Kind = "distributed", Intensity = load }],
            Sections = [new() { Name = "j", Width = width, Depth = depth }],
            Materials = [new() { Name = "m", Grade = grade, Factors = [new("duration", "1.0")] }],
            Limits = new() { Rules = "NDS" },
        };
        string[] names = [.. SectionCatalogue.BuiltIn().Search("").Where(one => one.Family == "sawn timber, dressed").Select(one => one.Name)];
        ILookup<bool, string> holding = names
            .Select(name => (Name: name, Put: Run(joist with { Sections = [new() { Name = "j", Shape = name }] })))
            .Where(one => one.Put.Checks.Verdict != CheckVerdict.Over)
            .ToLookup(
                one => one.Put.Checks.Verdict == CheckVerdict.Ok && one.Put.Messages.All(message => message.Code != MessageCodes.GradeSize),
                one => one.Name);

        WouldDo found = Ask(joist).SectionsThatDo(["sawn timber, dressed"]);

        Assert.NotEmpty(holding[true]);
        Assert.NotEmpty(holding[false]);
        Assert.Equal(holding[true].Order(StringComparer.Ordinal), found.Passing.Select(one => one.Shape.Name).Order(StringComparer.Ordinal));
        Assert.Equal(holding[false].Count(), found.Open);
    }

    /// <summary>What is not judged of the present section either does not count: lateral stability where nothing is said of it.</summary>
    [Fact]
    public void WhatIsNotJudgedOfThePresentSectionEither_IsListedWithItsMark()
    {
        BeamDocument steel = Joist with
        {
            Sections = [new() { Name = "joist", Shape = "IPE 200" }],
            Materials = [new() { Name = "steel", Grade = "S235", AllowableBending = "100 MPa" }],
            Supports = [Joist.Supports[0] with { BearingAllowable = "2 MPa" }, Joist.Supports[1]],
        };
        Assert.Equal(CheckVerdict.NotJudged, Run(steel).Checks.Verdict);

        WouldDo found = Ask(steel).SectionsThatDo(["IPE"]);

        Assert.NotEmpty(found.Passing);
        Assert.All(found.Passing, one => Assert.Equal(1, one.NotJudged));
        Assert.Equal(0, found.Open);
    }

    [Theory]
    [InlineData("IPE 200", "S235", "IPE", "S235")]
    [InlineData("Pipe3-1/2STD", "A53-B", "Pipe", "A53-B")]
    [InlineData(null, "C24", null, "C24")]
    public void FamilyAndGradeOfThePresentSection_AreTold(string? shape, string grade, string? family, string? told)
    {
        WhatIf asked = Ask(Joist with
        {
            Sections = shape is null ? Joist.Sections : [new() { Name = "joist", Shape = shape }],
            Materials = [new() { Name = "m", Grade = grade, AllowableBending = "10 MPa" }],
        });

        Assert.Equal((family, told), (asked.Family, asked.Grade));
    }

    /// <summary>A992 is rolled as shapes, pipes and tubes are of other steels (ASTM titles): of families beside the present one that is said.</summary>
    [Theory]
    [InlineData("W", "")]
    [InlineData("Pipe", "Whether A992 is made in these shapes is not known here.")]
    [InlineData("W HSS", "Whether A992 is made in these shapes is not known here.")]
    public void OtherFamiliesThanThePresentOne_AreDoubtedForTheSteel(string families, string said)
    {
        WhatIf asked = Ask(Joist with
        {
            Sections = [new() { Name = "joist", Shape = "W8x10" }],
            Materials = [new() { Name = "m", Grade = "A992", AllowableBending = "100 MPa" }],
        });

        Assert.Equal(said, WouldDoWords.Made(asked.SectionsThatDo([.. families.Split(' ')]), asked));
        Assert.Equal("", WouldDoWords.Made(Ask(Joist).SectionsThatDo(["sawn timber, metric"]), Ask(Joist)));
        Assert.Equal(
            "The material is timber, but these shapes are of steel: IPE.", WouldDoWords.Made(Ask(Joist).SectionsThatDo(["IPE"]), Ask(Joist)));
    }

    [Fact]
    public void Families_SayWhatTheyAreMadeOf()
    {
        WhatIf asked = Ask(Joist);

        // C, W, HSS, IPE, HEA, HEB, RHS, SHS and pipes are rolled of steel (EN 10365, EN 10210, AISC); the others are sawn.
        Assert.Equal(
            ["sawn timber, dressed", "sawn timber, metric"],
            asked.Families.Where(family => family.Kind == MaterialKind.Timber).Select(family => family.Name));
        Assert.All(
            asked.Families.Where(family => family.Kind != MaterialKind.Timber), family => Assert.Equal(MaterialKind.Steel, family.Kind));
        Assert.Equal(SectionCatalogue.BuiltIn().Names.Length, asked.Families.Sum(family => family.Count));
    }

    [Theory]
    [InlineData("C24", null, MaterialKind.Timber)]
    [InlineData("S355", null, MaterialKind.Steel)]
    [InlineData("6061-T6", null, MaterialKind.Aluminium)]
    [InlineData(null, "11 GPa", MaterialKind.Timber)]
    [InlineData(null, "70 GPa", MaterialKind.Aluminium)]
    [InlineData(null, "100 GPa", null)]
    public void Material_IsTold(string? grade, string? modulus, MaterialKind? material) => Assert.Equal(
        material,
        Ask(Joist with { Materials = [new() { Name = "m", Grade = grade, Modulus = modulus, AllowableBending = "10 MPa" }] }).Material);

    [Fact]
    public void WhereTheDensityIsNotKnown_LeastAreaStandsFirst()
    {
        WouldDo found = Ask(Joist).SectionsThatDo(["sawn timber, dressed", "sawn timber, metric"]);

        Assert.True(found.IsByArea);
        Assert.NotEmpty(found.Passing);
        double[] areas = [.. found.Passing.Select(one => one.Shape.Upright.Area!.Value)];
        Assert.Equal(areas.Order(), areas);
        Assert.False(Ask(Joist with { Materials = [Joist.Materials[0] with { Density = "420 kg/m3" }] }).SectionsThatDo(found.Families).IsByArea);
    }

    /// <summary>EN 10365: HEB 220 has flanges of 16 mm, HEB 240 of 17 mm; EN 10025-2: 235 N/mm2 holds up to 16 mm.</summary>
    [Fact]
    public void SectionsThickerThanTheirYield_AreMarked()
    {
        BeamDocument steel = Joist with
        {
            Sections = [new() { Name = "joist", Shape = "HEB 200" }],
            Materials = [new() { Name = "steel", Grade = "S235" }],
            Limits = new() { Rules = "elastic allowable" },
        };

        WouldDo found = Ask(steel).SectionsThatDo(["HEB"]);

        Assert.False(found.Passing.First(one => one.Shape.Name == "HEB 220").IsTooThick);
        Assert.True(found.Passing.First(one => one.Shape.Name == "HEB 240").IsTooThick);
    }

    [Theory]
    [InlineData(0.25)]
    [InlineData(1.9)]
    [InlineData(3.3)]
    public void HeaviestLoadPutIn_IsUsedUpJustSo(double place)
    {
        BeamDocument canopy = Joist with
        {
            Spans = [new() { Length = "3 m" }, new() { Length = "1.2 m" }],
            Limits = new() { Deflection = "L/300", DeflectionOverhang = "L/150" },
        };
        double force = Ask(canopy).HeaviestAt(place)!.Force.Most!.Value;
        LoadEntry load = new()
        {
            Kind = "point",
            At = place.ToString("R", CultureInfo.InvariantCulture) + " m",
            Force = force.ToString("R", CultureInfo.InvariantCulture) + " N",
        };

        Calculation with = Run(canopy with { Loads = [.. canopy.Loads, load] });

        Assert.Equal(1, with.Checks.Governing!.Figures.Utilisation!.Value, 1e-8);
    }

    private static Calculation WithProp(BeamDocument document, double place) => Run(document with
    {
        Supports =
        [
            .. document.Supports,
            new()
            {
                Kind = "roller",
                At = place.ToString("R", CultureInfo.InvariantCulture) + " m",
                Acts = "up",
            },
        ],
    });

    private static WhatIf Ask(BeamDocument document) => Run(document).WhatIf!;

    private static Calculation Run(BeamDocument document) =>
        Calculation.Run(document, SectionCatalogue.BuiltIn(), new BeamSolver());
}
