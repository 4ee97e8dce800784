using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using MathNet.Numerics.RootFinding;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Finds how far loads may grow until the first check is over.</summary>
/// <remarks>
/// Where no support lets go, each demand is a greatest of sums that are linear in the load, so the greatest utilisation
/// is convex in it: growing from a load that holds, it is crossed once.
/// </remarks>
public static class HeadroomSearch
{
    /// <summary>So many times what stands, or what all loads weigh, is taken as without end [–].</summary>
    private const double Endless = 1e6;

    private const double Accuracy = 1e-12;

    /// <summary>By what factor the loads of some cases may grow together, 1 being as they stand.</summary>
    /// <param name="problem">The beam with all that it is held against.</param>
    /// <param name="grows">For each case of the model whether its loads grow, standing or rolling.</param>
    /// <param name="solver">The solver to work with.</param>
    public static Headroom OfCases(StrengthProblem problem, ImmutableArray<bool> grows, BeamSolver solver)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(solver);
        int open = Judgement.Of(problem, solver).NotJudged;
        return Of(
            factor => Judgement.Of(GrownLoads.Of(problem, grows, factor), solver).WithNoMoreOpenThan(open), 1);
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
        return Of(
            force => Judgement.Of(GrownLoads.WithPoint(problem, position, loadCase, force), solver), start);
    }

    /// <summary>The greatest size of anything, as a load or a length, that holds.</summary>
    /// <param name="judge">What the beam comes to with so much of it.</param>
    /// <param name="start">The size that it has, or one to start from [N, m or –]; greater than zero.</param>
    /// <param name="least">The least size that it can have [N, m or –]; where this does not hold none does.</param>
    public static Headroom Of(Func<double, Judgement> judge, double start, double least = 0)
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
            return new Headroom(null, EndOf(without, HeadroomEnd.OverWithout), without.Governing);
        }
        else
        {
            holds = least;
        }

        return Between(judge, holds, fails);
    }

    private static Headroom Between(Func<double, Judgement> judge, double holds, double fails)
    {
        // A tip is a jump: any great number on its far side leads there.
        // Searched as a share of what fails: its accuracy is one of the root and of the utilisation there alike.
        double most = Brent.TryFindRoot(
            share => Math.Min(judge(share * fails).Utilisation, Endless) - 1, holds / fails, 1, Accuracy, 200, out double root)
            && judge(root * fails).Holds
                ? root * fails
                : Halved(judge, holds, fails);
        Judgement beyond = judge(most * (1 + 1e-8) + Accuracy * fails);
        return new Headroom(most, EndOf(beyond, HeadroomEnd.CheckFails), beyond.Governing);
    }

    private static HeadroomEnd EndOf(Judgement failed, HeadroomEnd otherwise) => failed.Tips ? HeadroomEnd.Tips
        : failed.Governing?.Reason is not null ? HeadroomEnd.NotJudged
        : otherwise;

    private static double Halved(Func<double, Judgement> judge, double holds, double fails)
    {
        // Of what fails first, not of what is left of it: where nothing but none holds, that shrinks without end.
        double near = Accuracy * fails;
        while (fails - holds > near)
        {
            double middle = (holds + fails) / 2;
            (holds, fails) = judge(middle).Holds ? (middle, fails) : (holds, middle);
        }

        return holds;
    }
}
