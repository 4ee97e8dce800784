using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Solving;

/// <summary>Adds elements and springs up to the stiffness matrix of the free movements.</summary>
/// <remarks>
/// What an imposed movement of a held place does goes to the right side at the same time, so that one factorisation
/// serves with and without imposed movements.
/// </remarks>
internal sealed class Assembly
{
    private const int PerElement = 6;
    private readonly DoubleDouble[] _block = new DoubleDouble[PerElement * PerElement];
    private readonly int[] _numbers = new int[PerElement];
    private readonly double[] _imposed = new double[PerElement];
    private DoubleDouble[] _imposedSide = [];

    /// <summary>What the imposed movements add to the right side [N, N·m].</summary>
    internal DoubleDouble[] ImposedSide => _imposedSide;

    /// <summary>Adds up the matrix.</summary>
    internal void AddUp(BandFactor matrix, Freedoms freedoms, ReadOnlySpan<Element> elements)
    {
        matrix.Clear(freedoms.Count, freedoms.HalfBandwidth);
        Workspace.Grow(ref _imposedSide, freedoms.Count);
        Array.Clear(_imposedSide, 0, freedoms.Count);
        for (int i = 0; i < elements.Length; i++)
        {
            if (freedoms.Direction(i).IsSloped || freedoms.Direction(i + 1).IsSloped)
            {
                AddSloped(matrix, freedoms, elements[i], i);
            }
            else
            {
                AddBending(matrix, freedoms, elements[i], i);
            }
        }
    }

    /// <summary>Adds the springs of a support at a node.</summary>
    internal void AddSprings(BandFactor matrix, Freedoms freedoms, Support support, int node)
    {
        double settled = -support.Settlement;
        AddSpring(matrix, freedoms.Number(node, Freedoms.Along), StiffnessOf(support.Along), 0);
        AddSpring(matrix, freedoms.Number(node, Freedoms.Across), StiffnessOf(support.Across), settled);
        AddSpring(matrix, freedoms.Number(node, Freedoms.TurnLeft), StiffnessOf(support.Rotation), 0);
    }

    /// <summary>Adds soft springs in every direction that a support holds while it touches.</summary>
    internal void AddEase(BandFactor matrix, Freedoms freedoms, Support support, int node, double ease, double turnEase)
    {
        AddSpring(matrix, freedoms.Number(node, Freedoms.Across), ease, -support.Settlement);
        if (support.Rotation is not Restraint.None)
        {
            AddSpring(matrix, freedoms.Number(node, Freedoms.TurnLeft), turnEase, 0);
        }

        if (support.Along is not Restraint.None)
        {
            AddSpring(matrix, freedoms.Number(node, Freedoms.Along), ease, 0);
        }
    }

    private static double StiffnessOf(Restraint restraint) =>
        restraint is Restraint.Spring spring ? spring.Stiffness : 0;

    private void AddSpring(BandFactor matrix, int number, double stiffness, double restsAt)
    {
        if (stiffness > 0 && number != Freedoms.Held)
        {
            matrix.Add(number, number, stiffness);
            _imposedSide[number] += DoubleDouble.Product(stiffness, restsAt);
        }
    }

    private void AddBending(BandFactor matrix, Freedoms freedoms, in Element element, int at)
    {
        Take(freedoms, at);
        (DoubleDouble sway, DoubleDouble moment) = (element.Sway, element.SwayMoment);
        Couple(matrix, 1, 1, sway);
        Couple(matrix, 1, 2, moment);
        Couple(matrix, 1, 4, -sway);
        Couple(matrix, 1, 5, moment);
        Couple(matrix, 2, 2, element.NearTurn);
        Couple(matrix, 2, 4, -moment);
        Couple(matrix, 2, 5, element.FarTurn);
        Couple(matrix, 4, 4, sway);
        Couple(matrix, 4, 5, -moment);
        Couple(matrix, 5, 5, element.NearTurn);
        if (freedoms.HasAlong)
        {
            Couple(matrix, 0, 0, element.Stretch);
            Couple(matrix, 0, 3, -element.Stretch);
            Couple(matrix, 3, 3, element.Stretch);
        }
    }

    private void Take(Freedoms freedoms, int left)
    {
        for (int end = 0; end < 2; end++)
        {
            int at = 3 * end;
            int turn = end == 0 ? Freedoms.TurnRight : Freedoms.TurnLeft;
            _numbers[at] = freedoms.Number(left + end, Freedoms.Along);
            _numbers[at + 1] = freedoms.Number(left + end, Freedoms.Across);
            _numbers[at + 2] = freedoms.Number(left + end, turn);
            _imposed[at] = freedoms.Imposed(left + end, Freedoms.Along);
            _imposed[at + 1] = freedoms.Imposed(left + end, Freedoms.Across);
            _imposed[at + 2] = freedoms.Imposed(left + end, turn);
        }
    }

    /// <summary>Adds one stiffness between two of the element's six places, given once for the pair.</summary>
    private void Couple(BandFactor matrix, int a, int b, DoubleDouble stiffness)
    {
        int row = _numbers[a];
        int column = _numbers[b];
        if (row != Freedoms.Held && column != Freedoms.Held)
        {
            matrix.Add(row, column, stiffness);
        }
        else if (row != Freedoms.Held && _imposed[b] != 0)
        {
            _imposedSide[row] -= stiffness * _imposed[b];
        }
        else if (column != Freedoms.Held && _imposed[a] != 0)
        {
            _imposedSide[column] -= stiffness * _imposed[a];
        }
    }

    private void AddSloped(BandFactor matrix, Freedoms freedoms, in Element element, int at)
    {
        Take(freedoms, at);
        FillBlock(element);
        Incline(0, freedoms.Direction(at));
        Incline(3, freedoms.Direction(at + 1));
        for (int a = 0; a < PerElement; a++)
        {
            for (int b = a; b < PerElement; b++)
            {
                Couple(matrix, a, b, _block[PerElement * a + b]);
            }
        }
    }

    private void FillBlock(in Element element)
    {
        Array.Clear(_block);
        Mirror(0, 0, element.Stretch);
        Mirror(0, 3, -element.Stretch);
        Mirror(3, 3, element.Stretch);
        Mirror(1, 1, element.Sway);
        Mirror(1, 2, element.SwayMoment);
        Mirror(1, 4, -element.Sway);
        Mirror(1, 5, element.SwayMoment);
        Mirror(2, 2, element.NearTurn);
        Mirror(2, 4, -element.SwayMoment);
        Mirror(2, 5, element.FarTurn);
        Mirror(4, 4, element.Sway);
        Mirror(4, 5, -element.SwayMoment);
        Mirror(5, 5, element.NearTurn);
    }

    private void Mirror(int a, int b, DoubleDouble stiffness)
    {
        _block[PerElement * a + b] = stiffness;
        _block[PerElement * b + a] = stiffness;
    }

    /// <summary>Turns the rows, then the columns, of one end to its surface.</summary>
    private void Incline(int along, in SurfaceDirection direction)
    {
        if (!direction.IsSloped)
        {
            return;
        }

        for (int pass = 0; pass < 2; pass++)
        {
            (int step, int jump) = pass == 0 ? (1, PerElement) : (PerElement, 1);
            for (int i = 0; i < PerElement; i++)
            {
                ref DoubleDouble first = ref _block[along * jump + i * step];
                ref DoubleDouble second = ref _block[(along + 1) * jump + i * step];
                (first, second) = (direction.AlongOf(first, second), direction.NormalOf(first, second));
            }
        }
    }
}
