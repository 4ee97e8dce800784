using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Checks;

/// <summary>
/// What a load of one anywhere on some stretches does to every reaction and to the state at the start of every
/// element; from these the influence line of any figure is put together.
/// </summary>
internal sealed class InfluenceTable
{
    private const int StatesAnElement = 5;

    private readonly BeamModel _model;
    private readonly ImmutableArray<double> _nodes;
    private readonly ImmutableArray<int> _spans;
    private readonly double[]?[] _influence;

    /// <summary>The greatest of each <see cref="Curve"/> anywhere, that of a force at least the load of one.</summary>
    private readonly double[] _sizes = [1, 1, 0, 0, 0];

    private InfluenceTable(BeamModel model, ImmutableArray<double> nodes)
    {
        _model = model;
        _nodes = nodes;
        _influence = new double[nodes.Length - 1][];
        _spans = [.. nodes.SkipLast(1).Select(node => SpanAt(model, node))];
    }

    internal int ElementCount => _nodes.Length - 1;

    private int RowCount => 3 * _model.Supports.Length + StatesAnElement * ElementCount;

    /// <summary>The elements that some moving load may touch.</summary>
    internal static ImmutableArray<int> Touched(ImmutableArray<double> nodes, IEnumerable<LoadBox> boxes)
    {
        LoadBox[] moving = [.. boxes.Where(box => box.Moves)];
        return
        [
            .. Enumerable.Range(0, nodes.Length - 1)
                .Where(e => moving.Any(box => box.From.Low <= nodes[e + 1] && box.To.High >= nodes[e])),
        ];
    }

    /// <summary>Reads the answers to the loads of one.</summary>
    /// <param name="model">The beam.</param>
    /// <param name="nodes">Its nodes [m].</param>
    /// <param name="touched">The elements that the loads of one stood on.</param>
    /// <param name="answers">
    /// The answers, in the order of <see cref="UnitLoads.On"/>, element by element; null where nothing holds the beam.
    /// </param>
    internal static InfluenceTable Of(
        BeamModel model, ImmutableArray<double> nodes, ImmutableArray<int> touched, ReadOnlySpan<BeamResponse?> answers)
    {
        InfluenceTable table = new(model, nodes);
        for (int i = 0; i < touched.Length; i++)
        {
            table._influence[touched[i]] = table.Fitted(answers.Slice(i * UnitLoads.Count, UnitLoads.Count));
        }

        return table;
    }

    /// <summary>The influence line of a figure; zero on elements that nothing touches.</summary>
    internal InfluenceLine Line(Target target)
    {
        Element at = target.IsReaction ? default : ElementAt(target.Position, target.Side);
        (int Row, double Weight)[] weights = target.IsReaction
            ? [(3 * target.Support + (int)target.Part, 1)]
            : Weights(target, at);
        List<Stretch> stretches = new(ElementCount + 1);
        double size = _sizes[(int)(target.IsReaction ? CurveLike(target.Part) : target.Curve)];
        for (int e = 0; e < ElementCount; e++)
        {
            double[] coefficients = Combined(e, weights, ref size);
            Stretch whole = new(_nodes[e], _nodes[e + 1], _nodes[e], _nodes[e + 1] - _nodes[e], coefficients);
            if (target.IsReaction || e != at.Index)
            {
                stretches.Add(whole);
                continue;
            }

            double[] local = (double[])coefficients.Clone();
            AddLocal(local, target, at);
            stretches.Add(whole with { To = target.Position, Coefficients = local });
            stretches.Add(whole with { From = target.Position });
        }

        return new InfluenceLine([.. stretches], target, size);
    }

    private double[] Fitted(ReadOnlySpan<BeamResponse?> answers)
    {
        double[] rows = new double[RowCount * UnitLoads.Count];
        for (int load = 0; load < UnitLoads.Count; load++)
        {
            if (answers[load] is BeamResponse response)
            {
                Read(response, rows.AsSpan(load));
            }
        }

        for (int row = 0; row < RowCount; row++)
        {
            Span<double> influence = rows.AsSpan(row * UnitLoads.Count, UnitLoads.Count);
            UnitLoads.Fit(influence);
            ref double size = ref _sizes[(int)CurveOf(row)];
            foreach (double coefficient in influence)
            {
                size = Math.Max(size, Math.Abs(coefficient));
            }
        }

        return rows;
    }

    private Curve CurveOf(int row)
    {
        int state = row - 3 * _model.Supports.Length;
        return state < 0 ? CurveLike((ReactionPart)(row % 3)) : (Curve)(state % StatesAnElement);
    }

    /// <summary>Of what kind a part of a reaction is.</summary>
    private static Curve CurveLike(ReactionPart part) => part switch
    {
        ReactionPart.Vertical => Curve.Shear,
        ReactionPart.Horizontal => Curve.Axial,
        _ => Curve.Moment,
    };

    private void Read(BeamResponse response, Span<double> to)
    {
        int row = 0;
        foreach (Reaction reaction in response.Reactions)
        {
            to[UnitLoads.Count * row++] = reaction.Vertical;
            to[UnitLoads.Count * row++] = reaction.Horizontal;
            to[UnitLoads.Count * row++] = reaction.Moment;
        }

        for (int e = 0; e < ElementCount; e++)
        {
            SectionState start = response.At(_nodes[e]).Right;
            to[UnitLoads.Count * row++] = start.Axial;
            to[UnitLoads.Count * row++] = start.Shear;
            to[UnitLoads.Count * row++] = start.Moment;
            to[UnitLoads.Count * row++] = start.Slope;
            to[UnitLoads.Count * row++] = start.Deflection;
        }
    }

    /// <param name="element">The element that the load of one stands on.</param>
    /// <param name="weights">What is summed up.</param>
    /// <param name="size">Becomes the greatest size of a term, if one is greater.</param>
    private double[] Combined(int element, (int Row, double Weight)[] weights, ref double size)
    {
        double[] sum = new double[UnitLoads.Count];
        if (_influence[element] is double[] rows)
        {
            foreach ((int row, double weight) in weights)
            {
                for (int k = 0; k < UnitLoads.Count; k++)
                {
                    double term = weight * rows[row * UnitLoads.Count + k];
                    sum[k] += term;
                    size = Math.Max(size, Math.Abs(term));
                }
            }
        }

        return sum;
    }

    /// <summary>A section's state from that at the start of its element, were no load between.</summary>
    private (int Row, double Weight)[] Weights(Target target, in Element at)
    {
        int axial = 3 * _model.Supports.Length + StatesAnElement * at.Index;
        (int shear, int moment, int slope, int deflection) = (axial + 1, axial + 2, axial + 3, axial + 4);
        double d = target.Position - at.Start;
        double bend = 1 / at.Span.FlexuralRigidity;
        return target.Curve switch
        {
            Curve.Axial => [(axial, 1)],
            Curve.Shear => [(shear, 1)],
            Curve.Moment => [(moment, 1), (shear, d)],
            Curve.Slope => [(slope, 1), (moment, d * bend), (shear, d * d * bend / 2)],
            _ => [(deflection, 1), (slope, -d), (moment, -d * d * bend / 2), (shear, -d * d * d * bend / 6)],
        };
    }

    /// <summary>What a load of one left of the section in its own element adds, u = x - ξ apart.</summary>
    private static void AddLocal(double[] to, Target target, in Element at)
    {
        double d = target.Position - at.Start;
        double h = at.Length;
        double bend = 1 / at.Span.FlexuralRigidity;
        double shear = at.Span.ShearRigidity is double rigidity ? 1 / rigidity : 0;
        switch (target.Curve)
        {
            case Curve.Axial:
                to[4] -= 1;
                break;
            case Curve.Shear:
                to[0] -= 1;
                break;
            case Curve.Moment:
                to[0] -= d;
                to[1] += h;
                to[6] -= 1;
                break;
            case Curve.Slope:
                to[0] += shear - d * d * bend / 2;
                to[1] += d * h * bend;
                to[2] -= h * h * bend / 2;
                to[6] -= d * bend;
                to[7] += h * bend;
                break;
            default:
                to[0] += d * d * d * bend / 6 - d * shear;
                to[1] += h * shear - d * d * h * bend / 2;
                to[2] += d * h * h * bend / 2;
                to[3] -= h * h * h * bend / 6;
                to[6] += d * d * bend / 2;
                to[7] -= d * h * bend;
                to[8] += h * h * bend / 2;
                break;
        }
    }

    private Element ElementAt(double position, Side side)
    {
        int index = 0;
        while (index < ElementCount - 1
            && (position > _nodes[index + 1] || (position == _nodes[index + 1] && side == Side.Right)))
        {
            index++;
        }

        return new Element(index, _nodes[index], _nodes[index + 1] - _nodes[index], _model.Spans[_spans[index]]);
    }

    private static int SpanAt(BeamModel model, double start)
    {
        int span = 0;
        while (span < model.Spans.Length - 1 && model.JointPositions[span + 1] <= start)
        {
            span++;
        }

        return span;
    }

    private readonly record struct Element(int Index, double Start, double Length, Span Span);
}
