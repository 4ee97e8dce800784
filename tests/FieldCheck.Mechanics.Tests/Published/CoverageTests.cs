namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>No printed figure drops out unseen: a class here checks each file.</summary>
public sealed class CoverageTests
{
    internal static readonly string[] Checked =
    [
        StrengthOfMaterialsTablesTests.Data,
        StrengthOfMaterialsExamplesTests.Data,
        EngineeringStaticsTests.Data,
        TextbookProblemsTests.Data,
        ContinuousWorkedTests.Data,
        ContinuousCoefficientsTests.Data,
        HandbookFormulasTests.Data,
        MovingInfluenceShearTests.Data,
        SectionsAndStressTests.Data,
    ];

    [Fact]
    public void EveryDataFile_IsChecked()
    {
        IEnumerable<string?> present =
            Directory.EnumerateFiles(PublishedFile.Folder, "*.toml").Select(Path.GetFileName);

        Assert.Equal(Checked.Order(StringComparer.Ordinal), present.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void CheckedFiles_HoldAllTheCasesAndFiguresThatWereAdmitted()
    {
        PublishedCase[] cases = [.. Checked.SelectMany(file => PublishedFile.Cases(file))];

        Assert.Equal(105, cases.Length);
        Assert.Equal(436, cases.Sum(example => example.Values.Length));
        Assert.All(cases, example => Assert.NotEmpty(example.Values));
    }

    [Fact]
    public void EveryQuantityInTheCheckedFiles_IsOneThatIsComputed()
    {
        IEnumerable<string> used = Checked
            .SelectMany(file => PublishedFile.Cases(file))
            .SelectMany(example => example.Values)
            .Select(value => value.What)
            .Distinct();

        IEnumerable<string> computed = PublishedCheck.Words.Concat(PublishedSection.Words);

        Assert.Equal(computed.Order(StringComparer.Ordinal), used.Order(StringComparer.Ordinal));
    }
}
