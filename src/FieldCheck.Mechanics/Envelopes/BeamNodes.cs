using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>Where the elements of a beam meet, as the solver cuts it: joints, supports and hinges.</summary>
internal sealed class BeamNodes
{
    private readonly double[] _positions;
    private readonly Span[] _spans;

    internal BeamNodes(BeamModel model)
    {
        _positions = [.. model.NodePositions()];
        _spans = new Span[ElementCount];
        int span = 0;
        for (int i = 0; i < ElementCount; i++)
        {
            span += model.JointPositions[span + 1] <= _positions[i] ? 1 : 0;
            _spans[i] = model.Spans[span];
        }
    }

    internal int ElementCount => _positions.Length - 1;

    internal ReadOnlySpan<double> Positions => _positions;

    /// <summary>Left end of an element, or the beam's right end [m].</summary>
    internal double At(int node) => _positions[node];

    internal double LengthOf(int element) => _positions[element + 1] - _positions[element];

    internal Span SpanOf(int element) => _spans[element];

    /// <summary>The element that a place is inside of, or -1: it is off the beam.</summary>
    internal int ElementAt(double position)
    {
        int found = Array.BinarySearch(_positions, position);
        int element = found >= 0 ? found : ~found - 1;
        return element >= 0 && element < ElementCount ? element : -1;
    }

    /// <summary>
    /// A force up of one and a couple of one on each side at every node: from the answers to them follows that to a force
    /// anywhere.
    /// </summary>
    internal ImmutableArray<LoadCase> UnitCases() =>
    [
        .. _positions.SelectMany(position => new Load[]
        {
            new Load.Point(position, -1),
            new Load.Couple(position, 1, Side.Left),
            new Load.Couple(position, 1, Side.Right),
        }).Select(load => new LoadCase("", [load])),
    ];
}
