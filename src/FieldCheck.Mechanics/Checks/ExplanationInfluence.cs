using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Checks;

/// <summary>What any load does to the stated figures, and to every vertical, while no support lifts off.</summary>
/// <remarks>
/// Exact, from loads of one on each element between neighbouring nodes; an element is solved for when a load first
/// touches it.
/// </remarks>
internal sealed class ExplanationInfluence
{
    private const int Across = 0;
    private const int Along = 1;
    private const int Turning = 2;

    /// <summary>Three places that integrate what rises with the fifth power exactly (Gauss), as shares of the half [–].</summary>
    private static readonly (double Place, double Weight)[] Shares =
        [(-Math.Sqrt(0.6), 5.0 / 9), (0, 8.0 / 9), (Math.Sqrt(0.6), 5.0 / 9)];

    private readonly StatedSet _stated;
    private readonly StiffnessMethod _method;
    private readonly ExplanationWork _work;
    private readonly (int Support, ReactionPart Part)[] _read;
    private readonly bool[] _touching;
    private readonly double[] _nodes;
    private readonly double[]?[] _known;
    private readonly Dictionary<Load, double[]> _own = new(ReferenceEqualityComparer.Instance);

    internal ExplanationInfluence(StatedSet stated, StiffnessMethod method, ExplanationWork work)
    {
        (_stated, _method, _work) = (stated, method, work);
        _read =
        [
            .. stated.Figures.Select(figure => (figure.Support, figure.Part)),
            .. Enumerable.Range(0, stated.Model.Supports.Length)
                .Where(support => stated.Model.Supports[support].Action != SupportAction.Both)
                .Select(support => (support, ReactionPart.Vertical)),
        ];
        _touching = new bool[stated.Model.Supports.Length];
        Array.Fill(_touching, true);
        _nodes = [.. stated.Model.NodePositions()];
        _known = new double[]?[UnitLoads.Parts.Length * (_nodes.Length - 1)];
    }

    /// <summary>The supports that act one way only; their verticals are read after the stated figures.</summary>
    internal ReadOnlySpan<(int Support, ReactionPart Part)> OneWay => _read.AsSpan(_stated.Figures.Length);

    /// <summary>
    /// What changed loads add to a figure [N or N·m]; not a number where nothing holds the beam against them, or they were not
    /// solved.
    /// </summary>
    internal double Of(int figure, ReadOnlySpan<LoadChange> changes)
    {
        double sum = 0;
        foreach (LoadChange change in changes)
        {
            sum += change.Factor * (change.IsOwn ? OfOwn(change.Load)[figure] : Of(figure, change.Load));
        }

        return sum;
    }

    /// <summary>A load of the beam itself is asked for again and again.</summary>
    private double[] OfOwn(Load load)
    {
        if (!_own.TryGetValue(load, out double[]? figures))
        {
            figures = [.. Enumerable.Range(0, _read.Length).Select(figure => Of(figure, load))];
            _own.Add(load, figures);
        }

        return figures;
    }

    private double Of(int figure, Load load) => load switch
    {
        Load.Point point => Of(figure, ElementAt(point.Position), point),
        Load.Couple couple => couple.Moment * At(figure, Turning, ElementOf(couple), couple.Position),
        Load.Distributed { StartIntensity: 0, EndIntensity: 0 } => 0,
        Load.Distributed spread => Of(figure, spread),
        _ => throw new UnreachableException(),
    };

    /// <summary>
    /// The figures on another beam with the same supports in number [N or N·m]; null: it is beyond the arithmetic. Whether
    /// that beam stands is not asked.
    /// </summary>
    internal double[]? On(BeamModel other)
    {
        LoadCase[] acting = [.. other.Cases.Where((_, i) => _stated.Factors[i] != 0)];
        if (!_work.Take(_nodes.Length + other.Cases.Sum(one => one.Loads.Length)))
        {
            return null;
        }

        _method.Prepare(other);
        if (!_method.Hold(_touching, acting.Any(Lengthways.IsIn)))
        {
            return null;
        }

        _method.Load(_stated.Factors.AsSpan());
        _method.Move(withImposed: true);
        double[] figures = new double[_stated.Figures.Length];
        Read(_read.AsSpan(0, figures.Length), figures, 1);
        return _method.StayedFinite ? figures : null;
    }

    private double Of(int figure, int element, Load.Point point) =>
        (point.Down == 0 ? 0 : point.Down * At(figure, Across, element, point.Position))
        + (point.Right == 0 ? 0 : point.Right * At(figure, Along, element, point.Position));

    private double Of(int figure, Load.Distributed spread)
    {
        int part = spread.ActsAlong ? Along : Across;
        double slope = (spread.EndIntensity - spread.StartIntensity) / (spread.To - spread.From);
        double sum = 0;
        for (int i = ElementAt(spread.From); i < _nodes.Length - 1 && _nodes[i] < spread.To; i++)
        {
            double left = Math.Max(_nodes[i], spread.From);
            double half = (Math.Min(_nodes[i + 1], spread.To) - left) / 2;
            foreach ((double place, double weight) in Shares)
            {
                double position = left + half * (1 + place);
                double intensity = spread.StartIntensity + slope * (position - spread.From);
                sum += half * weight * intensity * At(figure, part, i, position);
            }
        }

        return sum;
    }

    /// <summary>The influence of one of a kind of load at a place of an element.</summary>
    private double At(int figure, int part, int element, double position)
    {
        ref double[]? known = ref _known[UnitLoads.Parts.Length * element + part];
        known ??= Solve(element, part);
        int count = known.Length / _read.Length;
        double share = (position - _nodes[element]) / (_nodes[element + 1] - _nodes[element]);
        double value = 0;
        for (int k = count - 1; k >= 0; k--)
        {
            value = value * share + known[count * figure + k];
        }

        return value;
    }

    private double[] Solve(int element, int part)
    {
        ImmutableArray<LoadCase> units =
            [.. UnitLoads.On(_nodes[element], _nodes[element + 1] - _nodes[element]).Take(UnitLoads.Parts[part])];
        double[] rows = new double[units.Length * _read.Length];
        bool isHeld = (part != Along || _stated.Model.Supports.Any(support => support.HoldsAlong)) && _work.Take(units.Length * _nodes.Length);
        if (isHeld)
        {
            _method.Prepare(_stated.Model with { Cases = units, Combinations = [] });
            isHeld = _method.Hold(_touching, wantsAlong: part == Along);
        }

        double[] factors = new double[units.Length];
        for (int k = 0; k < units.Length && isHeld; k++)
        {
            Array.Clear(factors);
            factors[k] = 1;
            _method.Load(factors);
            _method.Move(withImposed: false);
            Read(_read, rows.AsSpan(k), units.Length);
            isHeld = _method.StayedFinite;
        }

        if (!isHeld)
        {
            Array.Fill(rows, double.NaN);
            return rows;
        }

        for (int figure = 0; figure < _read.Length; figure++)
        {
            UnitLoads.Fit(part, rows.AsSpan(units.Length * figure, units.Length));
        }

        return rows;
    }

    private void Read(ReadOnlySpan<(int Support, ReactionPart Part)> figures, Span<double> to, int step)
    {
        for (int i = 0; i < figures.Length; i++)
        {
            (int support, ReactionPart part) = figures[i];
            (double, double, double) needed = _method.ReactionAt(_method.Grid.NodeOfSupport(support));
            to[step * i] = ExplanationFigures.Of(Answers.ReactionOf(_stated.Model.Supports[support], needed), part);
        }
    }

    private int ElementAt(double position)
    {
        int found = Array.BinarySearch(_nodes, position);
        return Math.Clamp(found < 0 ? ~found - 1 : found, 0, _nodes.Length - 2);
    }

    /// <summary>Only a hinge has a couple on either side of it turn another part.</summary>
    private int ElementOf(Load.Couple couple)
    {
        int element = ElementAt(couple.Position);
        bool isLeft = couple.Side == Side.Left && element > 0 && _nodes[element] == couple.Position;
        return isLeft ? element - 1 : element;
    }
}
