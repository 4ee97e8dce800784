using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// The greatest and least so far of every reaction, of every quantity on every element, and of it at some places.
/// </summary>
internal sealed class LiftedRecords
{
    /// <summary>Places a piece at which an answer may be the greatest or least.</summary>
    internal const int Stations = 4;

    private const int AReaction = 3;

    private readonly int _supports;
    private readonly ImmutableArray<double> _nodes;
    private readonly double[] _places;
    private readonly double[] _most;
    private readonly double[] _least;
    private readonly double[] _high;
    private readonly double[] _low;

    /// <summary>Nothing yet.</summary>
    /// <param name="problem">The beam.</param>
    /// <param name="pieces">The pieces of all its standing loads.</param>
    internal LiftedRecords(EnvelopeProblem problem, ImmutableArray<Piece> pieces)
    {
        _supports = problem.Model.Supports.Length;
        _nodes = problem.Model.NodePositions();
        _places =
        [
            .. pieces.SelectMany(piece => Enumerable.Range(0, Stations)
                .Select(i => piece.From + i * piece.Length / Stations)),
            problem.Model.Length,
        ];
        int figures = PlaceFigure(Envelope.Curves.Length, 0);
        (_most, _least) = (new double[figures], new double[figures]);
        (_high, _low) = (new double[figures], new double[figures]);
    }

    /// <summary>Whether no answer was taken in yet.</summary>
    internal bool IsEmpty { get; private set; } = true;

    /// <summary>The figure of a part of a reaction.</summary>
    internal static int ReactionFigure(int support, ReactionComponent component) => AReaction * support + (int)component;

    /// <summary>The figure of a quantity on an element.</summary>
    internal int ElementFigure(int curve, int element) =>
        AReaction * _supports + curve * (_nodes.Length - 1) + element;

    /// <summary>The figure of a quantity at a place: a station of a piece of the standing loads, or the right end.</summary>
    internal int PlaceFigure(int curve, int place) =>
        AReaction * _supports + Envelope.Curves.Length * (_nodes.Length - 1) + curve * _places.Length + place;

    /// <summary>The greatest so far of a figure.</summary>
    internal double Most(int figure) => _most[figure];

    /// <summary>The least so far.</summary>
    internal double Least(int figure) => _least[figure];

    /// <summary>Whether a value is more than another by more than rounding; with sense -1 less.</summary>
    internal static bool IsMore(double value, double best, int sense) =>
        sense * (value - best) > Leader<int>.Closeness * Math.Max(Math.Abs(value), Math.Abs(best));

    /// <summary>Takes in an answer.</summary>
    /// <returns>Whether it gave more or less than all before it somewhere.</returns>
    internal bool Take(BeamResponse response)
    {
        Read(response);
        bool breaks = IsEmpty;
        for (int figure = 0; figure < _most.Length; figure++)
        {
            if (IsEmpty)
            {
                (_most[figure], _least[figure]) = (_high[figure], _low[figure]);
            }
            else if (IsMore(_high[figure], _most[figure], 1) || IsMore(_low[figure], _least[figure], -1))
            {
                breaks = true;
                _most[figure] = Math.Max(_most[figure], _high[figure]);
                _least[figure] = Math.Min(_least[figure], _low[figure]);
            }
        }

        IsEmpty = false;
        return breaks;
    }

    /// <summary>Finds the greatest and least of every figure in one answer, in one walk over its pieces.</summary>
    private void Read(BeamResponse response)
    {
        Array.Fill(_high, double.NegativeInfinity);
        Array.Fill(_low, double.PositiveInfinity);
        for (int i = 0; i < _supports; i++)
        {
            Reaction reaction = response.Reactions[i];
            Note(ReactionFigure(i, ReactionComponent.Horizontal), reaction.Horizontal);
            Note(ReactionFigure(i, ReactionComponent.Vertical), reaction.Vertical);
            Note(ReactionFigure(i, ReactionComponent.Moment), reaction.Moment);
        }

        int element = 0;
        int place = 0;
        foreach (ref readonly Piece piece in response.Pieces.AsSpan())
        {
            while (_nodes[element + 1] <= piece.From)
            {
                element++;
            }

            while (_places[place] < piece.From)
            {
                place++;
            }

            for (int curve = 0; curve < Envelope.Curves.Length; curve++)
            {
                Read(piece, curve, element, place);
            }
        }

        // Outside the ends there are no forces.
        for (int curve = 0; curve < Envelope.Curves.Length; curve++)
        {
            if (Envelope.Curves[curve] != Curve.Deflection)
            {
                Note(PlaceFigure(curve, 0), 0);
                Note(PlaceFigure(curve, _places.Length - 1), 0);
            }
        }
    }

    private void Read(in Piece piece, int curve, int element, int place)
    {
        Span<double> polynomial = stackalloc double[Piece.MostCoefficients];
        Span<double> turns = stackalloc double[Piece.MostCoefficients];
        Curve quantity = Envelope.Curves[curve];
        polynomial = polynomial[..piece.Polynomial(quantity, polynomial)];
        (double start, double end) = (piece.AtStart(quantity), piece.AtEnd(quantity));
        int figure = ElementFigure(curve, element);
        Note(figure, start);
        Note(figure, end);
        int count = Roots.TurnsInside(polynomial, turns);
        for (int i = 0; i < count; i++)
        {
            Note(figure, Roots.Value(polynomial, turns[i]));
        }

        for (; place < _places.Length && _places[place] <= piece.To; place++)
        {
            double at = _places[place];
            double value = at == piece.From ? start
                : at == piece.To ? end
                : Roots.Value(polynomial, (at - piece.From) / piece.Length);
            Note(PlaceFigure(curve, place), value);
        }
    }

    private void Note(int figure, double value)
    {
        _high[figure] = Math.Max(_high[figure], value);
        _low[figure] = Math.Min(_low[figure], value);
    }
}
