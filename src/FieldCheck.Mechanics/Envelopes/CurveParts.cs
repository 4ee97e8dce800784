using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>One quantity along the beam by every part of the loads alone: a polynomial a piece.</summary>
/// <remarks>
/// Of each piece the coefficients, constant term first, then the value at its right end, which is known better than the
/// polynomial gives it.
/// </remarks>
internal sealed class CurveParts
{
    private readonly PartNumbers[] _parts;

    internal CurveParts(Superposition superposition, Curve curve)
    {
        Superposition = superposition;
        Curve = curve;
        Pieces = superposition.Imposed;
        Span<double> polynomial = stackalloc double[Piece.MostCoefficients];
        Coefficients = Pieces[0].Polynomial(curve, polynomial);
        Imposed = Read(Pieces);
        _parts =
        [
            .. from part in Enumerable.Range(0, superposition.Parts.Length)
               let answer = superposition.AnswerTo(part)
               select new PartNumbers(answer.FirstPiece, Read(answer.Pieces)),
        ];
    }

    internal Superposition Superposition { get; }

    internal Curve Curve { get; }

    internal ImmutableArray<Piece> Pieces { get; }

    /// <summary>How many coefficients a polynomial has.</summary>
    internal int Coefficients { get; }

    /// <summary>Numbers a piece.</summary>
    internal int Stride => Coefficients + 1;

    /// <summary>By settlements and imposed rotations alone.</summary>
    internal double[] Imposed { get; }

    internal PartNumbers Of(int part) => _parts[part];

    /// <summary>The coefficients of a piece; where numbers of all pieces are given.</summary>
    internal ReadOnlySpan<double> On(double[] numbers, int piece) =>
        numbers.AsSpan(piece * Stride, Coefficients);

    /// <summary>The coefficients of a piece that a part reaches.</summary>
    internal ReadOnlySpan<double> On(int part, int piece) => On(_parts[part].Numbers, piece - _parts[part].First);

    /// <summary>The value at the left end of a piece that a part reaches.</summary>
    internal double AtStart(int part, int piece) => _parts[part].Numbers[(piece - _parts[part].First) * Stride];

    /// <summary>The value at the right end of a piece that a part reaches.</summary>
    internal double AtEnd(int part, int piece) =>
        _parts[part].Numbers[(piece - _parts[part].First) * Stride + Coefficients];

    private double[] Read(ImmutableArray<Piece> pieces)
    {
        double[] read = new double[Stride * pieces.Length + Piece.MostCoefficients];
        for (int i = 0; i < pieces.Length; i++)
        {
            pieces[i].Polynomial(Curve, read.AsSpan(i * Stride));
            read[i * Stride + Coefficients] = pieces[i].AtEnd(Curve);
        }

        return read;
    }
}
