using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>Fits one support's place, or one load's size and place, to the figures.</summary>
/// <remarks>
/// Only where every vertical is stated: with fewer, too many places would do. A place is where the figure that is
/// farthest off comes out right; it counts if all the others do so too.
/// </remarks>
internal static class ExplanationFitted
{
    /// <summary>A support is not moved right up to its neighbour: part of the beam's length that is kept clear.</summary>
    private const double Clear = 1e-3;

    private const int StepsForSupport = 8;

    /// <summary>A moved support changes its own vertical most, or that of one near it: so many to each side are tried.</summary>
    private const int Near = 2;

    /// <summary>In each bay.</summary>
    private const int StepsForLoad = 12;

    internal static void Try(ExplanationBeam beam, ExplanationList found)
    {
        if (!beam.Fit.HasEveryVertical)
        {
            return;
        }

        if (beam.Fit.CouldFit(0))
        {
            TrySupports(beam, found);
        }
        else
        {
            TryLoad(beam, found);
        }
    }

    private static void TrySupports(ExplanationBeam beam, ExplanationList found)
    {
        ImmutableArray<Support> supports = beam.Model.Supports;
        double clear = Clear * beam.Model.Length;
        int middle = FarthestOff(beam);
        int last = Math.Min(middle + Near, supports.Length - 1);
        for (int i = Math.Max(middle - Near, 0); i <= last; i++)
        {
            int support = i;
            double from = i == 0 ? 0 : supports[i - 1].Position + clear;
            double to = i == supports.Length - 1 ? beam.Model.Length : supports[i + 1].Position - clear;
            ExplanationPlaces places = new(
                beam, place => beam.OnIfItStands(WithSupportAt(beam.Model, support, place)), null);
            if (places.Find(from, to, supports[i].Position, StepsForSupport) is (double position, _))
            {
                found.Add(
                    new Slip.SupportMoved(i, position), 4, beam.On(WithSupportAt(beam.Model, support, position)));
            }
        }
    }

    /// <summary>The support whose vertical is farthest off.</summary>
    private static int FarthestOff(ExplanationBeam beam)
    {
        (int Support, double Off) farthest = (0, 0);
        for (int i = 0; i < beam.Computed.Length; i++)
        {
            ReactionFigure figure = beam.Stated.Figures[i];
            double off = Math.Abs(figure.Value - beam.Computed[i]);
            farthest = figure.Part == ReactionPart.Vertical && off > farthest.Off ? (figure.Support, off) : farthest;
        }

        return farthest.Support;
    }

    private static void TryLoad(ExplanationBeam beam, ExplanationList found)
    {
        double down = beam.Fit.TotalDifference;
        ExplanationPlaces places = new(beam, place => beam.WithMore(new LoadChange(new Load.Point(place, 1), down)), down);
        int steps = StepsForLoad * (ExplanationBays.Ends(beam.Model).Length - 1);
        if (places.Find(0, beam.Model.Length, beam.Model.Length / 2, steps) is (double position, double[] predicted))
        {
            // The verticals of all supports have grown by the load, as far as their rounding leaves it open.
            double grown = 0;
            for (int i = 0; i < predicted.Length; i++)
            {
                bool isVertical = beam.Stated.Figures[i].Part == ReactionPart.Vertical;
                grown += isVertical ? predicted[i] - beam.Computed[i] : 0;
            }

            found.Add(new Slip.LoadMissing(-grown, position), 4, predicted);
        }
    }

    private static BeamModel WithSupportAt(BeamModel model, int support, double place) => model with
    {
        Supports = model.Supports.SetItem(support, ExplanationModels.Moved(model.Supports[support], place)),
    };
}
