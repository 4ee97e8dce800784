using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Document;

public sealed class DocumentCellsTests
{
    private static readonly BeamDocument Beam = FullBeam.Document;

    [Fact]
    public void FullBeam_HasExactlyTheKeysOfTheContract()
    {
        string[] more = ["ask[2]", "material.timber.factors.\"wet service\"", "combination[1].factors.live",
            "rolling[1].axles[2].offset", "rolling[1].axles[2].force", "limits.lasting.dead"];

        Assert.Equal(ContractKeys.All.Concat(more).Order(StringComparer.Ordinal),
            DocumentCells.All(Beam).Select(cell => cell.Key).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void EveryKeyOfTheContract_TakesATextAndGivesItBack_AndChangesNothingElse()
    {
        foreach (string key in ContractKeys.All)
        {
            BeamDocument? changed = DocumentCells.Set(Beam, key, "something new");

            Assert.NotNull(changed);
            Assert.Equal([key], DocumentCells.All(changed).Except(DocumentCells.All(Beam)).Select(cell => cell.Key));
            Assert.Equal("something new", DocumentCells.Get(changed, key));
            Assert.Equal(Beam, DocumentCells.Set(changed, key, DocumentCells.Get(Beam, key)));
        }
    }

    [Fact]
    public void Cells_AreFoundWithWhatTheyWant()
    {
        Assert.Equal(new DocumentCell("load[1].at", new Wanted.PlaceOnBeam(), "A + 4 ft"),
            DocumentCells.Find(Beam, "load[1].at"));
        Assert.Equal(new DocumentCell("section.bearer.width", new Wanted.Measure(QuantityKind.Length), "1 1/2 in"),
            DocumentCells.Find(Beam, "section.bearer.width"));
        Assert.Equal(new DocumentCell("combination[1].factors.dead", new Wanted.BareNumber(), "1.2"),
            DocumentCells.Find(Beam, "combination[1].factors.dead"));
        Assert.Equal(new DocumentCell("rolling[1].axles[2].force", new Wanted.Measure(QuantityKind.Force), "6 kN"),
            DocumentCells.Find(Beam, "rolling[1].axles[2].force"));
        Assert.Equal(new DocumentCell("limits.rules", RulesWanted(), null),
            DocumentCells.Find(new BeamDocument(), "limits.rules"));
    }

    [Theory]
    [InlineData("span")]
    [InlineData("span[1]")]
    [InlineData("span[2].length")]
    [InlineData("span[1].lenght")]
    [InlineData("span.length")]
    [InlineData("section.joist.width")]
    [InlineData("section.bearer")]
    [InlineData("section.bearer.name")]
    [InlineData("title[1]")]
    [InlineData("title.length")]
    [InlineData("ask[3]")]
    [InlineData("format")]
    [InlineData("record")]
    [InlineData("")]
    [InlineData("not a path")]
    public void KeyThatNamesNoCell_IsNeitherFoundNorSet(string key)
    {
        Assert.Null(DocumentCells.Find(Beam, key));
        Assert.Null(DocumentCells.Get(Beam, key));
        Assert.Null(DocumentCells.Set(Beam, key, "text"));
    }

    [Fact]
    public void SingleTableThatIsMissing_StandsOnceACellOfItIsSet()
    {
        BeamDocument changed = DocumentCells.Set(new BeamDocument(), "self_weight.case", "dead")!;

        Assert.Equal(new BeamDocument { SelfWeight = new() { Case = "dead" } }, changed);
    }

    [Fact]
    public void FigureThatIsMissing_IsAddedAtTheEnd_AndGoesWhenCleared()
    {
        BeamDocument more = DocumentCells.Set(Beam, "combination[1].factors.wind", "0.5")!;

        Assert.Equal([new("dead", "1.2"), new("live", "1.6"), new("wind", "0.5")], more.Combinations[0].Factors);
        Assert.Equal(Beam, DocumentCells.Set(more, "combination[1].factors.wind", null));
    }

    [Fact]
    public void ListEntryThatIsCleared_Goes() =>
        Assert.Equal(["load[1].force"], DocumentCells.Set(Beam, "ask[1]", null)!.Ask);

    [Fact]
    public void CellThatIsCleared_HoldsNothing_AndItsRowStays()
    {
        BeamDocument beam = new() { Patterns = [new() { Case = "snow" }], Tolerance = new() { Load = "5 %" } };

        Assert.Equal(beam with { Patterns = [new()] }, DocumentCells.Set(beam, "pattern[1].case", null));
        Assert.Equal(beam with { Tolerance = new() }, DocumentCells.Set(beam, "tolerance.load", null));
    }

    private static Wanted RulesWanted() => Fields.Limits.Single(field => field.Key == "rules").Wanted;
}
