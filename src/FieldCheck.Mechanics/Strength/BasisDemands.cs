using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Strength;

/// <summary>
/// What the situations of one basis ask of a beam, found when first asked for and kept. Nothing of it depends on what the
/// beam is held against.
/// </summary>
internal sealed class BasisDemands(
    EnvelopeProblem problem, CombinationBasis basis, Envelope? envelope, BeamSolver solver)
{
    private readonly Dictionary<(Curve Curve, int Span), GovernedExtremes> _spans = [];
    private ImmutableArray<(Situation Situation, BeamResponse Response)> _answers;
    private double? _shear;
    private ImmutableArray<DeflectionStretch> _stretches;
    private ImmutableDictionary<DeflectionStretch, Demand>? _moving;

    internal EnvelopeProblem Problem => problem;

    internal CombinationBasis Basis => basis;

    /// <summary>Why nothing of this basis can be judged; null: it can.</summary>
    internal NotJudgedReason? Obstacle =>
        problem.Model.Combinations.All(one => one.Basis != basis) ? NotJudgedReason.NoCombination
        : envelope is null ? NotJudgedReason.NoAnswer
        : null;

    internal Envelope Envelope => envelope ?? throw new InvalidOperationException("There is an obstacle.");

    /// <summary>Whether a pattern or a rolling load counts, so that a combination is more than one situation.</summary>
    internal bool Varies { get; } =
        problem.PatternCases.Any(one => !problem.Model.Cases[one].Loads.IsEmpty && Counts(problem.Model, basis, one))
        || problem.Rolling.Any(one => Counts(problem.Model, basis, one.Case));

    /// <summary>Of combinations that are one situation each: those in which the beam stands, and its answers.</summary>
    internal ImmutableArray<(Situation Situation, BeamResponse Response)> Answers =>
        _answers.IsDefault ? _answers = Solve() : _answers;

    /// <summary>The greatest and least of a quantity on a span, ends counted from inside.</summary>
    internal GovernedExtremes On(Curve curve, int span)
    {
        if (!_spans.TryGetValue((curve, span), out GovernedExtremes? found))
        {
            ImmutableArray<double> joints = problem.Model.JointPositions;
            found = Envelope.ExtremesOf(curve, joints[span], joints[span + 1]);
            _spans.Add((curve, span), found);
        }

        return found;
    }

    /// <summary>The greatest shear anywhere [N]: what forces along the beam are measured by.</summary>
    internal double GreatestShear => _shear ??= Math.Max(
        Math.Abs(Envelope.ExtremesOf(Curve.Shear).Max.Value), Math.Abs(Envelope.ExtremesOf(Curve.Shear).Min.Value));

    /// <summary>The greatest deflection of a bay or overhang whose supports move, where combinations are more than one situation.</summary>
    internal Demand OfMoving(DeflectionStretch stretch)
    {
        _moving ??= FindMoving(Stretches);
        if (!_moving.ContainsKey(stretch))
        {
            _moving = _moving.AddRange(FindMoving([stretch]));
        }

        return _moving[stretch];
    }

    /// <summary>What deflections are measured on: overhangs and bays, then those that are looked at as one.</summary>
    internal ImmutableArray<DeflectionStretch> Stretches => _stretches.IsDefault ? _stretches = FindStretches() : _stretches;

    private ImmutableArray<DeflectionStretch> FindStretches() =>
    [
        .. DeflectionStretch.Of(Bays.Of(problem.Model)),
        .. envelope is null ? [] : DeflectionStretch.AsOne(problem.Model, envelope.Reactions),
    ];

    private ImmutableDictionary<DeflectionStretch, Demand> FindMoving(ImmutableArray<DeflectionStretch> stretches) =>
        StretchSearch.Find(problem, Envelope, stretches, solver)
            .Select((demand, i) => (stretches[i], demand))
            .ToImmutableDictionary(one => one.Item1, one => one.demand);

    private static bool Counts(BeamModel model, CombinationBasis basis, int loadCase) =>
        model.Combinations.Any(one => one.Basis == basis && one.Factors[loadCase] != 0);

    private ImmutableArray<(Situation Situation, BeamResponse Response)> Solve()
    {
        BeamModel model = problem.Model;
        int[] own = [.. Enumerable.Range(0, model.Combinations.Length).Where(i => model.Combinations[i].Basis == basis)];
        BeamModel asked = model with { Combinations = [.. own.Select(i => model.Combinations[i])] };
        return model.Supports.All(one => one.Action == SupportAction.Both) && solver.Solve(asked) is BeamOutcome.Stands all
            ? [.. own.Zip(all.Combinations, (i, answer) => (SituationOf(i), answer.Response))]
            : [.. own.Select(SituationOf).SelectMany(Respond)];
    }

    private IEnumerable<(Situation Situation, BeamResponse Response)> Respond(Situation situation) =>
        EnvelopeSearch.Respond(problem, situation, solver) is BeamResponse response ? [(situation, response)] : [];

    private Situation SituationOf(int combination) =>
        new(combination, [.. problem.Model.Cases.Select(_ => (LoadedBays?)null)], null);
}
