using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Places of made-up figures whose course along the beam is known: given as how far they are off, in what is allowed.</summary>
public sealed class ExplanationPlacesTests
{
    private const double Computed = 2000;

    // Of these the first is the farthest off as computed: by 100 and 50 of what is allowed.
    private static readonly ExplanationBeam Two = Beam([], (1000, 10), (1500, 10));

    [Fact]
    public void Stretch_IsLookedAtInEqualSteps()
    {
        List<double> asked = [];

        Assert.Null(Find(Two, Asked(asked, Off(Two, _ => 50)), (2, 10), 5, 4));

        Assert.Equal([2, 4, 6, 8, 10], asked);
    }

    // In doubles 0.3 + (0.9 - 0.3) is a little more than 0.9: beyond the end of a beam nothing can stand.
    [Fact]
    public void LastStep_EndsAtTheEnd()
    {
        List<double> asked = [];

        Assert.Null(Find(Two, Asked(asked, Off(Two, _ => 50)), (0.3, 0.9), 0.5, 1));

        Assert.Equal([0.3, 0.9], asked);
    }

    [Theory]
    [InlineData(3, 3)]
    [InlineData(4, 3)]
    public void StretchWithoutLength_HoldsNoPlace(double from, double to) => Assert.Null(
        new ExplanationPlaces(Two, Off(Two, _ => 0), null).Find(from, to, 3, 4));

    [Theory]
    [InlineData(0)]
    [InlineData(3.3)]
    [InlineData(10)]
    public void Figure_ComesOutRightWhereItCrosses(double root) => Assert.Equal(
        root, Find(Two, Off(Two, x => 1000 * (x - root)), (0, 10), 5, 1)!.Value.Place, 9);

    [Theory]
    [InlineData(4, 2)]
    [InlineData(7, 8)]
    public void OfTwoPlaces_TheNearestIsTaken(double near, double root) => Assert.Equal(
        root, Find(Two, Off(Two, x => 100 * (x - 2) * (x - 8)), (0, 10), near, 4)!.Value.Place, 5);

    // Here one of the steps is so near the other place that it would be found from there too.
    [Fact]
    public void OfTwoPlaces_TheNearestIsTaken_ThoughAStepAlmostHitsTheOther() => Assert.Equal(
        8, Find(Two, Off(Two, x => (x - 2) * (x - 8)), (0, 10), 8, 4)!.Value.Place, 2);

    [Fact]
    public void PlacesThatStepsHit_AreTakenLikeAnyOther() => Assert.Equal(
        7.5, Find(Two, Off(Two, x => 100 * (x - 2.5) * (x - 7.5)), (0, 10), 10, 4)!.Value.Place);

    // Too little up to 3.3 m, too much from there to the very end.
    [Fact]
    public void PlaceAtTheEnd_CountsAmongOthers() => Assert.Equal(
        10, Find(Two, Off(Two, x => 100 * (x - 3.3) * (10 - x)), (0, 10), 10, 2)!.Value.Place);

    // Computed are 2000 each; what is allowed stands beside what is stated.
    [Theory]
    [InlineData(1, 1900, 10, 1500, 10, 1900, 10)] // off by 10, 50, 10 of it
    [InlineData(1, 1000, 500, 1900, 5, 1000, 500)] // by 2, 20, 2, though 1000, 100, 1000 N
    [InlineData(1, 2100, 10, -1000, 10, 2100, 10)] // by 10, 300, 10, though it adds up to less
    [InlineData(0, 1500, 10, 1900, 10, 1900, 10)]
    [InlineData(2, 1900, 10, 1900, 10, 1500, 10)]
    public void PlaceIsSought_ByTheFigureFarthestOff(
        int figure, double first, double allowed, double second, double allowedToo, double third, double allowedLast)
    {
        ExplanationBeam beam = Beam([], (first, allowed), (second, allowedToo), (third, allowedLast));
        Func<double, double>[] off = [_ => 0, _ => 0, _ => 0];
        off[figure] = x => 100 * (x - 3.3);

        Assert.Equal(3.3, Find(beam, Off(beam, off), (0, 10), 5, 1)!.Value.Place, 9);
    }

    [Theory]
    [InlineData(0.001)]
    [InlineData(10)]
    public void CurvedFigure_ComesOutRightToAThousandthOfWhatIsAllowed(double allowed)
    {
        ExplanationBeam beam = Beam([], (1, allowed));

        (double place, double[] predicted) = Find(beam, x => [1 + 1000 * (x * x * x - 27)], (0, 10), 5, 1)!.Value;

        Assert.InRange(place, 3 - 1e-3, 3 + 1e-3);
        Assert.InRange(predicted[0], 1 - 1.01e-3 * allowed, 1 + 1.01e-3 * allowed);
    }

    // x² - 2 from 0 to 2 by the Illinois rule (Dowell and Jarratt, BIT 11, 1971): 1 and 4/3 leave the right end where it is,
    // so that it counts half; 16/11 is beyond, and both ends have moved: 65/46 is plain false position.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void EndThatStaysPut_CountsHalf(bool isMirrored)
    {
        List<double> asked = [];

        double place = Find(
            Two, Asked(asked, Off(Two, x => 1e6 * (Mirrored(x) * Mirrored(x) - 2))), (0, 2), 1, 1)!.Value.Place;

        Assert.Equal(Math.Sqrt(2), Mirrored(place), 8);
        Assert.Equal(
            new[] { 1, 4.0 / 3, 16.0 / 11, 65.0 / 46 }.Select(x => Math.Round(x, 9)),
            asked[2..6].Select(x => Math.Round(Mirrored(x), 9)));

        double Mirrored(double x) => isMirrored ? 2 - x : x;
    }

    [Fact]
    public void JumpOverWhatIsStated_IsNoPlace() => Assert.Null(
        Find(Two, Off(Two, x => x < Math.PI ? -100 : 100), (0, 10), 5, 2));

    [Fact]
    public void WhereNothingStands_IsNoPlace()
    {
        Func<double, double[]?> stands = Off(Two, x => 100 * (x - 3.3));

        Assert.Null(Find(Two, x => x is > 3 and < 4 ? null : stands(x), (0, 10), 5, 1));
    }

    [Fact]
    public void HingeIsNoPlace()
    {
        ExplanationBeam beam = Beam([5], (1000, 10));

        Assert.Null(Find(beam, Off(beam, x => 100 * (x - 5)), (0, 10), 5, 2));
    }

    // One is right at 7 m, the other 0.15 m further: half-way they are off by 0.75 of what is allowed, either way.
    [Fact]
    public void FiguresRightAtPlacesNearby_ShareItOut()
    {
        List<double> asked = [];

        (double place, double[] predicted) = Find(
            Two, Asked(asked, Off(Two, x => 10 * (x - 7), x => 10 * (x - 7.15))), (6, 10), 8, 1)!.Value;

        Assert.Equal(7.075, place, 4);
        Assert.Equal([1007.5, 1492.5], predicted.Select(figure => Math.Round(figure, 2)));
        Assert.Equal([6, 10, 7, 7.0004], asked[..4].Select(x => Math.Round(x, 9)));
    }

    [Fact]
    public void FiguresWithUnlikeRounding_ShareItOutInParts()
    {
        // 0.5 m apart at 100 N a metre: 50 N to share among 10 and 40 N allowed.
        ExplanationBeam beam = Beam([], (1000, 10), (1500, 40));

        (double place, double[] predicted) = Find(
            beam, x => [1000 + 100 * (x - 3), 1500 + 100 * (x - 3.45)], (0, 10), 5, 1)!.Value;

        Assert.Equal(3.09, place, 3);
        Assert.Equal([1009, 1464], predicted.Select(figure => Math.Round(figure, 1)));
    }

    // At the very end the place can be moved one way only.
    [Theory]
    [InlineData(6, 6.15, 6.075)]
    [InlineData(10, 9.85, 9.925)]
    public void PlaceAtAnEnd_IsMovedInwards(double one, double other, double place) => Assert.Equal(
        place, Find(Two, Off(Two, x => 10 * (x - one), x => 10 * (x - other)), (6, 10), 8, 1)!.Value.Place, 4);

    [Fact]
    public void FiguresWellWithin_AreLeftAlone() => Assert.Equal(
        7, Find(Two, Off(Two, x => 10 * (x - 7), x => 10 * (x - 7.04)), (6, 10), 8, 1)!.Value.Place, 9);

    [Fact]
    public void FiguresThatStayApart_AreNoPlace() => Assert.Null(
        Find(Two, Off(Two, x => 100 * (x - 7), x => 100 * (x - 7.15)), (6, 10), 8, 1));

    // One figure grows from 2000 to the 3000 stated at 3 m. The other would have to grow by 500 and does by 485: by 1/32.33
    // more of all, 0.03093, it is right; so much less far along is the first, 3 m less 0.0928 m.
    [Fact]
    public void SizeMayVaryALittleToo()
    {
        ExplanationBeam beam = Beam([], (3000, 10), (2500, 10));

        (double place, double[] predicted) = Find(beam, x => [2000 + 1000 * x / 3, 2485], (0, 10), 5, 1, 1000)!.Value;

        Assert.InRange(place, 2.90, 2.92);
        Assert.InRange(predicted[0], 2997, 3003);
        Assert.InRange(predicted[1], 2498, 2502);
        Assert.Null(Find(beam, x => [2000 + 1000 * x / 3, 2485], (0, 10), 5, 1));
    }

    // 50 (x - 4.6)² touches nothing at 4.6 m. From 5 m, off by 8 and falling by 40 a metre, 0.2 m on: off by 2; 0.1 m on: 0.5.
    [Fact]
    public void FigureThatOnlyTouches_IsFollowedFromTheBestStep()
    {
        (double place, double[] predicted) = Find(Two, Off(Two, x => 50 * (x - 4.6) * (x - 4.6)), (0, 10), 5, 2)!.Value;

        Assert.Equal(4.7, place, 3);
        Assert.InRange(predicted[0], 1004.9, 1005.1);
    }

    [Fact]
    public void StepThatFits_IsTakenAsItIs() => Assert.Equal( // off by 0.8
        5, Find(Two, Off(Two, x => 5 * (x - 4.6) * (x - 4.6)), (0, 10), 5, 2)!.Value.Place);

    [Fact]
    public void FigureThatComesNear_ButNotNearEnough_IsNoPlace() => Assert.Null(
        Find(Two, Off(Two, x => 50 * (x - 4.6) * (x - 4.6) + 1.1), (0, 10), 5, 2));

    // The second figure is off by all that is allowed, wherever the first is right.
    [Theory]
    [InlineData(0)]
    [InlineData(50)]
    public void WhatIsAllowed_FitsToTheLast(double curve)
    {
        ExplanationBeam beam = Beam([], (-1000, 10), (0, 10));
        Func<double, double[]?> first = Off(beam, x => curve == 0 ? 1000 * (x - 3) : 0.2 + curve * (x - 5) * (x - 5));

        double place = Find(beam, x => [first(x)![0], beam.Fit.Allowed[1]], (0, 10), 5, curve == 0 ? 1 : 2)!.Value.Place;

        Assert.InRange(place, curve == 0 ? 2.999 : 5, curve == 0 ? 3.001 : 5);
    }

    /// <summary>Three supports 10 m apart, each with what is computed for it right above it; as many figures as given.</summary>
    private static ExplanationBeam Beam(ImmutableArray<double> hinges, params (double Value, double HalfDigit)[] figures)
    {
        Load[] loads = [.. Enumerable.Range(0, 3).Select(support => Said.Point(10 * support, Computed / Said.Kilo))];
        StatedSet stated = new(
            Said.On([10, 10], [0, 10, 20], loads) with { Hinges = hinges },
            [1],
            [.. figures.Select((one, i) => new ReactionFigure(i, ReactionPart.Vertical, one.Value, one.HalfDigit))]);
        return ExplanationBeam.Of(stated, new BeamSolver(), new StiffnessMethod())!;
    }

    /// <summary>Figures that are off by so much of what is allowed; those not given are right everywhere.</summary>
    private static Func<double, double[]?> Off(ExplanationBeam beam, params Func<double, double>[] off) => place =>
    [
        .. beam.Stated.Figures.Select(
            (figure, i) => figure.Value + (i < off.Length ? off[i](place) : 0) * beam.Fit.Allowed[i]),
    ];

    private static Func<double, double[]?> Asked(List<double> asked, Func<double, double[]?> predict) => place =>
    {
        asked.Add(place);
        return predict(place);
    };

    /// <summary>Looks for the place; none outside the stretch may be asked for.</summary>
    private static (double Place, double[] Predicted)? Find(
        ExplanationBeam beam, Func<double, double[]?> predict, (double From, double To) on, double near, int steps, double? size = null)
    {
        ExplanationPlaces places = new(
            beam,
            place =>
            {
                Assert.InRange(place, on.From, on.To);
                return predict(place);
            },
            size);
        return places.Find(on.From, on.To, near, steps);
    }
}
