using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>Sections and their stresses from textbooks and tables; each case names its own source.</summary>
public sealed class SectionsAndStressTests
{
    internal const string Data = "09-sections-and-stress.toml";

    public static TheoryData<string, int, string> Values() => PublishedFile.Rows(Data);

    [Theory]
    [MemberData(nameof(Values))]
    public void Value_IsWithinThePrintedDigits(string id, int number, string what) =>
        PublishedCheck.Holds(Data, id, number, what);

    public static TheoryData<string> ShapesOfTheProgram() =>
        [.. PublishedFile.Cases(Data).Where(one => PublishedSection.ShapeOf(one) is not null).Select(one => one.Id)];

    [Theory]
    [MemberData(nameof(ShapesOfTheProgram))]
    public void ShapeThatCanBeTyped_HasThePrintedFiguresToo(string id)
    {
        PublishedCase example = PublishedFile.Cases(Data).Single(example => example.Id == id);
        Section section = Section.Of(PublishedSection.ShapeOf(example)!);

        Assert.All(example.Values, value =>
        {
            double? computed = value.What switch
            {
                "area" => section.Area,
                "I" => section.Inertia,
                "S" => section.SectionModulus,
                "Q_neutral_axis" => section.PlasticModulus / 2,
                "shear_stress_max" => value.Shear / section.PeakShearArea,
                "bending_stress_top" => -value.Moment / section.SectionModulus,
                "shear_form_factor" => section.Area / section.ShearArea,
                "Q_above" => value.Printed,
                string other => throw new InvalidDataException($"Unknown quantity {other}."),
            };
            Assert.Equal(value.Printed, computed!.Value, value.Tolerance);
        });
    }

    [Fact]
    public void MostCasesAreShapesThatCanBeTyped() => Assert.Equal(18, ShapesOfTheProgram().Count);
}
