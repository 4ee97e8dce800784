using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// Tries the situations of one combination under which a support can let go: every pattern where they are few and nothing
/// rolls, which is exact; else those that would govern did answers add up, patterns of the usual kinds, and rolling loads
/// by steps, polished.
/// </summary>
internal sealed class LiftedSearch
{
    /// <summary>Up to so many parts that may stand or not, every pattern is tried.</summary>
    internal const int MostParts = 12;

    /// <summary>Fewer parts than this make so few patterns that each is solved.</summary>
    private const int LeastScreened = 3;

    /// <summary>With so many patterns at most a rolling load is stepped.</summary>
    private const int MostRolledPatterns = 8;

    private readonly Superposition _sum;
    private readonly int _combination;
    private readonly LiftedAnswers _answers;
    private readonly SituationTrials _trials;
    private readonly Lazy<RaisedRests?> _rests;

    internal LiftedSearch(Superposition sum, int combination, LiftedAnswers answers, Lazy<RaisedRests?> rests)
    {
        _rests = rests;
        _sum = sum;
        _combination = combination;
        _answers = answers;
        _trials = new SituationTrials(sum, combination);
    }

    /// <summary>How many patterns there are.</summary>
    internal double Patterns => _trials.Patterns;

    /// <summary>Tries them.</summary>
    /// <param name="triesEvery">Whether every pattern may be tried.</param>
    internal void Run(bool triesEvery)
    {
        if (triesEvery && !_trials.Rolls)
        {
            TryEvery();
            return;
        }

        _answers.Certainty = EnvelopeCertainty.Estimate;
        Situation[] governing = [.. Governing()];
        Situation[] usual = [.. _trials.Usual()];
        foreach (Situation situation in governing.Concat(usual))
        {
            _answers.Try(situation);
        }

        if (_trials.Rolls)
        {
            Roll([.. usual.Take(2), .. governing]);
            Polish();
        }
    }

    /// <summary>Every pattern, but for those that cannot give more or less than others before them.</summary>
    private void TryEvery()
    {
        RaisedRests? rests = _trials.Optional.Length < LeastScreened ? null : _rests.Value;
        PatternScreen? screen = rests is null
            ? null
            : new PatternScreen(_sum, _combination, _trials.Optional, rests, _answers.Records);
        for (int pattern = 0; pattern < 1 << _trials.Optional.Length; pattern++)
        {
            if (screen is null || screen.CouldMatter(pattern))
            {
                _answers.Try(_trials.Pattern(pattern));
                continue;
            }

            foreach (int support in rests!.Supports)
            {
                if (screen.LetsGo(support) && !_answers.IsKnownToLetGo(support))
                {
                    _answers.NoteThatItLetsGo(support, _trials.Pattern(pattern));
                }
            }
        }
    }

    /// <summary>What would govern, did answers add up.</summary>
    private IEnumerable<Situation> Governing()
    {
        foreach (ReactionEnvelope reaction in new ReactionSearch(_sum, [_combination]).Find())
        {
            foreach (GovernedRange range in new[] { reaction.Horizontal, reaction.Vertical, reaction.Moment })
            {
                yield return range.Max.Situation;
                yield return range.Min.Situation;
            }
        }

        foreach (Curve curve in Envelope.Curves)
        {
            GovernedExtremes extremes = new CurveEnvelope(new CurveParts(_sum, curve), [_combination], null).Extremes;
            yield return extremes.Max.Situation;
            yield return extremes.Min.Situation;
        }
    }

    private void Roll(Situation[] patterns)
    {
        foreach (Situation situation in patterns.Select(one => one with { Rolling = null }).Distinct().Take(MostRolledPatterns)
            .SelectMany(_trials.Rolled))
        {
            _answers.Try(situation);
        }
    }

    /// <summary>Goes on where the best of each figure was found.</summary>
    private void Polish()
    {
        List<Func<BeamResponse, double>> figures = [];
        for (int i = 0; i < _sum.Problem.Model.Supports.Length; i++)
        {
            int support = i;
            figures.Add(response => response.Reactions[support].Vertical);
            figures.Add(response => -response.Reactions[support].Vertical);
        }

        // Each answer is asked many times.
        Dictionary<BeamResponse, Extremes[]> known = new(ReferenceEqualityComparer.Instance);
        foreach (Curve curve in Envelope.Curves)
        {
            figures.Add(response => Of(response, curve).Max.Value);
            figures.Add(response => -Of(response, curve).Min.Value);
        }

        foreach (Func<BeamResponse, double> figure in figures)
        {
            (Situation Situation, BeamResponse Response)[] own =
                [.. _answers.Kept.Where(one => one.Situation.Combination == _combination)];
            if (own.Length > 0 && own.MaxBy(one => figure(one.Response)).Situation is { Rolling: RollingPlace } best)
            {
                _trials.Polish(best, situation => _answers.Try(situation) is BeamResponse response ? figure(response) : double.NegativeInfinity);
            }
        }

        Extremes Of(BeamResponse response, Curve curve)
        {
            if (!known.TryGetValue(response, out Extremes[]? found))
            {
                known[response] = found = [.. Envelope.Curves.Select(response.ExtremesOf)];
            }

            return found[Envelope.Curves.IndexOf(curve)];
        }
    }
}
