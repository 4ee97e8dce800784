using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// What it does to a beam to raise the rest of each support that acts one way by one, all supports holding: with the parts
/// of the loads all that an answer with supports that let go adds up from.
/// </summary>
internal sealed class RaisedRests
{
    private RaisedRests(ImmutableArray<int> supports, FigureTable table, BeamResponse[] raised)
    {
        Supports = supports;
        Table = table;
        Rows = [.. raised.Select(one =>
        {
            double[] row = new double[table.Length];
            table.Add(row, 1, 0, one.Reactions, 0, one.Pieces);
            return row;
        })];
        Stiffness = new double[supports.Length, supports.Length];
        for (int i = 0; i < supports.Length; i++)
        {
            for (int j = 0; j < supports.Length; j++)
            {
                Stiffness[i, j] = (raised[j].Reactions[supports[i]].Vertical + raised[i].Reactions[supports[j]].Vertical) / 2;
            }
        }
    }

    /// <summary>The supports that act one way, in order.</summary>
    internal ImmutableArray<int> Supports { get; }

    internal FigureTable Table { get; }

    /// <summary>The figures by each of them raised by one.</summary>
    internal double[][] Rows { get; }

    /// <summary>The reaction of each to each raised by one [N/m].</summary>
    internal double[,] Stiffness { get; }

    /// <summary>
    /// Finds them; null where a support that lets go takes more with it than its push, so that answers do not add up so.
    /// </summary>
    internal static RaisedRests? Of(Superposition sum, BeamSolver solver)
    {
        BeamModel model = sum.Problem.Model;
        ImmutableArray<int> supports =
            [.. Enumerable.Range(0, model.Supports.Length).Where(i => model.Supports[i].Action != SupportAction.Both)];
        bool actsAlong = Lengthways.IsAskedBy(model);
        bool takesMore = model.Supports.Any(one => one.SurfaceSlope != 0
            || (one.Action != SupportAction.Both && actsAlong && one.Along is not Restraint.None));
        BeamResponse?[] raised =
            [.. supports.Where(_ => !takesMore).Select(i => solver.SolveImposed(sum.RaisedAt(i)))];
        return takesMore || raised.Any(one => one is null)
            ? null
            : new RaisedRests(supports, new FigureTable(model.Supports.Length, sum.Imposed.Length), [.. raised.OfType<BeamResponse>()]);
    }
}
