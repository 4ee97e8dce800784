using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>A combination of one case alone with factor 1 is that case's answer, not solved again.</summary>
public sealed class CaseReuseTests
{
    private static readonly double[][] Factors = [[1, 0, 0], [0, 1, 0], [0, 0, 1], [1, 1, 0], [0, 2, 0], [0, 0, 0], [0, 1, 1]];

    [Fact]
    public void CombinationOfOneCase_IsItsAnswer_AndNoOtherIs()
    {
        BeamOutcome.Stands stands = Stands(Cased(Support.Fixed(0)));

        int?[] same = [.. stands.Combinations.Select(one => SameAs(stands, one))];
        Assert.Equal([0, 1, 2, null, null, null, null], same);
        Assert.Null(stands.ImposedMovements);
        Assert.Equal(
            stands.Cases[0]!.Reactions[1].Vertical + stands.Cases[1]!.Reactions[1].Vertical,
            stands.Combinations[3].Response.Reactions[1].Vertical,
            1e-9);
    }

    public static TheoryData<Support> Imposed() =>
    [
        Support.Fixed(0) with { ImposedRotation = 0.001 },
        Support.Fixed(0) with { Settlement = 0.001 },
        Support.Pin(0) with { Settlement = -0.001 },
    ];

    [Theory]
    [MemberData(nameof(Imposed))]
    public void WithImposedMovements_EveryCombinationHasThemToo(Support first)
    {
        BeamOutcome.Stands stands = Stands(Cased(first));

        Assert.All(stands.Combinations, one => Assert.Null(SameAs(stands, one)));
        Assert.NotNull(stands.ImposedMovements);
        Assert.Equal(
            stands.Cases[0]!.Reactions[1].Vertical + stands.ImposedMovements.Reactions[1].Vertical,
            stands.Combinations[0].Response.Reactions[1].Vertical,
            1e-9);
    }

    [Fact]
    public void RotationImposedWhereNothingHoldsIt_ImposesNothing() =>
        Assert.Null(Stands(Cased(Support.Pin(0) with { ImposedRotation = 0.001 })).ImposedMovements);

    [Fact]
    public void BeamHeldAlong_IsSaidSo_AlsoWhereSupportsActOneWay()
    {
        Support push = Support.Roller(6) with { Action = SupportAction.PushesOnly };

        Assert.True(Stands(Beam(6, [Support.Pin(0), push], [])).IsHeldAlong);
        Assert.False(Stands(Beam(6, [Support.Roller(0), push], [])).IsHeldAlong);
    }

    [Fact]
    public void SolveParts_OfABeamThatCanMove_IsNothing()
    {
        BeamSolver solver = new();

        Assert.Null(solver.SolveParts(Beam(6, [Support.Pin(0)], [new Load.Point(3, 10)]), 1));
        Assert.Null(solver.SolveParts(Beam(6, [Support.Roller(0), Support.Roller(6)], [new Load.Point(3, 10, 10)]), 1));
        Assert.NotNull(solver.SolveParts(Beam(6, [Support.Roller(0), Support.Roller(6)], [new Load.Point(3, 10)]), 1));
    }

    [Fact]
    public void SolveParts_AndSolveImposed_BeyondTheArithmetic_AreNothing()
    {
        BeamModel model = Beam(
            [new Span(1, 1e300, 1e9), new Span(1, 1e-300, 1e9)], [Support.Fixed(0)], [new Load.Point(2, 1e300)]);
        BeamModel settled = Beam(
            [new Span(2, 1e300, 1e9)],
            [Support.Fixed(0), Support.Roller(2) with { Settlement = 1e300 }],
            []);
        BeamSolver solver = new();

        Assert.Null(solver.SolveParts(model, 1));
        Assert.Null(solver.SolveParts(model, 0));
        Assert.Null(solver.SolveImposed(settled));
    }

    private static BeamModel Cased(Support first) => new(
        [new Span(6, Rigidity, 1e9)],
        [first, Support.Roller(6)],
        [],
        [
            new LoadCase("one", [new Load.Point(2, 1000)]),
            new LoadCase("two", [Uniform(0, 6, 300)]),
            new LoadCase("three", [new Load.Couple(4, 500)]),
        ],
        [.. Factors.Select((factors, i) => new Combination($"{i}", CombinationBasis.Service, [.. factors]))]);

    private static int? SameAs(BeamOutcome.Stands stands, CombinationResponse combination)
    {
        int same = stands.Cases.IndexOf(combination.Response);
        return same >= 0 && ReferenceEquals(stands.Cases[same], combination.Response) ? same : null;
    }
}
