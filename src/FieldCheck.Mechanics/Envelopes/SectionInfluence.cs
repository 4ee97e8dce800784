using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>The influence line of a section, from what a train of one axle does to it.</summary>
internal static class SectionInfluence
{
    /// <summary>Its cubics, element by element; the section's own element in two.</summary>
    internal static IEnumerable<InfluenceCubic> Of(ForceInfluence influence, Curve curve, double position, Side side)
    {
        BeamNodes nodes = influence.Nodes;
        int own = ElementOf(nodes, position, side);
        InfluenceRow[] rows = [.. Enumerable.Range(0, 5).Select(state => influence.OfStart(own, state))];
        double[] weights = new double[5];
        SectionRelation section = new(nodes.SpanOf(own));
        section.Weigh(curve, position - nodes.At(own), 1, weights);
        for (int e = 0; e < nodes.ElementCount; e++)
        {
            double[] cubic = new double[ForceInfluence.Cubic];
            for (int k = 0; k < cubic.Length; k++)
            {
                for (int state = 0; state < weights.Length; state++)
                {
                    cubic[k] += weights[state] * rows[state].On(e)[k];
                }
            }

            if (e != own)
            {
                yield return new InfluenceCubic(nodes.At(e), nodes.At(e + 1), cubic);
                continue;
            }

            double[] left = [.. cubic];
            section.AddAxle(left, curve, 1, position - nodes.At(e), nodes.LengthOf(e));
            foreach ((double from, double to, double[] part) in
                new[] { (nodes.At(e), position, left), (position, nodes.At(e + 1), cubic) })
            {
                if (from < to)
                {
                    yield return new InfluenceCubic(from, to, Between(part, nodes, e, from, to));
                }
            }
        }
    }

    private static double[] Between(double[] cubic, BeamNodes nodes, int element, double from, double to)
    {
        double[] part = new double[ForceInfluence.Cubic];
        double length = nodes.LengthOf(element);
        TrainRow.AddShifted(part, cubic, 1, (from - nodes.At(element)) / length, (to - from) / length);
        return part;
    }

    private static int ElementOf(BeamNodes nodes, double position, Side side)
    {
        int element = nodes.ElementAt(position);
        element = element < 0 ? nodes.ElementCount - 1 : element;
        return side == Side.Left && element > 0 && nodes.At(element) == position ? element - 1 : element;
    }
}
