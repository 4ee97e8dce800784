using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Benchmarks;

/// <summary>The numeric core on one beam, as a second keystroke finds it: its memory is there already.</summary>
internal sealed class WarmCore
{
    private static readonly Curve[] Curves = Enum.GetValues<Curve>();

    private readonly StiffnessMethod _method = new();
    private readonly BeamModel _model;
    private readonly bool[] _touching;
    private readonly double[] _factors = [1];
    private Extreme[] _stations = [];

    internal WarmCore(BeamModel model)
    {
        _model = model;
        _touching = new bool[model.Supports.Length];
        Array.Fill(_touching, true);
        Solve();
        FindPeaks();
    }

    internal void Solve()
    {
        _method.Prepare(_model);
        if (!_method.Hold(_touching, wantsAlong: false))
        {
            throw new InvalidOperationException("The beam is beyond the arithmetic.");
        }

        _method.Load(_factors);
        _method.Move(withImposed: true);
        _method.Trace();
    }

    /// <summary>Greatest and least of all five curves.</summary>
    internal void FindPeaks()
    {
        foreach (Curve curve in Curves)
        {
            int count = CurveScan.Stations(_method.Pieces, curve, ref _stations);
            Seen += CurveScan.Extremes(_stations.AsSpan(0, count)).Max.Value;
        }
    }

    internal void SolveAndFindPeaks()
    {
        Solve();
        FindPeaks();
    }

    /// <summary>Keeps the work from being found useless.</summary>
    internal double Seen { get; private set; }
}
