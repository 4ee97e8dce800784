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
        ImmutableArray<Portion> portions = PortionsOf(left.Value, right.Value);
        bool isEven = portions.All(portion => portion.Ratio is null);
        _writer.Say(new HandRemark.NoStretchBetween(from, to, isEven));
        HandFormula moments = HandFormula.Total(
            pulls.Select(pull => pull.Force * Counted(portions, pull.Place, right)),
            HandUnit.OfForce * HandUnit.OfLength);
        return _writer.Find(
            pulls.Count == 0 ? HandFormula.Total([], HandUnit.OfForce) : moments / Counted(portions, left, right),
            new HandName(HandRole.AxialBetween, from));
    }

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
    private ImmutableArray<Portion> PortionsOf(double left, double right)
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

        HandNumber first = HandNumber.Given(stretches[0].Rigidity, HandUnit.OfForce);
        return
        [
            .. stretches.Select(stretch => new Portion(
                _writer.Place(stretch.From),
                _writer.Place(stretch.To),
                stretch.Rigidity == stretches[0].Rigidity ? null : Ratio(first, stretch.Rigidity))),
        ];
    }

    private static HandNumber Ratio(HandNumber first, double rigidity) =>
        new((HandFormula)first / HandNumber.Given(rigidity, HandUnit.OfForce)) { IsInline = true };

    private sealed record Portion(HandNumber From, HandNumber To, HandNumber? Ratio);
}
