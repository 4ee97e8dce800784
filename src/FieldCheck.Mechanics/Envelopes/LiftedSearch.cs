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

    private const int Steps = 40;
    private const double Golden = 0.6180339887498949;

    private readonly Superposition _sum;
    private readonly int _combination;
    private readonly LiftedAnswers _answers;
    private readonly int[] _optional;
    private readonly Train[] _trains;
    private readonly Lazy<RaisedRests?> _rests;

    internal LiftedSearch(Superposition sum, int combination, LiftedAnswers answers, Lazy<RaisedRests?> rests)
    {
        _rests = rests;
        _sum = sum;
        _combination = combination;
        _answers = answers;
        _optional = [.. sum.Optional.Where(part => sum.Factor(combination, part) != 0)];
        _trains = [.. sum.Traffic?.Trains.Where(train => sum.Traffic.Factor(combination, train) != 0) ?? []];
    }

    /// <summary>How many patterns there are.</summary>
    internal double Patterns => Math.Pow(2, _optional.Length);

    /// <summary>Tries them.</summary>
    /// <param name="triesEvery">Whether every pattern may be tried.</param>
    internal void Run(bool triesEvery)
    {
        if (triesEvery && _trains.Length == 0)
        {
            TryEvery();
            return;
        }

        _answers.Certainty = EnvelopeCertainty.Estimate;
        Situation[] governing = [.. Governing()];
        Situation[] usual = [.. Usual()];
        foreach (Situation situation in governing.Concat(usual))
        {
            _answers.Try(situation);
        }

        if (_trains.Length > 0)
        {
            Roll([.. usual.Take(2), .. governing]);
            Polish();
        }
    }

    /// <summary>Every pattern, but for those that cannot give more or less than others before them.</summary>
    private void TryEvery()
    {
        RaisedRests? rests = _optional.Length < LeastScreened ? null : _rests.Value;
        PatternScreen? screen = rests is null
            ? null
            : new PatternScreen(_sum, _combination, _optional, rests, _answers.Records);
        for (int set = 0; set < 1 << _optional.Length; set++)
        {
            int pattern = set;
            if (screen is null || screen.CouldMatter(pattern))
            {
                _answers.Try(Standing(k => (pattern & (1 << k)) != 0));
                continue;
            }

            foreach (int support in rests!.Supports)
            {
                if (screen.LetsGo(support) && !_answers.IsKnownToLetGo(support))
                {
                    _answers.NoteThatItLetsGo(support, Standing(k => (pattern & (1 << k)) != 0));
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

    /// <summary>All, none, every other, one alone, all but one.</summary>
    private IEnumerable<Situation> Usual()
    {
        yield return Standing(_ => true);
        yield return Standing(_ => false);
        yield return Standing(k => k % 2 == 0);
        yield return Standing(k => k % 2 == 1);
        for (int one = 0; one < _optional.Length; one++)
        {
            int only = one;
            yield return Standing(k => k == only);
            yield return Standing(k => k != only);
        }
    }

    private Situation Standing(Func<int, bool> stands)
    {
        HashSet<int> parts = [.. _optional.Where((_, k) => stands(k))];
        return _sum.Situation(_combination, parts.Contains, null);
    }

    private void Roll(Situation[] patterns)
    {
        foreach (Situation pattern in patterns.Select(one => one with { Rolling = null }).Distinct().Take(MostRolledPatterns))
        {
            foreach (Train train in _trains)
            {
                for (int step = 0; step <= Steps; step++)
                {
                    _answers.Try(pattern with { Rolling = new RollingPlace(train.Rolling, train.Step(step, Steps), train.IsReversed) });
                }
            }
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
                Polish(best, figure);
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

    private void Polish(Situation best, Func<BeamResponse, double> figure)
    {
        RollingPlace place = best.Rolling!;
        Train train = _trains.First(one => one.Rolling == place.Rolling && one.IsReversed == place.IsReversed);
        double step = train.Step(1, Steps) - train.Step(0, Steps);
        (double low, double high) = (place.Position - step, place.Position + step);
        double left = high - Golden * (high - low);
        double right = low + Golden * (high - low);
        (double atLeft, double atRight) = (At(left), At(right));
        while (high - low > 1e-4 * step)
        {
            if (atLeft > atRight)
            {
                (high, right, atRight) = (right, left, atLeft);
                left = high - Golden * (high - low);
                atLeft = At(left);
            }
            else
            {
                (low, left, atLeft) = (left, right, atRight);
                right = low + Golden * (high - low);
                atRight = At(right);
            }
        }

        double At(double position) =>
            _answers.Try(best with { Rolling = place with { Position = position } }) is BeamResponse response
                ? figure(response)
                : double.NegativeInfinity;
    }
}
