using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// What a force down of one anywhere does to reactions and to the state where each element starts: on every element a
/// cubic in the place, put together from the answers to forces and couples at the nodes and what the force does to an
/// element held at both ends (docs/methods.md, "Envelopes").
/// </summary>
internal sealed class ForceInfluence(BeamNodes nodes, int supports, ImmutableArray<double[]> answers)
{
    /// <summary>Coefficients an element.</summary>
    internal const int Cubic = 4;

    /// <summary>Unit loads a node: a force up, a couple on its left side, a couple on its right side.</summary>
    private const int ANode = 3;

    internal BeamNodes Nodes => nodes;

    /// <summary>Row of a reaction.</summary>
    internal static int ReactionRow(int support, ReactionComponent component) =>
        PartAnswers.ASupport * support + (int)component;

    /// <summary>Row of N, V, M, turn or rise at the start of an element.</summary>
    internal int StartRow(int element, int state) =>
        PartAnswers.ASupport * supports + PartAnswers.AnElement * element + state;

    /// <summary>
    /// Of one row the cubics of all elements, in the share of the element's length at which the force stands.
    /// </summary>
    internal double[] Row(int row)
    {
        double[] cubics = new double[Cubic * nodes.ElementCount];
        for (int e = 0; e < nodes.ElementCount; e++)
        {
            Span<double> cubic = cubics.AsSpan(Cubic * e, Cubic);
            Shapes shapes = new(nodes.SpanOf(e), nodes.LengthOf(e));
            shapes.AddNear(cubic, -answers[ANode * e][row], -answers[ANode * e + 2][row]);
            shapes.AddFar(cubic, -answers[ANode * (e + 1)][row], -answers[ANode * (e + 1) + 1][row]);
            if (row == StartRow(e, 1))
            {
                shapes.AddNear(cubic, 1, 0);
            }
            else if (row == StartRow(e, 2))
            {
                shapes.AddNear(cubic, 0, -1);
            }
        }

        return cubics;
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
