using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// What a force down of one does to one figure, for every place at which it may stand: exact, a cubic between nodes.
/// </summary>
/// <remarks>Supports hold both ways, whichever way they act, and nothing else is on the beam.</remarks>
public sealed class InfluenceLine
{
    private readonly ImmutableArray<InfluenceCubic> _stretches;
    private readonly Extreme[] _stations;

    private InfluenceLine(ImmutableArray<InfluenceCubic> stretches)
    {
        _stretches = stretches;
        _stations = [.. stretches.SelectMany(StationsOf)];
    }

    /// <summary>Its greatest and least ordinates from place to place, the ends of the beam among them.</summary>
    /// <remarks>Force per force [–]; for a moment [m]; for the deflection [m/N].</remarks>
    public ImmutableArray<Extreme> Peaks => CurveScan.Peaks(_stations);

    /// <summary>Places inside the beam where it passes through zero, in order [m from the left end].</summary>
    public ImmutableArray<double> Zeros
    {
        get
        {
            double zero = CurveScan.Tie(_stations);
            SortedSet<double> zeros = [];
            Span<double> roots = stackalloc double[ForceInfluence.Cubic];
            foreach (InfluenceCubic stretch in _stretches)
            {
                int count = IsNothing(stretch, zero) ? 0 : Roots.Inside(stretch.Coefficients, roots);
                for (int i = 0; i < count; i++)
                {
                    zeros.Add(stretch.From + roots[i] * (stretch.To - stretch.From));
                }
            }

            for (int i = 1; i < _stretches.Length; i++)
            {
                double left = _stretches[i - 1].Coefficients.Sum();
                double right = _stretches[i].Coefficients[0];
                if (Math.Abs(left) <= zero || Math.Abs(right) <= zero || left < 0 != right < 0)
                {
                    zeros.Add(_stretches[i].From);
                }
            }

            return Apart(zeros);
        }
    }

    /// <summary>The influence line of the force across that a support gives.</summary>
    /// <param name="model">The beam; its loads do not matter.</param>
    /// <param name="support">Index of the support.</param>
    /// <param name="solver">The solver to work with.</param>
    /// <returns>Null where the beam does not stand.</returns>
    public static InfluenceLine? OfReaction(BeamModel model, int support, BeamSolver solver) =>
        Of(model, solver, influence => Whole(influence, influence.OfReaction(support, ReactionComponent.Vertical)));

    /// <summary>The influence line of the moment that a support gives.</summary>
    /// <param name="model">The beam; its loads do not matter.</param>
    /// <param name="support">Index of the support.</param>
    /// <param name="solver">The solver to work with.</param>
    /// <returns>Null where the beam does not stand.</returns>
    public static InfluenceLine? OfReactionMoment(BeamModel model, int support, BeamSolver solver) =>
        Of(model, solver, influence => Whole(influence, influence.OfReaction(support, ReactionComponent.Moment)));

    /// <summary>The influence line of N, V, M or the deflection at a section.</summary>
    /// <param name="model">The beam; its loads do not matter.</param>
    /// <param name="curve">The quantity, one of <see cref="Envelope.Curves"/>.</param>
    /// <param name="position">The section [m from the left end]; on the beam.</param>
    /// <param name="side">Which side of a node that stands there; at the left end always right, at the right end left.</param>
    /// <param name="solver">The solver to work with.</param>
    /// <returns>Null where the beam does not stand.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The section is not on the beam, or the quantity has no line.</exception>
    public static InfluenceLine? Of(BeamModel model, Curve curve, double position, Side side, BeamSolver solver)
    {
        ArgumentNullException.ThrowIfNull(model);
        if (!(position >= 0 && position <= model.Length))
        {
            throw new ArgumentOutOfRangeException(nameof(position), position, "Must lie on the beam.");
        }

        if (!Envelope.Curves.Contains(curve))
        {
            throw new ArgumentOutOfRangeException(nameof(curve), curve, "It has no influence line.");
        }

        return Of(model, solver, influence => SectionInfluence.Of(influence, curve, position, side));
    }

    /// <summary>The ordinates for a force just left and just right of a place; they differ only where V is looked at.</summary>
    /// <param name="position">The place of the force [m from the left end]; on the beam.</param>
    /// <returns>Force per force [–]; for a moment [m]; for the deflection [m/N].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The place is not on the beam.</exception>
    public (double Left, double Right) At(double position)
    {
        InfluenceCubic? left = _stretches.FirstOrDefault(one => one.From <= position && one.To >= position);
        InfluenceCubic? right = _stretches.LastOrDefault(one => one.From <= position && one.To >= position);
        if (left is null || right is null)
        {
            throw new ArgumentOutOfRangeException(nameof(position), position, "Must lie on the beam.");
        }

        return (Value(left), Value(right));

        double Value(InfluenceCubic one) => Roots.Value(one.Coefficients, (position - one.From) / (one.To - one.From));
    }

    private static InfluenceLine? Of(
        BeamModel model, BeamSolver solver, Func<ForceInfluence, IEnumerable<InfluenceCubic>> stretches)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(solver);
        BeamNodes nodes = new(model);
        BeamModel bare = model with { Cases = nodes.UnitCases(), Combinations = [] };
        return solver.SolveParts(bare, 0) is PartAnswers answers
            ? new InfluenceLine([.. stretches(new ForceInfluence(nodes, model.Supports.Length, answers.Starts))])
            : null;
    }

    private static IEnumerable<InfluenceCubic> Whole(ForceInfluence influence, InfluenceRow row) =>
        Enumerable.Range(0, influence.Nodes.ElementCount).Select(e =>
            new InfluenceCubic(influence.Nodes.At(e), influence.Nodes.At(e + 1), row.On(e).ToArray()));

    private static bool IsNothing(InfluenceCubic stretch, double zero) =>
        stretch.Coefficients.Sum(Math.Abs) <= zero;

    /// <summary>Zeros inside the beam; of such as differ by rounding only the first.</summary>
    private ImmutableArray<double> Apart(SortedSet<double> zeros)
    {
        double length = _stretches[^1].To;
        ImmutableArray<double>.Builder apart = ImmutableArray.CreateBuilder<double>();
        foreach (double zero in zeros)
        {
            bool isInside = zero > 1e-9 * length && zero < length - 1e-9 * length;
            if (isInside && (apart.Count == 0 || zero - apart[^1] > 1e-9 * length))
            {
                apart.Add(zero);
            }
        }

        return apart.ToImmutable();
    }

    private static List<Extreme> StationsOf(InfluenceCubic stretch)
    {
        Span<double> turns = stackalloc double[ForceInfluence.Cubic];
        int count = Roots.TurnsInside(stretch.Coefficients, turns);
        List<Extreme> stations = [new Extreme(stretch.Coefficients[0], stretch.From)];
        for (int i = 0; i < count; i++)
        {
            stations.Add(new Extreme(
                Roots.Value(stretch.Coefficients, turns[i]), stretch.From + turns[i] * (stretch.To - stretch.From)));
        }

        stations.Add(new Extreme(Roots.Value(stretch.Coefficients, 1), stretch.To));
        return stations;
    }
}
