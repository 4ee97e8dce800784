using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Tests.Building;

namespace FieldCheck.Sheet.Tests.Catalogue;

/// <summary>
/// Values: EN 1995-1-1 Tables 2.3, 3.1, 3.2 and NDS Table 2.3.2, typed here from memory, apart from the files that ship.
/// </summary>
public sealed class FactorLibraryTests
{
    private static readonly FactorLibrary Library = FactorLibrary.BuiltIn();

    [Theory]
    [InlineData("solid timber", 1, "0.6 0.7 0.8 0.9 1.1")]
    [InlineData("solid timber", 2, "0.6 0.7 0.8 0.9 1.1")]
    [InlineData("solid timber", 3, "0.5 0.55 0.65 0.7 0.9")]
    [InlineData("glulam", 1, "0.6 0.7 0.8 0.9 1.1")]
    [InlineData("glulam", 2, "0.6 0.7 0.8 0.9 1.1")]
    [InlineData("glulam", 3, "0.5 0.55 0.65 0.7 0.9")]
    public void Modification_IsThatOfTheTable(string material, int serviceClass, string values)
    {
        var row = Library.All.Where(one =>
            one.Kind == FactorKind.Modification && one.Words.StartsWith($"{material}, service class {serviceClass}, ", StringComparison.Ordinal));

        Assert.Equal(values, string.Join(' ', row.Select(one => one.Text)));
        Assert.Equal(
            ["permanent", "long-term", "medium-term", "short-term", "instantaneous"],
            row.Select(one => one.Words.Split(", ")[^1]));
    }

    [Fact]
    public void Duration_IsThatOfTheTable() => Assert.Equal(
        [0.9, 1.0, 1.15, 1.25, 1.6, 2.0],
        Library.All.Where(one => one.Kind == FactorKind.Duration).Select(one => one.Value));

    [Fact]
    public void PartialFactorsAndCreep_AreThoseOfTheTables()
    {
        Assert.Equal(
            [("solid timber", 1.3), ("glulam", 1.25), ("plywood, OSB", 1.2)],
            Library.All.Where(one => one.Name == "partial")
                .Select(one => (one.Words.Replace(", partial factor", "", StringComparison.Ordinal), one.Value)));
        Assert.Equal([0.6, 0.8, 2.0], Library.All.Where(one => one.Kind is null).Select(one => one.Value));
        Assert.All(Library.All.Where(one => one.Kind is null), one => Assert.Equal("creep", one.Name));
    }

    [Fact]
    public void EveryChoice_HasItsSourceAndReadsWhereItIsWritten()
    {
        Assert.All(Library.All, choice =>
        {
            Assert.NotEmpty(choice.Source);
            Assert.True(choice.IsFromMemory || choice.Status == "read in the source", choice.Status);
            BeamDocument sheet = Beams.With(new MaterialEntry { Name = "m 1", Grade = "C24" });

            BeamDocument written = DocumentCells.Set(sheet, choice.KeyIn("m 1"), choice.Text)!;

            Assert.Empty(Beams.Problems(written));
            MaterialEntry material = written.Materials.Single();
            Assert.Equal(choice.Kind is null ? choice.Text : null, material.Creep);
            Assert.Equal(choice.Kind is null ? 0 : 1, material.Factors.Count);
        });
        Assert.Equal(Library.All.Length, Library.All.Select(one => (one.Name, one.Words)).Distinct().Count());
    }

    [Theory]
    [InlineData("solid class 2 medium", "solid timber, service class 2, medium-term")]
    [InlineData("EN1995 long", null)]
    [InlineData("long-term glulam 1", "glulam, service class 1, long-term")]
    [InlineData("SNOW", "load of two months, as snow")]
    [InlineData("gamma_M glulam", "glulam, partial factor")]
    [InlineData("k_def class 3", "solid timber and glulam, service class 3, growth of deflection in time")]
    [InlineData("class 5", null)]
    public void Search_AsksForEveryWord(string text, string? found) =>
        Assert.Equal(found is null ? [] : [found], Library.Search(text).Select(one => one.Words));

    [Fact]
    public void NothingTyped_FindsAll() => Assert.Equal(Library.All.ToArray(), Library.Search(" ").ToArray());
}
