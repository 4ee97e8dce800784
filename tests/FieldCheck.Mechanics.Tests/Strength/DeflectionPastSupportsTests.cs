using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>
/// Bays beside a support that gives way or lets go are looked at as one besides: it may hold next to nothing, and halves of a
/// long sag are small. EI = 1e6 throughout.
/// </summary>
public sealed class DeflectionPastSupportsTests
{
    private static readonly DeflectionLimits Limits = new() { BayRatio = 360, OverhangRatio = 180 };

    /// <summary>
    /// Two bays of l = 3 m on a spring k: in the middle 5w(2l)⁴/384EI, less its push R(2l)³/48EI with R = k times what is left.
    /// </summary>
    [Theory]
    [InlineData(1.0)]
    [InlineData(5e4)]
    [InlineData(1e6)]
    public void Spring_IsNoEndOfTheLongBay(double stiffness)
    {
        double free = 5 * 2000 * Math.Pow(6, 4) / 384e6;
        double expected = free / (1 + stiffness * Math.Pow(6, 3) / 48e6);

        ImmutableArray<SectionCheck> all = Find(
            Checked.Model([3, 3], [Support.Pin(0), Support.Spring(3, stiffness), Support.Roller(6)], Checked.Uniform(0, 6, 2000)));

        Assert.Equal([(0, null), (1, null), (0, (int?)1)], all.Select(one => (one.Bay!.Value, one.LastBay)));
        SectionCheck whole = all[2];
        Assert.Equal(CheckKind.Deflection, whole.Kind);
        Assert.Equal(6.0 / 360, whole.Limit!.Value, 1e-15);
        Assert.Equal(6, whole.Term(CheckSymbol.BayLength));
        Assert.InRange(whole.Demand!.Value, expected * (1 - 1e-9), stiffness > 1e5 ? double.MaxValue : expected * (1 + 1e-9));
    }

    /// <summary>A rest 40 mm low that the beam, which sags 33.75 mm, does not come down to: 5w(2l)⁴/384EI.</summary>
    [Fact]
    public void RestThatIsNotReached_IsNoEndOfABay()
    {
        ImmutableArray<SectionCheck> all = Find(Checked.Model(
            [3, 3],
            [Support.Pin(0), Support.Roller(3) with { Action = SupportAction.PushesOnly, Settlement = 0.04 }, Support.Roller(6)],
            Checked.Uniform(0, 6, 2000)));

        Assert.Equal(5 * 2000 * Math.Pow(6, 4) / 384e6, Assert.Single(all, one => one.LastBay is not null).Demand!.Value, 1e-12);
        Assert.Equal(CheckVerdict.Over, all[2].Verdict);
    }

    /// <summary>A support that holds, and one that settles with the beam on it, are ends of bays like any other.</summary>
    [Theory]
    [InlineData(SupportAction.PushesOnly, 0)]
    [InlineData(SupportAction.Both, 0.04)]
    public void SupportThatHolds_PartsTheBays(SupportAction action, double settlement)
    {
        ImmutableArray<SectionCheck> all = Find(Checked.Model(
            [3, 3],
            [Support.Pin(0), Support.Roller(3) with { Action = action, Settlement = settlement }, Support.Roller(6)],
            Checked.Uniform(0, 6, 2000)));

        Assert.Equal([0, 1], all.Select(one => one.Bay!.Value));
        Assert.All(all, one => Assert.Null(one.LastBay));
    }

    /// <summary>
    /// A load on the first of two bays lifts the beam off its far end: what stands out beyond the middle turns there as the
    /// end of a simple span under a force in the middle, Pl²/16EI, and is straight: up by that slope times its length.
    /// </summary>
    [Fact]
    public void EndThatLiftsOff_IsAnOverhang()
    {
        ImmutableArray<SectionCheck> all = Find(Checked.Model(
            [4, 2],
            [Support.Pin(0), Support.Roller(4), Support.Roller(6) with { Action = SupportAction.PushesOnly }],
            new Load.Point(2, 3000)));

        SectionCheck end = Assert.Single(all, one => one.Kind == CheckKind.OverhangDeflection);
        Assert.Equal((1, 2), (end.Bay, end.LastBay));
        Assert.Equal(3000 * 16 / 16e6 * 2, end.Demand!.Value, 1e-12);
        Assert.Equal(2.0 / 180, end.Limit!.Value, 1e-15);
        Assert.Equal(6, end.Position);
    }

    [Fact]
    public void LeftEndThatLiftsOff_IsAnOverhang()
    {
        ImmutableArray<SectionCheck> all = Find(Checked.Model(
            [2, 4],
            [Support.Roller(0) with { Action = SupportAction.PushesOnly }, Support.Pin(2), Support.Roller(6)],
            new Load.Point(4, 3000)));

        SectionCheck end = Assert.Single(all, one => one.Kind == CheckKind.OverhangDeflection);
        Assert.Equal((-1, 0), (end.Bay, end.LastBay));
        Assert.Equal(3000 * 16 / 16e6 * 2, end.Demand!.Value, 1e-12);
        Assert.Equal(0, end.Position);
    }

    /// <summary>A slack strap is no support either; a strap that holds is one.</summary>
    [Theory]
    [InlineData(1, true)]
    [InlineData(-1, false)]
    public void Strap_IsNoEndWhereItIsSlack(int sense, bool isSlack)
    {
        ImmutableArray<SectionCheck> all = Find(Checked.Model(
            [3, 3],
            [Support.Pin(0), Support.Roller(3) with { Action = SupportAction.HoldsDownOnly }, Support.Roller(6)],
            Checked.Uniform(0, 6, sense * 2000)));

        Assert.Equal(isSlack, all.Any(one => one.LastBay is not null));
    }

    /// <summary>On springs throughout the outermost are the ends.</summary>
    [Fact]
    public void SpringsThroughout_AreMeasuredFromTheOutermost()
    {
        ImmutableArray<Support> springs =
            [Support.Pin(0) with { Across = new Restraint.Spring(1e5) }, Support.Spring(3, 1e3), Support.Spring(6, 1e5)];

        SectionCheck whole = Assert.Single(Find(Checked.Model([3, 3], springs, Checked.Uniform(0, 6, 2000))), one => one.LastBay is not null);

        // What the ends leave of it: the middle spring counts against the two outer ones in a row.
        double push = 5 * 2000 * Math.Pow(6, 4) / 384e6 + 6000 / 1e5;
        double middle = push / (1 / 1e3 + Math.Pow(6, 3) / 48e6 + 0.5 / 1e5);
        Assert.Equal((5 * 2000 * Math.Pow(6, 4) / 8 - middle * Math.Pow(6, 3)) / 48e6, whole.Demand!.Value, 1e-9);
    }

    /// <summary>Patterns and a rolling load with supports that move: the long bay is among what is solved one by one.</summary>
    [Fact]
    public void LongBay_IsLookedForUnderRollingLoadsToo()
    {
        StrengthProblem problem = Checked
            .Problem(Checked.Model([3, 3], [Support.Pin(0), Support.Spring(3, 1), Support.Roller(6)]))
            .WithRolling(new RollingLoad("wheel", 0, [new Axle(0, 9000)], 0))
            .With(Limits);

        SectionCheck whole = Assert.Single(problem.Find(), one => one.LastBay is not null);

        Assert.Equal(9000 * Math.Pow(6, 3) / 48e6, whole.Demand!.Value, 1e-5);
        Assert.Equal(3, whole.Position!.Value, 1e-3);
    }

    /// <summary>Under one case alone, and in time: (1 + creep) times the deflection at once.</summary>
    [Fact]
    public void LongBay_IsJudgedUnderACaseAndInTime()
    {
        BeamModel model = Checked.Model([3, 3], [Support.Pin(0), Support.Spring(3, 1), Support.Roller(6)], Checked.Uniform(0, 6, 2000));
        double free = 5 * 2000 * Math.Pow(6, 4) / 384e6;
        SectionCheck[] whole =
        [
            .. Checked.Problem(model, Checked.Stick(creep: 0.6))
                .With(new DeflectionLimits { FinalBayRatio = 240, Lasting = [1], Cases = [new CaseDeflectionLimit(0, 360)] })
                .Find()
                .Where(one => one.LastBay is not null),
        ];

        Assert.Equal([CheckKind.Deflection, CheckKind.FinalDeflection], whole.Select(one => one.Kind));
        Assert.Equal(free, whole[0].Demand!.Value, 1e-6);
        Assert.Equal(1.6 * free, whole[1].Demand!.Value, 1e-6);
        Assert.Equal(6.0 / 240, whole[1].Limit!.Value, 1e-15);
    }

    /// <summary>What is judged: without an overhang its limit has nothing to judge.</summary>
    private static ImmutableArray<SectionCheck> Find(BeamModel model) =>
        [.. Checked.Problem(model).With(Limits).Find().Where(one => one.Bay is not null)];
}
