using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Bearing of the stick, of what it bears on, and pressure under pads.</summary>
public sealed class SeatCheckTests
{
    private static readonly Strengths Two = new(null, null, 2e6);

    private static BeamModel Span => Checked.Simple(4, Checked.Uniform(0, 4, 2000));

    /// <summary>4 kN on 50 × 80 mm is 1 MPa; 2 MPa would need 40 mm.</summary>
    [Fact]
    public void StickAndSeat_CarryThePushOnOneArea()
    {
        StrengthProblem problem = Checked.Problem(Span, Checked.Stick(Two)).With(new Seat(0.08, 0.5e6, null, null));

        ImmutableArray<SectionCheck> all = problem.Find();

        Assert.Equal([0, 0, 1, 1], all.Select(one => one.Support!.Value));
        Assert.All(all, one => Assert.Equal(CheckKind.Bearing, one.Kind));
        Assert.All(all, one => Assert.Equal(1e6, one.Demand!.Value, 1e-4));
        Assert.Equal([0, null, 0, null], all.Select(one => one.Span));
        Assert.Equal([0.5, 2, 0.5, 2], all.Select(one => Math.Round(one.Utilisation!.Value, 9)));
        Assert.Equal([0.0, 0, 4, 4], all.Select(one => one.Position!.Value));
        Assert.Equal(4000, all[0].Term(CheckSymbol.Reaction), 1e-9);
        Assert.Equal(0.05, all[0].Term(CheckSymbol.BearingWidth));
        Assert.Equal(0.04, all[0].Term(CheckSymbol.NeededBearingLength), 1e-12);
        Assert.Equal(0.16, all[1].Term(CheckSymbol.NeededBearingLength), 1e-12);
    }

    [Fact]
    public void LengthThatIsMissing_IsSaidWithWhatWouldBeEnough()
    {
        SectionCheck check = Checked.Problem(Span, Checked.Stick(Two)).Find()[0];

        Assert.Equal(NotJudgedReason.NoBearingLength, check.Reason);
        Assert.Null(check.Demand);
        Assert.Equal(0.04, check.Term(CheckSymbol.NeededBearingLength), 1e-12);
    }

    public static TheoryData<string, double?> Widths() => new()
    {
        { "rectangle", 0.1 },
        { "rectangle flat", 0.2 },
        { "tube", 0.06 },
        { "tube flat", 0.12 },
        { "I", 0.09 },
        { "I flat", null },
        { "channel", 0.07 },
        { "channel flat", null },
        { "round", null },
        { "round tube", null },
        { "figures", null },
    };

    [Theory]
    [MemberData(nameof(Widths))]
    public void Width_IsThatOfTheFaceThatBears(string name, double? width)
    {
        bool isFlat = name.EndsWith(" flat", StringComparison.Ordinal);
        Section section = name.Replace(" flat", "", StringComparison.Ordinal) switch
        {
            "rectangle" => Section.Of(new SectionShape.Rectangle(0.05, 0.2, 2), isFlat),
            "tube" => Section.Of(new SectionShape.RectangularTube(0.06, 0.12, 0.005, 0.01, 0.005), isFlat),
            "I" => Section.Of(new SectionShape.I(0.09, 0.01, 0.006, 0.2), isFlat),
            "channel" => Section.Of(new SectionShape.Channel(0.07, 0.01, 0.006, 0.2), isFlat),
            "round" => Section.Of(new SectionShape.Round(0.1)),
            "round tube" => Section.Of(new SectionShape.RoundTube(0.1, 0.01)),
            _ => new Section { Area = 0.01, SectionModulus = 1e-4 },
        };
        SectionCheck check = Checked.Problem(Span, Checked.Stick(Two, section: section))
            .With(new Seat(0.08, null, null, null))
            .Find()[0];

        NotJudgedReason? reason = width is null ? NotJudgedReason.NoBearingWidth : null;
        Assert.Equal(reason, check.Reason);
        Assert.Equal(width is null, check.Demand is null);
        Assert.Equal(4000 / (width ?? 1) / 0.08, check.Demand ?? 4000 / 0.08, 1e-6);
    }

    [Fact]
    public void StickWithoutASection_IsNotJudged()
    {
        Member without = new(null, new Material { Allowable = Two }, null);

        Assert.All(Checked.Problem(Span, without).Find(), one => Assert.Equal(NotJudgedReason.NoSection, one.Reason));
    }

    /// <summary>An overhang of 2 m under 1 kN at its end on a bay of 4 m: 0.5 kN of uplift, 1.5 kN of push.</summary>
    [Fact]
    public void Uplift_PressesNothing()
    {
        BeamModel model = Checked.Model([4, 2], [Support.Pin(0), Support.Roller(4)], new Load.Point(6, 1000));

        SectionCheck check = Assert.Single(Checked.Problem(model, Checked.Stick(Two)).With(new Seat(0.1, null, null, null)).Find());

        Assert.Equal(1, check.Support);
        Assert.Equal(1500 / 0.05 / 0.1, check.Demand!.Value, 1e-6);
    }

    /// <summary>A support where two sticks meet is checked for both, and its seat by the narrower.</summary>
    [Fact]
    public void WhereTwoSticksMeet_BothBear()
    {
        BeamModel model = Checked.Model(
            [4, 4], [Support.Pin(0), Support.Roller(4), Support.Roller(8)], Checked.Uniform(0, 8, 1000));
        Member wide = Checked.Stick(Two, section: Section.Of(new SectionShape.Rectangle(0.1, 0.2)));

        SectionCheck[] middle =
        [
            .. Checked.Problem(model, Checked.Stick(Two), wide).With(new Seat(0.1, 1e6, null, null)).Find()
                .Where(one => one.Support == 1),
        ];

        Assert.Equal([0, 1, null], middle.Select(one => one.Span));
        Assert.Equal([1e6, 0.5e6, 1e6], middle.Select(one => Math.Round(one.Demand!.Value)));
    }

    /// <summary>Of several sticks on one seat none is left out: one of unknown width, or without a section, leaves it open.</summary>
    [Theory]
    [InlineData(true, NotJudgedReason.NoBearingWidth)]
    [InlineData(false, NotJudgedReason.NoSection)]
    public void SeatOfAStickThatIsNotKnown_IsNotJudged(bool isRound, NotJudgedReason reason)
    {
        BeamModel model = Checked.Model(
            [4, 4], [Support.Pin(0), Support.Roller(4), Support.Roller(8)], Checked.Uniform(0, 8, 1000));
        Member other = isRound ? Checked.Stick(section: Section.Of(new SectionShape.Round(0.1))) : Checked.Bare;

        SectionCheck[] seats = [.. Checked.Problem(model, Checked.Stick(), other).With(new Seat(0.1, 1e6, null, null)).Find()];

        Assert.Equal([null, reason, reason], seats.Select(one => one.Reason));
        Assert.NotNull(seats[0].Demand);
        Assert.All(seats[1..], one => Assert.Null(one.Demand));
    }

    /// <summary>Only the sticks over a support bear on it, of three the two that meet there.</summary>
    [Fact]
    public void SticksFarther_DoNotBear()
    {
        BeamModel model = Checked.Model(
            [4, 4, 4], [Support.Pin(0), Support.Roller(4), Support.Roller(8), Support.Roller(12)], Checked.Uniform(0, 12, 1000));

        Assert.Equal(
            [(0, 0), (1, 0), (1, 1), (2, 1), (2, 2), (3, 2)],
            Checked.Problem(model, Wide(0.05), Wide(0.1), Wide(0.2)).Find().Select(one => (one.Support!.Value, one.Span!.Value)));

        static Member Wide(double width) => Checked.Stick(Two, section: Section.Of(new SectionShape.Rectangle(width, 0.2)));
    }

    /// <summary>
    /// A load at the end of an overhang that just balances the bay, P·a = w·l²/2, leaves the far support nothing but rounding.
    /// </summary>
    [Theory]
    [InlineData(3.3, 1.7, 1234.5)]
    [InlineData(4.1, 1.3, 987.6)]
    [InlineData(5.7, 2.1, 3210.7)]
    [InlineData(2.9, 0.7, 777.7)]
    [InlineData(3.7, 1.9, 4567.8)]
    [InlineData(4.9, 1.1, 1111.3)]
    public void PushThatIsRoundingOnly_PressesNothing(double bay, double overhang, double load)
    {
        BeamModel model = Checked.Model(
            [bay, overhang],
            [Support.Pin(0), Support.Roller(bay)],
            Checked.Uniform(0, bay, load),
            new Load.Point(bay + overhang, load * bay * bay / 2 / overhang));

        Assert.Equal(1, Assert.Single(Checked.Problem(model, Checked.Stick(Two)).Find()).Support);
    }

    /// <summary>4 kN on 0.09 m².</summary>
    [Fact]
    public void Pad_SpreadsThePush()
    {
        SectionCheck[] all = [.. Checked.Problem(Span).With(new Seat(null, null, 0.09, 50e3)).Find()];

        Assert.Equal([CheckKind.PadPressure, CheckKind.PadPressure], all.Select(one => one.Kind));
        Assert.Equal(4000 / 0.09, all[0].Demand!.Value, 1e-9);
        Assert.Equal(50e3, all[0].Limit);
        Assert.Equal(0.09, all[0].Term(CheckSymbol.PadArea));
        Assert.Equal(CheckVerdict.Ok, all[0].Verdict);
    }

    [Fact]
    public void PressureWithoutAPad_IsNotJudged() => Assert.All(
        Checked.Problem(Span).With(new Seat(null, null, null, 50e3)).Find(),
        one => Assert.Equal(NotJudgedReason.NoPad, one.Reason));

    [Fact]
    public void SizesAlone_AskNothing() =>
        Assert.Empty(Checked.Problem(Span, Checked.Stick()).With(new Seat(0.1, null, 0.09, null)).Find());

    /// <summary>What a beam bears on is judged under service combinations only.</summary>
    [Fact]
    public void SeatUnderFactoredCombinations_IsNotJudged()
    {
        ImmutableArray<SectionCheck> all =
            Checked.Problem(Span.Factored(), Checked.Stick(Two)).With(new Seat(0.1, 1e6, 0.09, 50e3)).Find();

        Assert.Equal(6, all.Length);
        Assert.All(all, one => Assert.Equal(CombinationBasis.Service, one.Basis));
        Assert.All(all, one => Assert.Equal(NotJudgedReason.NoCombination, one.Reason));
    }

    [Fact]
    public void DesignStrength_MeetsFactoredReactions() => Assert.All(
        Checked.Problem(Span.Factored(), Checked.Stick(design: Two)).With(new Seat(0.08, null, null, null)).Find(),
        one => Assert.Equal((CombinationBasis.Factored, 0.5), (one.Basis, Math.Round(one.Utilisation!.Value, 12))));

    [Fact]
    public void OneSeatAndOneMemberForEach_AreAskedFor()
    {
        StrengthProblem problem = Checked.Problem(Span);

        Assert.Throws<ArgumentException>(() => (problem with { Seats = [] }).Find());
        Assert.Throws<ArgumentException>(() => (problem with { Members = [] }).Find());
        Assert.Throws<ArgumentNullException>("problem", () => SectionChecks.Find(null!, [], new BeamSolver()));
        Assert.Throws<ArgumentNullException>("solver", () => SectionChecks.Find(problem, [], null!));
    }
}
