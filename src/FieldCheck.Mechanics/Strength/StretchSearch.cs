using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Strength;

/// <summary>
/// The greatest deflection of bays and overhangs whose supports move: the level goes with the situation, so situations are
/// solved one by one. Every pattern where they are few and nothing rolls, which is exact; else an estimate.
/// </summary>
internal sealed class StretchSearch
{
    /// <summary>Up to so many patterns, of all combinations together, each is tried.</summary>
    private const int MostPatterns = 1 << 10;

    /// <summary>With so many patterns at most a rolling load is stepped.</summary>
    private const int MostRolledPatterns = 8;

    private readonly EnvelopeProblem _problem;
    private readonly Envelope _envelope;
    private readonly BeamSolver _solver;
    private readonly ImmutableArray<DeflectionStretch> _stretches;
    private readonly Demand?[] _best;
    private readonly Demand?[] _bestOfOne;

    private StretchSearch(
        EnvelopeProblem problem, Envelope envelope, ImmutableArray<DeflectionStretch> stretches, BeamSolver solver)
    {
        _problem = problem;
        _envelope = envelope;
        _solver = solver;
        _stretches = stretches;
        _best = new Demand?[stretches.Length];
        _bestOfOne = new Demand?[stretches.Length];
    }

    /// <summary>A demand for each stretch.</summary>
    internal static ImmutableArray<Demand> Find(
        EnvelopeProblem problem, Envelope envelope, ImmutableArray<DeflectionStretch> stretches, BeamSolver solver) =>
        new StretchSearch(problem, envelope, stretches, solver).Find();

    private ImmutableArray<Demand> Find()
    {
        Superposition sum = Superposition.Of(_problem, _solver) ?? throw new InvalidOperationException("The beam has an envelope.");
        SituationTrials[] all =
        [
            .. Enumerable.Range(0, _problem.Model.Combinations.Length)
                .Where(i => _problem.Model.Combinations[i].Basis == _envelope.Basis)
                .Select(i => new SituationTrials(sum, i)),
        ];
        bool triesEvery = all.Sum(one => one.Patterns) <= MostPatterns;
        foreach (SituationTrials trials in all)
        {
            Array.Clear(_bestOfOne);
            Run(trials, triesEvery);
            for (int i = 0; i < _best.Length; i++)
            {
                _best[i] = _bestOfOne[i] is Demand own ? Demand.Greater(_best[i], own) : _best[i];
            }
        }

        bool isExact = triesEvery && all.All(one => !one.Rolls);
        EnvelopeCertainty certainty = isExact ? EnvelopeCertainty.Exact : EnvelopeCertainty.Estimate;
        return [.. _best.Select(one => one! with { Certainty = certainty })];
    }

    private void Run(SituationTrials trials, bool triesEvery)
    {
        Situation[] usual = [.. trials.Usual()];
        Situation[] governing = [.. Governing().Where(one => one.Combination == usual[0].Combination)];
        foreach (Situation situation in triesEvery ? trials.Every() : usual.Concat(governing))
        {
            Try(situation);
        }

        if (!trials.Rolls)
        {
            return;
        }

        foreach (Situation situation in usual.Take(2).Concat(governing).Concat(usual).Select(one => one with { Rolling = null })
            .Distinct()
            .Take(MostRolledPatterns)
            .SelectMany(trials.Rolled))
        {
            Try(situation);
        }

        for (int i = 0; i < _stretches.Length; i++)
        {
            DeflectionStretch stretch = _stretches[i];
            if (_bestOfOne[i]?.Situation is { Rolling: RollingPlace } best)
            {
                trials.Polish(best, situation => Try(situation) is BeamResponse response
                    ? ChordDeflection.Greatest(stretch, (response, 1)).Value
                    : double.NegativeInfinity);
            }
        }
    }

    /// <summary>What makes the deflection greatest and least on each stretch, the level left aside.</summary>
    private IEnumerable<Situation> Governing() =>
        from stretch in _stretches
        let own = _envelope.ExtremesOf(Curve.Deflection, stretch.From, stretch.To)
        from situation in new[] { own.Max.Situation, own.Min.Situation }
        select situation;

    private BeamResponse? Try(Situation situation)
    {
        BeamResponse? response = EnvelopeSearch.Respond(_problem, situation, _solver);
        for (int i = 0; i < _stretches.Length && response is not null; i++)
        {
            Peak peak = ChordDeflection.Greatest(_stretches[i], (response, 1));
            _bestOfOne[i] = Demand.Greater(_bestOfOne[i], new Demand(peak.Value, peak.Position, situation));
        }

        return response;
    }
}
