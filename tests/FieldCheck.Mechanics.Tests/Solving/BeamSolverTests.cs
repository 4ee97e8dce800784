using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>Cases, combinations and imposed movements of one model, and one solver used over and over.</summary>
public sealed class BeamSolverTests
{
    private const double L = 6;
    private static readonly LoadCase Dead = new("dead", [Uniform(0, 2 * L, 1e3)]);
    private static readonly LoadCase Live = new("live", [new Load.Point(3, 4e3)]);
    private static readonly LoadCase Pull = new("pull", [new Load.Point(2, 0, 500)]);

    [Fact]
    public void Combinations_AddTheirCasesUp()
    {
        BeamOutcome.Stands outcome = Stands(TwoSpans(
            [Dead, Live], new Combination("factored", CombinationBasis.Factored, [1.35, 1.5])));

        BeamResponse sum = outcome.Combinations[0].Response;
        for (int i = 0; i < 3; i++)
        {
            double expected = 1.35 * outcome.Cases[0]!.Reactions[i].Vertical
                + 1.5 * outcome.Cases[1]!.Reactions[i].Vertical;
            Equal(expected, sum.Reactions[i].Vertical, 1e4);
        }

        Equal(0.375 * 1e3 * L, outcome.Cases[0]!.Reactions[0].Vertical);
        Equal(13.0 / 32 * 4e3, outcome.Cases[1]!.Reactions[0].Vertical);
        Equal(1.35 * 12e3 + 1.5 * 4e3, sum.Proof.LoadDown);
    }

    [Fact]
    public void ImposedMovements_ActOnceInEveryCombination_AndInNoCase()
    {
        Support middle = Support.Roller(L) with { Settlement = 0.01 };
        BeamModel model = TwoSpans(
            [Dead],
            new Combination("half", CombinationBasis.Service, [0.5]),
            new Combination("none", CombinationBasis.Service, [0.0])) with
        {
            Supports = [Support.Pin(0), middle, Support.Roller(2 * L)],
        };

        BeamOutcome.Stands outcome = Stands(model);

        double settled = 3 * Rigidity * 0.01 / (L * L);
        double dead = -1e3 * L * L / 8;
        Equal(dead, outcome.Cases[0]!.At(L).Left.Moment);
        Equal(settled, outcome.ImposedMovements!.At(L).Left.Moment);
        Equal(0.5 * dead + settled, outcome.Combinations[0].Response.At(L).Left.Moment, 1e4);
        Equal(settled, outcome.Combinations[1].Response.At(L).Left.Moment);
    }

    [Fact]
    public void NoImposedMovement_HasNoAnswerToOne() => Assert.Null(Stands(TwoSpans([Dead])).ImposedMovements);

    [Fact]
    public void NoCombination_StillAnswersTheCases()
    {
        BeamOutcome.Stands outcome = Stands(TwoSpans([Dead, Live]));

        Assert.Empty(outcome.Combinations);
        Assert.Equal(2, outcome.Cases.Length);
    }

    [Fact]
    public void CaseAlongAnUnheldBeam_UnusedByCombinations_HasNoAnswer()
    {
        BeamModel model = TwoSpans([Dead, Pull], new Combination("dead", CombinationBasis.Service, [1.0, 0.0])) with
        {
            Supports = [Support.Roller(0), Support.Roller(L), Support.Roller(2 * L)],
        };

        BeamOutcome.Stands outcome = Stands(model);

        Assert.False(outcome.IsHeldAlong);
        Assert.NotNull(outcome.Cases[0]);
        Assert.Null(outcome.Cases[1]);
    }

    [Fact]
    public void CaseAlongAnUnheldBeam_UsedByACombination_CanMove()
    {
        BeamModel model = TwoSpans([Dead, Pull], new Combination("all", CombinationBasis.Service, [1.0, 0.1])) with
        {
            Supports = [Support.Roller(0), Support.Roller(L), Support.Roller(2 * L)],
        };

        Assert.IsType<BeamOutcome.CanMove>(new BeamSolver().Solve(model));
    }

    [Fact]
    public void OneSolver_ForgetsTheBeamBefore()
    {
        BeamSolver solver = new();
        BeamModel large = TwoSpans([Dead, Live], new Combination("all", CombinationBasis.Service, [1.0, 1.0]));
        BeamModel small = Beam(
            L, [Support.Pin(0), Support.Roller(L, 0.3)], [Uniform(1, 5, 700), new Load.Couple(2, 90)]);

        solver.Solve(large);
        BeamOutcome.Stands after = Assert.IsType<BeamOutcome.Stands>(solver.Solve(small));
        BeamOutcome.Stands fresh = Stands(small);

        Assert.Equal(fresh.Combinations[0].Response.Reactions, after.Combinations[0].Response.Reactions.AsEnumerable());
        Assert.Equal(fresh.Combinations[0].Response.At(2), after.Combinations[0].Response.At(2));
    }

    [Fact]
    public void JointWithinAnEvenBeam_ChangesNothing()
    {
        Load[] loads = [new Load.Distributed(0.5, 5, 300, 900), new Load.Point(4, 2e3)];
        Support[] supports = [Support.Fixed(0), Support.Roller(L)];
        BeamResponse whole = Solve(L, supports, loads);
        BeamResponse cut = Solve(
            Beam([new Span(2.5, Rigidity, 1e9), new Span(3.5, Rigidity, 1e9)], supports, loads));

        Equal(whole.Reactions[0].Moment, cut.Reactions[0].Moment);
        Equal(whole.At(3).Left.Deflection, cut.At(3).Left.Deflection);
    }

    [Fact]
    public void ChainOfAThousandSpans_HasTheMomentOfAnEndlessOneInItsMiddle()
    {
        Span span = new(L, Rigidity, 1e9);
        Support[] supports =
            [Support.Pin(0), .. Enumerable.Range(1, 1000).Select(i => Support.Roller(L * i))];

        BeamResponse response = Solve(
            Beam([.. Enumerable.Repeat(span, 1000)], supports, [Uniform(0, 1000 * L, 1e3)]));

        Equal(-1e3 * L * L / 12, response.At(500 * L).Left.Moment);
        Equal(1e3 * L, response.Reactions[500].Vertical);
    }

    [Fact]
    public void SizesBeyondTheArithmetic_AreNotDecided()
    {
        BeamModel model = Beam(
            [new Span(1, 1e300, 1e9), new Span(1, 1e-300, 1e9)], [Support.Fixed(0)], [new Load.Point(2, 1e300)]);

        BeamOutcome.Undecided outcome = Assert.IsType<BeamOutcome.Undecided>(new BeamSolver().Solve(model));

        Assert.Equal(UndecidedReason.BeyondArithmetic, outcome.Reason);
    }

    [Fact]
    public void AlteredModel_ThatBreaksItsRules_Throws()
    {
        BeamModel model = TwoSpans([Dead]) with { Hinges = [2 * L] };

        Assert.Throws<ArgumentException>(() => new BeamSolver().Solve(model));
    }

    private static BeamModel TwoSpans(LoadCase[] cases, params Combination[] combinations) => new(
        [new Span(L, Rigidity, 1e9), new Span(L, Rigidity, 1e9)],
        [Support.Pin(0), Support.Roller(L), Support.Roller(2 * L)],
        [],
        [.. cases],
        [.. combinations]);
}
