using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Tests.HandMethods;

namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>
/// Printed support moments and reactions of continuous and clamped beams, against the working by the three-moment
/// equation; each case names its own source.
/// </summary>
public sealed class ThreeMomentPublishedTests
{
    private static readonly HandRole[] Moments = [HandRole.SupportMoment, HandRole.MomentLeft, HandRole.MomentRight];

    public static TheoryData<string, string> Workable()
    {
        TheoryData<string, string> rows = [];
        foreach (string file in new[] { ContinuousWorkedTests.Data, ContinuousCoefficientsTests.Data, HandbookFormulasTests.Data })
        {
            foreach (PublishedCase example in PublishedFile.Cases(file)
                .Where(one => one.Kind == "beam" && one.Beam!.Supports.All(support => support.SurfaceSlope == 0)))
            {
                rows.Add(file, example.Id);
            }
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Workable))]
    public void Working_ComesToThePrintedFigures(string file, string id)
    {
        PublishedCase example = PublishedFile.Cases(file).Single(one => one.Id == id);
        HandBeam beam = ThreeMomentCase.Work(example.Beam!);

        foreach (PublishedValue value in example.Values)
        {
            foreach (double worked in Worked(example, beam, value))
            {
                Assert.True(
                    Math.Abs(worked - value.Printed) <= value.Tolerance,
                    $"{id}, {value.What} at {value.At}: {value.Printed:R} ± {value.Tolerance:R}, worked {worked:R}");
            }
        }
    }

    [Fact]
    public void SupportMomentsOfTheWorkedExample_AreLinesOfTheWorking()
    {
        PublishedCase example = PublishedFile.Cases(ContinuousWorkedTests.Data).Single(one => one.Id == "kassimali-d3");
        HandBeam beam = ThreeMomentCase.Work(example.Beam!);

        Assert.Equal(
            [-97.5, -142.5, -90],
            example.Values.Where(value => value.What == "moment_at").Select(value => Math.Round(Assert.Single(Worked(example, beam, value)), 9)));
    }

    /// <summary>The figure as the working has it; none where the working does not find it.</summary>
    private static IEnumerable<double> Worked(PublishedCase example, HandBeam beam, PublishedValue value)
    {
        int support = example.Beam!.Supports.Select(one => one.Position).ToList().IndexOf(value.At ?? double.NaN);
        int node = HandPlaces.Of(example.Beam).IndexOf(value.At ?? double.NaN);
        return value.What switch
        {
            "reaction_vertical" => [beam.Vertical(support)],
            "reaction_moment" => [beam.Couple(support)],
            "moment_at" => Moments
                .SelectMany(role => beam.Named(role))
                .Where(moment => moment.Index == node)
                .Select(moment => moment.Value),
            _ => [],
        };
    }
}
