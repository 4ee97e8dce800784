using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Checks;

/// <summary>Finds what the stated figures would be with other loads or on another beam.</summary>
/// <remarks>
/// Answers add up where every support acts both ways: then each load is solved once, alone, when it is first needed.
/// Else the whole beam is solved anew. Before either, loads that cannot add up to what is stated are dropped unsolved.
/// </remarks>
internal sealed class ExplanationBeam
{
    private static readonly double[] Whole = [1];

    private readonly Dictionary<Load, double[]?> _alone = new(ReferenceEqualityComparer.Instance);
    private readonly BeamSolver _solver;
    private readonly StiffnessMethod _method;
    private readonly bool[] _touching;
    private readonly bool _addsUp;

    private ExplanationBeam(
        StatedSet stated, ImmutableArray<Reaction> reactions, BeamSolver solver, StiffnessMethod method)
    {
        (Stated, Reactions, _solver, _method) = (stated, reactions, solver, method);
        Computed = ExplanationFigures.Of(stated, reactions.AsSpan());
        Fit = new ExplanationFit(stated, Computed);
        Loads = [.. AllLoads(stated)];
        _touching = new bool[stated.Model.Supports.Length];
        Array.Fill(_touching, true);
        _addsUp = stated.Model.Supports.All(support => support.Action == SupportAction.Both);
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

    /// <summary>Solves the beam for the combination asked for.</summary>
    /// <returns>Null: it does not stand.</returns>
    internal static ExplanationBeam? Of(StatedSet stated, BeamSolver solver, StiffnessMethod method) =>
        Solve(solver, stated.Model, stated.Factors) is { } response
            ? new ExplanationBeam(stated, response.Reactions, solver, method)
            : null;

    /// <summary>The figures with loads changed [N or N·m]; null: they cannot fit, or the beam does not stand.</summary>
    internal double[]? With(ReadOnlySpan<LoadChange> changes)
    {
        double down = 0;
        foreach (LoadChange change in changes)
        {
            down += change.Factor * ExplanationLoad.Down(change.Load);
        }

        return !Fit.CouldFit(down) ? null : _addsUp ? AddUp(changes) : SolveWith(changes);
    }

    /// <summary>The figures on another beam with the same supports in number [N or N·m]; null: it does not stand.</summary>
    internal double[]? On(BeamModel other) => Solve(_solver, other, Stated.Factors) is { } response
        ? ExplanationFigures.Of(Stated, response.Reactions.AsSpan())
        : null;

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

    private double[]? AddUp(ReadOnlySpan<LoadChange> changes)
    {
        double[] figures = [.. Computed];
        foreach (LoadChange change in changes)
        {
            if (Alone(change.Load) is not { } alone)
            {
                return null;
            }

            for (int i = 0; i < figures.Length; i++)
            {
                figures[i] += change.Factor * alone[i];
            }
        }

        return figures;
    }

    private double[]? Alone(Load load)
    {
        if (!_alone.TryGetValue(load, out double[]? known))
        {
            known = SolveAlone(new LoadCase("", [load]));
            _alone.Add(load, known);
        }

        return known;
    }

    private double[]? SolveAlone(LoadCase loadCase)
    {
        _method.Prepare(Model with { Cases = [loadCase], Combinations = [] });
        if (!_method.Hold(_touching, Lengthways.IsIn(loadCase)))
        {
            return null;
        }

        _method.Load(Whole);
        _method.Move(withImposed: false);
        double[] figures = new double[Stated.Figures.Length];
        for (int i = 0; i < figures.Length; i++)
        {
            ReactionFigure figure = Stated.Figures[i];
            (double, double, double) needed = _method.ReactionAt(_method.Grid.NodeOfSupport(figure.Support));
            figures[i] = ExplanationFigures.Of(
                Answers.ReactionOf(Model.Supports[figure.Support], needed), figure.Part);
        }

        return _method.StayedFinite ? figures : null;
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

        BeamModel changed = Model with { Cases = cases.ToImmutable() };
        return Solve(_solver, changed, factors.ToImmutable()) is { } response
            ? ExplanationFigures.Of(Stated, response.Reactions.AsSpan())
            : null;
    }
}
