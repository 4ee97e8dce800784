using System.Diagnostics;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Solving;

/// <summary>The loads of some cases, each with its factor, added up on the pieces and points of a grid.</summary>
internal sealed class LoadGrid
{
    private PointAction[] _points = [];
    private LineLoad[] _pieces = [];
    private int _firstFilled;
    private int _lastFilled = -1;

    internal ref readonly PointAction At(int point) => ref _points[point];

    internal ref readonly LineLoad On(int piece) => ref _pieces[piece];

    /// <summary>Whether anything stands between two points; what acts at the points themselves does not count.</summary>
    internal bool IsLoaded(int first, int last)
    {
        for (int i = first; i < last; i++)
        {
            if (_pieces[i].Standing != 0 || (i > first && _points[i].IsLoaded))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether some load acts along the beam.</summary>
    internal bool HasAlong { get; private set; }

    /// <summary>The first and last point that the loads now on the grid reach.</summary>
    internal (int First, int Last) Filled => (_firstFilled, _lastFilled);

    /// <summary>Adds up the loads of every case times its factor.</summary>
    internal void Fill(BeamGrid grid, BeamModel model, ReadOnlySpan<double> factors)
    {
        Empty(grid);
        for (int i = 0; i < factors.Length; i++)
        {
            if (factors[i] != 0)
            {
                foreach (Load load in model.Cases[i].Loads)
                {
                    Add(grid, load, factors[i]);
                }
            }
        }

        Accumulate(grid);
    }

    /// <summary>Puts the loads of one case alone on the grid; takes no longer on a longer beam.</summary>
    internal void Fill(BeamGrid grid, LoadCase only)
    {
        Empty(grid);
        foreach (Load load in only.Loads)
        {
            Add(grid, load, 1);
        }

        Accumulate(grid);
    }

    private void Empty(BeamGrid grid)
    {
        if (_points.Length < grid.PointCount)
        {
            Workspace.Grow(ref _points, grid.PointCount);
            Workspace.Grow(ref _pieces, grid.PointCount);
        }
        else if (_lastFilled >= _firstFilled)
        {
            Array.Clear(_points, _firstFilled, _lastFilled - _firstFilled + 1);
            Array.Clear(_pieces, _firstFilled, _lastFilled - _firstFilled + 1);
        }

        HasAlong = false;
        (_firstFilled, _lastFilled) = (int.MaxValue, -1);
    }

    /// <summary>Takes note that something is at a point.</summary>
    private int Reach(int point)
    {
        _firstFilled = Math.Min(_firstFilled, point);
        _lastFilled = Math.Max(_lastFilled, point);
        return point;
    }

    private void Add(BeamGrid grid, Load load, double factor)
    {
        switch (load)
        {
            case Load.Point point:
                ref PointAction force = ref _points[Reach(grid.PointAt(point.Position))];
                force.Up -= DoubleDouble.Product(factor, point.Down);
                force.Right += DoubleDouble.Product(factor, point.Right);
                force.IsLoaded = true;
                HasAlong |= point.Right != 0;
                break;
            case Load.Couple couple:
                ref PointAction turn = ref _points[Reach(grid.PointAt(couple.Position))];
                DoubleDouble moment = DoubleDouble.Product(factor, couple.Moment);
                turn.IsLoaded = true;
                turn.TurnLeft += couple.Side == Side.Left ? moment : DoubleDouble.Zero;
                turn.TurnRight += couple.Side == Side.Right ? moment : DoubleDouble.Zero;
                break;
            case Load.Distributed distributed:
                Add(grid, distributed, factor);
                break;
            default:
                throw new UnreachableException();
        }
    }

    private void Add(BeamGrid grid, Load.Distributed load, double factor)
    {
        DoubleDouble start = DoubleDouble.Product(factor, load.StartIntensity);
        DoubleDouble end = start;
        DoubleDouble change = DoubleDouble.Zero;
        if (load.StartIntensity != load.EndIntensity)
        {
            end = DoubleDouble.Product(factor, load.EndIntensity);
            change = (end - start) / DoubleDouble.Difference(load.To, load.From);
        }

        ref LineLoad first = ref _pieces[Reach(grid.PointAt(load.From))];
        ref LineLoad after = ref _pieces[Reach(grid.PointAt(load.To))];
        first.Standing++;
        after.Standing--;
        if (load.ActsAlong)
        {
            first.Right += start;
            first.RightChange += change;
            after.Right -= end;
            after.RightChange -= change;
            HasAlong |= load.StartIntensity != 0 || load.EndIntensity != 0;
        }
        else
        {
            first.Up -= start;
            first.UpChange -= change;
            after.Up += end;
            after.UpChange += change;
        }
    }

    /// <summary>
    /// Turns beginnings and ends into what stands on each piece; where nothing stands it is exactly nothing.
    /// </summary>
    private void Accumulate(BeamGrid grid)
    {
        LineLoad running = default;
        for (int piece = _firstFilled; piece <= Math.Min(_lastFilled, grid.PieceCount - 1); piece++)
        {
            ref LineLoad here = ref _pieces[piece];
            running.Standing += here.Standing;
            if (running.Standing == 0)
            {
                running = default;
                here = default;
                continue;
            }

            running.Up += here.Up;
            running.UpChange += here.UpChange;
            running.Right += here.Right;
            running.RightChange += here.RightChange;
            here = running;
            DoubleDouble length = grid.PieceLength(piece);
            running.Up += running.UpChange * length;
            running.Right += running.RightChange * length;
        }
    }
}
