using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>The working by hand beside the solver's answer.</summary>
internal static class HandAgreement
{
    /// <summary>Of the largest reaction or load.</summary>
    internal const double Tolerance = 1e-9;

    internal static HandWorking Work(BeamModel model, double? about = null) =>
        HandWorking.Of(model, model.Combinations[0].Factors, about);

    /// <summary>Every reaction found by hand is the solver's.</summary>
    internal static void Holds(BeamModel model, HandWorking working, BeamResponse response)
    {
        double scale = Scale(model, response);
        for (int i = 0; i < model.Supports.Length; i++)
        {
            HandReaction hand = working.Reactions[i];
            Reaction answer = response.Reactions[i];
            Assert.Equal(answer.IsLiftedOff, hand.HasLetGo);
            Law.Equal(answer.Vertical, Value(hand.Vertical), Tolerance * scale, $"V of support {i}");
            Law.Equal(answer.Horizontal, Value(hand.Horizontal), Tolerance * scale, $"H of support {i}");
            Law.Equal(answer.Moment, Value(hand.Couple), Tolerance * scale * model.Length, $"C of support {i}");
            if (answer.Normal is double normal)
            {
                Law.Equal(normal, Value(hand.Normal), Tolerance * scale, $"N of support {i}");
            }
        }
    }

    /// <summary>Every sum that must come to nothing does, and shear and moment at each mark are the solver's.</summary>
    internal static void Closes(BeamModel model, HandWorking working, BeamResponse response)
    {
        double scale = Scale(model, response);
        foreach (HandLine.Closes line in working.Lines.OfType<HandLine.Closes>())
        {
            double slack = Tolerance * scale * (line.Sum.Unit == HandUnit.OfMoment ? model.Length : 1);
            Law.Equal(0, line.Sum.Value, slack, $"sum of {line.Sum.Unit}");
        }

        foreach (HandMark mark in working.Lines.OfType<HandLine.Marks>().SelectMany(line => line.All))
        {
            (SectionState left, SectionState right) = response.At(Math.Min(mark.Place.Value, model.Length));
            string place = $"at {mark.Place.Value:R}";
            Law.Equal(left.Shear, mark.ShearLeft.Value, Tolerance * scale, "V left " + place);
            Law.Equal(right.Shear, mark.ShearRight.Value, Tolerance * scale, "V right " + place);
            Law.Equal(left.Moment, mark.MomentLeft.Value, Tolerance * scale * model.Length, "M left " + place);
            Law.Equal(right.Moment, mark.MomentRight.Value, Tolerance * scale * model.Length, "M right " + place);
        }
    }

    private static double Value(HandNumber? number) => number?.Value ?? 0;

    private static double Scale(BeamModel model, BeamResponse response) => response.Reactions
        .SelectMany(one => new[] { Math.Abs(one.Vertical), Math.Abs(one.Horizontal), Math.Abs(one.Moment) / model.Length })
        .Concat(model.Cases.SelectMany(one => one.Loads).Select(load => SizeOf(load, model.Length)))
        .Max();

    // Loads that balance one another leave reactions of rounding only.
    private static double SizeOf(Load load, double length) => load switch
    {
        Load.Point point => Math.Max(Math.Abs(point.Down), Math.Abs(point.Right)),
        Load.Couple couple => Math.Abs(couple.Moment) / length,
        Load.Distributed spread =>
            (spread.To - spread.From) * Math.Max(Math.Abs(spread.StartIntensity), Math.Abs(spread.EndIntensity)),
        _ => throw new ArgumentOutOfRangeException(nameof(load), load, "Not a load."),
    };
}
