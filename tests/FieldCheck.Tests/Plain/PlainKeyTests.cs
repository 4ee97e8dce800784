using System.Collections.Immutable;
using FieldCheck.Plain;
using FieldCheck.Screen.Details;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Tests.Plain;

/// <summary>Everything that the form can set can be set in lines, and comes to the same.</summary>
public sealed class PlainKeyTests
{
    private static readonly BeamDocument Beam = Opened("""
        format = 1
        title = "All"
        ask = ["span[1].length"]
        [[span]]
        length = "4 m"
        section = "bearer"
        material = "C24 wet"
        [[span]]
        length = "2 m"
        [[support]]
        joint = 0
        kind = "pin"
        [[support]]
        at = "3 m"
        kind = "roller"
        label = "Wall"
        [[hinge]]
        at = "3.5 m"
        [[load]]
        kind = "point"
        case = "left_bay"
        force = "4 kN"
        at = "1 m"
        [[load]]
        kind = "distributed"
        intensity = "2 kN/m"
        [section.bearer]
        width = "50 mm"
        depth = "200 mm"
        [material."C24 wet"]
        modulus = "11 GPa"
        [material."C24 wet".factors]
        "wet service" = 0.9
        [[combination]]
        name = "all"
        factors = { live = 1.0, left_bay = 1.0 }
        [[rolling]]
        label = "truck"
        axles = [{ offset = "0 m", force = "4 kN" }]
        [[stated]]
        support = "A"
        vertical = "4 kN"
        [limits]
        deflection = "L/300"
        """);

    public static TheoryData<string> Keys() => new(
        KeyLists().SelectMany(page => DetailLines.Of(Beam, page)).Select(line => line.Key).Distinct());

    [Theory]
    [MemberData(nameof(Keys))]
    public void Key_TypedByItsWords_IsSetAsByTheForm(string key)
    {
        const string text = "7.5 m ± 1 mm";
        using Talk talk = Start();

        talk.Say($"{NameOf(key)} {text}");

        Assert.Equal(ByTheForm(EditOf(key, text)), talk.Document);
        Assert.NotEqual(Beam, talk.Document);
        Assert.Equal(DocumentCells.Get(talk.Document, key), DocumentCells.Get(ByTheForm(EditOf(key, text)), key));
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Key_TypedAsItsPath_IsTheSame(string key)
    {
        using Talk talk = Start();

        talk.Say($"{key} 12");

        Assert.Equal(ByTheForm(new Edit.TypeKey(key, "12")), talk.Document);
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Key_AskedAndAnswered_IsTheSame(string key)
    {
        string text = key.EndsWith(".shape", StringComparison.Ordinal) ? "IPE 200" : "12";
        using Talk talk = Start();

        // "section bearer flat" says which way it lies and asks nothing.
        talk.Say(NameOf(key).Replace(" flat", " stands", StringComparison.Ordinal), text);

        Assert.Equal(ByTheForm(EditOf(key, text)), talk.Document);
    }

    [Fact]
    public void Cell_OfEveryRowAndTheEmptyOne_IsSetAsByTheForm()
    {
        Assert.All(Places(), place =>
        {
            const string text = "2";
            using Talk talk = Start();
            string row = place.Block == FormBlock.Supports && place.Row == 1 ? "Wall" : $"{place.Row + 1}";

            talk.Say($"{FormColumns.RowName(place.Block)} {row} {PlainNames.NamesOf(place.Block, place.Column)[0]} {text}");

            Assert.Equal(ByTheForm(new Edit.TypeCell(place, text)), talk.Document);
        });
        Assert.True(Places().Count() > 40);
    }

    [Fact]
    public void OwnWeight_IsSetAsByTheForm()
    {
        FormPlace size = new(FormBlock.Loads, FormPlace.OwnWeightRow, FormColumn.Size);
        using Talk talk = Start();

        talk.Say("own weight on");
        Assert.Equal(ByTheForm(new Edit.TypeCell(size, "on")), talk.Document);

        talk.Say("own weight case roof");
        Assert.Equal("roof", talk.Document.SelfWeight!.Case);

        talk.Say("own weight -");
        Assert.Null(talk.Document.SelfWeight);
    }

    [Fact]
    public void Dash_EmptiesCellsAndKeys()
    {
        using Talk talk = Start();

        talk.Say("title -", "limits deflection -", "load 1 case -", "hinge 1 at -");

        Assert.Null(talk.Document.Title);
        Assert.Null(talk.Document.Limits?.Deflection);
        Assert.Null(talk.Document.Loads[0].Case);
        Assert.Empty(talk.Document.Hinges);
    }

    [Fact]
    public void CellOfASectionAMaterialOrALimit_IsSetAsByTheForm()
    {
        FormPlace[] places =
        [
            .. new[] { FormBlock.Sections, FormBlock.Materials, FormBlock.Limits, FormBlock.Bearings }
                .SelectMany(block => FormColumns.Of(block).Select(column => new FormPlace(block, 0, column))),
        ];

        Assert.Equal(40, places.Length);
        Assert.All(places, place => Assert.All(PlainNames.NamesOf(place.Block, place.Column), name =>
        {
            string text = place.Column switch
            {
                FormColumn.Shape => "W10x30",
                FormColumn.Grade => "GL24h",
                FormColumn.Rules => "NDS",
                FormColumn.Flat => "flat",
                FormColumn.Factors or FormColumn.CaseLimits or FormColumn.Lasting => "dead 2, other 3",
                _ => "2",
            };
            string row = place.Block switch
            {
                FormBlock.Sections => "section bearer",
                FormBlock.Materials => "material C24 wet",
                FormBlock.Limits => "limits",
                _ => "bearing A",
            };
            using Talk talk = Start();

            talk.Say($"{row} {name} {text}");

            Assert.Equal(ByTheForm(new Edit.TypeCell(place, text)), talk.Document);
            Assert.NotEqual(Beam, talk.Document);
        }));
    }

    // By its words a key of a section goes to its cell, which takes away what cannot stand beside it.
    private static Edit EditOf(string key, string text) =>
        StickCells.PlaceOf(Beam, key) is { Block: FormBlock.Sections or FormBlock.Materials or FormBlock.Limits } place
        && key.EndsWith("." + StickCells.KeyOf(place.Column), StringComparison.Ordinal)
            ? new Edit.TypeCell(place, text)
            : new Edit.TypeKey(key, text);

    private static string NameOf(string key)
    {
        string words = key.Replace('_', ' ').Replace('.', ' ').Replace('[', ' ').Replace("]", "", StringComparison.Ordinal);
        return words.Replace("\"", "", StringComparison.Ordinal);
    }

    private static ImmutableArray<DetailPage> KeyLists() =>
    [
        new DetailPage(null),
        .. Enumerable.Range(0, Beam.Spans.Count).Select(row => new DetailPage(FormBlock.Spans, row)),
        .. Enumerable.Range(0, Beam.Supports.Count).Select(row => new DetailPage(FormBlock.Supports, row)),
        .. Enumerable.Range(0, Beam.Loads.Count).Select(row => new DetailPage(FormBlock.Loads, row)),
    ];

    private static IEnumerable<FormPlace> Places() =>
        from block in PlainNames.Blocks
        from row in Enumerable.Range(0, new FormSheet(Beam).RowsOf(block) + 1)
        from column in FormColumns.Of(block)
        select new FormPlace(block, row, column);

    private static BeamDocument ByTheForm(Edit edit) => Editor.Apply(new FormSheet(Beam), edit).Document;

    private static Talk Start()
    {
        Talk talk = new();
        File.WriteAllText(talk.PathOf("beam.toml"), BeamFileText.New("beam.toml", Beam).Text);
        talk.Say("open beam.toml", "stop");
        Assert.Equal(Beam, talk.Document);
        return talk;
    }

    private static BeamDocument Opened(string text) =>
        Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read("beam.toml", text)).Document;
}
