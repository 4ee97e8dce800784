using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Strength;

/// <summary>The greatest value of polynomials so far, and its leftmost place.</summary>
internal struct Peak()
{
    internal double Value { get; private set; } = double.NegativeInfinity;

    internal double Position { get; private set; }

    /// <summary>Takes in a polynomial on a piece, its argument the share of the piece's length.</summary>
    /// <param name="polynomial">Its coefficients, constant term first.</param>
    /// <param name="start">The value at the left end, known better than the polynomial gives it.</param>
    /// <param name="end">The value at the right end.</param>
    /// <param name="piece">The piece.</param>
    internal void Take(ReadOnlySpan<double> polynomial, double start, double end, in Piece piece)
    {
        Take(start, piece.From);
        Span<double> turns = stackalloc double[Piece.MostCoefficients];
        int count = Roots.TurnsInside(polynomial, turns);
        for (int k = 0; k < count; k++)
        {
            Take(Roots.Value(polynomial, turns[k]), piece.From + turns[k] * piece.Length);
        }

        Take(end, piece.To);
    }

    private void Take(double value, double position)
    {
        if (value > Value + 1e-12 * Math.Abs(Value) || double.IsNegativeInfinity(Value))
        {
            (Value, Position) = (value, position);
        }
    }
}
