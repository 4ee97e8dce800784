using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// Tries the situations of one combination under which a support can let go: every pattern where they are few and nothing
/// rolls, which is exact; else those that would govern did answers add up, patterns of the usual kinds, and rolling loads
/// by steps; then, figure by figure, what one part more or less gives beside the best, polished.
/// </summary>
internal sealed class LiftedSearch
{
    /// <summary>Up to so many parts that may stand or not, every pattern is tried.</summary>
    internal const int MostParts = 12;

    /// <summary>Fewer parts than this make so few patterns that each is solved.</summary>
    private const int LeastScreened = 3;

    /// <summary>With so many patterns at most a rolling load is stepped at once, where it is not with every one.</summary>
    private const int MostRolledPatterns = 8;

    /// <summary>Up to so many situations what rolls is stepped with every pattern.</summary>
    private const int MostSteppedSituations = 3000;

    /// <summary>Situations that may be tried beside the best ones, over the number of supports: each solve takes the longer the more there are.</summary>
    private const int MostClimbed = 60_000;

    /// <summary>From so many of the best patterns of a figure.</summary>
    private const int Starts = 3;

    /// <summary>So many times at most patterns and places of what rolls are looked for in turn.</summary>
    private const int MostTurns = 4;

    private readonly Superposition _sum;
    private readonly int _combination;
    private readonly LiftedAnswers _answers;
    private readonly HashSet<Situation> _rolled = [];
    private int _left;
    private readonly SituationTrials _trials;
    private readonly Lazy<RaisedRests?> _rests;

    internal LiftedSearch(Superposition sum, int combination, LiftedAnswers answers, Lazy<RaisedRests?> rests)
    {
        _rests = rests;
        _sum = sum;
        _combination = combination;
        _answers = answers;
        _trials = new SituationTrials(sum, combination);
        _left = MostClimbed / sum.Problem.Model.Supports.Length;
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
            bool stepsEvery = _trials.Patterns * _trials.Rolled(usual[0]).Count() <= MostSteppedSituations;
            Roll(stepsEvery ? _trials.Every() : usual.Take(2).Concat(governing)
                .Select(one => one with { Rolling = null }).Distinct().Take(MostRolledPatterns));
        }

        foreach (Func<BeamResponse, double> figure in Figures())
        {
            foreach (Situation start in Best(figure))
            {
                Climb(start, figure);
            }
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

    private void Roll(IEnumerable<Situation> patterns)
    {
        foreach (Situation pattern in patterns)
        {
            _rolled.Add(pattern);
            foreach (Situation situation in _trials.Rolled(pattern))
            {
                _answers.Try(situation);
            }
        }
    }

    /// <summary>
    /// From a situation on: a part or two more or less while that gives more, then, with a pattern that was not rolled over
    /// yet, every place of what rolls, in turn; the last place is polished.
    /// </summary>
    private void Climb(Situation start, Func<BeamResponse, double> figure)
    {
        (Situation best, double value) = (start, figure(_answers.Try(start)!));
        for (int turn = 0; turn < MostTurns && ClimbPatterns(figure, ref best, ref value) && _trials.Rolls; turn++)
        {
            Situation pattern = best with { Rolling = null };
            if (!_rolled.Add(pattern))
            {
                break;
            }

            foreach (Situation situation in _trials.Rolled(pattern).TakeWhile(_ => _left > 0))
            {
                _left--;
                TakeIfMore(situation, figure, ref best, ref value);
            }
        }

        if (best.Rolling is not null)
        {
            _trials.Polish(best, situation => _answers.Try(situation) is BeamResponse response ? figure(response) : double.NegativeInfinity);
        }
    }

    /// <returns>Whether another pattern gives more.</returns>
    private bool ClimbPatterns(Func<BeamResponse, double> figure, ref Situation best, ref double value)
    {
        bool isMore = false;
        for (bool goesOn = true; goesOn;)
        {
            goesOn = false;
            foreach (Situation situation in _trials.Neighbours(best))
            {
                if (_left-- <= 0)
                {
                    return isMore;
                }

                if (TakeIfMore(situation, figure, ref best, ref value))
                {
                    (isMore, goesOn) = (true, true);
                    break;
                }
            }
        }

        return isMore;
    }

    private bool TakeIfMore(Situation situation, Func<BeamResponse, double> figure, ref Situation best, ref double value)
    {
        if (_answers.Try(situation) is not BeamResponse response
            || figure(response) is double own && own <= value + Leader<int>.Closeness * Math.Abs(value))
        {
            return false;
        }

        (best, value) = (situation, figure(response));
        return true;
    }

    /// <summary>The situations that give most of a figure, each of another pattern.</summary>
    private Situation[] Best(Func<BeamResponse, double> figure) =>
    [
        .. _answers.Kept
            .Where(one => one.Situation.Combination == _combination)
            .OrderByDescending(one => figure(one.Response))
            .Select(one => one.Situation)
            .DistinctBy(one => one with { Rolling = null })
            .Take(Starts),
    ];

    /// <summary>What is to be as great as can be: every reaction and every quantity, each of both senses.</summary>
    private List<Func<BeamResponse, double>> Figures()
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

        return figures;

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
