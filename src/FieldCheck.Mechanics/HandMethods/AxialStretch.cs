using System.Collections.Immutable;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>
/// Between two supports that hold along, what stretches must add up to nothing: that gives the axial force.
/// </summary>
/// <remarks>
/// Force times length over E·A, summed over the stretch; where E·A changes, lengths count by the ratio of its first
/// value to its own.
/// </remarks>
/// <param name="beam">The beam.</param>
internal sealed class AxialStretch(HandBeam beam)
{
    private readonly HandWriter _writer = beam.Writer;

    /// <summary>The axial force just right of the left support.</summary>
    /// <param name="from">Index of that support.</param>
    /// <param name="to">Index of the next support that holds along.</param>
    /// <param name="pulls">What acts between the two.</param>
    internal HandNumber Between(int from, int to, IReadOnlyList<AxialPull> pulls)
    {
        HandNumber left = Place(from);
        HandNumber right = Place(to);
        _writer.Say(new HandRemark.NoStretchBetween(from, to, IsEven(left.Value, right.Value)));
        ImmutableArray<Portion> portions = PortionsOf(from, left.Value, right.Value);
        if (pulls.Count == 0)
        {
            return _writer.Find(HandFormula.Total([], HandUnit.OfForce), new HandName(HandRole.AxialBetween, from));
        }

        HandFormula[] products =
        [
            .. pulls.Select(pull => (HandFormula)_writer.Find(
                pull.Force * Counted(portions, pull.Place, right), pull.Actor)),
        ];
        HandFormula moments = HandFormula.Total(products, HandUnit.OfForce * HandUnit.OfLength);
        return _writer.Find(
            moments / Counted(portions, left, right),
            new HandName(HandRole.AxialBetween, from));
    }

    private bool IsEven(double left, double right) => beam.Model.Spans
        .Where((_, i) => beam.Model.JointPositions[i] < right && beam.Model.JointPositions[i + 1] > left)
        .Select(span => span.AxialRigidity)
        .Distinct()
        .Count() == 1;

    private HandNumber Place(int support) => _writer.Place(beam.Model.Supports[support].Position);

    /// <summary>The length from a place to the right support, each portion by its ratio.</summary>
    private static HandFormula Counted(ImmutableArray<Portion> portions, HandNumber place, HandNumber right)
    {
        HandFormula[] terms =
        [
            .. portions.Where(portion => portion.To.Value > place.Value).Select(portion =>
            {
                HandNumber start = portion.From.Value > place.Value ? portion.From : place;
                HandFormula length = HandNumber.Distance(start, portion.To);
                return portion.Ratio is null ? length : length * portion.Ratio;
            }),
        ];
        return terms.Length switch
        {
            0 => HandNumber.Distance(right, right),
            1 => terms[0],
            _ => new HandNumber(HandFormula.Total(terms, HandUnit.OfLength)) { IsInline = true },
        };
    }

    /// <summary>Neighbouring spans of one axial rigidity are one portion.</summary>
    private ImmutableArray<Portion> PortionsOf(int support, double left, double right)
    {
        ImmutableArray<double> joints = beam.Model.JointPositions;
        List<(double From, double To, double Rigidity)> stretches = [];
        for (int i = 0; i < beam.Model.Spans.Length; i++)
        {
            (double from, double to) = (Math.Max(joints[i], left), Math.Min(joints[i + 1], right));
            double rigidity = beam.Model.Spans[i].AxialRigidity;
            if (to <= from)
            {
                continue;
            }

            if (stretches is [.., var last] && last.Rigidity == rigidity)
            {
                stretches[^1] = (last.From, to, rigidity);
            }
            else
            {
                stretches.Add((from, to, rigidity));
            }
        }

        if (stretches.Count == 1)
        {
            return [new Portion(_writer.Place(left), _writer.Place(right), null)];
        }

        HandNumber[] rigidities =
        [
            .. stretches.Select((stretch, i) => _writer.Find(
                new HandFormula.Given(stretch.Rigidity, HandUnit.OfForce), new HandName(HandRole.PortionRigidity, support, i))),
        ];
        return
        [
            .. stretches.Select((stretch, i) => new Portion(
                _writer.Place(stretch.From),
                _writer.Place(stretch.To),
                stretch.Rigidity == stretches[0].Rigidity
                    ? null
                    : _writer.Find((HandFormula)rigidities[0] / rigidities[i], new HandName(HandRole.PortionRatio, support, i)))),
        ];
    }

    private sealed record Portion(HandNumber From, HandNumber To, HandNumber? Ratio);
}
