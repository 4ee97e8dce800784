using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.InteropServices;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>Figures of an answer in one row of numbers, so that rows add up as answers do.</summary>
/// <remarks>
/// Three a support; then of each piece and quantity the coefficients in Bernstein's form, of which the first and last are
/// the values at its ends, and the values at the stations between.
/// </remarks>
internal sealed class FigureTable
{
    private const int AReaction = 3;
    private static readonly int[] Coefficients = [3, 3, 4, Piece.MostCoefficients];
    private static readonly int[] Starts = [0, Width(0), Width(0) + Width(1), Width(0) + Width(1) + Width(2)];
    private static readonly int APiece = Starts[3] + Width(3);

    private readonly int _supports;
    private readonly int _pieces;

    internal FigureTable(int supports, int pieces)
    {
        _supports = supports;
        _pieces = pieces;
    }

    internal int Length => AReaction * _supports + APiece * _pieces;

    /// <summary>The coefficients of a quantity on a piece, in Bernstein's form.</summary>
    internal ReadOnlySpan<double> Bounds(ReadOnlySpan<double> row, int piece, int curve) =>
        row.Slice(At(piece, curve), Coefficients[curve]);

    /// <summary>Its values at the stations between the ends.</summary>
    internal ReadOnlySpan<double> Inner(ReadOnlySpan<double> row, int piece, int curve) =>
        row.Slice(At(piece, curve) + Coefficients[curve], LiftedRecords.Stations - 1);

    /// <summary>Adds an answer times a factor.</summary>
    /// <param name="row">What it is added to.</param>
    /// <param name="factor">The factor.</param>
    /// <param name="firstSupport">The first support that the answer reaches.</param>
    /// <param name="reactions">The reactions from there on.</param>
    /// <param name="firstPiece">The first piece that it reaches.</param>
    /// <param name="pieces">The pieces from there on.</param>
    internal void Add(
        Span<double> row,
        double factor,
        int firstSupport,
        ImmutableArray<Reaction> reactions,
        int firstPiece,
        ImmutableArray<Piece> pieces)
    {
        for (int i = 0; i < reactions.Length; i++)
        {
            int at = AReaction * (firstSupport + i);
            row[at] += factor * reactions[i].Horizontal;
            row[at + 1] += factor * reactions[i].Vertical;
            row[at + 2] += factor * reactions[i].Moment;
        }

        Span<double> polynomial = stackalloc double[Piece.MostCoefficients];
        for (int i = 0; i < pieces.Length; i++)
        {
            for (int curve = 0; curve < Coefficients.Length; curve++)
            {
                int count = pieces[i].Polynomial(Envelope.Curves[curve], polynomial);
                Span<double> to = row.Slice(At(firstPiece + i, curve), Width(curve));
                Bernstein.AddTo(to, polynomial[..count], factor);
                to[count - 1] += factor * (pieces[i].AtEnd(Envelope.Curves[curve]) - Sum(polynomial[..count]));
                for (int station = 1; station < LiftedRecords.Stations; station++)
                {
                    double share = (double)station / LiftedRecords.Stations;
                    to[count + station - 1] += factor * Roots.Value(polynomial[..count], share);
                }
            }
        }
    }

    /// <summary>Adds a row times a factor.</summary>
    internal static void Add(Span<double> to, ReadOnlySpan<double> row, double factor)
    {
        Span<Vector<double>> wide = MemoryMarshal.Cast<double, Vector<double>>(to);
        ReadOnlySpan<Vector<double>> other = MemoryMarshal.Cast<double, Vector<double>>(row);
        for (int i = 0; i < wide.Length; i++)
        {
            wide[i] += factor * other[i];
        }

        for (int i = wide.Length * Vector<double>.Count; i < to.Length; i++)
        {
            to[i] += factor * row[i];
        }
    }

    private static int Width(int curve) => Coefficients[curve] + LiftedRecords.Stations - 1;

    private int At(int piece, int curve) => AReaction * _supports + APiece * piece + Starts[curve];

    private static double Sum(ReadOnlySpan<double> polynomial)
    {
        double sum = 0;
        foreach (double one in polynomial)
        {
            sum += one;
        }

        return sum;
    }
}
