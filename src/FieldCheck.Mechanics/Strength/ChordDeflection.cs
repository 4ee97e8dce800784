using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Strength;

/// <summary>
/// The deflection of a stretch from the level that it is measured from: the chord is straight, so what is left is again a
/// polynomial a piece.
/// </summary>
internal static class ChordDeflection
{
    /// <summary>The greatest, whichever way, of several answers each times a share.</summary>
    internal static Peak Greatest(
        DeflectionStretch stretch, params ReadOnlySpan<(BeamResponse Answer, double Share)> answers)
    {
        Span<double> sum = stackalloc double[Piece.MostCoefficients];
        Peak peak = new();
        int count = answers[0].Answer.PiecesOn(stretch.From, stretch.To).Length;
        for (int i = 0; i < count; i++)
        {
            Piece piece = answers[0].Answer.PiecesOn(stretch.From, stretch.To)[i];
            sum.Clear();
            (double start, double end) = (0, 0);
            foreach ((BeamResponse answer, double share) in answers)
            {
                (double atStart, double atEnd) = Add(stretch, answer, i, share, sum);
                start += atStart;
                end += atEnd;
            }

            peak.Take(sum, start, end, piece);
            for (int k = 0; k < sum.Length; k++)
            {
                sum[k] = -sum[k];
            }

            peak.Take(sum, -start, -end, piece);
        }

        return peak;
    }

    /// <summary>The deflection of one answer at a place, positive down.</summary>
    internal static double At(DeflectionStretch stretch, BeamResponse answer, double position) =>
        answer.At(position).Left.Deflection - stretch.Level(
            position, answer.At(stretch.From).Right.Deflection, answer.At(stretch.To).Left.Deflection);

    private static (double Start, double End) Add(
        DeflectionStretch stretch, BeamResponse answer, int index, double share, Span<double> sum)
    {
        ReadOnlySpan<Piece> pieces = answer.PiecesOn(stretch.From, stretch.To);
        ref readonly Piece piece = ref pieces[index];
        (double atFrom, double atTo) = (pieces[0].AtStart(Curve.Deflection), pieces[^1].AtEnd(Curve.Deflection));
        double left = stretch.Level(piece.From, atFrom, atTo);
        double right = stretch.Level(piece.To, atFrom, atTo);
        Span<double> own = stackalloc double[Piece.MostCoefficients];
        int count = piece.Polynomial(Curve.Deflection, own);
        own[0] -= left;
        own[1] -= right - left;
        for (int k = 0; k < count; k++)
        {
            sum[k] += share * own[k];
        }

        return (
            share * (piece.AtStart(Curve.Deflection) - left),
            share * (piece.AtEnd(Curve.Deflection) - right));
    }
}
