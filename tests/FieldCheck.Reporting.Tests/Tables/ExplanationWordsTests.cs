using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Tests.Tables;

public sealed class ExplanationWordsTests
{
    // The bearer over the trench carries A 9.90, B 16.50; without the chain block A 10.34, B 14.56 (statics by hand:
    // 1.5 kN at 3.40 m, 0.70 m beyond B on 2.40 m between supports, lifts A by 0.4375).
    [Fact]
    public void LoadLeftOut_IsSaidWithWhatItGivesAndHowSureThatIs() => Assert.Equal(
        [
            "They are consistent with load 4 (chain block) left out: it would give A 10.34 kN up (stated 10.3), "
                + "B 14.56 kN up (stated 14.6).",
        ],
        Words(Trench(), "10.3", "14.6").Take(1));

    [Fact]
    public void SingleExplanation_CarriesItsFalseClaimRate() => Assert.Matches(
        "^Of 100 unrelated errors (about [0-9]+|fewer than 1) would look like this\\.$",
        Words(Trench(), "10.3", "14.6")[1]);

    [Fact]
    public void FittedOne_StandsApartBelow()
    {
        ImmutableArray<string> words = Words(Bench.Beam(
            [6], [Support.Pin(0), Support.Roller(6)], [new Load.Point(2, 12_000)]), "7.20", "4.80");

        Assert.Equal(
            [
                "No slip that is known here gives these figures. Together they carry what acts, shared out differently.",
                "They could also be had by, with numbers fitted to them:",
                "- B at 5.00 m, 1.00 m further left: it would give A 7.20 kN up (stated 7.20), B 4.80 kN up (stated 4.80).",
            ],
            words.ToArray());
    }

    [Fact]
    public void Ties_AreToldAsTies()
    {
        BuiltBeam beam = Bench.Beam(
            [6],
            [Support.Pin(0), Support.Roller(6)],
            [new Load.Point(2, 6_000), new Load.Point(2, 6_000), new Load.Point(5, 6_000)]);

        ImmutableArray<string> words = Words(beam, "5.00", "7.00");

        Assert.Equal(
            [
                "They are consistent with 2 explanations, and the figures cannot tell them apart:",
                "- load 1 left out: it would give A 5.00 kN up (stated 5.00), B 7.00 kN up (stated 7.00).",
                "- load 2 left out: it would give A 5.00 kN up (stated 5.00), B 7.00 kN up (stated 7.00).",
                "Of 100 unrelated errors fewer than 1 would look like one of these.",
            ],
            words.Take(4));
    }

    // 0.97 more at A (0.30 m) and 1.43 at B (2.70 m): (0.97 x 0.30 + 1.43 x 2.70) / 2.40 = 1.73 m.
    [Fact]
    public void NothingFits_SaysSizeAndPlaceAndClaimsNothing() => Assert.Equal(
        "No slip that is known here gives these figures. Together they carry 2.40 kN more than acts, acting at 1.73 m.",
        Assert.Single(Words(Trench(), "10.87", "17.93")));

    [Fact]
    public void NothingFits_LeavesOutWhatStandsElsewhere()
    {
        BuiltBeam beam = Trench();
        StatedSet stated = Set(beam, "10.87", "17.93");

        Assert.Equal(
            "No slip that is known here gives these figures.",
            Assert.Single(new ExplanationWords(new BeamWords(beam), stated.Figures, [null, null])
                .Of(new ExplanationSearch().Explain(stated), isPlaceTold: true)));
    }

    // 12 kN at 2 m of 6 m: A 8, B 4. One too much at A and one and a half too little at B: half a kN less, at 18 m.
    [Theory]
    [InlineData("9.00", "2.50", " Together they carry 0.50 kN less than acts, which no one load on the beam makes up for.")]
    [InlineData("9.15", null, "")]
    public void NothingFits_SaysNoPlaceWhereThereIsNone(string a, string? b, string words) => Assert.Equal(
        $"No slip that is known here gives these figures.{words}",
        Words(
            Bench.Beam([6], [Support.Pin(0), Support.Roller(6)], [new Load.Point(2, 12_000)]),
            b is null ? [a] : [a, b])[0]);

    // Three loads of 6 kN at 2 m, 2 m and 2.01 m give A 4, 4 and 3.99; one at 5 m gives A 1. Without one of the three,
    // A carries 9.0 and B 9.0, as far as one decimal goes.
    [Fact]
    public void TiesAmongOthers_AreMarked()
    {
        BuiltBeam beam = Bench.Beam(
            [6],
            [Support.Pin(0), Support.Roller(6)],
            [new Load.Point(2, 6_000), new Load.Point(2, 6_000), new Load.Point(5, 6_000), new Load.Point(2.01, 6_000)]);

        ImmutableArray<string> words = Words(beam, "9.0", "9.0");

        Assert.Equal("They are consistent with 3 explanations, the likeliest first:", words[0]);
        Assert.StartsWith("- load 4 left out: ", words[1], StringComparison.Ordinal);
        Assert.Equal("Of 100 unrelated errors about 21 would look like one of these.", words[4]);
        Assert.EndsWith("(stated 9.0).", words[2], StringComparison.Ordinal);
        Assert.EndsWith(
            " The figures cannot tell this from load 1 left out.",
            words[3],
            StringComparison.Ordinal);
    }

    [Fact]
    public void SlipsThatWereNotTried_AreOwnedUpTo()
    {
        BuiltBeam beam = Trench();
        StatedSet stated = Set(beam, "10.87", "17.93");
        var differs = (Diagnosis.Differs)new ExplanationSearch().Explain(stated);
        ExplanationWords words = new(new BeamWords(beam), stated.Figures, [null, null]);

        Assert.Equal(
            [.. words.Of(differs, isPlaceTold: false), "The beam is so large that not every slip was tried."],
            words.Of(differs with { IsEverySlipTried = false }, isPlaceTold: false).ToArray());
    }

    public static TheoryData<Slip, string> Slips() => new()
    {
        { new Slip.OwnWeightLeftOut(), "own weight left out" },
        { new Slip.OwnWeightPutIn(), "own weight put in, which is not among the loads" },
        { new Slip.OtherCombination(0), "the combination all loads taken instead" },
        { new Slip.CommonFactor(1.35, false, false), "a factor of 1.35 on all loads" },
        { new Slip.CommonFactor(1.5, true, true), "variable loads only divided by 1.5" },
        { new Slip.OtherFactors(1.2, 1.6), "factors of 1.2 on permanent and 1.6 on variable loads" },
        { new Slip.OtherFactors(1, 1), "loads without factors" },
        { new Slip.EndsSwapped(), "A and B swapped" },
        { new Slip.SenseLeftOut(), "sizes written without their sense (down, left or clockwise)" },
        {
            new Slip.FigureUnits(UnitMixUp.KilonewtonAndKip, true),
            "every figure 4.448 times too great (as from kN to kip)"
        },
        { new Slip.MomentUnits(UnitMixUp.InchAndFoot, false), "every moment 12 times too small (as from in to ft)" },
        { new Slip.LengthUnits(UnitMixUp.FootAndMetre, true), "every length 3.281 times too long (as from ft to m)" },
        { new Slip.LoadDoubled(3), "load 4 (chain block) counted twice" },
        { new Slip.LoadFromOtherEnd(1), "load 2 measured from the other end" },
        { new Slip.LoadLumped(1), "load 2 taken as one force in its middle" },
        { new Slip.LoadSpread(3, 0, 3.6), "load 4 (chain block) spread over the whole beam" },
        { new Slip.LoadSpread(3, 0.3, 2.7), "load 4 (chain block) spread from A to B" },
        {
            new Slip.LoadUnits(3, UnitMixUp.Thousand, false),
            "load 4 (chain block) 1000 times too small (as from lb to kip, or N to kN)"
        },
        {
            new Slip.PlaceUnits(3, UnitMixUp.FootAndMetre, false),
            "the place of load 4 (chain block) 3.281 times too far left (as from ft to m)"
        },
        {
            new Slip.StretchUnits(1, UnitMixUp.InchAndFoot, true),
            "the length of load 2 12 times too long (as from in to ft)"
        },
        { new Slip.TributaryWidth(1, 0.5), "load 2 with half its width" },
        { new Slip.TributaryWidth(1, 2), "load 2 with twice its width, or counted twice" },
        { new Slip.TributaryWidth(null, 2), "every spread load with twice its width" },
        { new Slip.SimpleSpans(), "each bay taken as a simple span" },
        { new Slip.HingeOverlooked(null), "every hinge overlooked" },
        { new Slip.Pattern(0, [0, 2]), "loads of live only from the left end to A and from B to the right end" },
        {
            new Slip.Together(new Slip.OwnWeightLeftOut(), new Slip.CommonFactor(1.4, false, false)),
            "own weight left out and a factor of 1.4 on all loads"
        },
        { new Slip.LoadMissing(1700, 3), "a load of 1.70 kN at 3.00 m missing" },
        { new Slip.LoadMissing(-1700, 3), "a load of 1.70 kN at 3.00 m too much" },
    };

    [Theory]
    [MemberData(nameof(Slips))]
    public void Slip_IsSaid(Slip slip, string words) =>
        Assert.Equal(words, new SlipWords(new BeamWords(Trench())).Of(slip));

    private static BuiltBeam Trench()
    {
        BuiltBeam beam = Bench.Trench();
        return beam with { Loads = beam.Loads.SetItem(3, beam.Loads[3] with { Label = "chain block" }) };
    }

    /// <summary>The words for verticals in kN, to the digits written.</summary>
    private static ImmutableArray<string> Words(BuiltBeam beam, params string[] kilonewtons)
    {
        StatedSet stated = Set(beam, kilonewtons);
        return new ExplanationWords(new BeamWords(beam), stated.Figures, [.. kilonewtons])
            .Of(new ExplanationSearch().Explain(stated), isPlaceTold: false);
    }

    private static StatedSet Set(BuiltBeam beam, params string[] kilonewtons) =>
        new(beam.Model, [1], [.. kilonewtons.Select(Figure)]);

    private static ReactionFigure Figure(string text, int support)
    {
        int decimals = text.Length - text.IndexOf('.', StringComparison.Ordinal) - 1;
        double value = double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
        return new ReactionFigure(support, ReactionPart.Vertical, 1000 * value, 500 * Math.Pow(10, -decimals));
    }
}
