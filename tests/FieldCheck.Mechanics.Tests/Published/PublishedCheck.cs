using System.Globalization;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>Holds the solver against one printed figure, at the figure's own tolerance.</summary>
internal static class PublishedCheck
{
    /// <summary>Key words that <see cref="Computed"/> understands for a beam under its loads.</summary>
    internal static readonly string[] Words =
    [
        "reaction_vertical", "reaction_horizontal", "reaction_moment", "reaction_normal",
        "shear_at", "moment_at", "slope_at", "deflection_at",
        "shear_max", "shear_min", "shear_max_abs", "moment_max", "moment_min", "deflection_max_abs",
        "x_of_moment_max", "x_of_deflection_max",
        "influence_moment", "absolute_max_moment", "x_of_max_moment",
    ];

    internal static void Holds(string file, string id, int number, string what)
    {
        PublishedCase example = PublishedFile.Cases(file).Single(example => example.Id == id);
        PublishedValue value = example.Values[number];
        Assert.Equal(what, value.What);

        double computed = Computed(example, value);

        Assert.True(
            Math.Abs(computed - value.Printed) <= value.Tolerance,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{id}, {what}: {value.Printed:R} ± {value.Tolerance:R}, computed {computed:R}. {example.Source}"));
    }

    internal static double Computed(PublishedCase example, PublishedValue value) => example.Kind switch
    {
        "beam" => OnBeam(example.Beam!, value),
        "influence" => InfluenceOrdinate(example.Beam!, value),
        "section" => PublishedSection.Computed(example, value),
        "moving" => MovingTrain.Worst(example, value.What),
        string other => throw new InvalidDataException($"Nothing here computes a case of kind {other}."),
    };

    private static double OnBeam(BeamModel beam, PublishedValue value)
    {
        BeamResponse response = Answer.To(beam);
        Stretch stretch = new(response, value.From, value.To, beam.Length);
        return value.What switch
        {
            "reaction_vertical" => ReactionAt(beam, response, value).Vertical,
            "reaction_horizontal" => ReactionAt(beam, response, value).Horizontal,
            "reaction_moment" => ReactionAt(beam, response, value).Moment,
            "reaction_normal" => ReactionAt(beam, response, value).Normal!.Value,
            "shear_at" => Beside(response, value).Shear,
            "moment_at" => Beside(response, value).Moment,
            "slope_at" => Inside(response, value).Slope,
            "deflection_at" => -Inside(response, value).Deflection,
            "shear_max" => stretch.Greatest(Curve.Shear).Value,
            "shear_min" => stretch.Least(Curve.Shear).Value,
            "shear_max_abs" => stretch.LargestSize(Curve.Shear),
            "moment_max" => stretch.Greatest(Curve.Moment).Value,
            "moment_min" => stretch.Least(Curve.Moment).Value,
            "x_of_moment_max" => stretch.Greatest(Curve.Moment).Position,
            "deflection_max_abs" => stretch.LargestSize(Curve.Deflection),
            "x_of_deflection_max" => stretch.PlaceOfLargestSize(Curve.Deflection, nearestTo: value.Printed),
            _ => throw new InvalidDataException($"Unknown quantity {value.What}."),
        };
    }

    private static Reaction ReactionAt(BeamModel beam, BeamResponse response, PublishedValue value)
    {
        int support = beam.Supports.Select(support => support.Position).ToList().IndexOf(value.At!.Value);
        Assert.True(support >= 0, $"No support at {value.At}.");
        return response.Reactions[support];
    }

    private static SectionState Beside(BeamResponse response, PublishedValue value)
    {
        (SectionState left, SectionState right) = response.At(value.At!.Value);
        return value.Side == Side.Left ? left : right;
    }

    // At x = 0 nothing is printed about "left of it": a movement there is the beam's own.
    private static SectionState Inside(BeamResponse response, PublishedValue value) =>
        value.At == 0 ? response.At(0).Right : Beside(response, value);

    private static double InfluenceOrdinate(BeamModel beam, PublishedValue value)
    {
        Assert.Equal("influence_moment", value.What);
        InfluenceLine line =
            InfluenceLine.Of(beam, Curve.Moment, value.At!.Value, value.Side, new BeamSolver())!;
        return line.At(value.LoadAt!.Value).Left;
    }
}
