using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// A piece of beam cut where the share of some part of the loads changes its sign, so that between two cuts the same
/// parts make the greatest and it is one polynomial. Keeps its memory from piece to piece.
/// </summary>
internal sealed class PieceCuts
{
    /// <summary>Cuts nearer than this share are one: parts in proportion have the same roots but for rounding.</summary>
    private const double Same = 1e-12;

    private readonly List<(double At, int Part)> _cuts = [];
    private double[] _always = [];
    private double[] _parts = [];
    private double[] _stretches = [];
    private double[] _ends = [];
    private int _partCount;

    /// <summary>How many coefficients every polynomial has.</summary>
    internal int Coefficients => _always.Length;

    /// <summary>How many stretches there are.</summary>
    internal int Count { get; private set; }

    /// <summary>Where a stretch begins, as a share of the piece's length [–].</summary>
    internal double StartOf(int stretch) => stretch == 0 ? 0 : _ends[stretch - 1];

    /// <summary>Where a stretch ends, as a share of the piece's length [–].</summary>
    internal double EndOf(int stretch) => _ends[stretch];

    /// <summary>The greatest on a stretch, in the share of the piece's length.</summary>
    internal ReadOnlySpan<double> On(int stretch) => _stretches.AsSpan(stretch * Coefficients, Coefficients);

    /// <summary>Begins with what stands always.</summary>
    internal void Begin(ReadOnlySpan<double> always)
    {
        if (_always.Length != always.Length)
        {
            _always = new double[always.Length];
        }

        always.CopyTo(_always);
        _cuts.Clear();
        _partCount = 0;
    }

    /// <summary>Adds a part that counts where it adds.</summary>
    internal void Add(ReadOnlySpan<double> polynomial, double factor)
    {
        int start = _partCount * Coefficients;
        if (_parts.Length < start + Coefficients)
        {
            Array.Resize(ref _parts, 2 * (start + Coefficients));
        }

        Span<double> part = _parts.AsSpan(start, Coefficients);
        for (int k = 0; k < Coefficients; k++)
        {
            part[k] = factor * polynomial[k];
        }

        Span<double> roots = stackalloc double[Piece.MostCoefficients];
        int count = Roots.Inside(part, roots);
        for (int i = 0; i < count; i++)
        {
            _cuts.Add((roots[i], _partCount));
        }

        _partCount++;
    }

    /// <summary>Finds the stretches.</summary>
    internal void Cut()
    {
        _cuts.Sort();
        _cuts.Add((1, -1));
        if (_stretches.Length < _cuts.Count * Coefficients || _ends.Length < _cuts.Count)
        {
            _ends = new double[2 * _cuts.Count];
            _stretches = new double[_ends.Length * Coefficients];
        }

        Span<bool> stands = _partCount <= 256 ? stackalloc bool[_partCount] : new bool[_partCount];
        Span<double> sum = stackalloc double[Coefficients];
        _always.CopyTo(sum);
        double middle = FirstMiddle();
        for (int part = 0; part < _partCount; part++)
        {
            Switch(part, middle, stands, sum);
        }

        Count = 0;
        for (int i = 0; i < _cuts.Count; i++)
        {
            int first = i;
            while (i + 1 < _cuts.Count && _cuts[i + 1].At - _cuts[i].At <= Same)
            {
                i++;
            }

            double end = _cuts[i].At;
            sum.CopyTo(_stretches.AsSpan(Count * Coefficients));
            _ends[Count++] = end;

            middle = (end + (i + 1 < _cuts.Count ? _cuts[i + 1].At : 1)) / 2;
            for (int k = first; k <= i && end < 1; k++)
            {
                Switch(_cuts[k].Part, middle, stands, sum);
            }
        }
    }

    private double FirstMiddle()
    {
        int i = 0;
        while (i + 1 < _cuts.Count && _cuts[i].At <= Same)
        {
            i++;
        }

        return _cuts[i].At / 2;
    }

    /// <summary>Lets a part count or not, as its sign in the middle of a stretch asks for.</summary>
    private void Switch(int part, double middle, Span<bool> stands, Span<double> sum)
    {
        ReadOnlySpan<double> polynomial = _parts.AsSpan(part * Coefficients, Coefficients);
        bool should = Roots.Value(polynomial, middle) > 0;
        if (should == stands[part])
        {
            return;
        }

        stands[part] = should;
        for (int k = 0; k < Coefficients; k++)
        {
            sum[k] += should ? polynomial[k] : -polynomial[k];
        }
    }
}
