namespace FieldCheck.Mechanics.Envelopes;

/// <summary>Situations of one combination that are worth trying one by one: patterns, and rolling loads by steps, polished.</summary>
internal sealed class SituationTrials
{
    private const int Steps = 40;
    private const double Golden = 0.6180339887498949;

    private readonly Superposition _sum;
    private readonly int _combination;
    private readonly Train[] _trains;

    internal SituationTrials(Superposition sum, int combination)
    {
        _sum = sum;
        _combination = combination;
        Optional = [.. sum.Optional.Where(part => sum.Factor(combination, part) != 0)];
        _trains = [.. sum.Traffic?.Trains.Where(train => sum.Traffic.Factor(combination, train) != 0) ?? []];
    }

    /// <summary>The parts that may stand or not.</summary>
    internal int[] Optional { get; }

    /// <summary>Whether a rolling load counts.</summary>
    internal bool Rolls => _trains.Length > 0;

    /// <summary>How many patterns there are.</summary>
    internal double Patterns => Math.Pow(2, Optional.Length);

    /// <summary>Every pattern, without what rolls.</summary>
    internal IEnumerable<Situation> Every() =>
        Enumerable.Range(0, 1 << Optional.Length).Select(Pattern);

    /// <summary>The pattern in which those optional parts stand whose bits are set.</summary>
    internal Situation Pattern(int set) => Standing(k => (set & (1 << k)) != 0);

    /// <summary>All, none, every other, one alone, all but one.</summary>
    internal IEnumerable<Situation> Usual()
    {
        yield return Standing(_ => true);
        yield return Standing(_ => false);
        yield return Standing(k => k % 2 == 0);
        yield return Standing(k => k % 2 == 1);
        for (int one = 0; one < Optional.Length; one++)
        {
            int only = one;
            yield return Standing(k => k == only);
            yield return Standing(k => k != only);
        }
    }

    /// <summary>The situations in which one part, then any two, stand where they did not, or do not where they did.</summary>
    internal IEnumerable<Situation> Neighbours(Situation situation)
    {
        bool[] stands = [.. Optional.Select(part => Stands(situation, _sum.Parts[part]))];
        for (int first = 0; first < stands.Length; first++)
        {
            yield return Changed(first, first);
        }

        for (int first = 0; first < stands.Length; first++)
        {
            for (int second = first + 1; second < stands.Length; second++)
            {
                yield return Changed(first, second);
            }
        }

        Situation Changed(int first, int second) =>
            Standing(k => stands[k] != (k == first || k == second)) with { Rolling = situation.Rolling };
    }

    /// <summary>A pattern with each rolling load at each of some places.</summary>
    internal IEnumerable<Situation> Rolled(Situation pattern) =>
        from train in _trains
        from step in Enumerable.Range(0, Steps + 1)
        select pattern with { Rolling = new RollingPlace(train.Rolling, train.Step(step, Steps), train.IsReversed) };

    /// <summary>Goes on beside the best place found, asking at each further one.</summary>
    /// <param name="best">A situation in which something rolls.</param>
    /// <param name="figure">What shall be as great as can be.</param>
    internal void Polish(Situation best, Func<Situation, double> figure)
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

        double At(double position) => figure(best with { Rolling = place with { Position = position } });
    }

    private bool Stands(Situation situation, LoadPart part) =>
        situation.Patterns[part.Case] is not LoadedBays loaded || _sum.Bays.IsLoaded(loaded, part.Stretch);

    private Situation Standing(Func<int, bool> stands)
    {
        HashSet<int> parts = [.. Optional.Where((_, k) => stands(k))];
        return _sum.Situation(_combination, parts.Contains, null);
    }
}
