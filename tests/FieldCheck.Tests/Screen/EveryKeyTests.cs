using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using FieldCheck.Screen.Details;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Tests.Screen;

/// <summary>
/// Every key of the beam file is gone to, typed and seen in the form by keys alone, and stands in the beam at its key path.
/// </summary>
public sealed class EveryKeyTests
{
    private static readonly Dictionary<string, string> NotTyped = new()
    {
        ["rename"] = "a name that a case cannot have yet; typed as its name in the Cases view, which gives it where it is free",
        ["ask"] = "says what a preset asks for; it follows its rows, and is written where presets are: in a file",
    };

    /// <summary>What is typed in a cell of the form, for keys that have one there, and what then stands at the key.</summary>
    private static readonly Dictionary<string, (FormPlace Cell, string Typed, string Stands)> InCells = new()
    {
        ["span.length"] = (Span(FormColumn.Length), "7.5", "7.5 m"),
        ["span.to"] = (new(FormBlock.Spans, 1, FormColumn.Reading), "9.5", "9.5 m"),
        ["span.section"] = (Span(FormColumn.Section), "stick", "stick"),
        ["span.material"] = (Span(FormColumn.Material), "spruce", "spruce"),
        ["support.kind"] = (Support(0, FormColumn.Kind), "fixed", "fixed"),
        ["support.joint"] = (Support(1, FormColumn.Place), "\"joint 1\"", "1"),
        ["support.at"] = (Support(1, FormColumn.Place), "2.5", "2.5 m"),
        ["support.label"] = (Support(1, FormColumn.Label), "Prop", "Prop"),
        ["support.acts"] = (Support(1, FormColumn.Acts), "up", "up"),
        ["support.settlement"] = (Support(1, FormColumn.Settles), "5", "5 mm"),
        ["support.surface"] = (Support(1, FormColumn.Kind), "\"roller 30\"", "30 deg"),
        ["support.stiffness"] = (Support(1, FormColumn.Kind), "\"spring 500\"", "500 kN/m"),
        ["load.kind"] = (Load(FormColumn.Size), "\"5 kNm\"", "couple"),
        ["load.label"] = (Load(FormColumn.Note), "hoist", "hoist"),
        ["load.case"] = (Load(FormColumn.Case), "wind", "wind"),
        ["load.at"] = (Load(FormColumn.From), "1.5", "1.5 m"),
        ["load.force"] = (Load(FormColumn.Size), "7", "7 kN"),
        ["load.moment"] = (Load(FormColumn.Size), "\"5 kNm\"", "5 kNm"),
        ["load.from"] = (Spread(FormColumn.From), "0.5", "0.5 m"),
        ["load.to"] = (Spread(FormColumn.To), "2.5", "2.5 m"),
        ["load.intensity"] = (Spread(FormColumn.Size), "9/m", "9 kN/m"),
        ["load.intensity_end"] = (Spread(FormColumn.Size), "3..6/m", "6 kN/m"),
        ["load.pressure"] = (Spread(FormColumn.Size), "\"2 kPa * 3 m\"", "2 kPa"),
        ["load.pressure_end"] = (Spread(FormColumn.Size), "\"2..4 kPa * 3 m\"", "4 kPa"),
        ["load.width"] = (Spread(FormColumn.Size), "\"2 kPa * 3 m\"", "3 m"),
        ["load.total"] = (Spread(FormColumn.Size), "1.2t", "1.2t"),
        ["stated.support"] = (Stated(FormColumn.Support), "A", "A"),
        ["stated.vertical"] = (Stated(FormColumn.Vertical), "10.3", "10.3 kN"),
        ["stated.horizontal"] = (Stated(FormColumn.Horizontal), "-3", "-3 kN"),
        ["stated.moment"] = (Stated(FormColumn.Moment), "2", "2 kNm"),
        ["stated.combination"] = (Stated(FormColumn.Under), "uls", "ULS"),
        ["stated.case"] = (Stated(FormColumn.Under), "snow", "snow"),
        ["stated.extreme"] = (Stated(FormColumn.Under), "max", "max"),
        ["stated.basis"] = (Stated(FormColumn.Basis), "f", "factored"),
        ["stated.tolerance"] = (Stated(FormColumn.Allow), "5", "5 %"),
        ["stated.source"] = (Stated(FormColumn.Source), "quote", "quote"),
        ["combination.name"] = (Combination(FormColumn.Name), "SLS", "SLS"),
        ["combination.basis"] = (Combination(FormColumn.Basis), "f", "factored"),
        ["combination.factors"] = (Combination(FormColumns.OfCase(1)), "1.35", "1.35"),
        ["pattern.case"] = (new(FormBlock.Cases, 1, FormColumn.Pattern), "yes", "live"),
        ["rolling.label"] = (Rolling(FormColumn.Label), "truck", "truck"),
        ["rolling.case"] = (Rolling(FormColumn.Case), "wind", "wind"),
        ["rolling.impact"] = (Rolling(FormColumn.Impact), "25", "25 %"),
        ["rolling.axles.offset"] = (Rolling(FormColumn.Axles), "\"12, 14 at 1.2\"", "1.2 m"),
        ["rolling.axles.force"] = (Rolling(FormColumn.Axles), "\"12, 14 at 1.2\"", "14 kN"),
        ["material.factors"] = (new(FormBlock.Materials, 0, FormColumn.Factors), "\"duration 1.25\"", "1.25"),
        ["self_weight.case"] = (new(FormBlock.Loads, FormPlace.OwnWeightRow, FormColumn.Case), "wind", "wind"),
    };

    public static TheoryData<string> Keys() => new(AllKeys().Except(NotTyped.Keys));

    [Fact]
    public void EveryTableIsWalked()
    {
        string[] lists = [.. typeof(Fields).GetProperties(BindingFlags.Public | BindingFlags.Static).Select(list => list.Name)];

        Assert.Equal(21, lists.Length);
        Assert.Equal(lists.Order(), Tables().Select(table => table.List).Order());
        Assert.All(InCells.Keys.Concat(NotTyped.Keys), key => Assert.Contains(key, AllKeys()));
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Key_IsGoneToTypedAndSeen(string key)
    {
        Desk desk = new(Rich, new BeamOrigin("rich"));
        (string path, string typed, string stands) = InCells.TryGetValue(key, out var cell)
            ? TypeInCell(desk, key, cell.Cell, cell.Typed, cell.Stands)
            : TypeInLine(desk, key);

        Assert.Equal(stands, DocumentCells.Get(desk.State.Document, path));
        string picture = desk.Show(120, 40).ToString();
        Assert.Contains(typed, picture, StringComparison.Ordinal);
        desk.Press("Esc ^Z");
        Assert.NotEqual(stands, DocumentCells.Get(desk.State.Document, path));
    }

    private static (string Path, string Typed, string Stands) TypeInCell(
        Desk desk, string key, FormPlace cell, string typed, string stands)
    {
        desk.Press(Go.To(desk.State, cell)).Press(typed + " Enter");
        string[] parts = key.Split('.');
        int row = cell.Block is FormBlock.Stated or FormBlock.Cases ? 0 : cell.Row;
        string path = cell.IsOwnWeight ? key
            : cell.Block == FormBlock.Materials ? "material.wood.factors.duration"
            : string.Create(CultureInfo.InvariantCulture, $"{parts[0]}[{row + 1}].{string.Join('.', parts[1..])}")
                .Replace("axles.", "axles[2].", StringComparison.Ordinal)
                .Replace("factors", "factors.live", StringComparison.Ordinal);
        return (path, DocumentCells.Get(desk.State.Document, path)!, stands);
    }

    private static (string Path, string Typed, string Stands) TypeInLine(Desk desk, string key)
    {
        string table = key.Split('.')[0];
        (FormPlace? row, string prefix) = table switch
        {
            "span" => (Span(FormColumn.Length), "span[1]."),
            "support" => (Support(0, FormColumn.Place), "support[1]."),
            "load" when key == "load.axial" => (Spread(FormColumn.Size), "load[2]."),
            "load" => (Load(FormColumn.Size), "load[1]."),
            "section" => (Span(FormColumn.Length), "section.beam."),
            "material" => (Span(FormColumn.Length), "material.wood."),
            "hinge" => ((FormPlace?)null, "hinge[1]."),
            _ => (null, key.Contains('.') ? table + "." : ""),
        };
        string rest = key[(key.IndexOf('.') + 1)..];
        string path = prefix + rest
            .Replace("deflection_cases", "deflection_cases.live", StringComparison.Ordinal)
            .Replace("lasting", "lasting.live", StringComparison.Ordinal);
        if (row is not null)
        {
            desk.Press(Go.To(desk.State, row)).Press("/ m");
        }
        else
        {
            desk.Press($"/ {desk.State.Table[CommandName.MoreOfBeam].Letter}");
        }

        Overlay.Details details = Assert.IsType<Overlay.Details>(desk.State.Overlay);
        int line = DetailLines.Of(desk.State.Document, details.Page).ToList().FindIndex(line => line.Key == path);
        Assert.True(line >= 0, $"{path} has no line.");
        string text = Sample(DocumentCells.Find(desk.State.Document, path)!.Wanted, path);
        desk.Press(string.Concat(Enumerable.Repeat("Down ", line))).Press($"\"{text}\" Enter");
        return (path, text, text);
    }

    private static string Sample(Wanted wanted, string path) => wanted switch
    {
        Wanted.OneOf words => words.Words[^1],
        Wanted.Measure measure => SampleOf(measure.Kind),
        Wanted.LengthOr or Wanted.PlaceOnBeam => "1.25 m",
        Wanted.SupportLabel => "B",
        Wanted.Name { Of: "shape" } => "IPE200",
        Wanted.Name { Of: "grade" } => "C24",
        Wanted.Name or Wanted.FreeText => "some " + path.Split('.')[^1].Replace('_', ' '),
        Wanted.Whole => "2",
        Wanted.BareNumber => "1.35",
        Wanted.Truth => "true",
        Wanted.ShareOfSpan => "L/250",
        Wanted.ShareOr => "5 %",
        Wanted.TwoLengths => "200 mm x 300 mm",
        _ => throw new InvalidOperationException($"{path}: no sample of {wanted}"),
    };

    private static string SampleOf(QuantityKind kind) => kind switch
    {
        QuantityKind.Length => "33 mm",
        QuantityKind.Force => "4.4 kN",
        QuantityKind.ForcePerLength => "0.5 kN/m",
        QuantityKind.Pressure => "7 MPa",
        QuantityKind.Moment => "3 kNm",
        QuantityKind.Stiffness => "700 kN/m",
        QuantityKind.RotationalStiffness => "500 kNm/rad",
        QuantityKind.Area => "28.5 cm2",
        QuantityKind.SectionModulus => "194 cm3",
        QuantityKind.Inertia => "1940 cm4",
        QuantityKind.UnitWeight => "420 kg/m3",
        QuantityKind.Angle => "12 deg",
        QuantityKind.Share => "30 %",
        _ => throw new InvalidOperationException($"no sample of {kind}"),
    };

    private static IEnumerable<string> AllKeys() => Tables().SelectMany(table => table.Keys).Append("ask");

    private static ImmutableArray<(string List, string[] Keys)> Tables() =>
    [
        (nameof(Fields.Top), [.. Fields.Top.Select(field => field.Key)]),
        (nameof(Fields.Renames), [Fields.Renames.Key]),
        Table(nameof(Fields.Record), "record", Fields.Record),
        Table(nameof(Fields.Span), "span", Fields.Span),
        Table(nameof(Fields.Support), "support", Fields.Support),
        Table(nameof(Fields.Hinge), "hinge", Fields.Hinge),
        Table(nameof(Fields.Load), "load", Fields.Load),
        Table(nameof(Fields.SelfWeight), "self_weight", Fields.SelfWeight),
        Table(nameof(Fields.Section), "section", Fields.Section),
        Table(nameof(Fields.Material), "material", Fields.Material),
        (nameof(Fields.MaterialFactors), ["material." + Fields.MaterialFactors.Key]),
        Table(nameof(Fields.Combination), "combination", Fields.Combination),
        (nameof(Fields.CombinationFactors), ["combination." + Fields.CombinationFactors.Key]),
        Table(nameof(Fields.Pattern), "pattern", Fields.Pattern),
        Table(nameof(Fields.Rolling), "rolling", Fields.Rolling),
        Table(nameof(Fields.Axle), "rolling.axles", Fields.Axle),
        Table(nameof(Fields.Stated), "stated", Fields.Stated),
        Table(nameof(Fields.Tolerance), "tolerance", Fields.Tolerance),
        Table(nameof(Fields.Limits), "limits", Fields.Limits),
        (nameof(Fields.DeflectionCases), ["limits." + Fields.DeflectionCases.Key]),
        (nameof(Fields.Lasting), ["limits." + Fields.Lasting.Key]),
    ];

    private static (string List, string[] Keys) Table<T>(string list, string table, ImmutableArray<Field<T>> fields) =>
        (list, [.. fields.Select(field => $"{table}.{field.Key}")]);

    private static FormPlace Span(FormColumn column) => new(FormBlock.Spans, 0, column);

    private static FormPlace Support(int row, FormColumn column) => new(FormBlock.Supports, row, column);

    private static FormPlace Load(FormColumn column) => new(FormBlock.Loads, 0, column);

    // Of no support yet: below those of the two that there are.
    private static FormPlace Stated(FormColumn column) => new(FormBlock.Stated, 2, column);

    private static FormPlace Combination(FormColumn column) => new(FormBlock.Combinations, 0, column);

    private static FormPlace Rolling(FormColumn column) => new(FormBlock.Rolling, 0, column);

    private static FormPlace Spread(FormColumn column) => new(FormBlock.Loads, 1, column);

    private static BeamDocument Rich { get; } = new()
    {
        Spans =
        [
            new SpanEntry { Length = "3 m", Section = "beam", Material = "wood" },
            new SpanEntry { To = "5 m" },
        ],
        Supports = [new SupportEntry { Kind = "pin", Joint = "0" }, new SupportEntry { Kind = "roller", Joint = "2" }],
        Loads =
        [
            new LoadEntry { Kind = "point", Force = "1 kN", At = "1 m" },
            new LoadEntry { Kind = "distributed", Intensity = "1 kN/m", From = "0 m", To = "2 m" },
        ],
        SelfWeight = new SelfWeightEntry { Case = "dead" },
        Hinges = [new HingeEntry()],
        Sections = [new SectionEntry { Name = "beam" }],
        Materials = [new MaterialEntry { Name = "wood" }],
        Combinations = [new CombinationEntry { Name = "ULS" }],
        Rolling = [new RollingEntry { Axles = [new AxleEntry()] }],
        Stated = [new StatedEntry { Source = "drawing" }],
    };
}
