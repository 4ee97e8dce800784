using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// What a force down of one anywhere does to reactions and to the state where each element starts: on every element a
/// cubic in the place, put together from the answers to forces and couples at the nodes and what the force does to an
/// element held at both ends (docs/methods.md, "Envelopes").
/// </summary>
internal sealed class ForceInfluence
{
    /// <summary>Coefficients an element.</summary>
    internal const int Cubic = 4;

    /// <summary>
    /// Influence below this share of the greatest is left out [–]: a thousand axles there change less than 1e-12 of what
    /// one does where it does most.
    /// </summary>
    private const double Negligible = 1e-17;

    /// <summary>Unit loads a node: a force up, a couple on its left side, a couple on its right side.</summary>
    private const int ANode = 3;

    private readonly ImmutableArray<PartStarts> _answers;
    private readonly (int First, int Last)[] _nodesOfSupport;
    private readonly (int First, int Last)[] _nodesOfElement;

    internal ForceInfluence(BeamNodes nodes, int supports, ImmutableArray<PartStarts> answers)
    {
        Nodes = nodes;
        _answers = answers;
        _nodesOfSupport = new (int, int)[supports];
        _nodesOfElement = new (int, int)[nodes.ElementCount];
        Array.Fill(_nodesOfSupport, (int.MaxValue, -1));
        Array.Fill(_nodesOfElement, (int.MaxValue, -1));
        for (int unit = 0; unit < answers.Length; unit++)
        {
            PartStarts answer = answers[unit];
            Widen(_nodesOfSupport.AsSpan(answer.FirstSupport..answer.EndSupport), unit / ANode);
            Widen(_nodesOfElement.AsSpan(answer.FirstElement..answer.EndElement), unit / ANode);
        }
    }

    internal BeamNodes Nodes { get; }

    /// <summary>The influence on a part of a reaction.</summary>
    internal InfluenceRow OfReaction(int support, ReactionComponent component) =>
        Row(_nodesOfSupport[support], -1, unit => _answers[unit].Reaction(support, (int)component));

    /// <summary>The influence on N, V, M, turn or rise at the start of an element.</summary>
    internal InfluenceRow OfStart(int element, int state) => Row(
        _nodesOfElement[element],
        state is 1 or 2 ? element : -1,
        unit => _answers[unit].State(element, state),
        jumpsInMoment: state == 2);

    private InfluenceRow Row(
        (int First, int Last) nodes, int jumpsOn, Func<int, double> figure, bool jumpsInMoment = false)
    {
        int first = Math.Max(0, nodes.Last < 0 ? 0 : nodes.First - 1);
        int end = Math.Min(Nodes.ElementCount, nodes.Last + 1);
        if (jumpsOn >= 0)
        {
            (first, end) = (nodes.Last < 0 ? jumpsOn : Math.Min(first, jumpsOn), Math.Max(end, jumpsOn + 1));
        }

        double[] cubics = new double[Cubic * Math.Max(0, end - first)];
        for (int e = first; e < end; e++)
        {
            Span<double> cubic = cubics.AsSpan(Cubic * (e - first), Cubic);
            Shapes shapes = new(Nodes.SpanOf(e), Nodes.LengthOf(e));
            shapes.AddNear(cubic, -figure(ANode * e), -figure(ANode * e + 2));
            shapes.AddFar(cubic, -figure(ANode * (e + 1)), -figure(ANode * (e + 1) + 1));
            if (e == jumpsOn)
            {
                shapes.AddNear(cubic, jumpsInMoment ? 0 : 1, jumpsInMoment ? -1 : 0);
            }
        }

        return Trimmed(first, cubics);
    }

    private static InfluenceRow Trimmed(int first, double[] cubics)
    {
        double most = 0;
        foreach (double one in cubics)
        {
            most = Math.Max(most, Math.Abs(one));
        }

        int from = Array.FindIndex(cubics, one => Math.Abs(one) > Negligible * most) / Cubic;
        int to = Array.FindLastIndex(cubics, one => Math.Abs(one) > Negligible * most) / Cubic + 1;
        return most == 0 ? new InfluenceRow(0, []) : new InfluenceRow(first + from, cubics[(Cubic * from)..(Cubic * to)]);
    }

    private static void Widen(Span<(int First, int Last)> nodes, int node)
    {
        foreach (ref (int First, int Last) one in nodes)
        {
            one = (Math.Min(one.First, node), Math.Max(one.Last, node));
        }
    }

    /// <summary>The shapes that an element takes when one of its ends moves or turns by one, shear counted.</summary>
    private readonly struct Shapes
    {
        private readonly double _shear;
        private readonly double _length;
        private readonly double _scale;

        internal Shapes(Span span, double length)
        {
            _length = length;
            _shear = span.ShearRigidity is double rigidity
                ? 12 * span.FlexuralRigidity / (rigidity * length * length)
                : 0;
            _scale = 1 / (1 + _shear);
        }

        /// <summary>Adds the shape of the left end's movement and that of its turn.</summary>
        internal void AddNear(Span<double> cubic, double move, double turn)
        {
            move *= _scale;
            turn *= _scale * _length;
            cubic[0] += move * (1 + _shear);
            cubic[1] += -move * _shear + turn * (1 + _shear / 2);
            cubic[2] += -3 * move - turn * (2 + _shear / 2);
            cubic[3] += 2 * move + turn;
        }

        /// <summary>Adds the shape of the right end's movement and that of its turn.</summary>
        internal void AddFar(Span<double> cubic, double move, double turn)
        {
            move *= _scale;
            turn *= _scale * _length;
            cubic[1] += move * _shear - turn * _shear / 2;
            cubic[2] += 3 * move + turn * (_shear / 2 - 1);
            cubic[3] += -2 * move + turn;
        }
    }
}
