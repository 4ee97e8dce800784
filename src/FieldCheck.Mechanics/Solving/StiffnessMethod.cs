using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Solving;

/// <summary>The numeric core: cuts, numbers, assembles, factors, solves and traces, in memory that it keeps.</summary>
/// <remarks>
/// In order: <see cref="Prepare"/> once a beam, <see cref="Hold"/> once a set of touching supports, then for each
/// set of loads <see cref="Load"/>, <see cref="Move"/> and <see cref="Trace"/>. Warm, none of them allocates.
/// </remarks>
internal sealed partial class StiffnessMethod
{
    /// <summary>
    /// How the gentle press grows from one support to the next, times the square of their number [–]: of supports at even
    /// distances its resultant then stands some third of a bay off the middle, however many they are.
    /// </summary>
    private const double PressGrowth = 4;

    private readonly LoadGrid _loads = new();
    private readonly Freedoms _freedoms = new();
    private readonly Assembly _assembly = new();
    private readonly BandFactor _factor = new();
    private Element[] _elements = [];
    private SectionMarch[] _own = [];
    private PointAction[] _nodeActions = [];
    private NodeMovement[] _movements = [];
    private ElementForces[] _forces = [];
    private DoubleDouble[] _side = [];
    private Piece[] _pieces = [];
    private NoiseFloor _noise;
    private BeamModel? _model;

    internal BeamGrid Grid { get; } = new();

    /// <summary>What is traced of the last solution, left to right.</summary>
    internal ReadOnlySpan<Piece> Pieces => _pieces.AsSpan(0, Grid.PieceCount);

    /// <summary>Whether the loads now on the beam act along it too.</summary>
    internal bool HasAlongLoad => _loads.HasAlong;

    /// <summary>How often it has factored a matrix.</summary>
    internal int Factorisations { get; private set; }

    /// <summary>A force down at the first support besides the loads [N], for trying which way a resting beam settles.</summary>
    /// <remarks>It grows along the supports, so that supports at even distances do not balance it on the middle one alone.</remarks>
    internal double Press { get; set; }

    /// <summary>False: some solution since the supports were last held came out infinite or not a number.</summary>
    internal bool StayedFinite { get; private set; }

    /// <summary>
    /// The sizes of the loads now on the beam added up, as the nodes take them, couples over its length [N].
    /// </summary>
    internal double LoadSize { get; private set; }

    /// <summary>The greatest internal force of the last solution, moments over the beam's length [N].</summary>
    internal double GreatestForce => _noise.GreatestForce;

    /// <summary>The greatest movement of the last solution, turns times the beam's length [m].</summary>
    internal double GreatestMovement => _noise.GreatestMovement;

    /// <summary>Movement of a node under the last solution.</summary>
    internal ref readonly NodeMovement MovementOf(int node) => ref _movements[node];

    private BeamModel Model => _model ?? throw new InvalidOperationException("No beam was prepared.");

    /// <summary>Cuts a beam into elements and pieces.</summary>
    internal void Prepare(BeamModel model)
    {
        _model = model;
        _isNear = false;
        Grid.Lay(model);
        int nodes = Grid.NodeCount;
        Workspace.Grow(ref _elements, nodes);
        Workspace.Grow(ref _own, nodes);
        Workspace.Grow(ref _nodeActions, nodes);
        Workspace.Grow(ref _movements, nodes);
        Workspace.Grow(ref _forces, nodes);
        Workspace.Grow(ref _side, Freedoms.PerNode * nodes);
        Workspace.Grow(ref _pieces, Grid.PieceCount);
        for (int i = 0; i < Grid.ElementCount; i++)
        {
            _elements[i] = new Element(model.Spans[Grid.SpanOf(i)], Grid.ElementLength(i));
        }
    }

    /// <summary>Factors the stiffness of the beam on the supports that touch.</summary>
    /// <param name="touching">One a support.</param>
    /// <param name="wantsAlong">Whether any load that will come acts along the beam.</param>
    /// <param name="ease">Stiffness of the soft springs at supports that do not touch [N/m]; zero: none.</param>
    /// <returns>False: the figures are beyond what the arithmetic can hold.</returns>
    internal bool Hold(ReadOnlySpan<bool> touching, bool wantsAlong, double ease = 0)
    {
        _isNear = false;
        _freedoms.Lay(Grid, Model, touching, ease > 0, wantsAlong);
        _assembly.AddUp(_factor, _freedoms, _elements.AsSpan(0, Grid.ElementCount));
        for (int i = 0; i < touching.Length; i++)
        {
            if (touching[i])
            {
                _assembly.AddSprings(_factor, _freedoms, Model.Supports[i], Grid.NodeOfSupport(i));
            }
            else if (ease > 0)
            {
                double turnEase = ease * Model.Length * Model.Length;
                _assembly.AddEase(_factor, _freedoms, Model.Supports[i], Grid.NodeOfSupport(i), ease, turnEase);
            }
        }

        Factorisations++;
        StayedFinite = _factor.Factor();
        return StayedFinite;
    }

    /// <summary>Puts the loads of the cases, each times its factor, on the beam.</summary>
    internal void Load(ReadOnlySpan<double> factors)
    {
        _isNear = false;
        _loads.Fill(Grid, Model, factors);
        for (int node = 0; node < Grid.NodeCount; node++)
        {
            _nodeActions[node] = _loads.At(Grid.PointOf(node));
        }

        for (int i = 0; i < Grid.ElementCount; i++)
        {
            HandOverLoads(i);
        }

        LoadSize = 0;
        for (int node = 0; node < Grid.NodeCount; node++)
        {
            LoadSize += SizeOf(_nodeActions[node]);
        }
    }

    /// <summary>Finds how the nodes move and what the elements carry.</summary>
    /// <param name="withImposed">Whether settlements and imposed rotations act too.</param>
    internal void Move(bool withImposed)
    {
        FillSide(withImposed);
        _factor.Solve(_side);
        ReadMovements(0, Grid.NodeCount - 1, withImposed);
    }

    /// <summary>
    /// What the node of a support needs from outside to balance: its reaction, if it is all that holds there.
    /// </summary>
    internal (double Right, double Up, double Turn) ReactionAt(int node)
    {
        SectionForces left = node > 0 ? _forces[node - 1].End : default;
        SectionForces right = node < Grid.ElementCount ? _forces[node].Start : default;
        PointAction action = _loads.At(Grid.PointOf(node));
        return (_noise.Force(left.Axial - right.Axial - action.Right),
            _noise.Force(right.Shear - left.Shear - action.Up + PressAt(node)),
            _noise.Moment(left.Moment - right.Moment - action.TurnLeft - action.TurnRight));
    }

    private void ReadMovements(int first, int last, bool withImposed)
    {
        for (int node = first; node <= last; node++)
        {
            ref NodeMovement movement = ref _movements[node];
            movement.Right = Value(node, Freedoms.Along, withImposed);
            movement.Up = Value(node, Freedoms.Across, withImposed);
            movement.TurnLeft = Value(node, Freedoms.TurnLeft, withImposed);
            movement.TurnRight = Value(node, Freedoms.TurnRight, withImposed);
            ref readonly SurfaceDirection direction = ref _freedoms.Direction(node);
            if (direction.IsSloped)
            {
                (movement.Right, movement.Up) = direction.ToRightAndUp(movement.Right, movement.Up);
            }
        }

        _noise = new NoiseFloor(Model.Length);
        for (int i = Math.Max(0, first - 1); i < Math.Min(Grid.ElementCount, last + 1); i++)
        {
            _forces[i] = _elements[i].Forces(_own[i], _movements[i], _movements[i + 1]);
            _noise.Take(_elements[i], _movements[i], _movements[i + 1], _forces[i]);
        }

        StayedFinite &= double.IsFinite(_noise.GreatestForce) && double.IsFinite(_noise.GreatestMovement);
    }

    /// <summary>Lets the nodes of an element, held, take what stands on it.</summary>
    private void HandOverLoads(int element)
    {
        NodeMovement still = default;
        _own[element] = Walk(element);
        ElementForces held = _elements[element].Forces(_own[element], still, still);
        ref PointAction left = ref _nodeActions[element];
        left.Right += held.Start.Axial;
        left.Up -= held.Start.Shear;
        left.TurnRight += held.Start.Moment;
        ref PointAction right = ref _nodeActions[element + 1];
        right.Right -= held.End.Axial;
        right.Up += held.End.Shear;
        right.TurnLeft -= held.End.Moment;
    }

    private double SizeOf(in PointAction action) =>
        Math.Abs((double)action.Up)
        + Math.Abs((double)action.Right)
        + Math.Abs((double)(action.TurnLeft + action.TurnRight)) / Model.Length;

    /// <summary>Walks over an element's loads from nothing.</summary>
    private SectionMarch Walk(int element)
    {
        SectionMarch section = default;
        int last = Grid.PointOf(element + 1);
        int first = Grid.PointOf(element);
        if (!_loads.IsLoaded(first, last))
        {
            return section;
        }

        for (int piece = first; piece < last; piece++)
        {
            if (piece > first)
            {
                section.Pass(_loads.At(piece));
            }

            section.Walk(_loads.On(piece), Grid.PieceLength(piece), _elements[element].ShearRatio);
        }

        return section;
    }

    private void FillSide(bool withImposed)
    {
        for (int i = 0; i < _freedoms.Count; i++)
        {
            _side[i] = withImposed ? _assembly.ImposedSide[i] : DoubleDouble.Zero;
        }

        for (int node = 0; node < Grid.NodeCount; node++)
        {
            AddToSide(node);
        }
    }

    private void AddToSide(int node)
    {
        PointAction action = _nodeActions[node];
        action.Up -= PressAt(node);
        ref readonly SurfaceDirection direction = ref _freedoms.Direction(node);
        if (direction.IsSloped)
        {
            (action.Right, action.Up) =
                (direction.AlongOf(action.Right, action.Up), direction.NormalOf(action.Right, action.Up));
        }

        AddToSide(node, Freedoms.Along, action.Right);
        AddToSide(node, Freedoms.Across, action.Up);
        AddToSide(node, Freedoms.TurnLeft, action.TurnLeft);
        AddToSide(node, Freedoms.TurnRight, action.TurnRight);
    }

    private double PressAt(int node)
    {
        int support = Grid.SupportAt(node);
        double count = Model.Supports.Length;
        return support < 0 ? 0 : Press * (1 + PressGrowth * support / (count * count));
    }

    private void AddToSide(int node, int place, DoubleDouble force)
    {
        int number = _freedoms.Number(node, place);
        if (number != Freedoms.Held)
        {
            _side[number] += force;
        }
    }

    private DoubleDouble Value(int node, int place, bool withImposed)
    {
        int number = _freedoms.Number(node, place);
        return number != Freedoms.Held ? _side[number] : withImposed ? _freedoms.Imposed(node, place) : 0;
    }
}
