using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Places of one support, and size and place of one load, that give the figures.</summary>
public sealed class ExplanationFittedTests
{
    // 12 kN at 2 m: B at b carries 24 / b.
    private static readonly BeamModel Simple = Said.Simple(6, Said.Point(2, 12));

    private static readonly BeamModel Cantilever = Said.Simple(6, Said.Point(2, 10)) with { Supports = [Support.Fixed(0)] };

    [Fact]
    public void WithoutEveryVertical_NothingIsFitted() => Assert.Empty(Fitted(Said.Verticals(Simple, "7.20")));

    // B at 0.012 m, and at 0.003 m: a thousandth of 6 m is kept clear of A.
    [Theory]
    [InlineData("-1988", "2000", 0.012)]
    [InlineData("-7988", "8000", null)]
    public void Support_IsNotMovedRightUpToItsNeighbour(string a, string b, double? position)
    {
        ImmutableArray<Slip> fitted = Fitted(Said.Verticals(Simple, a, b));

        Assert.Equal(position is null ? 0 : 1, fitted.Length);
        if (position is not null)
        {
            Slip.SupportMoved moved = Assert.IsType<Slip.SupportMoved>(fitted[0]);
            Assert.Equal(1, moved.Support);
            Assert.Equal(position.Value, moved.Position, 4);
        }
    }

    // A at 1 m, B at 6 m of 6. B at 0.5 m, beyond A, would give the same as A at 14/3 m: 36 and -24 kN.
    [Fact]
    public void Support_IsNotMovedBeyondItsLeftNeighbour()
    {
        BeamModel model = Simple with { Supports = [Support.Pin(1), Support.Roller(6)] };

        Slip.SupportMoved moved = Assert.IsType<Slip.SupportMoved>(Assert.Single(Fitted(Said.Verticals(model, "36.0", "-24.0"))));

        Assert.Equal(0, moved.Support);
        Assert.Equal(14.0 / 3, moved.Position, 2);
    }

    // A at 0, B at 4 m of 6. A at 5 m would give the same as B at 2/3 m: -24 and 36 kN.
    [Fact]
    public void Support_IsNotMovedBeyondItsRightNeighbour()
    {
        BeamModel model = Simple with { Supports = [Support.Pin(0), Support.Roller(4)] };

        Slip.SupportMoved moved = Assert.IsType<Slip.SupportMoved>(Assert.Single(Fitted(Said.Verticals(model, "-24.0", "36.0"))));

        Assert.Equal(1, moved.Support);
        Assert.Equal(2.0 / 3, moved.Position, 2);
    }

    // Six spans of 4 m; the figures are those of the beam solved with the support there. It is looked for near the vertical that
    // is farthest off, not near the greatest: 100 kN stand in the second span or in the last but one.
    [Theory]
    [InlineData(0, 0.5, 6)]
    [InlineData(0, 0.5, 18)]
    [InlineData(6, 23.5, 6)]
    [InlineData(6, 23.5, 18)]
    public void SupportThatIsMoved_IsFoundAmongMany(int support, double place, double heavy)
    {
        BeamModel model = Long([.. Enumerable.Range(0, 24).Select(i => Said.Point(i + 0.5, 5)), Said.Point(heavy, 100)]);
        BeamModel moved = model with
        {
            Supports = model.Supports.SetItem(support, ExplanationModels.Moved(model.Supports[support], place)),
        };

        Assert.Contains(
            Fitted(Solved(model, moved)),
            one => one is Slip.SupportMoved found && found.Support == support && Math.Abs(found.Position - place) < 0.01);
    }

    // 10 kN more at 9 m, in the third span.
    [Fact]
    public void LoadThatIsMissing_IsFoundInAnyBay()
    {
        BeamModel model = Long(Said.Spread(0, 24, 2));

        Slip.LoadMissing missing = Assert.IsType<Slip.LoadMissing>(
            Assert.Single(Fitted(Solved(model, Long(Said.Spread(0, 24, 2), Said.Point(9, 10))))));

        Assert.InRange(missing.Down, -10_010, -9_990); // a two-thousandth of some 20 kN
        Assert.Equal(9, missing.Position, 2);
    }

    // 5 kN more than 10 kN on a cantilever, its moment not told: anywhere.
    [Fact]
    public void WhereAnyPlaceWouldDo_TheMiddleIsTold() => Assert.Equal(
        3, Assert.IsType<Slip.LoadMissing>(Assert.Single(Fitted(Said.Verticals(Cantilever, "15.0")))).Position, 9);

    // 10 kN at 2 m, 20 kNm; 5 kN more at 4 m, 40 kNm: what the moment grows by is no load.
    [Fact]
    public void SizeOfAMissingLoad_IsThatOfTheVerticals()
    {
        StatedSet stated = new(
            Cantilever, [1], [Said.Figure(0, ReactionPart.Vertical, "15.0"), Said.Figure(0, ReactionPart.Moment, "40.0")]);

        Slip.LoadMissing missing = Assert.IsType<Slip.LoadMissing>(Assert.Single(Fitted(stated)));

        Assert.Equal(-5000, missing.Down, 1);
        Assert.Equal(4, missing.Position, 3);
    }

    private static BeamModel Long(params Load[] loads) =>
        Said.On([.. Enumerable.Repeat(4.0, 6)], [.. Enumerable.Range(0, 7).Select(i => 4.0 * i)], loads);

    /// <summary>The verticals of a beam solved whole, to the Newton, stated for another.</summary>
    private static StatedSet Solved(BeamModel model, BeamModel actual)
    {
        BeamOutcome.Stands stands = Assert.IsType<BeamOutcome.Stands>(new BeamSolver().Solve(actual));
        return new StatedSet(
            model,
            [1],
            [
                .. stands.Combinations[0].Response.Reactions.Select((one, support) =>
                    new ReactionFigure(support, ReactionPart.Vertical, Math.Round(one.Vertical), 0.5)),
            ]);
    }

    private static ImmutableArray<Slip> Fitted(StatedSet stated)
    {
        ExplanationBeam beam = Rough.Beam(stated);
        ExplanationList found = new(beam.Fit);
        ExplanationFitted.Try(beam, found);
        return [.. found.Ranked().Select(one => one.Slip)];
    }
}
