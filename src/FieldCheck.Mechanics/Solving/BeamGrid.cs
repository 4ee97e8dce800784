using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Solving;

/// <summary>
/// Where a beam is cut: nodes at joints, supports and hinges, and points also where a load begins or ends.
/// </summary>
/// <remarks>
/// Places are one when they are the same number. Between neighbouring nodes lies an element, between neighbouring
/// points a piece on which every load varies in a straight line. Node i starts element i, point g starts piece g.
/// </remarks>
internal sealed class BeamGrid
{
    private double[] _nodes = [];
    private int[] _supportAt = [];
    private bool[] _isHinge = [];
    private int[] _spanOf = [];
    private int[] _pointOf = [];
    private int[] _nodeOfSupport = [];
    private double[] _loadPlaces = [];
    private double[] _points = [];
    private int _lastFound;
    private int _supportCount;

    internal int NodeCount { get; private set; }

    internal int ElementCount => NodeCount - 1;

    internal int PointCount { get; private set; }

    internal int PieceCount => PointCount - 1;

    /// <summary>The support at a node, or -1.</summary>
    internal int SupportAt(int node) => _supportAt[node];

    internal bool IsHinge(int node) => _isHinge[node];

    /// <summary>The span that an element is a part of.</summary>
    internal int SpanOf(int element) => _spanOf[element];

    internal int NodeOfSupport(int support) => _nodeOfSupport[support];

    /// <summary>The point that a node is.</summary>
    internal int PointOf(int node) => _pointOf[node];

    /// <summary>The last node that is at or left of a point.</summary>
    internal int NodeUpTo(int point)
    {
        int found = Array.BinarySearch(_pointOf, 0, NodeCount, point);
        return found >= 0 ? found : ~found - 1;
    }

    /// <summary>The first support at or right of a node, or the number of supports.</summary>
    internal int SupportFrom(int node)
    {
        int found = Array.BinarySearch(_nodeOfSupport, 0, _supportCount, node);
        return found >= 0 ? found : ~found;
    }

    /// <summary>Position of a point [m].</summary>
    internal double PointPosition(int point) => _points[point];

    /// <summary>Length of a piece [m], without rounding.</summary>
    internal DoubleDouble PieceLength(int piece) => DoubleDouble.Difference(_points[piece + 1], _points[piece]);

    /// <summary>Length of an element [m], without rounding.</summary>
    internal DoubleDouble ElementLength(int element) => DoubleDouble.Difference(_nodes[element + 1], _nodes[element]);

    /// <summary>Cuts a beam.</summary>
    internal void Lay(BeamModel model)
    {
        LayNodes(model);
        LayPoints(GatherLoadPlaces(model));
        _lastFound = 0;
    }

    /// <summary>
    /// The point at a position that was cut; loads mostly come in order, so it looks next to the last one first.
    /// </summary>
    internal int PointAt(double position)
    {
        if (_lastFound < PointCount - 1 && _points[_lastFound + 1] == position)
        {
            return ++_lastFound;
        }

        if (_points[_lastFound] != position)
        {
            _lastFound = Array.BinarySearch(_points, 0, PointCount, position);
        }

        return _lastFound;
    }

    private void LayNodes(BeamModel model)
    {
        int most = model.JointPositions.Length + model.Supports.Length + model.Hinges.Length;
        Workspace.Grow(ref _nodes, most);
        Workspace.Grow(ref _supportAt, most);
        Workspace.Grow(ref _isHinge, most);
        Workspace.Grow(ref _spanOf, most);
        Workspace.Grow(ref _pointOf, most);
        _supportCount = model.Supports.Length;
        Workspace.Grow(ref _nodeOfSupport, _supportCount);
        int joint = 0;
        int support = 0;
        int hinge = 0;
        int node = 0;
        while (joint < model.JointPositions.Length)
        {
            double at = model.JointPositions[joint];
            at = support < model.Supports.Length ? Math.Min(at, model.Supports[support].Position) : at;
            at = hinge < model.Hinges.Length ? Math.Min(at, model.Hinges[hinge]) : at;
            _nodes[node] = at;
            joint += model.JointPositions[joint] == at ? 1 : 0;
            _spanOf[node] = joint - 1;
            _supportAt[node] = -1;
            if (support < model.Supports.Length && model.Supports[support].Position == at)
            {
                _supportAt[node] = support;
                _nodeOfSupport[support++] = node;
            }

            _isHinge[node] = hinge < model.Hinges.Length && model.Hinges[hinge] == at;
            hinge += _isHinge[node] ? 1 : 0;
            node++;
        }

        NodeCount = node;
    }

    private int GatherLoadPlaces(BeamModel model)
    {
        int most = 0;
        foreach (LoadCase loadCase in model.Cases)
        {
            most += 2 * loadCase.Loads.Length;
        }

        Workspace.Grow(ref _loadPlaces, most);
        int count = 0;
        foreach (LoadCase loadCase in model.Cases)
        {
            foreach (Load load in loadCase.Loads)
            {
                count = AddPlaces(load, count);
            }
        }

        SortIfNeeded(_loadPlaces.AsSpan(0, count));
        return count;
    }

    private int AddPlaces(Load load, int count)
    {
        switch (load)
        {
            case Load.Point point:
                _loadPlaces[count++] = point.Position;
                break;
            case Load.Couple couple:
                _loadPlaces[count++] = couple.Position;
                break;
            case Load.Distributed distributed:
                _loadPlaces[count++] = distributed.From;
                _loadPlaces[count++] = distributed.To;
                break;
        }

        return count;
    }

    private static void SortIfNeeded(Span<double> places)
    {
        for (int i = 1; i < places.Length; i++)
        {
            if (places[i] < places[i - 1])
            {
                places.Sort();
                return;
            }
        }
    }

    private void LayPoints(int placeCount)
    {
        Workspace.Grow(ref _points, NodeCount + placeCount);
        int count = 0;
        int place = 0;
        for (int node = 0; node < NodeCount; node++)
        {
            for (; place < placeCount && _loadPlaces[place] <= _nodes[node]; place++)
            {
                if (_loadPlaces[place] < _nodes[node] && (count == 0 || _points[count - 1] < _loadPlaces[place]))
                {
                    _points[count++] = _loadPlaces[place];
                }
            }

            _pointOf[node] = count;
            _points[count++] = _nodes[node];
        }

        PointCount = count;
    }
}
