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
    private readonly (int Part, double Factor, double[] Numbers)[] _optional;

    internal StandingCurve(CurveParts parts, int combination, int sense)
    {
        _parts = parts;
        Combination = combination;
        Sense = sense;
        Superposition sum = parts.Superposition;
        _always = new double[parts.Imposed.Length];
        AddTo(_always, parts.Imposed, sense);
        List<(int, double, double[])> optional = [];
        for (int part = 0; part < sum.Parts.Length; part++)
        {
            double factor = sense * sum.Factor(combination, part);
            if (factor != 0 && sum.Parts[part].StandsAlways)
            {
                AddTo(_always, parts.Of(part), factor);
            }
            else if (factor != 0)
            {
                optional.Add((part, factor, parts.Of(part)));
            }
        }

        _optional = [.. optional];
    }

    internal int Combination { get; }

    internal int Sense { get; }

    internal int OptionalCount => _optional.Length;

    internal int PieceCount => _parts.Pieces.Length;

    internal CurveParts Parts => _parts;

    /// <summary>At the left end of a piece.</summary>
    internal double AtStart(int piece) => Sum(piece * _parts.Stride);

    /// <summary>At the right end of a piece.</summary>
    internal double AtEnd(int piece) => Sum(piece * _parts.Stride + _parts.Coefficients);

    /// <summary>At a share of the length of a piece.</summary>
    internal double At(int piece, double share)
    {
        if (share is 0 or 1)
        {
            return share == 0 ? AtStart(piece) : AtEnd(piece);
        }

        double sum = Roots.Value(AlwaysOn(piece), share);
        foreach ((_, double factor, double[] numbers) in _optional)
        {
            sum += Math.Max(0, factor * Roots.Value(_parts.On(numbers, piece), share));
        }

        return sum;
    }

    /// <summary>What it cannot exceed on a piece.</summary>
    internal double BoundOn(int piece)
    {
        double bound = Bernstein.Most(AlwaysOn(piece), 1);
        foreach ((_, double factor, double[] numbers) in _optional)
        {
            bound += Math.Max(0, Bernstein.Most(_parts.On(numbers, piece), factor));
        }

        return bound;
    }

    /// <summary>Cuts a piece where the greatest changes from one polynomial to another.</summary>
    internal void Cut(int piece, PieceCuts to)
    {
        to.Begin(AlwaysOn(piece));
        foreach ((_, double factor, double[] numbers) in _optional)
        {
            to.Add(_parts.On(numbers, piece), factor);
        }

        to.Cut();
    }

    /// <summary>Which parts make it so great at a place; those that hardly count are left out.</summary>
    internal Func<int, bool> StandingAt(int piece, double share)
    {
        double[] values =
        [
            .. _optional.Select(one => one.Factor * (share == 1
                ? one.Numbers[piece * _parts.Stride + _parts.Coefficients]
                : Roots.Value(_parts.On(one.Numbers, piece), share))),
        ];
        double size = Math.Abs(Roots.Value(AlwaysOn(piece), share)) + values.Sum(Math.Abs);
        HashSet<int> standing =
            [.. _optional.Where((_, i) => values[i] > Leader<int>.Closeness * size).Select(one => one.Part)];
        return standing.Contains;
    }

    private ReadOnlySpan<double> AlwaysOn(int piece) => _parts.On(_always, piece);

    private double Sum(int index)
    {
        double sum = _always[index];
        foreach ((_, double factor, double[] numbers) in _optional)
        {
            sum += Math.Max(0, factor * numbers[index]);
        }

        return sum;
    }

    private static void AddTo(double[] sum, double[] numbers, double factor)
    {
        for (int i = 0; i < sum.Length; i++)
        {
            sum[i] += factor * numbers[i];
        }
    }
}
