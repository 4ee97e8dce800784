using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>What a guess at the touching supports shows to be wrong, and by how much a resting beam is pressed to find it.</summary>
public sealed class ContactStateTests
{
    private readonly StiffnessMethod _method = new();
    private readonly Kinematics _kinematics = new();

    [Theory]
    [InlineData(1.0)]
    [InlineData(1e-9)]
    [InlineData(1e9)]
    public void LoadInOneSpan_MakesOneSupportWrong_HoweverSmallItIs(double force)
    {
        ContactState state = Solved(Beam(12, [Pushing(0), Pushing(6), Pushing(12)], [new Load.Point(3, force)]));

        Assert.Equal(1, state.FindWrong());
        Assert.Equal([false, false, true], Wrong(state));
        Assert.True(state.IsHeld);
    }

    [Fact]
    public void LoadBetweenTwoOfMany_MakesEveryOtherWrong()
    {
        // The far spans bend up and down by turns, each 1/(2 + √3) of the one before, so their reactions alternate.
        Support[] supports = [.. Enumerable.Range(0, 7).Select(i => Pushing(3.0 * i))];
        ContactState state = Solved(Beam(18, supports, [new Load.Point(1.5, 900)]));

        Assert.Equal(3, state.FindWrong());
        Assert.Equal([false, false, true, false, true, false, true], Wrong(state));
    }

    [Theory]
    [InlineData(1.0)]
    [InlineData(1e-9)]
    public void LiftedSupportThatTheBeamRunsInto_IsWrong_HoweverLittleItMoves(double size)
    {
        BeamModel model = Beam(12, [Pushing(0), Pushing(6), Pushing(12)], [new Load.Point(5, 1000 * size)]);
        ContactState state = Solved(model, 1);

        Assert.Equal(1, state.FindWrong());
        Assert.Equal([false, true, false], Wrong(state));
    }

    [Fact]
    public void LiftedSupportThatTheBeamJustMeets_IsNotWrong()
    {
        ContactState state = Solved(Beam(12, [Pushing(0), Pushing(6), Pushing(12)], []), 1);

        Assert.Equal(0, state.FindWrong());
    }

    [Fact]
    public void SupportThatActsBothWays_IsNeverWrong()
    {
        ContactState state = Solved(
            Beam(12, [Support.Pin(0), Support.Roller(6), Support.Roller(12)], [new Load.Point(3, 1000)]));

        Assert.Equal(0, state.FindWrong());
        Assert.Equal([false, false, false], Wrong(state));
    }

    [Theory]
    [InlineData(1000, 0)]
    [InlineData(1e-6, 0)]
    [InlineData(1000, 0.01)]
    public void WhatTipsOffTheSupportThatIsLeft_IsLetGo(double force, double settlement)
    {
        Support[] supports = [Pushing(0), Pushing(6) with { Settlement = settlement }];
        ContactState state = Solved(Beam(9, supports, [new Load.Point(9, force)]), 0);

        Assert.False(state.IsHeld);
        Assert.True(state.IsLetGo);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.01)]
    public void WithoutLoads_WhatRestsOnOneSupport_IsNotLetGo(double settlement)
    {
        ContactState state = Solved(Beam(9, [Pushing(0) with { Settlement = settlement }, Pushing(6)], []), 0);

        Assert.False(state.IsHeld);
        Assert.False(state.IsLetGo);
    }

    [Fact]
    public void LoadOverTheSupportThatIsLeft_IsNotLetGo()
    {
        ContactState state = Solved(Beam(9, [Pushing(0), Pushing(6)], [new Load.Point(6, 1000)]), 0);

        Assert.False(state.IsHeld);
        Assert.False(state.IsLetGo);
    }

    [Fact]
    public void LoadAlong_ThatNothingHolds_IsLetGo()
    {
        BeamModel model = Beam(9, [Pushing(0), Pushing(6)], [new Load.Point(3, 1000, 10)]);
        ContactState state = Solved(model);

        Assert.False(state.IsHeld);
        Assert.True(state.IsLetGo);
    }

    [Fact]
    public void Press_IsAMillionthOfWhatBendsTheBeamByTheLeastGap_SharedAmongTheSupports()
    {
        // EI/L³ times the gap; the softer of two spans counts.
        Support[] supports =
            [Pushing(0), Pushing(6) with { Settlement = 0.01 }, Pushing(12) with { Settlement = -0.004 }, Pushing(20)];
        BeamModel model = Beam([new Span(12, 5e6, 1e9), new Span(8, 2e6, 1e9)], supports, []);
        double bending = 0.004 * 2e6 / (20.0 * 20 * 20);
        ContactState state = Solved(model);

        state.Press(1);
        Assert.Equal(1e-6 * bending / 4, _method.Press, 1e-20);
        state.Press(-1);
        Assert.Equal(-1e-6 * bending / 4, _method.Press, 1e-20);
        state.Press(0);
        Assert.Equal(0, _method.Press);
    }

    [Theory]
    [InlineData(1e-4, 1e-4)]
    [InlineData(1e4, 0.004 * 2e6 / (12.0 * 12 * 12))]
    public void Press_IsAMillionthOfTheLoads_WhereTheyAreLess(double force, double pressing)
    {
        Support[] supports = [Pushing(0), Pushing(6), Pushing(12) with { Settlement = 0.004 }];
        ContactState state = Solved(Beam(12, supports, [new Load.Point(6, force)]));

        state.Press(1);

        Assert.Equal(1e-6 * pressing / 3, _method.Press, 1e-20);
    }

    [Fact]
    public void Press_OnLevelSupports_IsNothing()
    {
        ContactState state = Solved(Beam(12, [Pushing(0), Pushing(12)], [new Load.Point(6, 1000)]));

        state.Press(1);

        Assert.Equal(0, _method.Press);
    }

    [Fact]
    public void Press_OnASoftSpring_IsAThousandthOfWhatTheGapTakesOfIt()
    {
        Support[] supports = [Pushing(0), Support.Spring(6, 0.1), Pushing(12) with { Settlement = 0.004 }];
        ContactState state = Solved(Beam(12, supports, []));

        state.Press(1);

        // 1e-6 of the gap times 1e-9/1e-12 of the spring.
        Assert.Equal(1e-6 * 0.004 * 0.1 * 1000 / 3, _method.Press, 1e-20);
    }

    private ContactState Solved(BeamModel model, params int[] lifted)
    {
        _method.Prepare(model);
        _method.Load([1.0]);
        ContactState state = new(_method, _kinematics);
        state.Begin(model, Lengthways.IsAskedBy(model));
        foreach (int support in lifted)
        {
            state.Touching[support] = false;
        }

        Assert.True(state.Solve());
        return state;
    }

    private static bool[] Wrong(ContactState state) => [.. Enumerable.Range(0, state.Count).Select(state.IsWrong)];

    private static Support Pushing(double position) =>
        Support.Roller(position) with { Action = SupportAction.PushesOnly };
}
