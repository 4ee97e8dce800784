using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// The greatest of one quantity at every place that the standing loads of one combination can give, or with sense -1 the
/// least, all values then of the opposite sign.
/// </summary>
internal sealed class StandingCurve
{
    private readonly CurveParts _parts;
    private readonly double[] _always;
    private readonly double[] _factors;

    internal StandingCurve(CurveParts parts, int combination, int sense)
    {
        _parts = parts;
        Combination = combination;
        Sense = sense;
        Superposition sum = parts.Superposition;
        _always = new double[parts.Imposed.Length];
        AddTo(_always, parts.Imposed, sense);
        _factors = new double[sum.Parts.Length];
        for (int part = 0; part < _factors.Length; part++)
        {
            _factors[part] = sense * sum.Factor(combination, part);
            if (_factors[part] != 0 && sum.Parts[part].StandsAlways)
            {
                PartNumbers numbers = parts.Of(part);
                AddTo(_always.AsSpan(numbers.First * parts.Stride), numbers.Numbers, _factors[part]);
            }
        }
    }

    internal int Combination { get; }

    internal int Sense { get; }

    internal int PieceCount => _parts.Pieces.Length;

    internal CurveParts Parts => _parts;

    /// <summary>At the left end of a piece.</summary>
    internal double AtStart(int piece)
    {
        double sum = _always[piece * _parts.Stride];
        foreach (int part in OptionalOn(piece))
        {
            sum += Math.Max(0, _factors[part] * _parts.AtStart(part, piece));
        }

        return sum;
    }

    /// <summary>At the right end of a piece.</summary>
    internal double AtEnd(int piece)
    {
        double sum = _always[piece * _parts.Stride + _parts.Coefficients];
        foreach (int part in OptionalOn(piece))
        {
            sum += Math.Max(0, _factors[part] * _parts.AtEnd(part, piece));
        }

        return sum;
    }

    /// <summary>At a share of the length of a piece.</summary>
    internal double At(int piece, double share)
    {
        if (share is 0 or 1)
        {
            return share == 0 ? AtStart(piece) : AtEnd(piece);
        }

        double sum = Roots.Value(AlwaysOn(piece), share);
        foreach (int part in OptionalOn(piece))
        {
            sum += Math.Max(0, _factors[part] * Roots.Value(_parts.On(part, piece), share));
        }

        return sum;
    }

    /// <summary>What it cannot exceed on a piece.</summary>
    internal double BoundOn(int piece)
    {
        double bound = Bernstein.Most(AlwaysOn(piece), 1);
        foreach (int part in OptionalOn(piece))
        {
            bound += Math.Max(0, Bernstein.Most(_parts.On(part, piece), _factors[part]));
        }

        return bound;
    }

    /// <summary>Cuts a piece where the greatest changes from one polynomial to another.</summary>
    internal void Cut(int piece, PieceCuts to)
    {
        to.Begin(AlwaysOn(piece));
        foreach (int part in OptionalOn(piece))
        {
            if (_factors[part] != 0)
            {
                to.Add(_parts.On(part, piece), _factors[part]);
            }
        }

        to.Cut();
    }

    /// <summary>Which parts make it so great at a place; those that hardly count are left out.</summary>
    internal Func<int, bool> StandingAt(int piece, double share)
    {
        int[] optional = OptionalOn(piece).ToArray();
        double[] values =
        [
            .. optional.Select(part => _factors[part] * (share == 1
                ? _parts.AtEnd(part, piece)
                : Roots.Value(_parts.On(part, piece), share))),
        ];
        double size = Math.Abs(Roots.Value(AlwaysOn(piece), share)) + values.Sum(Math.Abs);
        HashSet<int> standing = [.. optional.Where((_, i) => values[i] > Leader<int>.Closeness * size)];
        return standing.Contains;
    }

    private ReadOnlySpan<int> OptionalOn(int piece) => _parts.Superposition.OptionalOn(piece);

    private ReadOnlySpan<double> AlwaysOn(int piece) => _parts.On(_always, piece);

    private static void AddTo(Span<double> sum, double[] numbers, double factor)
    {
        for (int i = 0; i < numbers.Length; i++)
        {
            sum[i] += factor * numbers[i];
        }
    }
}
