using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Tests.HandMethods;

namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>
/// Every printed beam worked by hand: reactions, and shear and moment at marks, against the printed figures; each case
/// names its own source.
/// </summary>
public sealed class WorkingPublishedTests
{
    private static readonly string[] Files =
    [
        StrengthOfMaterialsTablesTests.Data,
        StrengthOfMaterialsExamplesTests.Data,
        EngineeringStaticsTests.Data,
        TextbookProblemsTests.Data,
        ContinuousWorkedTests.Data,
        ContinuousCoefficientsTests.Data,
        HandbookFormulasTests.Data,
    ];

    public static TheoryData<string, string> Beams()
    {
        TheoryData<string, string> rows = [];
        foreach (string file in Files)
        {
            foreach (PublishedCase example in PublishedFile.Cases(file).Where(one => one.Kind == "beam"))
            {
                rows.Add(file, example.Id);
            }
        }

        return rows;
    }

    [Theory]
    [MemberData(nameof(Beams))]
    public void Working_ComesToThePrintedFigures(string file, string id)
    {
        PublishedCase example = PublishedFile.Cases(file).Single(one => one.Id == id);
        HandWorking working = HandAgreement.Work(example.Beam!);

        Assert.Equal(HandReach.Whole, working.Reach);
        foreach (PublishedValue value in example.Values)
        {
            if (Worked(example.Beam!, working, value) is double worked)
            {
                Assert.True(
                    Math.Abs(worked - value.Printed) <= value.Tolerance,
                    $"{id}, {value.What} at {value.At}: {value.Printed:R} ± {value.Tolerance:R}, worked {worked:R}");
            }
        }
    }

    [Fact]
    public void MostPrintedFigures_AreFoundByTheWorking()
    {
        PublishedValue[] statics =
        [
            .. Files.SelectMany(file => PublishedFile.Cases(file))
                .Where(example => example.Kind == "beam")
                .SelectMany(example => example.Values)
                .Where(value => !value.What.Contains("deflection", StringComparison.Ordinal) && value.What != "slope_at"),
        ];
        int worked = Files.SelectMany(file => PublishedFile.Cases(file))
            .Where(example => example.Kind == "beam")
            .Sum(example => example.Values.Count(value => Worked(example.Beam!, HandAgreement.Work(example.Beam!), value) is not null));

        Assert.True(worked > 0.85 * statics.Length, $"{worked} of {statics.Length}");
    }

    /// <summary>The figure as the working has it; null where the working does not find it.</summary>
    private static double? Worked(BeamModel beam, HandWorking working, PublishedValue value)
    {
        int support = beam.Supports.Select(one => one.Position).ToList().IndexOf(value.At ?? double.NaN);
        HandReaction? reaction = support < 0 ? null : working.Reactions[support];
        HandMark[] marks = [.. working.Lines.OfType<HandLine.Marks>().Single().All];
        HandMark? mark = marks.FirstOrDefault(one => Math.Abs(one.Place.Value - (value.At ?? double.NaN)) < 1e-12);
        double[] moments = [.. Of(marks, value, one => [one.MomentLeft, one.MomentRight])];
        double[] shears = [.. Of(marks, value, one => [one.ShearLeft, one.ShearRight])];
        return value.What switch
        {
            "reaction_vertical" => reaction?.Vertical?.Value,
            "reaction_horizontal" => reaction?.Horizontal?.Value,
            "reaction_moment" => reaction?.Couple?.Value,
            "reaction_normal" => reaction?.Normal?.Value,
            "shear_at" => (value.Side == Side.Left ? mark?.ShearLeft : mark?.ShearRight)?.Value,
            "moment_at" => (value.Side == Side.Left ? mark?.MomentLeft : mark?.MomentRight)?.Value,
            "shear_max" when value.From is null => shears.Max(),
            "shear_min" when value.From is null => shears.Min(),
            "shear_max_abs" when value.From is null => shears.Max(Math.Abs),
            "moment_max" when value.From is null => moments.Max(),
            "moment_min" when value.From is null => moments.Min(),
            "x_of_moment_max" when value.From is null =>
                marks.MaxBy(one => Math.Max(one.MomentLeft.Value, one.MomentRight.Value))!.Place.Value,
            _ => null,
        };
    }

    private static IEnumerable<double> Of(
        HandMark[] marks, PublishedValue value, Func<HandMark, HandNumber[]> numbers) => marks
        .Where(mark => mark.Place.Value >= (value.From ?? 0) && mark.Place.Value <= (value.To ?? double.MaxValue))
        .SelectMany(numbers)
        .Select(number => number.Value);
}
