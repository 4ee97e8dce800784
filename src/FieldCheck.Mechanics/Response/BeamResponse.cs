using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Response;

/// <summary>How the beam answers one case or combination: exact polynomial pieces, reactions and their proof.</summary>
public sealed record BeamResponse
{
    internal BeamResponse()
    {
    }

    /// <summary>One reaction for each support of the model, in its order.</summary>
    public required ImmutableArray<Reaction> Reactions { get; init; }

    /// <summary>The balance of loads and reactions.</summary>
    public required EquilibriumProof Proof { get; init; }

    /// <summary>False: the model's rigidities are ratios only, so slopes and deflections mean nothing.</summary>
    public required bool HasDeflections { get; init; }

    /// <summary>Ends of the polynomial pieces [m], increasing: 0 first, the beam's length last.</summary>
    public ImmutableArray<double> Breaks
    {
        get
        {
            ImmutableArray<double>.Builder breaks = ImmutableArray.CreateBuilder<double>(Pieces.Length + 1);
            breaks.Add(Pieces[0].From);
            foreach (Piece piece in Pieces)
            {
                breaks.Add(piece.To);
            }

            return breaks.MoveToImmutable();
        }
    }

    /// <summary>The pieces, left to right; one or more.</summary>
    internal ImmutableArray<Piece> Pieces { get; init; } = [];

    /// <summary>Internal forces and movements just left and just right of a place.</summary>
    /// <param name="position">Distance from the left end [m]; within the beam.</param>
    /// <returns>The two states; at an end, outside counts as nothing: zero forces, moving with the end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The place is not on the beam.</exception>
    public (SectionState Left, SectionState Right) At(double position)
    {
        int first = FirstPieceTo(position);
        Piece piece = Pieces[first];
        if (position > piece.From && position < piece.To)
        {
            SectionState inside = StateInside(piece, position - piece.From);
            return (inside, inside);
        }

        if (position == piece.From)
        {
            SectionState right = StateAtStart(piece);
            return (Outside(right), right);
        }

        SectionState left = StateAtEnd(piece);
        return (left, first + 1 < Pieces.Length ? StateAtStart(Pieces[first + 1]) : Outside(left));
    }

    /// <summary>
    /// Greatest and least value of a quantity, from the roots of its derivative, never from sampling.
    /// </summary>
    /// <param name="curve">The quantity.</param>
    /// <returns>
    /// The two values; of places that tie within 1e-12 of the greatest size, the leftmost; at a jump, the jump's place.
    /// What is outside the ends does not count.
    /// </returns>
    public Extremes ExtremesOf(Curve curve) => CurveScan.Extremes(Stations(curve));

    /// <summary>As <see cref="ExtremesOf(Curve)"/>, over a stretch that begins and ends where pieces do.</summary>
    internal Extremes ExtremesOf(Curve curve, double from, double to)
    {
        Extreme[] stations = [];
        int count = CurveScan.Stations(PiecesOn(from, to), curve, ref stations);
        return CurveScan.Extremes(stations.AsSpan(0, count));
    }

    /// <summary>The pieces of a stretch that begins and ends where pieces do.</summary>
    internal ReadOnlySpan<Piece> PiecesOn(double from, double to)
    {
        int last = FirstPieceTo(to);
        int first = from == Pieces[0].From ? 0 : FirstPieceTo(from) + 1;
        return first <= last && Pieces[first].From == from && Pieces[last].To == to
            ? Pieces.AsSpan()[first..(last + 1)]
            : throw new ArgumentOutOfRangeException(nameof(from), from, "A stretch must run from break to break.");
    }

    /// <summary>
    /// Places strictly inside the beam where a quantity passes through or touches zero, jumps included [m].
    /// </summary>
    /// <param name="curve">The quantity.</param>
    /// <returns>
    /// The places in order, each once. Of a stretch on which it is zero throughout (to 1e-12 of its greatest size), the
    /// two ends as far as they lie inside.
    /// </returns>
    public ImmutableArray<double> ZerosOf(Curve curve) => CurveZeros.Of(Pieces.AsSpan(), curve);

    /// <summary>
    /// Every local greatest and least value of a quantity, left to right; both sides of a jump count.
    /// </summary>
    /// <param name="curve">The quantity.</param>
    /// <returns>
    /// The peaks, the values at the two ends of the beam among them; a stretch of equal values gives its left end only.
    /// </returns>
    public ImmutableArray<Extreme> PeaksOf(Curve curve) => CurveScan.Peaks(Stations(curve));

    private static SectionState Outside(SectionState inside) => inside with { Axial = 0, Shear = 0, Moment = 0 };

    private static SectionState StateInside(Piece piece, double distance) => new(
        piece.At(distance, Curve.Axial),
        piece.At(distance, Curve.Shear),
        piece.At(distance, Curve.Moment),
        piece.At(distance, Curve.Slope),
        piece.At(distance, Curve.Deflection));

    private static SectionState StateAtStart(Piece piece) => new(
        piece.AtStart(Curve.Axial),
        piece.AtStart(Curve.Shear),
        piece.AtStart(Curve.Moment),
        piece.AtStart(Curve.Slope),
        piece.AtStart(Curve.Deflection));

    private static SectionState StateAtEnd(Piece piece) => new(
        piece.AtEnd(Curve.Axial),
        piece.AtEnd(Curve.Shear),
        piece.AtEnd(Curve.Moment),
        piece.AtEnd(Curve.Slope),
        piece.AtEnd(Curve.Deflection));

    private ReadOnlySpan<Extreme> Stations(Curve curve)
    {
        Extreme[] stations = [];
        int count = CurveScan.Stations(Pieces.AsSpan(), curve, ref stations);
        return stations.AsSpan(0, count);
    }

    /// <summary>The first piece that ends at or right of a place.</summary>
    private int FirstPieceTo(double position)
    {
        if (!(position >= Pieces[0].From && position <= Pieces[^1].To))
        {
            throw new ArgumentOutOfRangeException(nameof(position), position, "Must lie on the beam.");
        }

        int low = 0;
        int high = Pieces.Length - 1;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = Pieces[middle].To < position ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
