using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.Presets;

/// <summary>
/// Each built-in preset against a calculation by hand: resultants and moments about a support where statics is enough,
/// published coefficients where it is not. Weights of rolled shapes are their nominal ones: 12.9 and 22.4 kg/m
/// (IPE 140 and 200, TU Delft vademecum), 22 and 30 lb/ft (W10x22 and W14x30, by their names).
/// </summary>
public sealed class BuiltInPresetsTests
{
    private const double Gravity = 9.80665;
    private const double Pound = 4.4482216152605;

    private static readonly SectionCatalogue Catalogue = SectionCatalogue.BuiltIn();

    public static TheoryData<string> Names() => new(PresetLibrary.BuiltIn().Select(preset => preset.Name));

    [Fact]
    public void ThereAreAtLeastEight_InBothSystemsOfUnits()
    {
        string?[] displays = [.. PresetLibrary.BuiltIn().Select(preset => Solve(preset.Name).Document.Display)];

        Assert.True(displays.Length >= 8);
        Assert.Contains("us", displays);
        Assert.Contains("si", displays);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Preset_StandsAndHoldsInEveryCombination(string name)
    {
        Calculation calculation = Solve(name);

        BeamOutcome.Stands stands = Assert.IsType<BeamOutcome.Stands>(calculation.Outcome);
        Assert.All(stands.Combinations, answer => Assert.InRange(answer.Response.Proof.Residual, 0, 1e-12));
        Assert.DoesNotContain(
            calculation.Messages, message => message.Severity == Severity.Fault && message.Code != MessageCodes.Over);
    }

    [Theory]
    [InlineData("store-floor-beam", CheckVerdict.Ok, "bending of span 1")]
    [InlineData("pipe-rack-beam", CheckVerdict.Over, "deflection of the overhang")]
    [InlineData("masonry-lintel", CheckVerdict.Ok, "deflection anywhere")]
    [InlineData("opening-header", CheckVerdict.Over, "bending")]
    [InlineData("floor-joist", CheckVerdict.Ok, "final deflection of the bay")]
    [InlineData("scaffold-plank", CheckVerdict.NotJudged, "deflection of the bay")]
    public void Preset_IsEnough_OrNot_OrNobodyKnows(string name, CheckVerdict verdict, string governs)
    {
        Calculation calculation = Solve(name);

        Assert.Equal(verdict, calculation.Checks.Verdict);
        Assert.Equal(governs, calculation.Checks.Governing!.What);
        Assert.Equal(
            verdict == CheckVerdict.Ok ? CheckStatus.Holds : CheckStatus.DoesNotHold, calculation.Status);
    }

    [Fact]
    public void PresetsWithoutLimitsAndRules_AskNothing() => Assert.Equal(
        11, PresetLibrary.BuiltIn().Count(preset => Solve(preset.Name).Checks.Verdict is null));

    [Theory]
    [MemberData(nameof(Names))]
    public void Preset_HasATitleCautionsAndCellsToAskFor(string name)
    {
        Calculation calculation = Solve(name);

        Assert.False(string.IsNullOrWhiteSpace(calculation.Document.Title));
        Assert.Contains("Not checked", calculation.Document.Notes);
        Assert.NotEmpty(calculation.Document.Ask);
    }

    [Fact]
    public void Example_ShowsAnOverhang()
    {
        Calculation calculation = Solve(PresetLibrary.Example().Name);

        Assert.True(calculation.Beam!.Supports[^1].Support.Position < calculation.Beam.Model.Length);
    }

    [Fact]
    public void LoadingPlatform()
    {
        (double Force, double At) boards = (400 * 1.2 * 4, 2);
        (double Force, double At) own = (12.9 * Gravity * 4, 2);
        (double Force, double At) people = (1500 * 1.2 * 2.8, 1.4);
        (double Force, double At) pallet = (450 * Gravity, 3.5);

        Same(
            TwoSupports.Reactions(0, 2.8, boards, own, people, pallet),
            Verticals("loading-platform", "platform full"));
        Same(TwoSupports.Reactions(0, 2.8, boards, own), Verticals("loading-platform", "boards only"));
    }

    [Fact]
    public void FormworkJoist()
    {
        // Three equal spans, uniform load: 0.4, 1.1, 1.1, 0.4 of wL (Hicks, Civil Engineering Formulas, Table 2.1).
        double wL = (150 * 6.5 / 12 + 6 + 50) * 1.5 * 4.5 * Pound;

        Same([0.4 * wL, 1.1 * wL, 1.1 * wL, 0.4 * wL], Verticals("formwork-joist", "pour"));
    }

    [Fact]
    public void FormworkBearer()
    {
        // In pounds and inches; a 6x8 is dressed 5 1/2 by 7 1/2 (PS 20).
        double own = 36 * 5.5 * 7.5 / 144 * (81 / 12.0);
        (double left, double right) = TwoSupports.Reactions(
            9, 72, (690, 3), (1540, 23), (1540, 43), (1540, 63), (own, 40.5));

        Same((left * Pound, right * Pound), Verticals("formwork-bearer", "pour"));
    }

    [Fact]
    public void ScaffoldPlank()
    {
        // In pounds and inches.
        double own = 35 * 1.5 * 9.25 / 144 * (94 / 12.0);
        (double A, double B) middle = TwoSupports.Reactions(0, 84, (own, 47), (240, 42));
        (double A, double B) outside = TwoSupports.Reactions(0, 84, (own, 47), (240, 87));

        Assert.True(outside.A > 0, "the plank still lies on A");
        Same((middle.A * Pound, middle.B * Pound), Verticals("scaffold-plank", "in the middle"));
        Same((outside.A * Pound, outside.B * Pound), Verticals("scaffold-plank", "past the bearer"));
    }

    [Fact]
    public void MasonryLintel()
    {
        // A triangle with its peak in the middle: half its base times its height, and its weight acts in the middle.
        (double Force, double At) triangle = (2200 * 0.975 * 1.95 / 2, 0.975);

        Same(TwoSupports.Reactions(0, 1.95, triangle, (1800, 0.65)), Verticals("masonry-lintel", "service"));
    }

    [Fact]
    public void OpeningHeader()
    {
        // Uniform loads: half of each goes to either end. In pounds and feet.
        double half = 8.25 / 2 * Pound;
        double dead = (17 * 13 + 12 * 6.75) * half;
        double snow = 25 * 13 * half;
        double live = 40 * 6.75 * half;

        Same((dead + snow, dead + snow), Verticals("opening-header", "dead + snow"));
        Same((dead + live, dead + live), Verticals("opening-header", "dead + live"));
        double both = dead + 0.75 * (live + snow);
        Same((both, both), Verticals("opening-header", "dead + 3/4 of both"));
    }

    [Fact]
    public void FloorJoist()
    {
        const double Length = 4.35;
        (double Force, double At) live = (1500 * 0.4 * Length, Length / 2);
        (double A, double B) dead = TwoSupports.Reactions(
            0, Length, (550 * 0.4 * Length, Length / 2), (900 * 0.4, 1.45));
        (double A, double B) used = TwoSupports.Reactions(0, Length, live);

        Same((dead.A + used.A, dead.B + used.B), Verticals("floor-joist", "service"));
        Same((1.35 * dead.A + 1.5 * used.A, 1.35 * dead.B + 1.5 * used.B), Verticals("floor-joist", "factored"));
    }

    [Fact]
    public void NeedleBeam() =>
        Same(
            TwoSupports.Reactions(0, 1.9, (31000, (0.62 + 0.835) / 2), (22.4 * Gravity * 1.9, 0.95)),
            Verticals("needle-beam", "wall on the needle"));

    [Fact]
    public void PumpSkid()
    {
        // In kip and feet.
        (double, double)[] standing = [(2.4, 1), (2.4, 5), (1.15, 8.5), (1.15, 12.5), (0.022 * 14, 7)];
        (double West, double East) still = TwoSupports.Reactions(2, 11.5, standing);
        (double West, double East) test = TwoSupports.Reactions(2, 11.5, [.. standing, (0.8, 3)]);

        Same((still.West * 1000 * Pound, still.East * 1000 * Pound), Verticals("pump-skid", "standing"));
        Same((test.West * 1000 * Pound, test.East * 1000 * Pound), Verticals("pump-skid", "under test"));
    }

    [Fact]
    public void PipeRackBeam()
    {
        // In pounds and feet.
        (double, double) own = (30 * 23.5, 11.75);
        (double, double) inside = (540 * 18, 9);
        (double, double)[] outside = [(540 * 5.5, 20.75), (1600, 22.75)];
        (double A, double B) used = TwoSupports.Reactions(0, 18, [own, inside, .. outside]);
        (double A, double B) erected = TwoSupports.Reactions(0, 18, [own, .. outside]);

        Assert.True(erected.A < 0, "the preset shows a support that is pulled up");
        Same((used.A * Pound, used.B * Pound), Verticals("pipe-rack-beam", "in use"));
        Same((erected.A * Pound, erected.B * Pound), Verticals("pipe-rack-beam", "overhang piped first"));
    }

    [Fact]
    public void ProppedSlabStrip()
    {
        // Snug: 3/8, 10/8, 3/8 of wL (Hicks, Table 2.1). A prop that sits low by d gives up 6EI d/L^3: the force that
        // bends the strip of 2L by d in its middle, P (2L)^3/(48EI) = d. The walls take half of it each.
        const double Length = 3.3;
        double wL = (25000 * 0.18 + 2000) * Length;
        double given = 6 * 27e9 * (Math.Pow(0.18, 3) / 12) * 0.003 / Math.Pow(Length, 3);

        double wall = 3 * wL / 8 + given / 2;
        Same([wall, 10 * wL / 8 - given, wall], Verticals("propped-slab-strip", "loaded"));
    }

    [Fact]
    public void LedgerOnBolts()
    {
        // Two equal spans, each with P in its middle. Three moments: 4 M L = -2 * 3/8 P L^2, so M = -3/16 P L over the
        // middle bolt; each span's half-and-half then shifts by M/L: 5/16 P at the ends, 22/16 P in the middle.
        Same(
            [(5 * 410 / 16.0 + 205) * Pound, (22 * 410 / 16.0 + 410) * Pound, (5 * 410 / 16.0 + 205) * Pound],
            Verticals("ledger-on-bolts", "floor in use"));
    }

    [Fact]
    public void GangwayInTwoParts()
    {
        // First the short part, from hinge to quay; then the long one, with what the hinge hands on at its tip.
        double w = 350 * 0.6;
        (double hinge, double quay) = TwoSupports.Reactions(5.3, 7.7, (w * 2.4, 6.5), (210 * Gravity, 6.1));
        (double bank, double pier) = TwoSupports.Reactions(0, 4.2, (w * 5.3, 2.65), (hinge, 5.3));

        Same([bank, pier, quay], Verticals("gangway-in-two-parts", "barrow on the short part"));
    }

    [Fact]
    public void TwoBayBearer()
    {
        // In pounds and feet; a 4x6 is dressed 3 1/2 by 5 1/2 (PS 20).
        double own = 34 * 3.5 * 5.5 / 144;
        double wL = (320 + own) * 6;

        // C would have to pull: 3/8 of a span's own weight is less than 1/16 of the stack.
        Assert.True(3 * own * 6 / 8 < 320 * 6 / 16.0);
        (double A, double B) lifted = TwoSupports.Reactions(0, 6, (320 * 6, 3), (own * 12, 6));

        Same([3 * wL / 8 * Pound, 10 * wL / 8 * Pound, 3 * wL / 8 * Pound], Verticals("two-bay-bearer", "both bays"));
        Same([lifted.A * Pound, lifted.B * Pound, 0], Verticals("two-bay-bearer", "left bay only"));
    }

    [Fact]
    public void CanopyBeam()
    {
        // All sheeted: two spans and an overhang under one uniform load, by the three-moment equation.
        const double Long = 3.6, Short = 1.2, Over = 1.5, Back = Long + Short;
        double own = 22.4 * Gravity;
        double w = own + 1300;
        double post = -w * Over * Over / 2;
        double prop = (-w * (Cube(Long) + Cube(Short)) / 4 - post * Short) / (2 * Back);
        double pocket = w * Long / 2 + prop / Long;
        double inner = w * Short / 2 + (post - prop) / Short;
        double last = w * Short - inner + w * Over;

        // Overhang first: off the prop, two supports are left, and just enough weight to keep the pocket down.
        (double rear, double front) = TwoSupports.Reactions(0, Back, (own * (Back + Over), (Back + Over) / 2), (1300 * Over, Back + Over / 2));

        Assert.True(rear > 0, "the preset stands on two supports");
        Same([pocket, w * Long - pocket + inner, last], Verticals("canopy-beam", "all sheeted"));
        Same([rear, 0, front], Verticals("canopy-beam", "overhang sheeted first"));

        static double Cube(double length) => length * length * length;
    }

    [Fact]
    public void HandTruckBridge()
    {
        // Axles P and Q. An end gets most with P over it and Q behind. With P at x and Q at x + D the left reaction is
        // W (L - x - e)/L, W = P + Q, e = Q D/W from P to their resultant; the moment under P with that of the own weight is
        // W (L - x - e) x/L + w x (L - x)/2, greatest where its derivative is nothing.
        const double L = 2.6, P = 1.2 * 3200, Q = 1.2 * 2100, D = 1.15, W = P + Q, E = Q * D / W;
        double w = 150 + 0.075 * 0.2 * 420 * Gravity;
        double x = (W * (L - E) / L + w * L / 2) / (2 * W / L + w);
        Envelope envelope = Solve("hand-truck-bridge").Envelopes.Single();

        Assert.Equal(w * L / 2 + P + Q * (L - D) / L, envelope.Reactions[0].Vertical.Max.Value, 1e-6);
        Assert.Equal(w * L / 2, envelope.Reactions[0].Vertical.Min.Value, 1e-6);
        RollingPlace b = envelope.Reactions[1].Vertical.Max.Situation.Rolling!;
        Assert.Equal((L, true), (b.Position, b.IsReversed));
        GovernedExtreme moment = envelope.ExtremesOf(Curve.Moment).Max;
        Assert.Equal(W * (L - x - E) * x / L + w * x * (L - x) / 2, moment.Value, 1e-6);
        Assert.Equal(x, moment.Position, 1e-7);
    }

    [Fact]
    public void StoreFloorBeam()
    {
        // Three equal spans, the coefficients of wL and wL2 by which spans are loaded: all 0.4, 1.1 and 0.080, -0.100;
        // the outer two 0.45 and 0.1013; the first two 1.2 and -0.1167; the middle one -0.05 (Hicks, Civil Engineering
        // Formulas, Table 2.1, and the three-moment equation).
        const double L = 12;
        double own = 22;
        double dead = 30 * 8 + own, live = 125 * 8;
        Envelope[] envelopes = [.. Solve("store-floor-beam").Envelopes];

        foreach ((Envelope envelope, double g, double q) in new[] { (envelopes[0], dead, live), (envelopes[1], 1.2 * dead, 1.6 * live) })
        {
            Assert.Equal((0.4 * g + 0.45 * q) * L * Pound, envelope.Reactions[0].Vertical.Max.Value, 1e-6 * q * L);
            Assert.Equal((0.4 * g - 0.05 * q) * L * Pound, envelope.Reactions[0].Vertical.Min.Value, 1e-6 * q * L);
            Assert.Equal((1.1 * g + 1.2 * q) * L * Pound, envelope.Reactions[1].Vertical.Max.Value, 1e-6 * q * L);
            Assert.Equal(
                -(g / 10 + q * 7 / 60) * L * L * Pound * 0.3048, envelope.ExtremesOf(Curve.Moment).Min.Value, 1e-6 * q * L * L);
        }

        Assert.DoesNotContain(Solve("store-floor-beam").Messages, message => message.Code == "uplift");
    }

    private static Calculation Solve(string name)
    {
        Preset preset = PresetLibrary.BuiltIn().Single(preset => preset.Name == name);
        BeamFileReading.Opened opened = Assert.IsType<BeamFileReading.Opened>(
            BeamFileText.Read(preset.Text.Name, preset.Text.Text));
        Calculation calculation = Calculation.Run(opened.Document, Catalogue, new BeamSolver());
        Assert.Empty(calculation.Problems);
        return calculation;
    }

    private static double[] Verticals(string name, string combination)
    {
        BeamOutcome.Stands stands = Assert.IsType<BeamOutcome.Stands>(Solve(name).Outcome);
        CombinationResponse answer = stands.Combinations.Single(one => one.Combination.Name == combination);
        return [.. answer.Response.Reactions.Select(reaction => reaction.Vertical)];
    }

    private static void Same((double, double) expected, double[] actual) =>
        Same([expected.Item1, expected.Item2], actual);

    private static void Same(double[] expected, double[] actual)
    {
        Assert.Equal(expected.Length, actual.Length);
        double scale = expected.Max(Math.Abs);
        Assert.All(expected.Zip(actual), pair => Assert.Equal(pair.First, pair.Second, tolerance: 1e-9 * scale));
    }
}
