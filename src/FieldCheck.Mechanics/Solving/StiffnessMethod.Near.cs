using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Solving;

/// <summary>One case alone, as far as it reaches: over supports what a load does dies away, so the rest is left alone.</summary>
internal sealed partial class StiffnessMethod
{
    private bool _isNear;
    private int _firstNode;
    private int _lastNode;

    /// <summary>The elements that the last solution does anything to; no other does.</summary>
    internal (int First, int Last) Reached =>
        _isNear ? (Math.Max(0, _firstNode - 1), Math.Min(Grid.ElementCount - 1, _lastNode)) : (0, Grid.ElementCount - 1);

    /// <summary>Puts the loads of one case alone on the beam, factor 1, and finds what moves and what the elements carry.</summary>
    internal void Carry(LoadCase only)
    {
        Forget();
        _loads.Fill(Grid, only);
        (int firstPoint, int lastPoint) = _loads.Filled;
        _firstNode = lastPoint < 0 ? 0 : Grid.NodeUpTo(firstPoint);
        _lastNode = lastPoint < 0 ? 0 : Math.Min(Grid.NodeCount - 1, Grid.NodeUpTo(lastPoint) + 1);
        _isNear = true;
        for (int node = _firstNode; node <= _lastNode; node++)
        {
            _nodeActions[node] = _loads.At(Grid.PointOf(node));
        }

        for (int i = _firstNode; i < _lastNode; i++)
        {
            HandOverLoads(i);
        }

        int across = _freedoms.IsCoupled || HasAlongLoad ? Freedoms.Along : Freedoms.Across;
        (int first, int last) = (_freedoms.Count, -1);
        for (int node = _firstNode; node <= _lastNode; node++)
        {
            AddToSide(node);
            for (int place = across; place < Freedoms.PerNode; place++)
            {
                int number = _freedoms.Number(node, place);
                first = number == Freedoms.Held ? first : Math.Min(first, number);
                last = Math.Max(last, number);
            }
        }

        if (last >= 0)
        {
            (first, last) = _factor.SolveNear(_side, first, last);
            Widen(first, last);
        }

        ReadMovements(_firstNode, _lastNode, withImposed: false);
        if (last >= 0)
        {
            Array.Clear(_side, first, last - first + 1);
        }
    }

    /// <summary>Makes the reach as wide as the numbers that move.</summary>
    private void Widen(int first, int last)
    {
        while (_firstNode > 0 && IsAmong(_firstNode - 1, first, last))
        {
            _firstNode--;
        }

        while (_lastNode < Grid.NodeCount - 1 && IsAmong(_lastNode + 1, first, last))
        {
            _lastNode++;
        }
    }

    private bool IsAmong(int node, int first, int last)
    {
        for (int place = 0; place < Freedoms.PerNode; place++)
        {
            int number = _freedoms.Number(node, place);
            if (number >= first && number <= last)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Takes the last loads and what they did off the beam.</summary>
    private void Forget()
    {
        if (!_isNear)
        {
            Array.Clear(_side, 0, _freedoms.Count);
            (_firstNode, _lastNode) = (0, Grid.NodeCount - 1);
        }

        int first = Math.Max(0, _firstNode - 1);
        int count = Math.Min(Grid.NodeCount, _lastNode + 1) - first;
        Array.Clear(_nodeActions, first, count);
        Array.Clear(_movements, first, count);
        Array.Clear(_own, first, count);
        Array.Clear(_forces, first, count);
    }
}
