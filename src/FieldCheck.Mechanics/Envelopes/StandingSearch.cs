using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// The greatest of one quantity along the beam that standing loads can give: at an end of a piece, or where one of the
/// polynomials that a piece is cut into turns. Pieces that cannot hold it are left alone.
/// </summary>
internal static class StandingSearch
{
    /// <summary>The greatest of several combinations.</summary>
    /// <param name="curves">One a combination, of one sense.</param>
    /// <param name="on">The pieces to look at; one or more.</param>
    internal static Leader<Worst> Greatest(ReadOnlySpan<StandingCurve> curves, Range on)
    {
        (int first, int pieces) = on.GetOffsetAndLength(curves[0].PieceCount);
        double[] bounds = new double[curves.Length * pieces];
        double size = 0;
        for (int i = 0; i < bounds.Length; i++)
        {
            (StandingCurve curve, int piece) = (curves[i / pieces], first + i % pieces);
            bounds[i] = curve.BoundOn(piece);
            size = Math.Max(size, Math.Max(Math.Abs(bounds[i]), Math.Abs(curve.AtStart(piece))));
        }

        Leader<Worst> leader = new(size, curves[0].Parts.Pieces[^1].To);
        foreach (StandingCurve curve in curves)
        {
            for (int piece = first; piece < first + pieces; piece++)
            {
                Piece of = curve.Parts.Pieces[piece];
                leader.Take(curve.AtStart(piece), of.From, At(curve, piece, 0));
                leader.Take(curve.AtEnd(piece), of.To, At(curve, piece, 1));
            }
        }

        PieceCuts cuts = new();
        for (int i = 0; i < bounds.Length; i++)
        {
            (StandingCurve curve, int piece) = (curves[i / pieces], first + i % pieces);
            if (leader.CouldBeat(bounds[i]) && bounds[i] > Math.Max(curve.AtStart(piece), curve.AtEnd(piece)))
            {
                TakeInside(curve, piece, cuts, ref leader);
            }
        }

        return leader;
    }

    private static void TakeInside(StandingCurve curve, int piece, PieceCuts cuts, ref Leader<Worst> leader)
    {
        Span<double> turns = stackalloc double[Piece.MostCoefficients];
        Piece of = curve.Parts.Pieces[piece];
        curve.Cut(piece, cuts);
        for (int stretch = 0; stretch < cuts.Count; stretch++)
        {
            ReadOnlySpan<double> polynomial = cuts.On(stretch);
            int count = Roots.TurnsInside(polynomial, turns);
            for (int k = 0; k < count; k++)
            {
                if (turns[k] >= cuts.StartOf(stretch) && turns[k] <= cuts.EndOf(stretch))
                {
                    double value = Roots.Value(polynomial, turns[k]);
                    leader.Take(value, of.From + turns[k] * of.Length, At(curve, piece, turns[k]));
                }
            }
        }
    }

    private static Worst At(StandingCurve curve, int piece, double share) =>
        new(new StandingPlace(curve, piece, share), null, RollingPeak.None);
}
