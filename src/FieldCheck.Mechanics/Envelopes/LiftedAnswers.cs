using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// Answers to situations tried one by one, where a support may let go. Kept are those only that gave more or less than all
/// before them somewhere: of thousands, some tens.
/// </summary>
internal sealed class LiftedAnswers
{
    private readonly EnvelopeProblem _problem;
    private readonly BeamSolver _solver;
    private readonly List<(Situation Situation, BeamResponse Response)> _kept = [];
    private readonly List<Situation> _withoutAnswer = [];
    private readonly Dictionary<int, Situation> _letsGo = [];

    internal LiftedAnswers(EnvelopeProblem problem, ImmutableArray<Piece> pieces, BeamSolver solver)
    {
        _problem = problem;
        _solver = solver;
        Records = new LiftedRecords(problem, pieces);
    }

    /// <summary>Situations without an answer, one a combination.</summary>
    internal ImmutableArray<Situation> WithoutAnswer => [.. _withoutAnswer];

    internal LiftedRecords Records { get; }

    internal IReadOnlyList<(Situation Situation, BeamResponse Response)> Kept => _kept;

    internal EnvelopeCertainty Certainty { get; set; } = EnvelopeCertainty.Exact;

    internal bool IsKnownToLetGo(int support) => _letsGo.ContainsKey(support);

    /// <summary>Takes note of a situation in which a support lets go.</summary>
    internal void NoteThatItLetsGo(int support, Situation situation) => _letsGo.TryAdd(support, situation);

    /// <summary>Answers to a situation; null where the beam does not stand in it.</summary>
    internal BeamResponse? Try(Situation situation)
    {
        if (EnvelopeSearch.Respond(_problem, situation, _solver) is not BeamResponse response)
        {
            if (_withoutAnswer.TrueForAll(one => one.Combination != situation.Combination))
            {
                _withoutAnswer.Add(situation);
            }

            return null;
        }

        for (int i = 0; i < response.Reactions.Length; i++)
        {
            if (response.Reactions[i].IsLiftedOff)
            {
                _letsGo.TryAdd(i, situation);
            }
        }

        if (Records.Take(response))
        {
            _kept.Add((situation, response));
        }

        return response;
    }

    /// <summary>
    /// The greatest and least of a reaction, what is known of it already among them. Of all situations that make it nothing
    /// the one is named in which the support lets go.
    /// </summary>
    internal GovernedRange Joined(GovernedRange? known, Func<Reaction, double> part, int support)
    {
        return new GovernedRange(Best(known?.Max, 1), Best(known?.Min, -1));

        Governed Best(Governed? best, int sense)
        {
            foreach ((Situation situation, BeamResponse response) in _kept)
            {
                double value = part(response.Reactions[support]);
                best = best is null || LiftedRecords.IsMore(value, best.Value, sense) ? new Governed(value, situation) : best;
            }

            return best!.Value == 0 && _letsGo.TryGetValue(support, out Situation? loose)
                ? new Governed(0, loose)
                : best;
        }
    }

    /// <summary>The greatest and least of a quantity on a stretch, what is known of it already among them.</summary>
    internal GovernedExtremes Joined(GovernedExtremes? known, Curve curve, double from, double to)
    {
        GovernedExtreme? most = known?.Max;
        GovernedExtreme? least = known?.Min;
        foreach ((Situation situation, BeamResponse response) in _kept)
        {
            Extremes own = response.ExtremesOf(curve, from, to);
            most = most is null || LiftedRecords.IsMore(own.Max.Value, most.Value, 1) ? Of(own.Max, situation) : most;
            least = least is null || LiftedRecords.IsMore(own.Min.Value, least.Value, -1) ? Of(own.Min, situation) : least;
        }

        return new GovernedExtremes(most!, least!);

        static GovernedExtreme Of(Extreme extreme, Situation situation) =>
            new(extreme.Value, extreme.Position, situation);
    }

    /// <summary>The greatest at a place with sense 1, the least with -1, what is known of it already among them.</summary>
    internal Governed GovernedAt(Governed? known, Curve curve, double place, int sense)
    {
        Governed? best = known;
        foreach ((Situation situation, BeamResponse response) in _kept)
        {
            double value = 0 + sense * Most(response, curve, place, sense);
            best = best is null || LiftedRecords.IsMore(value, best.Value, sense) ? new Governed(value, situation) : best;
        }

        return best!;
    }

    /// <summary>
    /// The greatest at a place on both its sides, at an end of the beam on the inner one; with sense -1 the least, of the
    /// opposite sign.
    /// </summary>
    internal double MostAt(Curve curve, double place, int sense) =>
        _kept.Select(one => Most(one.Response, curve, place, sense)).DefaultIfEmpty(double.NegativeInfinity).Max();

    private double Most(BeamResponse response, Curve curve, double place, int sense)
    {
        (SectionState left, SectionState right) = response.At(place);
        return Math.Max(
            sense * Value(place == 0 ? right : left, curve),
            sense * Value(place == _problem.Model.Length ? left : right, curve));
    }

    private static double Value(in SectionState state, Curve curve) => curve switch
    {
        Curve.Axial => state.Axial,
        Curve.Shear => state.Shear,
        Curve.Moment => state.Moment,
        _ => state.Deflection,
    };
}
