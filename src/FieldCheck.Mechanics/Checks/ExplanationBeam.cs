using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Checks;

/// <summary>Finds what the stated figures would be with other loads or on another beam.</summary>
/// <remarks>
/// Answers add up while no support lifts off: then those to any load are put together from influences. Else the whole
/// beam is solved anew. Before either, loads that cannot add up to what is stated are dropped unsolved.
/// </remarks>
internal sealed class ExplanationBeam
{
    private readonly BeamSolver _solver;
    private readonly ExplanationInfluence? _influence;
    private readonly ExplanationWork _work = new();
    private readonly bool _actsBothWays;

    private ExplanationBeam(
        StatedSet stated, ImmutableArray<Reaction> reactions, BeamSolver solver, StiffnessMethod method)
    {
        (Stated, Reactions, _solver) = (stated, reactions, solver);
        Computed = ExplanationFigures.Of(stated, reactions.AsSpan());
        Fit = new ExplanationFit(stated, Computed);
        Loads = [.. AllLoads(stated)];
        _actsBothWays = stated.Model.Supports.All(support => support.Action == SupportAction.Both);
        _influence = reactions.Any(reaction => reaction.IsLiftedOff)
            ? null
            : new ExplanationInfluence(stated, method, _work);
    }

    internal StatedSet Stated { get; }

    internal BeamModel Model => Stated.Model;

    internal ExplanationFit Fit { get; }

    /// <summary>Every reaction under the combination asked for.</summary>
    internal ImmutableArray<Reaction> Reactions { get; }

    /// <summary>The computed figures [N or N·m].</summary>
    internal double[] Computed { get; }

    /// <summary>Every load, those without a part in the combination too.</summary>
    internal ImmutableArray<ExplanationLoad> Loads { get; }

    /// <summary>False: the beam is so large that not all was solved that was asked for.</summary>
    internal bool IsAllSolved => !_work.IsSpent;

    /// <summary>Solves the beam for the combination asked for.</summary>
    /// <returns>Null: it does not stand.</returns>
    internal static ExplanationBeam? Of(StatedSet stated, BeamSolver solver, StiffnessMethod method) =>
        Solve(solver, stated.Model, stated.Factors) is { } response
            ? new ExplanationBeam(stated, response.Reactions, solver, method)
            : null;

    /// <summary>The figures with loads changed [N or N·m]; null: they do not fit, or the beam does not stand.</summary>
    internal double[]? With(ReadOnlySpan<LoadChange> changes)
    {
        double down = 0;
        foreach (LoadChange change in changes)
        {
            down += change.Factor * ExplanationLoad.Down(change.Load);
        }

        return Fit.CouldFit(down) ? With(changes, onlyIfFits: true) : null;
    }

    /// <summary>The figures with one load more [N or N·m], whether they fit or not; null: the beam does not stand.</summary>
    internal double[]? WithMore(LoadChange change) => With([change], onlyIfFits: false);

    /// <summary>The figures on another beam with the same supports in number [N or N·m]; null: it does not stand.</summary>
    internal double[]? On(BeamModel other) => Solve(other, Stated.Factors);

    /// <summary>The same at less cost, where it need not be known yet whether that beam stands.</summary>
    internal double[]? OnIfItStands(BeamModel other) =>
        _influence is null || !_actsBothWays ? On(other) : _influence.On(other);

    private double[]? With(ReadOnlySpan<LoadChange> changes, bool onlyIfFits) =>
        _influence is null || !StaysDown(_influence, changes)
            ? SolveWith(changes)
            : AddUp(_influence, changes, onlyIfFits);

    /// <summary>Whether every support that acts one way only goes on touching under the changed loads.</summary>
    private bool StaysDown(ExplanationInfluence influence, ReadOnlySpan<LoadChange> changes)
    {
        for (int i = 0; i < influence.OneWay.Length; i++)
        {
            int support = influence.OneWay[i].Support;
            double vertical = Reactions[support].Vertical + influence.Of(Computed.Length + i, changes);

            // What is not a number is found out by the sum of the figures.
            if (Model.Supports[support].Action == SupportAction.PushesOnly ? vertical < 0 : vertical > 0)
            {
                return false;
            }
        }

        return true;
    }

    private static BeamResponse? Solve(BeamSolver solver, BeamModel model, ImmutableArray<double> factors)
    {
        Combination asked = new("", CombinationBasis.Service, factors);
        return solver.Solve(model with { Combinations = [asked] }) is BeamOutcome.Stands stands
            ? stands.Combinations[0].Response
            : null;
    }

    private static IEnumerable<ExplanationLoad> AllLoads(StatedSet stated)
    {
        int index = 0;
        for (int i = 0; i < stated.Model.Cases.Length; i++)
        {
            foreach (Load load in stated.Model.Cases[i].Loads)
            {
                yield return new ExplanationLoad(
                    index,
                    i,
                    load,
                    stated.Factors[i],
                    stated.OwnWeight.Contains(index),
                    stated.PermanentCases.Contains(i));
                index++;
            }
        }
    }

    private double[]? AddUp(ExplanationInfluence influence, ReadOnlySpan<LoadChange> changes, bool onlyIfFits)
    {
        double[] figures = new double[Computed.Length];
        for (int i = 0; i < figures.Length; i++)
        {
            double figure = Computed[i] + influence.Of(i, changes);
            if (!double.IsFinite(figure) || (onlyIfFits && !Fit.Fits(i, figure)))
            {
                return null;
            }

            figures[i] = figure;
        }

        return figures;
    }

    private double[]? SolveWith(ReadOnlySpan<LoadChange> changes)
    {
        ImmutableArray<LoadCase>.Builder cases = Model.Cases.ToBuilder();
        ImmutableArray<double>.Builder factors = Stated.Factors.ToBuilder();
        foreach (LoadChange change in changes)
        {
            cases.Add(new LoadCase("", [change.Load]));
            factors.Add(change.Factor);
        }

        return Solve(Model with { Cases = cases.ToImmutable() }, factors.ToImmutable());
    }

    private double[]? Solve(BeamModel model, ImmutableArray<double> factors) =>
        _work.Take(model.Spans.Length + model.Cases.Sum(one => one.Loads.Length))
        && Solve(_solver, model, factors) is { } response
            ? ExplanationFigures.Of(Stated, response.Reactions.AsSpan())
            : null;
}
