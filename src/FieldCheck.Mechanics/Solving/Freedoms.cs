using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Solving;

/// <summary>The numbers of the movements that a beam's supports leave free, four places a node.</summary>
/// <remarks>
/// Places: along, across, turn of the part to the left, turn of the part to the right (the same number but at a
/// hinge). At a sloped support the first two run along its surface and normal to it. What is held has number -1.
/// Without a sloped support bending and stretching do not meet: stretching is then numbered first, or not at all
/// where nothing acts along the beam.
/// </remarks>
internal sealed class Freedoms
{
    internal const int Along = 0;
    internal const int Across = 1;
    internal const int TurnLeft = 2;
    internal const int TurnRight = 3;
    internal const int PerNode = 4;
    internal const int Held = -1;

    private int[] _numbers = [];
    private double[] _imposed = [];
    private SurfaceDirection[] _directions = [];

    /// <summary>How many are free.</summary>
    internal int Count { get; private set; }

    /// <summary>Greatest distance of two numbers that one element ties together.</summary>
    internal int HalfBandwidth { get; private set; }

    /// <summary>Whether stretching is solved for; else nothing moves along the beam.</summary>
    internal bool HasAlong { get; private set; }

    /// <summary>Whether a sloped support ties stretching to bending.</summary>
    internal bool IsCoupled { get; private set; }

    internal int Number(int node, int place) => _numbers[PerNode * node + place];

    /// <summary>The imposed movement of what is held [m or rad].</summary>
    internal double Imposed(int node, int place) => _imposed[PerNode * node + place];

    /// <summary>The surface at a node; level where there is no sloped support.</summary>
    internal ref readonly SurfaceDirection Direction(int node) => ref _directions[node];

    /// <summary>Numbers the free movements.</summary>
    /// <param name="grid">The nodes.</param>
    /// <param name="model">The beam.</param>
    /// <param name="touching">Which supports touch; one that does not holds nothing.</param>
    /// <param name="isEased">
    /// True: a support that does not touch still keeps its directions, held by soft springs.
    /// </param>
    /// <param name="wantsAlong">Whether something acts along the beam.</param>
    internal void Lay(BeamGrid grid, BeamModel model, ReadOnlySpan<bool> touching, bool isEased, bool wantsAlong)
    {
        int places = PerNode * grid.NodeCount;
        Workspace.Grow(ref _numbers, places);
        Workspace.Grow(ref _imposed, places);
        Workspace.Grow(ref _directions, grid.NodeCount);
        Array.Clear(_numbers, 0, places);
        Array.Clear(_imposed, 0, places);
        Array.Fill(_directions, SurfaceDirection.Level, 0, grid.NodeCount);
        IsCoupled = false;
        bool isHeldAlong = false;
        for (int i = 0; i < touching.Length; i++)
        {
            Support support = model.Supports[i];
            if ((touching[i] || isEased) && support.SurfaceSlope != 0)
            {
                IsCoupled = true;
                _directions[grid.NodeOfSupport(i)] = SurfaceDirection.Of(support.SurfaceSlope);
            }

            if (touching[i])
            {
                isHeldAlong |= support.Along is not Restraint.None;
                Hold(grid.NodeOfSupport(i), support);
            }
        }

        HasAlong = IsCoupled || (wantsAlong && isHeldAlong);
        GiveNumbers(grid);
        HalfBandwidth = WidestElement(grid);
    }

    private void Hold(int node, Support support)
    {
        Hold(node, Along, support.Along, 0);
        Hold(node, Across, support.Across, -support.Settlement);
        Hold(node, TurnLeft, support.Rotation, support.ImposedRotation);
        Hold(node, TurnRight, support.Rotation, support.ImposedRotation);
    }

    private void Hold(int node, int place, Restraint restraint, double imposed)
    {
        if (restraint is Restraint.Rigid)
        {
            _numbers[PerNode * node + place] = Held;
            _imposed[PerNode * node + place] = imposed;
        }
    }

    private void GiveNumbers(BeamGrid grid)
    {
        int next = 0;
        for (int node = 0; node < grid.NodeCount && HasAlong && !IsCoupled; node++)
        {
            Give(PerNode * node + Along, ref next);
        }

        for (int node = 0; node < grid.NodeCount; node++)
        {
            int at = PerNode * node;
            if (IsCoupled)
            {
                Give(at + Along, ref next);
            }
            else if (!HasAlong)
            {
                _numbers[at + Along] = Held;
            }

            Give(at + Across, ref next);
            Give(at + TurnLeft, ref next);
            if (grid.IsHinge(node))
            {
                Give(at + TurnRight, ref next);
            }
            else
            {
                _numbers[at + TurnRight] = _numbers[at + TurnLeft];
            }
        }

        Count = next;
    }

    private void Give(int place, ref int next)
    {
        if (_numbers[place] != Held)
        {
            _numbers[place] = next++;
        }
    }

    private int WidestElement(BeamGrid grid)
    {
        int widest = HasAlong ? 1 : 0;
        for (int element = 0; element < grid.ElementCount; element++)
        {
            int left = PerNode * element;
            int right = left + PerNode;
            int first = int.MaxValue;
            int last = Held;
            Widen(left + Across, ref first, ref last);
            Widen(left + TurnRight, ref first, ref last);
            Widen(right + Across, ref first, ref last);
            Widen(right + TurnLeft, ref first, ref last);
            if (IsCoupled)
            {
                Widen(left + Along, ref first, ref last);
                Widen(right + Along, ref first, ref last);
            }

            widest = last == Held ? widest : Math.Max(widest, last - first);
        }

        return widest;
    }

    private void Widen(int place, ref int first, ref int last)
    {
        int number = _numbers[place];
        if (number != Held)
        {
            first = Math.Min(first, number);
            last = Math.Max(last, number);
        }
    }
}
