using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Sheet.Tests.Editing;

/// <summary>Cases, combinations and rolling loads as they are typed in their view.</summary>
public sealed class CaseEditsTests
{
    private static readonly BeamDocument Beam = new()
    {
        SelfWeight = new SelfWeightEntry { Case = "dead" },
        Loads = [new LoadEntry { Kind = "point" }, new LoadEntry { Case = "snow" }, new LoadEntry { Case = "live" }],
        Rolling = [new RollingEntry { Label = "truck" }],
        Combinations =
        [
            new CombinationEntry { Name = "ULS", Factors = [new("dead", "1.2"), new("live", "1.6"), new("wind", "1")] },
        ],
        Patterns = [new PatternEntry { Case = "live" }],
        Stated = [new StatedEntry { Support = "A", Case = "live" }, new StatedEntry { Support = "A", Combination = "ULS" }],
        Limits = new LimitsEntry { DeflectionCases = [new("live", "L/360")], Lasting = [new("live", "0.3")] },
        Ask = ["combination[1].factors.live", "limits.deflection_cases.live", "limits.lasting.live", "load[1].at"],
    };

    [Fact]
    public void Cases_StandWhereTheyAreNamedFirst() => Assert.Equal<CaseRow>(
        [
            new CaseRow("dead", 0, 0, HasOwnWeight: true, IsPattern: false),
            new CaseRow("live", 2, 1, HasOwnWeight: false, IsPattern: true),
            new CaseRow("snow", 1, 0, HasOwnWeight: false, IsPattern: false),
            new CaseRow("wind", 0, 0, HasOwnWeight: false, IsPattern: false),
        ],
        CaseRows.Of(Beam));

    [Fact]
    public void BeamWithoutLoads_HasTheCaseOfOneToCome() => Assert.Equal<CaseRow>(
        [new CaseRow("live", 0, 0, HasOwnWeight: false, IsPattern: false)], CaseRows.Of(new BeamDocument()));

    [Fact]
    public void CaseRenamed_IsRenamedWhereverItIsUsed()
    {
        BeamDocument renamed = Form.Of(Beam).Case(1, FormColumn.Case, "imposed").Document;

        Assert.Equal(["imposed", "snow", "imposed"], renamed.Loads.Select(load => load.Case));
        Assert.Equal("imposed", renamed.Rolling[0].Case);
        Assert.Equal("imposed", renamed.Patterns[0].Case);
        Assert.Equal("imposed", renamed.Stated[0].Case);
        Assert.Equal(["dead", "imposed", "wind"], renamed.Combinations[0].Factors.Select(factor => factor.Name));
        Assert.Equal([new NamedFigure("imposed", "L/360")], renamed.Limits!.DeflectionCases);
        Assert.Equal([new NamedFigure("imposed", "0.3")], renamed.Limits.Lasting);
        Assert.Equal(
            [
                "combination[1].factors.imposed", "limits.deflection_cases.imposed", "limits.lasting.imposed", "load[1].at",
            ],
            renamed.Ask);
        Assert.Equal("dead", renamed.SelfWeight!.Case);
        Assert.Equal(CaseRows.Of(Beam).Select(row => row.Name == "live" ? "imposed" : row.Name), CaseRows.Of(renamed).Select(row => row.Name));
    }

    [Fact]
    public void CaseRenamedToNothing_StaysAsItIs() =>
        Assert.Equal(Beam, Form.Of(Beam).Case(1, FormColumn.Case, "").Document);

    [Fact]
    public void NameThatAnotherCaseHas_StaysInTheCellAsTyped()
    {
        FormSheet sheet = Form.Of(Beam).Case(1, FormColumn.Case, "snow");

        Assert.Equal(Beam with { Renames = [new("live", "snow")] }, sheet.Document);
        Assert.Equal("snow", sheet.Text(FormBlock.Cases, 1, FormColumn.Case));
        Assert.Equal(sheet, sheet.Case(1, FormColumn.Case, "snow"));
        Assert.Equal(Beam, sheet.Case(1, FormColumn.Case, "").Document);
        Assert.Equal(Beam, sheet.Case(1, FormColumn.Case, "live").Document);
        Assert.Equal(Form.Of(Beam).Case(1, FormColumn.Case, "imposed"), sheet.Case(1, FormColumn.Case, "imposed"));
    }

    [Fact]
    public void NameThatIsFreeAgain_IsGivenWhenTypedOnceMore()
    {
        FormSheet sheet = Form.Of(Beam).Case(1, FormColumn.Case, "snow").Case(2, FormColumn.Case, "ice");

        Assert.Equal("snow", sheet.Text(FormBlock.Cases, 1, FormColumn.Case));
        Assert.Equal(["live", "ice", "live"], sheet.Document.Loads.Select(load => load.Case ?? "live"));
        Assert.Equal(["snow", "ice", "snow"], sheet.Case(1, FormColumn.Case, "snow").Document.Loads.Select(load => load.Case));
    }

    [Fact]
    public void NameForACase_GoesWithTheCase()
    {
        BeamDocument beam = new() { Loads = [new LoadEntry { Case = "snow" }, new LoadEntry { Case = "live" }] };

        FormSheet sheet = Form.Of(beam).Case(0, FormColumn.Case, "live").Do(new Edit.DeleteRow(FormBlock.Loads, 0));

        Assert.Equal(new BeamDocument { Loads = [new LoadEntry { Case = "live" }] }, sheet.Document);
    }

    [Fact]
    public void Pattern_ComesAndGoesWithYesAndNo()
    {
        FormSheet sheet = Form.Of(Beam).Case(2, FormColumn.Pattern, "y");

        Assert.Equal([new PatternEntry { Case = "live" }, new PatternEntry { Case = "snow" }], sheet.Document.Patterns);
        Assert.Equal("yes", sheet.Text(FormBlock.Cases, 2, FormColumn.Pattern));
        Assert.Equal(sheet, sheet.Case(2, FormColumn.Pattern, "yes"));
        Assert.Equal([new PatternEntry { Case = "snow" }], sheet.Case(1, FormColumn.Pattern, "no").Document.Patterns);
        Assert.Equal([new PatternEntry { Case = "live" }], sheet.Case(2, FormColumn.Pattern, "").Document.Patterns);
    }

    [Fact]
    public void OwnWeight_MovesToTheCaseThatTakesIt()
    {
        FormSheet sheet = Form.Of(Beam).Case(2, FormColumn.OwnWeight, "yes");

        Assert.Equal("snow", sheet.Document.SelfWeight!.Case);
        Assert.Equal(sheet, sheet.Case(1, FormColumn.OwnWeight, "no"));
        Assert.Null(Form.Of(Beam).Case(0, FormColumn.OwnWeight, "no").Document.SelfWeight);
    }

    [Theory]
    [InlineData("1.2 dead + 1.6 live", "dead=1.2 live=1.6")]
    [InlineData("1.2D + 1.6L", "dead=1.2 live=1.6")]
    [InlineData("0.6D - 1.0L", "dead=0.6 live=-1.0")]
    [InlineData("-dead − 0.5 live", "dead=-1 live=-0.5")]
    [InlineData("dead-live", "")]
    [InlineData("dead+.5*snow", "dead=1 snow=.5")]
    [InlineData("wind", "wind=1")]
    [InlineData("ULS", "")]
    [InlineData("1.2 dead + 1.6 dead", "")]
    [InlineData("1.2 dead + storm", "")]
    [InlineData("1,2 dead", "")]
    [InlineData("r", "")]
    public void CombinationNamedByItsSum_HasThoseFactors(string name, string factors)
    {
        CombinationEntry made = Form.Of(new BeamDocument()).Combination(0, FormColumn.Name, name).Document.Combinations[0];

        Assert.Equal(name, made.Name);
        Assert.Equal(factors, string.Join(' ', made.Factors.Select(factor => $"{factor.Name}={factor.Text}")));
    }

    [Fact]
    public void FactorTyped_StandsUnderItsCase_AndGoesWhenEmptied()
    {
        FormSheet sheet = Form.Of(Beam).Combination(0, FormColumns.OfCase(2), "0.5");

        Assert.Equal(new NamedFigure("snow", "0.5"), sheet.Document.Combinations[0].Factors[3]);
        Assert.Equal("0.5", sheet.Text(FormBlock.Combinations, 0, FormColumns.OfCase(2)));
        Assert.Equal(Beam, sheet.Combination(0, FormColumns.OfCase(2), "").Document);
        Assert.Equal("1.35", sheet.Combination(0, FormColumns.OfCase(0), "1.35").Document.Combinations[0].Factors[0].Text);
    }

    [Fact]
    public void CombinationRenamed_IsStillWhatIsStatedFor()
    {
        FormSheet sheet = Form.Of(Beam).Combination(0, FormColumn.Name, "strength");

        Assert.Equal("strength", sheet.Document.Stated[1].Combination);
        Assert.Equal(3, sheet.Document.Combinations[0].Factors.Count);
    }

    [Fact]
    public void CombinationCopied_HasANameOfItsOwn()
    {
        FormSheet sheet = Form.Of(Beam).Do(new Edit.CopyRow(FormBlock.Combinations, 0)).Do(new Edit.CopyRow(FormBlock.Combinations, 0));

        Assert.Equal(["ULS", "ULS 3", "ULS 2"], sheet.Document.Combinations.Select(row => row.Name));
        Assert.Equal(Beam.Combinations[0].Factors, sheet.Document.Combinations[1].Factors);
    }

    [Theory]
    [InlineData("12", "12 kN@0 m", "12 kN")]
    [InlineData("12, 12 at 1.2", "12 kN@0 m 12 kN@1.2 m", "12 kN, 12 kN at 1.2 m")]
    [InlineData("8 kN @ 0.5 m; 500 kg at 3 ft,", "8 kN@0.5 m 500 kg@3 ft", "8 kN at 0.5 m, 500 kg at 3 ft")]
    [InlineData("12,5 kN", "12,5 kN@0 m", "12,5 kN")]
    [InlineData("12, 5", "12 kN@0 m 5 kN@", "12 kN, 5 kN")]
    [InlineData("12, at 2", "12 kN@0 m @2 m", "12 kN, at 2 m")]
    public void Axles_AreForcesAtDistancesFromTheFirst(string typed, string axles, string shown)
    {
        FormSheet sheet = Form.Of(new BeamDocument()).Rolling(0, FormColumn.Axles, typed);

        Assert.Equal(axles, string.Join(' ', sheet.Document.Rolling[0].Axles.Select(axle => $"{axle.Force}@{axle.Offset}")));
        Assert.Equal(shown, sheet.Text(FormBlock.Rolling, 0, FormColumn.Axles));
    }

    [Theory]
    [InlineData("combination[1].name", FormBlock.Combinations, 0, FormColumn.Name)]
    [InlineData("combination[2].basis", FormBlock.Combinations, 1, FormColumn.Basis)]
    [InlineData("combination[1].factors", FormBlock.Combinations, 0, FormColumn.Factor)]
    [InlineData("combination[1].factors.wind", FormBlock.Combinations, 0, FormColumn.Factor + 3)]
    [InlineData("rolling[1].axles[2].force", FormBlock.Rolling, 0, FormColumn.Axles)]
    [InlineData("rolling[1].axles", FormBlock.Rolling, 0, FormColumn.Axles)]
    [InlineData("rolling[2].impact", FormBlock.Rolling, 1, FormColumn.Impact)]
    [InlineData("pattern[1].case", FormBlock.Cases, 1, FormColumn.Pattern)]
    [InlineData("rename.snow", FormBlock.Cases, 2, FormColumn.Case)]
    public void KeyOfTheFile_IsFoundAmongTheCases(string key, FormBlock block, int row, FormColumn column) =>
        Assert.Equal(new FormPlace(block, row, column), FormCells.PlaceOf(Beam, key));

    [Fact]
    public void CaseIsNoRowOfTheFile()
    {
        FormSheet sheet = Form.Of(Beam);

        Assert.Equal(sheet, sheet.Do(new Edit.DeleteRow(FormBlock.Cases, 1)));
        Assert.Equal(sheet, sheet.Do(new Edit.CopyRow(FormBlock.Cases, 1)));
        Assert.Equal(sheet, sheet.Do(new Edit.SwapRows(FormBlock.Cases, 0)));
    }
}
