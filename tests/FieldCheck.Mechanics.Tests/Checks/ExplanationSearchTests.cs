using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>One slip each, on beams small enough to work out by hand; the working stands beside the figures.</summary>
public sealed partial class ExplanationSearchTests
{
    // 12 kN at 2 m of 6 m: A 8, B 4. 3 kN/m on the right half: 9 kN at 4.5 m: A 2.25, B 6.75. Together 10.25, 10.75.
    private static readonly BeamModel Two = Said.Simple(6, Said.Point(2, 12), Said.Spread(3, 6, 3));

    // Own weight 0.5 kN/m: 1.5 kN at each end of 6 m besides.
    private static readonly BeamModel Weighing = Two with
    {
        Cases = [new LoadCase("dead", [Said.Spread(0, 6, 0.5)]), .. Two.Cases],
        Combinations = [new Combination("service", CombinationBasis.Service, [1, 1])],
    };

    // Two spans of 4 m, 6 kN/m on both: 3/8, 10/8, 3/8 of 24 kN: 9, 30, 9.
    private static readonly BeamModel Continuous = Said.On([4, 4], [0, 4, 8], Said.Spread(0, 8, 6));

    [Fact]
    public void FiguresThatAgreeAsRounded_AreNotExplained() =>
        Assert.IsType<Diagnosis.Agrees>(new ExplanationSearch().Explain(Said.Verticals(Two, "10.3", "10.8")));

    [Fact]
    public void BeamThatCanMove_HasNothingToHoldFiguresAgainst()
    {
        BeamModel model = Said.On([6], [0], Said.Point(2, 12));

        Assert.IsType<Diagnosis.NotComputed>(new ExplanationSearch().Explain(Said.Verticals(model, "12.0")));
    }

    [Fact]
    public void NothingFits_GivesSizeAndPlaceOfTheDifference()
    {
        // Half a kN too much at A and 1.25 too little at B: 0.75 too little in all, at 6 x 1.25 / 0.75 = 10 m.
        Diagnosis.Differs differs = Assert.IsType<Diagnosis.Differs>(
            new ExplanationSearch().Explain(Said.Verticals(Two, "10.75", "9.50")));

        Assert.Empty(differs.Explanations);
        Assert.Null(differs.FalseClaimRate);
        Assert.Equal([500, -1250], differs.Difference.Each.Select(each => Math.Round(each, 6)));
        Assert.Equal(-750, differs.Difference.Vertical!.Value, 6);
        Assert.Equal(10, differs.Difference.Place!.Value, 6);
    }

    [Fact]
    public void SplitAlone_IsToldFromASumThatDiffers()
    {
        StatedDifference split = Difference("10.75", "10.25");
        StatedDifference sum = Difference("10.75", "9.50");
        StatedDifference part = Difference("9.50");

        Assert.Equal((true, false, false), (split.IsSplitOnly, sum.IsSplitOnly, part.IsSplitOnly));
        Assert.Null(split.Place);
        Assert.Null(part.Vertical);

        static StatedDifference Difference(params string[] kilonewtons) => Assert.IsType<Diagnosis.Differs>(
            new ExplanationSearch().Explain(Said.Verticals(Two, kilonewtons))).Difference;
    }

    [Fact]
    public void OwnWeightLeftOut()
    {
        StatedSet stated = Said.Verticals(Weighing, "10.3", "10.8") with { OwnWeight = [0], PermanentCases = [0] };

        Explanation only = Said.Only(stated);

        Assert.Equal(new Slip.OwnWeightLeftOut(), only.Slip);
        Assert.Equal(1, only.Cost);
        Assert.Equal([10_250, 10_750], only.Predicted.Select(value => Math.Round(value, 6)));
        Assert.Equal(1, only.WorstResidual, 3);
    }

    [Fact]
    public void OwnWeightPutIn()
    {
        StatedSet stated = Said.Verticals(Two, "11.75", "12.25") with { UncountedWeight = [500] };

        Assert.Equal(new Slip.OwnWeightPutIn(), Said.Only(stated).Slip);
    }

    [Fact]
    public void OtherCombinationOfTheFile()
    {
        // 1.2 x 1.5 + 1.6 x (10.25, 10.75) = 18.2, 19.0.
        BeamModel model = Weighing with
        {
            Combinations =
            [
                .. Weighing.Combinations, new Combination("strength", CombinationBasis.Factored, [1.2, 1.6]),
            ],
        };
        StatedSet stated = Said.Verticals(model, "18.2", "19.0") with { OwnWeight = [0], PermanentCases = [0] };

        Assert.Equal(new Slip.OtherCombination(1), Said.Only(stated).Slip);
    }

    [Theory]
    [InlineData("15.38", "16.13", 1.5, false)]
    [InlineData("8.542", "8.958", 1.2, true)]
    public void CommonFactorOnAllLoads(string a, string b, double factor, bool isTakenOff) => Assert.Equal(
        new Slip.CommonFactor(factor, isTakenOff, IsOnVariableOnly: false), Said.Only(Said.Verticals(Two, a, b)).Slip);

    [Fact]
    public void CommonFactorOnVariableLoadsOnly()
    {
        // 1.5 + 1.3 x (10.25, 10.75) = 14.825, 15.475.
        StatedSet stated = Said.Verticals(Weighing, "14.83", "15.48") with { OwnWeight = [0], PermanentCases = [0] };

        Assert.Equal(new Slip.CommonFactor(1.3, false, IsOnVariableOnly: true), Said.Only(stated).Slip);
    }

    [Theory]
    [InlineData("17.40", "18.15", 1.35, 1.5)] // 1.35 x 1.5 + 1.5 x (10.25, 10.75)
    [InlineData("18.20", "19.00", 1.2, 1.6)]
    public void FactorsOfACode(string a, string b, double permanent, double variable)
    {
        StatedSet stated = Said.Verticals(Weighing, a, b) with { OwnWeight = [0], PermanentCases = [0] };

        Assert.Equal(new Slip.OtherFactors(permanent, variable), Said.Only(stated).Slip);
    }

    [Fact]
    public void ServiceFiguresForAFactoredCombination()
    {
        StatedSet stated = Said.Verticals(Weighing, "11.75", "12.25") with
        {
            Factors = [1.2, 1.6],
            OwnWeight = [0],
            PermanentCases = [0],
        };

        Explanation[] told = [.. Said.Explanations(stated).Where(explanation => !explanation.IsFitted)];

        Assert.Equal([new Slip.OtherCombination(0)], told.Select(explanation => explanation.Slip));
    }

    [Fact]
    public void FactorAndOwnWeightLeftOut()
    {
        // 1.4 x (10.25, 10.75) = 14.35, 15.05.
        StatedSet stated = Said.Verticals(Weighing, "14.35", "15.05") with { OwnWeight = [0], PermanentCases = [0] };

        Explanation only = Said.Only(stated);

        Assert.Equal(
            new Slip.Together(new Slip.OwnWeightLeftOut(), new Slip.CommonFactor(1.4, false, false)), only.Slip);
        Assert.Equal(4, only.Cost);
    }

    [Fact]
    public void EndsSwapped() =>
        Assert.Equal(new Slip.EndsSwapped(), Said.Only(Said.Verticals(Two, "10.75", "10.25")).Slip);

    /// <summary>6 m and an overhang of 2 m with 9 kN at its end: 3 kN down at the left, 12 kN up at the right.</summary>
    [Theory]
    [InlineData("3.00", "12.00", true)]
    [InlineData("2.80", "12.00", false)]
    [InlineData("3.00", "-12.00", false)]
    public void UpliftWrittenWithoutItsSense(string left, string right, bool isExplained)
    {
        BeamModel model = Said.Simple(8, Said.Point(8, 9)) with { Supports = [Support.Pin(0), Support.Roller(6)] };

        IEnumerable<Slip> told = Said.Explanations(Said.Verticals(model, left, right))
            .Where(one => !one.IsFitted)
            .Select(one => one.Slip);

        Assert.Equal(isExplained ? [new Slip.SenseLeftOut()] : [], told);
    }

    [Fact]
    public void EndsSwapped_IsTheSameAsTheOnlyLoadMeasuredFromTheOtherEnd()
    {
        StatedSet stated = Said.Verticals(Said.Simple(6, Said.Point(2, 12)), "4.0", "8.0");

        Explanation[] told = [.. Said.Explanations(stated).Where(one => !one.IsFitted)];

        Assert.Equal([new Slip.EndsSwapped(), new Slip.LoadFromOtherEnd(0)], told.Select(one => one.Slip));
        Assert.Equal(1, Assert.Single(told[0].TiedWith));
    }

    [Fact]
    public void EndsSwapped_TurnsMomentsAndThrustsRound()
    {
        // A cantilever 2 m long, built in at the left; 3 kN down and 1 kN to the right at its tip: up 3, left 1, ccw 6.
        // The same figures as somebody who looks from behind sees them.
        BeamModel model = Said.Simple(2, new Load.Point(2, 3000, 1000)) with { Supports = [Support.Fixed(0)] };
        StatedSet stated = Said.Verticals(model, "3.00") with
        {
            Figures =
            [
                Said.Figure(0, ReactionPart.Vertical, "3.00"),
                Said.Figure(0, ReactionPart.Horizontal, "1.00"),
                Said.Figure(0, ReactionPart.Moment, "-6.00"),
            ],
        };

        Assert.Equal(new Slip.EndsSwapped(), Said.Only(stated).Slip);
    }

    [Theory]
    [InlineData("2.304", "2.417", UnitMixUp.KilonewtonAndKip, false)] // 10.25 / 4.4482
    [InlineData("10250", "10750", UnitMixUp.Thousand, true)]
    [InlineData("100.5", "105.4", UnitMixUp.NewtonAndKilogram, true)] // 10.25 x 9.80665
    [InlineData("4.649", "4.876", UnitMixUp.PoundAndKilogram, false)] // 10.25 / 2.2046
    public void EveryFigureInAnotherUnit(string a, string b, UnitMixUp units, bool isTooGreat) => Assert.Equal(
        new Slip.FigureUnits(units, isTooGreat), Said.Only(Said.Verticals(Two, a, b)).Slip);

    // Cantilever: 3 kN at 2 m, 6 kN·m; written twelve times as much or a twelfth of it, 3.2808 times as much or 0.3048 of it.
    [Theory]
    [InlineData("72.0", UnitMixUp.InchAndFoot, true)]
    [InlineData("0.500", UnitMixUp.InchAndFoot, false)]
    [InlineData("19.69", UnitMixUp.FootAndMetre, true)]
    [InlineData("1.829", UnitMixUp.FootAndMetre, false)]
    public void MomentsInAnotherUnit(string moment, UnitMixUp units, bool isTooGreat)
    {
        BeamModel model = Said.Simple(2, Said.Point(2, 3)) with { Supports = [Support.Fixed(0)] };
        StatedSet stated = Said.Verticals(model, "3.00") with
        {
            Figures = [Said.Figure(0, ReactionPart.Vertical, "3.00"), Said.Figure(0, ReactionPart.Moment, moment)],
        };

        Assert.Equal(
            new Slip.MomentUnits(units, isTooGreat),
            Said.Explanations(stated)[0].Slip);
    }

    [Fact]
    public void EveryLengthInAnotherUnit()
    {
        // Point loads stay, spread ones come to 3.2808 times as much: 8 + 7.382, 4 + 22.146.
        Explanation first = Said.Explanations(Said.Verticals(Two, "15.4", "26.1"))[0];

        Assert.Equal(new Slip.LengthUnits(UnitMixUp.FootAndMetre, true), first.Slip);
    }

    // Two spread loads, 9 kN at 4.5 m and 2 kN at 1 m, come to 0.3048 of it: 8 + 0.686 + 0.508, 4 + 2.057 + 0.102.
    [Fact]
    public void EveryLengthInTheSmallerUnit()
    {
        BeamModel model = Said.Simple(6, Said.Point(2, 12), Said.Spread(3, 6, 3), Said.Spread(0, 2, 1));

        Explanation first = Said.Explanations(Said.Verticals(model, "9.194", "6.159"))[0];

        Assert.Equal(new Slip.LengthUnits(UnitMixUp.FootAndMetre, false), first.Slip);
    }

    [Fact]
    public void LoadLeftOut() =>
        Assert.Equal(new Slip.LoadLeftOut(1), Said.Only(Said.Verticals(Two, "8.00", "4.00")).Slip);

    [Fact]
    public void LoadDoubled() =>
        Assert.Equal(new Slip.LoadDoubled(0), Said.Only(Said.Verticals(Two, "18.25", "14.75")).Slip);

    [Fact]
    public void LoadMeasuredFromTheOtherEnd() => // 12 kN at 4 m: A 4, B 8
        Assert.Equal(new Slip.LoadFromOtherEnd(0), Said.Only(Said.Verticals(Two, "6.25", "14.75")).Slip);

    [Fact]
    public void LoadLumpedInTheMiddleOfItsStretch()
    {
        // 6 kN/m over 4 m of two spans of 4 m, on the left one: by three moments A 7/16 x 24 = 10.5, B 15, C -1.5.
        // As 24 kN in the middle: A 13/32 x 24 = 9.75, B 22/32 x 24 = 16.5, C -3/32 x 24 = -2.25.
        BeamModel model = Said.On([4, 4], [0, 4, 8], Said.Spread(0, 4, 6));

        Assert.Equal(new Slip.LoadLumped(0), Said.Only(Said.Verticals(model, "9.75", "16.50", "-2.25")).Slip);
    }

    [Fact]
    public void LoadSpreadOverTheBeam() => // 12 kN shared evenly: 6 + 2.25, 6 + 6.75
        Assert.Equal(new Slip.LoadSpread(0, 0, 6), Said.Only(Said.Verticals(Two, "8.25", "12.75")).Slip);

    [Theory]
    [InlineData("9.125", "7.375", 0.5)]
    [InlineData("12.50", "17.50", 2.0)]
    public void HalfOrDoubleTheTributaryWidth(string a, string b, double factor) =>
        Assert.Equal(new Slip.TributaryWidth(1, factor), Said.Only(Said.Verticals(Two, a, b)).Slip);

    [Fact]
    public void HalfTheTributaryWidthOfEverySpreadLoad()
    {
        // 2 kN/m over the beam and 3 kN/m over its right half, 12 kN at 2 m: halves of 6, 6 and of 2.25, 6.75.
        BeamModel model = Said.Simple(6, Said.Point(2, 12), Said.Spread(3, 6, 3), Said.Spread(0, 6, 2));

        Assert.Equal(
            new Slip.TributaryWidth(null, 0.5), Said.Only(Said.Verticals(model, "12.125", "10.375")).Slip);
    }

    [Fact]
    public void OneForceInAnotherUnit() => // 12 kip for 12 kN: 53.379 kN: A 35.586, B 17.793 besides 2.25, 6.75
        Assert.Equal(
            new Slip.LoadUnits(0, UnitMixUp.KilonewtonAndKip, true),
            Said.Only(Said.Verticals(Two, "37.84", "24.54")).Slip);

    [Fact]
    public void OneForceTooSmallToSee_IsLeftOut() // 12 lb for 12 kip: 0.01 of what is left
    {
        Explanation only = Said.Only(Said.Verticals(Two, "2.3", "6.8"));

        Assert.Equal(new Slip.LoadLeftOut(0), only.Slip);
        Assert.Equal([2_250, 6_750], only.Predicted.Select(value => Math.Round(value, 6)));
    }

    [Fact]
    public void OneSpreadLoadInAnotherUnit() => // 3 kN/ft for 3 kN/m: 7.382, 22.146 besides 8, 4
        Assert.Contains(
            new Slip.LoadUnits(1, UnitMixUp.FootAndMetre, true),
            Said.Explanations(Said.Verticals(Two, "15.38", "26.15")).Select(told => told.Slip));

    [Fact]
    public void OnePlaceInAnotherUnit() => // 12 kN at 2 ft, 0.6096 m: B 1.2192, A 10.7808
        Assert.Equal(
            new Slip.PlaceUnits(0, UnitMixUp.FootAndMetre, false),
            Said.Only(Said.Verticals(Two, "13.03", "7.97")).Slip);

    [Fact]
    public void OneLengthInAnotherUnit() => // 3 kN/m from 3 m over 3 ft: 2.7432 kN at 3.4572 m: B 1.5806, A 1.1626
        Assert.Equal(
            new Slip.StretchUnits(1, UnitMixUp.FootAndMetre, false),
            Said.Only(Said.Verticals(Two, "9.16", "5.58")).Slip);

    [Fact]
    public void SimpleSpansForAContinuousBeam()
    {
        Explanation only = Said.Only(Said.Verticals(Continuous, "12.0", "24.0", "12.0"));

        Assert.Equal(new Slip.SimpleSpans(), only.Slip);
        Assert.Equal([12_000, 24_000, 12_000], only.Predicted.Select(value => Math.Round(value, 6)));
    }

    [Fact]
    public void HingeOverlooked()
    {
        // Hinged at B the two spans are simple, 12, 24, 12; without the hinge 9, 30, 9.
        BeamModel model = Continuous with { Hinges = [4] };

        Assert.Equal(new Slip.HingeOverlooked(0), Said.Only(Said.Verticals(model, "9.00", "30.0", "9.00")).Slip);
    }

    [Fact]
    public void PatternOnOneBay()
    {
        // Only the left span loaded: 10.5, 15, -1.5.
        Slip slip = Said.Only(Said.Verticals(Continuous, "10.5", "15.0", "-1.5")).Slip;

        Slip.Pattern pattern = Assert.IsType<Slip.Pattern>(slip);
        Assert.Equal(0, pattern.Case);
        Assert.Equal(0, Assert.Single(pattern.Bays));
    }

    [Fact]
    public void SupportMoved_IsFittedAndStandsApart()
    {
        // 12 kN at 2 m of 6 m; 7.2 and 4.8 would be right with B at 5 m, or with A at 2 - 4 x 4.8 / 7.2 off the beam.
        BeamModel model = Said.Simple(6, Said.Point(2, 12));

        Explanation only = Assert.Single(Said.Explanations(Said.Verticals(model, "7.20", "4.80")));

        Slip.SupportMoved moved = Assert.IsType<Slip.SupportMoved>(only.Slip);
        Assert.Equal(1, moved.Support);
        Assert.Equal(5, moved.Position, 3);
        Assert.True(only.IsFitted);
    }

    [Fact]
    public void LoadThatTheBeamLacks_IsFittedAndStandsApart()
    {
        // 1.7 kN less at 4.5 m than there is: A 0.425 and B 1.275 less.
        Diagnosis.Differs differs = Assert.IsType<Diagnosis.Differs>(
            new ExplanationSearch().Explain(Said.Verticals(Two, "9.825", "9.475")));

        Explanation only = Assert.Single(differs.Explanations);
        Slip.LoadMissing missing = Assert.IsType<Slip.LoadMissing>(only.Slip);
        Assert.Equal(1700, missing.Down, 3);
        Assert.Equal(4.5, missing.Position, 3);
        Assert.True(only.IsFitted);
        Assert.Null(differs.FalseClaimRate);
    }

    [Fact]
    public void SameFigures_AreTies()
    {
        // Two equal loads in one place: nobody can tell which was left out.
        BeamModel model = Said.Simple(6, Said.Point(2, 6), Said.Point(2, 6), Said.Point(5, 6));

        Explanation[] told = [.. Said.Explanations(Said.Verticals(model, "5.00", "7.00")).Where(one => !one.IsFitted)];

        Assert.Equal([new Slip.LoadLeftOut(0), new Slip.LoadLeftOut(1)], told.Select(one => one.Slip));
        Assert.Equal(1, Assert.Single(told[0].TiedWith));
        Assert.Equal(0, Assert.Single(told[1].TiedWith));
    }

    [Fact]
    public void LoadsWithoutAPartInTheCombination_AreNoCandidates()
    {
        BeamModel model = Two with { Cases = [.. Two.Cases, new LoadCase("wind", [Said.Point(3, 5)])] };
        model = model with { Combinations = [] };
        StatedSet stated = Said.Verticals(model, "12.75", "13.25") with { Factors = [1, 0] };

        Assert.DoesNotContain(Said.Explanations(stated), told => told.Slip is Slip.LoadDoubled or Slip.LoadUnits);
    }

    [Fact]
    public void SupportsThatOnlyPush_LiftOffUnderEachSlip()
    {
        // 8 m on A 0, B 4, C 8, all only pushing; 6 kN at 2 m and 2 kN at 6 m. Left out the second, C lifts: A 3, B 3.
        BeamModel model = Said.On([4, 4], [0, 4, 8], Said.Point(2, 6), Said.Point(6, 2));
        model = model with
        {
            Supports = [.. model.Supports.Select(one => one with { Action = SupportAction.PushesOnly })],
        };
        StatedSet stated = Said.Verticals(model, "3.00", "3.00", "0.00");
        Assert.IsType<BeamOutcome.Stands>(new BeamSolver().Solve(model));

        Assert.Equal(new Slip.LoadLeftOut(1), Said.Only(stated).Slip);
    }

    // 5/16 and 11/16 of a load in the middle of the first of two spans of 4 m, less 3/32 of it at the other end: 6 kN at
    // 2 m gives 2.4375, 4.125, -0.5625; 2 kN at 6 m gives -0.1875, 1.375, 0.8125. Twice the second keeps C down.
    [Theory]
    [InlineData(SupportAction.PushesOnly)]
    [InlineData(SupportAction.Both)]
    public void SupportsThatStayDown_AnswerAsIfTheyActedBothWays(SupportAction action)
    {
        BeamModel model = Said.On([4, 4], [0, 4, 8], Said.Point(2, 6), Said.Point(6, 2));
        model = model with { Supports = [.. model.Supports.Select(one => one with { Action = action })] };

        Explanation only = Said.Only(Said.Verticals(model, "2.0625", "6.8750", "1.0625"));

        Assert.Equal(new Slip.LoadDoubled(1), only.Slip);
        Assert.Equal([2062.5, 6875, 1062.5], only.Predicted.Select(value => Math.Round(value, 6)));
    }

    // 100 kN at 2 m of 6 m: A 66.667, B 33.333. 2 kN/m from 1 to 2 m: A 1.5, B 0.5. Of those 2 kN a twelfth is left, at
    // 1.042 m or at 1.5 m: A 0.138, B 0.029 or A 0.125, B 0.042. As rounded, 66.8 and 33.4 either way.
    [Fact]
    public void OneLoadInAnotherUnit_IsTiedWhateverOfItThatIs()
    {
        StatedSet stated = Said.Verticals(Said.Simple(6, Said.Point(2, 100), Said.Spread(1, 2, 2)), "66.8", "33.4");

        ImmutableArray<Explanation> told = Said.Explanations(stated);

        int stretch = IndexOf(new Slip.StretchUnits(1, UnitMixUp.InchAndFoot, false));
        int size = IndexOf(new Slip.LoadUnits(1, UnitMixUp.InchAndFoot, false));
        Assert.Contains(size, told[stretch].TiedWith);
        Assert.Contains(stretch, told[size].TiedWith);
        Assert.NotEqual(stretch, size);

        int IndexOf(Slip slip) => told.Select(one => one.Slip).ToList().IndexOf(slip);
    }

    // The same 2 kN, 12 times too short, beside 1000 kN: 667 and 333 with them and without.
    [Fact]
    public void StretchTooShortToSee_IsLeftOut()
    {
        StatedSet stated = Said.Verticals(
            Said.Simple(6, Said.Point(2, 1000), Said.Spread(1, 2, 2)), "666.7", "333.3");

        Slip[] told = [.. Said.Explanations(stated).Select(one => one.Slip)];

        Assert.Equal(new Slip.LoadLeftOut(1), told[0]);
        Assert.DoesNotContain(told, slip => slip is Slip.StretchUnits);
    }

    [Fact]
    public void SeveralExplanations_CarryTheRateOfFalseClaimsToo()
    {
        BeamModel model = Said.Simple(6, Said.Point(2, 6), Said.Point(2, 6), Said.Point(5, 6));

        Diagnosis.Differs differs = Assert.IsType<Diagnosis.Differs>(
            new ExplanationSearch().Explain(Said.Verticals(model, "5.00", "7.00")));

        Assert.Equal(FalseClaims.Rate(2, 3), differs.FalseClaimRate);
    }

    [Fact]
    public void CheaperSlip_ComesFirst()
    {
        // Own weight 0.5 kN/m besides a spread load of the same: either may be left out.
        BeamModel model = Weighing with
        {
            Cases = [Weighing.Cases[0], new LoadCase("live", [Said.Spread(0, 6, 0.5), Said.Point(2, 12)])],
        };
        StatedSet stated = Said.Verticals(model, "9.50", "5.50") with { OwnWeight = [0], PermanentCases = [0] };

        Explanation[] told = [.. Said.Explanations(stated).Where(one => !one.IsFitted)];

        Assert.Equal([new Slip.OwnWeightLeftOut(), new Slip.LoadLeftOut(1)], told.Select(one => one.Slip));
        Assert.Equal(1, Assert.Single(told[0].TiedWith));
    }
}
