using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Finds where one more support that only pushes would have to stand for judged checks to hold.</summary>
public static class PropSearch
{
    /// <summary>Places tried along the beam; between them the ends of a stretch are halved down.</summary>
    private const int Places = 120;

    /// <summary>A prop is not set closer than this, as a share of the beam's length [–].</summary>
    private const double Closest = 1e-4;

    /// <summary>The stretches, left to right; found on a grid, so a shorter one may be missed.</summary>
    /// <param name="problem">The beam with all that it is held against.</param>
    /// <param name="stiffness">How stiff the prop stands [N/m]; null: rigid.</param>
    /// <param name="solver">The solver to work with.</param>
    /// <param name="only">The only kind of check that is to hold; null: every one is.</param>
    /// <returns>Empty where a prop does not help anywhere.</returns>
    /// <exception cref="ArgumentException">The prop gives way, and how stiff the beam is is not known.</exception>
    public static ImmutableArray<PropStretch> Find(
        StrengthProblem problem, double? stiffness, BeamSolver solver, CheckKind? only = null)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(solver);
        Require.That(
            stiffness is null || problem.Beam.Model.HasAbsoluteStiffness,
            "A prop that gives way needs a beam whose stiffness is known.",
            nameof(stiffness));
        double length = problem.Beam.Model.Length;
        HashSet<CheckKind> open = [.. Judgement.Of(problem, solver).All.Where(IsOpen).Select(check => check.Kind)];

        // The prop's own seat is not known; of all else a kind of check that was judged has to be judged still.
        Judgement JudgedAt(double place)
        {
            Judgement judged = Judgement.Of(With(problem, place, stiffness), solver, only);
            int prop = IndexOf(problem, place);
            return judged.All.FirstOrDefault(check =>
                IsOpen(check) && check.Support != prop && !open.Contains(check.Kind) && (only is null || check.Kind == only))
                is SectionCheck lost
                    ? judged with { Utilisation = double.PositiveInfinity, Governing = lost }
                    : judged;
        }

        Tried[] tried =
        [
            .. Enumerable.Range(0, Places + 1)
                .Select(i => length * i / Places)
                .Where(place => IsFree(problem.Beam.Model, place))
                .Select(place => new Tried(place, JudgedAt(place))),
        ];
        ImmutableArray<int> pressed =
        [
            .. Enumerable.Range(0, problem.Beam.Model.Supports.Length)
                .Where(support => problem.Beam.Model.Supports[support].Action == SupportAction.PushesOnly
                    && !LettingGo.IsLiftedOff(problem.Beam, support, solver)),
        ];
        ImmutableArray<int> LetGoAt(double place) =>
        [
            .. pressed.Where(support => LettingGo.IsLiftedOff(
                With(problem, place, stiffness).Beam, Moved(support, IndexOf(problem, place)), solver)),
        ];
        ImmutableArray<PropStretch>.Builder stretches = ImmutableArray.CreateBuilder<PropStretch>();
        for (int first = 0; first < tried.Length; first++)
        {
            if (!tried[first].Holds)
            {
                continue;
            }

            int last = first;
            while (last + 1 < tried.Length && tried[last + 1].Holds)
            {
                last++;
            }

            Tried best = tried[first..(last + 1)].MinBy(one => one.Judged.Utilisation);
            StrengthProblem propped = With(problem, best.Place, stiffness);
            double from = first == 0 ? tried[0].Place : Edge(JudgedAt, tried[first].Place, tried[first - 1].Place);
            double to = last == tried.Length - 1 ? tried[last].Place : Edge(JudgedAt, tried[last].Place, tried[last + 1].Place);
            ImmutableArray<int> letGo = LetGoAt(best.Place);
            stretches.Add(new PropStretch(from, to, best.Place, best.Judged.Utilisation, Push(propped, best.Place, solver))
            {
                Left = only is null ? null : Judgement.Of(propped, solver).Governing,
                LetGo = letGo,
                LetGoNearAnEnd = [.. LetGoAt(from).Union(LetGoAt(to)).Except(letGo).Order()],
            });
            first = last;
        }

        return stretches.ToImmutable();
    }

    /// <summary>The beam with a prop; it has no seat to judge.</summary>
    internal static StrengthProblem With(StrengthProblem problem, double place, double? stiffness)
    {
        BeamModel model = problem.Beam.Model;
        Support prop = (stiffness is double k ? Support.Spring(place, k) : Support.Roller(place)) with
        {
            Action = SupportAction.PushesOnly,
        };
        int index = IndexOf(problem, place);
        BeamModel propped = new(
            model.Spans, model.Supports.Insert(index, prop), model.Hinges, model.Cases, model.Combinations,
            model.HasAbsoluteStiffness);
        return problem with
        {
            Beam = new EnvelopeProblem(propped, problem.Beam.PatternCases, problem.Beam.Rolling),
            Seats = problem.Seats.Insert(index, new Seat(null, null, null, null)),
            Untied = [.. problem.Untied.Select(support => Moved(support, index))],
        };
    }

    /// <summary>It cannot be judged; a limit of overhangs where a prop at the tip leaves none asks for nothing.</summary>
    private static bool IsOpen(SectionCheck check) =>
        check.Verdict == CheckVerdict.NotJudged && check.Reason != NotJudgedReason.NothingToJudge;

    private static int IndexOf(StrengthProblem problem, double place) =>
        problem.Beam.Model.Supports.Count(support => support.Position < place);

    /// <summary>The index of a support once a prop has gone in at another.</summary>
    private static int Moved(int support, int prop) => support < prop ? support : support + 1;

    private static bool IsFree(BeamModel model, double place) =>
        model.Supports.All(support => Math.Abs(support.Position - place) > Closest * model.Length);

    /// <summary>The last place from one that holds toward one that does not.</summary>
    private static double Edge(Func<double, Judgement> judgedAt, double holds, double fails)
    {
        double near = Closest * Math.Abs(holds - fails);
        while (Math.Abs(holds - fails) > near)
        {
            double middle = (holds + fails) / 2;
            (holds, fails) = judgedAt(middle).Holds ? (middle, fails) : (holds, middle);
        }

        return holds;
    }

    private static double Push(StrengthProblem problem, double place, BeamSolver solver)
    {
        int index = IndexOf(problem, place);
        return EnvelopeSearch.Find(problem.Beam, solver) is [Envelope first, ..]
            ? first.Reactions[index].Vertical.Max.Value
            : 0;
    }

    private readonly record struct Tried(double Place, Judgement Judged)
    {
        internal bool Holds => Judged.Holds;
    }
}
