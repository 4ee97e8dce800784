namespace FieldCheck.Mechanics.Tests.Published;

/// <summary>No printed figure drops out unseen: a class here checks each file, or a list says why not.</summary>
public sealed class CoverageTests
{
    private static readonly string[] Checked =
    [
        StrengthOfMaterialsTablesTests.Data,
        StrengthOfMaterialsExamplesTests.Data,
        EngineeringStaticsTests.Data,
        TextbookProblemsTests.Data,
        ContinuousWorkedTests.Data,
        ContinuousCoefficientsTests.Data,
        HandbookFormulasTests.Data,
        MovingInfluenceShearTests.Data,
    ];

    [Fact]
    public void EveryDataFile_IsCheckedOrListedWithAReason()
    {
        IEnumerable<string?> present =
            Directory.EnumerateFiles(PublishedFile.Folder, "*.toml").Select(Path.GetFileName);

        IEnumerable<string> accounted = Checked.Concat(NotCoveredYet.Files.Select(entry => entry.File));

        Assert.Equal(accounted.Order(StringComparer.Ordinal), present.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void CheckedFiles_HoldAllTheCasesAndFiguresThatWereAdmitted()
    {
        PublishedCase[] cases = [.. Checked.SelectMany(file => PublishedFile.Cases(file))];

        Assert.Equal(84, cases.Length);
        Assert.Equal(376, cases.Sum(example => example.Values.Length));
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

        Assert.Equal(PublishedCheck.Words.Order(StringComparer.Ordinal), used.Order(StringComparer.Ordinal));
    }
}
