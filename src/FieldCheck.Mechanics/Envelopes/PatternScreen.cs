using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// Tells which patterns of one combination could give more or less than what is known, by more than 1e-12 of the greatest
/// of its kind. The others need no solve of their own.
/// </summary>
internal sealed class PatternScreen
{
    private readonly RaisedRests _rests;
    private readonly LiftedRecords _records;
    private readonly FigureTable _table;
    private readonly LiftSteps _steps;
    private readonly double[] _always;
    private readonly double[][] _parts;
    private readonly int[] _elementOf;
    private readonly double[] _row;
    private readonly double[] _held;
    private readonly double[] _slack = new double[Envelope.Curves.Length];
    private readonly int _supports;
    private readonly int _elements;

    internal PatternScreen(
        Superposition sum, int combination, int[] optional, RaisedRests rests, LiftedRecords records)
    {
        _rests = rests;
        _records = records;
        _table = rests.Table;
        _steps = new LiftSteps([.. rests.Supports.Select(i => sum.Problem.Model.Supports[i].Action)], rests.Stiffness);
        _row = new double[_table.Length];
        _held = new double[rests.Supports.Length];
        _always = new double[_table.Length];
        _table.Add(_always, 1, 0, sum.ImposedReactions, 0, sum.Imposed);
        foreach (int part in Enumerable.Range(0, sum.Parts.Length).Where(part => sum.Parts[part].StandsAlways))
        {
            Add(_always, sum.Factor(combination, part), sum.AnswerTo(part));
        }

        _parts = [.. optional.Select(part =>
        {
            double[] row = new double[_table.Length];
            Add(row, sum.Factor(combination, part), sum.AnswerTo(part));
            return row;
        })];
        ImmutableArray<double> nodes = sum.Problem.Model.NodePositions();
        _elementOf = [.. sum.Imposed.Select(piece => nodes.BinarySearch(piece.To) is int at && at >= 0 ? at - 1 : ~at - 1)];
        _supports = sum.Problem.Model.Supports.Length;
        _elements = nodes.Length - 1;
    }

    /// <summary>Whether a support lets go under the pattern that was looked at last.</summary>
    internal bool LetsGo(int support) => _steps.IsOff(_rests.Supports.IndexOf(support));

    /// <summary>Whether a pattern could give more or less than what is known; bit k is the k-th part.</summary>
    internal bool CouldMatter(int pattern)
    {
        _always.CopyTo(_row.AsSpan());
        for (int k = 0; k < _parts.Length; k++)
        {
            if ((pattern & (1 << k)) != 0)
            {
                FigureTable.Add(_row, _parts[k], 1);
            }
        }

        for (int i = 0; i < _held.Length; i++)
        {
            _held[i] = _row[LiftedRecords.ReactionFigure(_rests.Supports[i], ReactionComponent.Vertical)];
        }

        if (_records.IsEmpty || !_steps.Find(_held))
        {
            return true;
        }

        for (int i = 0; i < _held.Length; i++)
        {
            if (_steps.IsOff(i))
            {
                FigureTable.Add(_row, _rests.Rows[i], _steps.Lifts[i]);
            }
        }

        return HasReaction() || HasMore();
    }

    private bool HasReaction()
    {
        for (int component = 0; component < 3; component++)
        {
            double size = 0;
            for (int i = 0; i < _supports; i++)
            {
                size = Math.Max(size, SizeOf(LiftedRecords.ReactionFigure(i, (ReactionComponent)component)));
            }

            for (int i = 0; i < _supports; i++)
            {
                int figure = LiftedRecords.ReactionFigure(i, (ReactionComponent)component);
                if (IsBeyond(figure, _row[figure], _row[figure], Leader<int>.Closeness * size))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private bool HasMore()
    {
        for (int curve = 0; curve < _slack.Length; curve++)
        {
            double size = 0;
            for (int e = 0; e < _elements; e++)
            {
                size = Math.Max(size, SizeOf(_records.ElementFigure(curve, e)));
            }

            _slack[curve] = Leader<int>.Closeness * size;
        }

        for (int piece = 0; piece < _elementOf.Length; piece++)
        {
            for (int curve = 0; curve < _slack.Length; curve++)
            {
                if (HasMoreOn(piece, curve))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private bool HasMoreOn(int piece, int curve)
    {
        ReadOnlySpan<double> bounds = _table.Bounds(_row, piece, curve);
        int place = LiftedRecords.Stations * piece;
        double slack = _slack[curve];
        (double start, double end) = (bounds[0], bounds[^1]);
        if (IsBeyond(_records.PlaceFigure(curve, place), start, start, slack)
            || IsBeyond(_records.PlaceFigure(curve, place + LiftedRecords.Stations), end, end, slack))
        {
            return true;
        }

        foreach (double inner in _table.Inner(_row, piece, curve))
        {
            if (IsBeyond(_records.PlaceFigure(curve, ++place), inner, inner, slack))
            {
                return true;
            }
        }

        (double low, double high) = (start, start);
        foreach (double bound in bounds)
        {
            (low, high) = (Math.Min(low, bound), Math.Max(high, bound));
        }

        int figure = _records.ElementFigure(curve, _elementOf[piece]);
        return IsBeyond(figure, low, high, slack) && TurnsBeyond(bounds, figure, slack);
    }

    /// <summary>Whether it goes beyond at an end or where it turns; only asked where the bounds allow it.</summary>
    private bool TurnsBeyond(ReadOnlySpan<double> bounds, int figure, double slack)
    {
        Span<double> polynomial = stackalloc double[Piece.MostCoefficients];
        Span<double> turns = stackalloc double[Piece.MostCoefficients];
        polynomial = polynomial[..bounds.Length];
        Bernstein.ToPowers(bounds, polynomial);
        bool isBeyond = IsBeyond(figure, bounds[0], bounds[0], slack) || IsBeyond(figure, bounds[^1], bounds[^1], slack);
        int count = Roots.TurnsInside(polynomial, turns);
        for (int i = 0; i < count && !isBeyond; i++)
        {
            double value = Roots.Value(polynomial, turns[i]);
            isBeyond = IsBeyond(figure, value, value, slack);
        }

        return isBeyond;
    }

    private bool IsBeyond(int figure, double low, double high, double slack) =>
        high > _records.Most(figure) + slack || low < _records.Least(figure) - slack;

    private double SizeOf(int figure) => Math.Max(Math.Abs(_records.Most(figure)), Math.Abs(_records.Least(figure)));

    private void Add(double[] row, double factor, PartAnswer answer) => _table.Add(
        row, factor, answer.FirstSupport, answer.Reactions, answer.FirstPiece, answer.Pieces);
}
