using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using MathNet.Numerics.RootFinding;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Finds how far loads may grow until the first check is over.</summary>
/// <remarks>
/// Where no support lets go, each demand is a greatest of sums that are linear in the load, so the greatest utilisation
/// is convex in it: growing from a load that holds, it is crossed once. Where a support is pulled that nobody said to hold
/// the beam down, the load does not hold either, as the check of the beam would not.
/// </remarks>
public static class HeadroomSearch
{
    /// <summary>So many times what stands, or what all loads weigh, is taken as without end [–].</summary>
    private const double Endless = 1e6;

    private const double Accuracy = 1e-12;

    /// <summary>So many times what stands, beyond that, is the farthest tried where no less of it holds [–].</summary>
    private const double Farthest = 3;

    /// <summary>Where a support lets go is found to this share [–]: it is told, nothing is judged by it.</summary>
    private const double Near = 1e-6;

    /// <summary>By what factor the loads of some cases may grow together, 1 being as they stand.</summary>
    /// <param name="problem">The beam with all that it is held against.</param>
    /// <param name="grows">For each case of the model whether its loads grow, standing or rolling.</param>
    /// <param name="solver">The solver to work with.</param>
    public static Headroom OfCases(StrengthProblem problem, ImmutableArray<bool> grows, BeamSolver solver)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(solver);
        int open = Judgement.Of(problem, solver).NotJudged;
        StrengthProblem Grown(double factor) => GrownLoads.Of(problem, grows, factor);
        return WithLetGo(
            Of(factor => Judgement.Of(Grown(factor), solver).WithNoMoreOpenThan(open), 1), Grown, 1, Endless, solver);
    }

    /// <summary>How great one more point load may be, straight down at one place.</summary>
    /// <param name="problem">The beam with all that it is held against.</param>
    /// <param name="position">The place [m from the left end]; on the beam.</param>
    /// <param name="loadCase">Index of the case that it belongs to.</param>
    /// <param name="solver">The solver to work with.</param>
    public static Headroom OfPointLoad(StrengthProblem problem, double position, int loadCase, BeamSolver solver)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(solver);
        double start = Math.Max(GrownLoads.SizeOf(problem), 1);
        StrengthProblem With(double force) => GrownLoads.WithPoint(problem, position, loadCase, force);
        return WithLetGo(Of(force => Judgement.Of(With(force), solver), start), With, 0, start * Endless, solver);
    }

    /// <summary>The greatest size of anything, as a load or a length, that holds.</summary>
    /// <param name="judge">What the beam comes to with so much of it.</param>
    /// <param name="start">The size that it has, or one to start from [N, m or –]; greater than zero.</param>
    /// <param name="least">The least size that it can have [N, m or –]; where this does not hold none does, unless others are tried.</param>
    /// <param name="tries">
    /// Where neither size holds, so many between them are tried, and as many up to four times the first: for what more of it may cure, or
    /// less and still less undo. A range that lies between two of them may be missed.
    /// </param>
    public static Headroom Of(Func<double, Judgement> judge, double start, double least = 0, int tries = 0)
    {
        ArgumentNullException.ThrowIfNull(judge);
        double holds = start;
        double fails = start;
        if (judge(start).Holds)
        {
            // Small steps first: where supports let go, what is over may hold again farther on.
            for (double step = start / 8; (fails = holds + step) <= start * Endless && judge(fails).Holds; step *= 2)
            {
                holds = fails;
            }

            if (fails > start * Endless)
            {
                return new Headroom(null, HeadroomEnd.None, null);
            }
        }
        else if (judge(least) is { Holds: false } without)
        {
            return tries == 0 ? Ended(null, without, HeadroomEnd.OverWithout) : Among(judge, start, least, tries);
        }
        else
        {
            holds = least;
        }

        return Between(judge, holds, fails);
    }

    /// <summary>Looked for shorter of what stands first, from there down, then beyond it, from there up.</summary>
    private static Headroom Among(Func<double, Judgement> judge, double start, double least, int tries)
    {
        double step = (start - least) / tries;
        double[] sizes =
        [
            .. Enumerable.Range(1, tries).Select(i => start - i * step),
            .. Enumerable.Range(1, tries).Select(i => start * (1 + Farthest * i / tries)),
        ];
        List<(double Size, Judgement Judged)> failed = [(start, judge(start))];
        for (int i = 0; i < sizes.Length; i++)
        {
            Judgement judged = judge(sizes[i]);
            if (!judged.Holds)
            {
                failed.Add((sizes[i], judged));
                continue;
            }

            if (i >= tries)
            {
                return Of(judge, sizes[i]) with { Least = Halved(judge, sizes[i], i == tries ? start : sizes[i - 1]) };
            }

            int last = i;
            while (last + 2 < tries && judge(sizes[last + 1]).Holds)
            {
                last++;
            }

            return Between(judge, sizes[i], failed[^1].Size) with { Least = Halved(judge, sizes[last], sizes[last + 1]) };
        }

        (double Size, Judgement Judged)[] judgedOnes =
            [.. failed.Where(one => one.Judged is { Governing.Reason: null } && double.IsFinite(one.Judged.Utilisation))];
        return judgedOnes.Length == 0
            ? Ended(null, failed[0].Judged, HeadroomEnd.OverWithout)
            : NearestOf(judgedOnes.MinBy(one => Math.Max(one.Judged.Utilisation, 1)));
    }

    private static Headroom NearestOf((double Size, Judgement Judged) nearest) =>
        Ended(null, nearest.Judged, HeadroomEnd.OverWithout) with { Nearest = nearest.Size };

    private static Headroom Between(Func<double, Judgement> judge, double holds, double fails)
    {
        // A tip is a jump: any great number on its far side leads there.
        // Searched as a share of what fails: its accuracy is one of the root and of the utilisation there alike.
        double most = Brent.TryFindRoot(
            share => Measured(judge(share * fails)) - 1, holds / fails, 1, Accuracy, 200, out double root)
            && judge(root * fails).Holds
                ? root * fails
                : Halved(judge, holds, fails);
        Judgement beyond = judge(most * (1 + 1e-8) + Accuracy * fails);
        return Ended(most, beyond, HeadroomEnd.CheckFails);
    }

    private static double Measured(Judgement judged) => judged.Pulled is null ? Math.Min(judged.Utilisation, Endless) : Endless;

    private static Headroom Ended(double? most, Judgement failed, HeadroomEnd otherwise) =>
        failed.Pulled is int support && SectionCheck.IsWithin(failed.Utilisation)
            ? new Headroom(most, HeadroomEnd.Pulled, null) { Support = support }
            : new Headroom(most, EndOf(failed, otherwise), failed.Governing);

    private static HeadroomEnd EndOf(Judgement failed, HeadroomEnd otherwise) => failed.Tips ? HeadroomEnd.Tips
        : failed.Governing?.Reason is not null ? HeadroomEnd.NotJudged
        : otherwise;

    /// <summary>The same, with the supports that let go between what stands and the greatest.</summary>
    private static Headroom WithLetGo(
        Headroom found, Func<double, StrengthProblem> grown, double stands, double endless, BeamSolver solver)
    {
        double end = found.Most ?? (found.End == HeadroomEnd.None ? endless : stands);
        if (end <= stands)
        {
            return found;
        }

        bool IsOff(int support, double size) => LettingGo.IsLiftedOff(grown(size).Beam, support, solver);
        return found with
        {
            LetGo =
            [
                .. from support in Enumerable.Range(0, grown(stands).Beam.Model.Supports.Length)
                   where IsOff(support, end) && !IsOff(support, stands)
                   let carries = LastOn(size => IsOff(support, size), stands, end)
                   where carries < end * (1 - Near)
                   select new SupportLetGo(support, carries),
            ],
        };
    }

    private static double LastOn(Func<double, bool> isOff, double on, double off)
    {
        while (off - on > Near * off)
        {
            double middle = (on + off) / 2;
            (on, off) = isOff(middle) ? (on, middle) : (middle, off);
        }

        return on;
    }

    private static double Halved(Func<double, Judgement> judge, double holds, double fails)
    {
        // Of what fails first, not of what is left of it: where nothing but none holds, that shrinks without end.
        double near = Accuracy * Math.Max(fails, holds);
        while (Math.Abs(fails - holds) > near)
        {
            double middle = (holds + fails) / 2;
            (holds, fails) = judge(middle).Holds ? (middle, fails) : (holds, middle);
        }

        return holds;
    }
}
