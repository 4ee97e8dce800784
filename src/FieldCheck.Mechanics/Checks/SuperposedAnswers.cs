using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Checks;

/// <summary>
/// All answers that the bands of one beam are put together from, where answers add up: the beam as typed, each uncertain
/// load and movement alone, and loads of one along the stretches that an uncertain load may stand on.
/// </summary>
internal sealed class SuperposedAnswers
{
    private readonly Dictionary<LoadIndex, LoadAnswers> _loads = [];
    private readonly Dictionary<InputSpread, BeamResponse> _movements = [];

    private SuperposedAnswers(BeamModel model, BeamOutcome.Stands nominal, ImmutableArray<InputSpread> inputs)
    {
        Model = model;
        Nominal = nominal;
        Inputs = inputs;
        Boxes = LoadBox.Of(model, inputs);
    }

    internal BeamModel Model { get; }

    internal BeamOutcome.Stands Nominal { get; }

    internal ImmutableArray<InputSpread> Inputs { get; }

    internal ImmutableArray<LoadBox> Boxes { get; }

    /// <summary>Null while no load moves.</summary>
    internal InfluenceTable? Table { get; private set; }

    /// <summary>Solves for them; null where the beam does not stand.</summary>
    internal static SuperposedAnswers? Solve(BeamSolver solver, BeamModel model, ImmutableArray<InputSpread> inputs)
    {
        if (solver.Solve(model) is not BeamOutcome.Stands nominal)
        {
            return null;
        }

        SuperposedAnswers answers = new(model, nominal, inputs);
        return answers.SolveLoads(solver) && answers.SolveMovements(solver) ? answers : null;
    }

    internal LoadAnswers Of(LoadIndex load) => _loads[load];

    /// <summary>The answer to a unit of a movement alone.</summary>
    internal BeamResponse Of(InputSpread movement) => _movements[movement];

    private bool SolveLoads(BeamSolver solver)
    {
        if (Boxes.IsEmpty)
        {
            return true;
        }

        ImmutableArray<double> nodes = Model.NodePositions();
        ImmutableArray<int> touched = InfluenceTable.Touched(nodes, Boxes);
        ImmutableArray<LoadCase> units =
            [.. touched.SelectMany(e => UnitLoads.On(nodes[e], nodes[e + 1] - nodes[e]))];
        ImmutableArray<LoadCase> own = [.. Boxes.SelectMany(box => LoadAnswers.LoadsOf(box.Load)).Select(UnitLoads.Case)];
        bool isHeldAlong = Nominal.IsHeldAlong;
        BeamModel bare = new(
            Model.Spans,
            Unmoved(),
            Model.Hinges,
            [.. units.Concat(own).Select(one => isHeldAlong ? one : WithoutAlong(one))],
            [],
            Model.HasAbsoluteStiffness);
        if (solver.Solve(bare) is not BeamOutcome.Stands stands)
        {
            return false;
        }

        ReadOnlySpan<BeamResponse?> cases = stands.Cases.AsSpan();
        int next = units.Length;
        foreach (LoadBox box in Boxes)
        {
            BeamResponse start = cases[next++]!;
            BeamResponse? end = box.Load is Load.Distributed ? cases[next++] : null;
            _loads.Add(box.Index, new LoadAnswers(start, end));
        }

        Table = touched.IsEmpty ? null : InfluenceTable.Of(Model, nodes, touched, cases[..units.Length]);
        return true;
    }

    /// <summary>
    /// On a beam that nothing holds lengthways, no combination pulls that way: its loads along are none that count.
    /// </summary>
    private static LoadCase WithoutAlong(LoadCase one) => one.Loads[0] switch
    {
        Load.Point point => UnitLoads.Case(new Load.Point(point.Position, point.Down)),
        Load.Distributed { ActsAlong: true } along => UnitLoads.Case(along with { ActsAlong = false }),
        _ => one,
    };

    private bool SolveMovements(BeamSolver solver)
    {
        foreach (InputSpread input in Inputs)
        {
            (int support, double down, double turn) = input switch
            {
                InputSpread.Settlement settlement => (settlement.Support, 1.0, 0.0),
                InputSpread.ImposedRotation rotation => (rotation.Support, 0.0, 1.0),
                _ => (-1, 0, 0),
            };
            if (support < 0)
            {
                continue;
            }

            ImmutableArray<Support> moved = Unmoved();
            BeamModel bare = new(
                Model.Spans,
                moved.SetItem(support, moved[support] with { Settlement = down, ImposedRotation = turn }),
                Model.Hinges,
                [],
                [new Combination("", CombinationBasis.Service, [])],
                Model.HasAbsoluteStiffness);
            if (solver.Solve(bare) is not BeamOutcome.Stands stands)
            {
                return false;
            }

            _movements[input] = stands.Combinations[0].Response;
        }

        return true;
    }

    private ImmutableArray<Support> Unmoved() =>
        [.. Model.Supports.Select(support => support with { Settlement = 0, ImposedRotation = 0 })];
}
