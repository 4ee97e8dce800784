using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>A sloped roller: along the beam it gives way as the beam between it and the pin stretches.</summary>
/// <remarks>
/// Its push N has the part H = -N sin along the beam, and u = u0 + f H. The condition square to the surface,
/// cos d + sin u = settlement, has then the form of a spring across.
/// </remarks>
internal static class ThreeMomentSlope
{
    /// <summary>Sloped supports whose push is not known yet.</summary>
    internal static IEnumerable<int> Sloped(HandBeam beam, double from, double to) => Enumerable
        .Range(0, beam.Model.Supports.Length)
        .Where(i => beam.IsSloped(i)
            && beam.Vertical[i] is null
            && ThreeMomentPlaces.Holds(from, to, beam.Model.Supports[i].Position));

    /// <summary>Supports that hold along the beam, sloped ones left out.</summary>
    internal static IEnumerable<int> Holding(HandBeam beam) =>
        Enumerable.Range(0, beam.Model.Supports.Length).Where(beam.IsHeldAlong);

    /// <summary>Joints where the beam stretches otherwise, and where it is held along or sloped [m].</summary>
    internal static IEnumerable<double> Cuts(BeamModel model, ImmutableArray<bool> touching) => ThreeMomentPlaces
        .Changes(model, (one, other) => one.AxialRigidity != other.AxialRigidity)
        .Concat(model.Supports
            .Where((support, i) => touching[i] && support.HoldsAlong)
            .Select(support => support.Position));

    /// <summary>Writes the spring that stands for a sloped roller.</summary>
    internal static void Put(ThreeMomentGroup group, ThreeMomentNode node)
    {
        (HandBeam beam, HandWriter writer) = (group.Beam, group.Writer);
        int index = node.Support!.Value;
        Support support = beam.Model.Supports[index];
        int pin = Holding(beam).Single();
        Stretch stretch = new(beam, writer.Place(beam.Model.Supports[pin].Position), node.Place);
        writer.Say(new HandRemark.SlopedRoller(index, pin, stretch.IsLoaded));
        HandNumber angle = HandNumber.Given(
            Math.Abs(support.SurfaceSlope), HandUnit.OfAngle, new(HandRole.Surface, index));
        HandNumber sine = writer.Find(new HandFormula.Sine(angle), new HandName(HandRole.SurfaceSine, index));
        HandNumber cosine = writer.Find(new HandFormula.Cosine(angle), new HandName(HandRole.SurfaceCosine, index));
        HandNumber give = writer.Find(
            stretch.Give(node.Place), new HandName(HandRole.StretchOfOne, index));
        HandFormula square = (HandFormula)give * new HandFormula.Power(sine, 2);
        HandFormula all = node.Stiffness is HandNumber spring ? (HandFormula)1 / spring + square : square;
        node.Stiffness = writer.Find(
            new HandFormula.Power(cosine, 2) / all, new HandName(HandRole.Stiffness, index));
        HandFormula? settles = node.Settlement is HandNumber settled ? (HandFormula)settled : null;
        if (stretch.IsLoaded)
        {
            HandNumber shift = writer.Find(stretch.ByLoads(), new HandName(HandRole.ShiftByLoads, index));
            HandFormula lifts = (HandFormula)shift * sine;
            HandFormula sinks = support.SurfaceSlope > 0 ? -lifts : lifts;
            settles = settles is null ? sinks : settles + sinks;
        }

        node.Settlement = settles is null
            ? null
            : writer.Find(settles / cosine, new HandName(HandRole.Settlement, index));
    }

    /// <summary>The beam between a pin and a place, as far as it stretches.</summary>
    private sealed class Stretch(HandBeam beam, HandNumber pin, HandNumber end)
    {
        /// <summary>True: loads along the beam act on this stretch, or beyond its end.</summary>
        internal bool IsLoaded => Pulls.Any();

        private bool IsRight => end.Value > pin.Value;

        private IEnumerable<HandForce> Pulls => beam.Loads.Forces.Where(force => !force.IsAcross
            && (IsRight ? force.Place.Value > pin.Value : force.Place.Value < pin.Value));

        /// <summary>How far a place moves to the right when a force of one, to the right, acts on it.</summary>
        internal HandFormula Give(HandNumber place)
        {
            (double low, double high) = IsRight ? (pin.Value, place.Value) : (place.Value, pin.Value);
            HandWriter writer = beam.Writer;
            List<HandFormula> parts = [];
            for (int i = 0; i < beam.Model.Spans.Length; i++)
            {
                double left = beam.Model.JointPositions[i];
                double right = beam.Model.JointPositions[i + 1];
                if (left < high && right > low)
                {
                    HandNumber length = HandNumber.Distance(
                        left > low ? writer.Place(left) : Place(low, place),
                        right < high ? writer.Place(right) : Place(high, place));
                    parts.Add((HandFormula)length / HandNumber.Given(
                        beam.Model.Spans[i].AxialRigidity, HandUnit.OfForce, new(HandRole.AxialRigidity, i)));
                }
            }

            return parts.Count == 1 ? parts[0] : HandFormula.Total(parts, HandUnit.OfLength / HandUnit.OfForce);
        }

        /// <summary>How far the end moves to the right under the loads alone.</summary>
        internal HandFormula ByLoads()
        {
            HandFormula[] parts =
            [
                .. Pulls.Select(force =>
                    {
                        bool isBeyond = IsRight ? force.Place.Value >= end.Value : force.Place.Value <= end.Value;
                        HandFormula moves = (HandFormula)force.Size * Give(isBeyond ? end : force.Place);
                        return (HandFormula)beam.Writer.Find(
                            force.Sense == HandSense.Right ? moves : -moves, force.Actor);
                    }),
            ];
            return parts.Length == 1 ? parts[0] : HandFormula.Total(parts, HandUnit.OfLength);
        }

        private HandNumber Place(double x, HandNumber place) => place.Value == x ? place : pin;
    }
}
