using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Building;

/// <summary>Finds everything on a sheet that is known only to plus or minus.</summary>
internal sealed class UncertainInputs
{
    private readonly BeamDocument _document;
    private readonly BuiltBeam _beam;
    private readonly DefaultSpread? _places;
    private readonly UncertainLoads _loads;

    private UncertainInputs(BeamDocument document, BuiltBeam beam)
    {
        _document = document;
        _beam = beam;
        _places = DefaultSpread.OfPlaces(document);
        _loads = new UncertainLoads(_places, DefaultSpread.OfLoads(document));
    }

    /// <summary>Every uncertain input, in the order of the tables.</summary>
    /// <param name="document">The beam as typed.</param>
    /// <param name="beam">The beam as read.</param>
    internal static ImmutableArray<UncertainInput> Of(BeamDocument document, BuiltBeam beam) =>
        document.Tolerance is null && !HasSign(document) ? [] : [.. new UncertainInputs(document, beam).All()];

    /// <summary>Whether plus or minus is written for a load that rolls.</summary>
    internal static bool IsUncertain(RollingEntry row) => UncertainCell.HasSign(row.Impact)
        || row.Axles.Any(axle => UncertainCell.HasSign(axle.Offset) || UncertainCell.HasSign(axle.Force));

    private static bool HasSign(BeamDocument document) =>
        Has(Fields.Span, document.Spans) || Has(Fields.Support, document.Supports) || Has(Fields.Hinge, document.Hinges)
        || Has(Fields.Load, document.Loads) || Has(Fields.Section, document.Sections)
        || Has(Fields.Material, document.Materials);

    private static bool Has<T>(ImmutableArray<Field<T>> fields, Rows<T> rows) =>
        rows.Any(row => fields.Any(field => UncertainCell.HasSign(field.Get(row))));

    private IEnumerable<UncertainInput> All() =>
    [
        .. _document.Spans.SelectMany((row, index) => Span(row, index + 1)),
        .. _beam.Supports.SelectMany(Support),
        .. _document.Hinges.SelectMany((row, index) => OfBeam(
            Fields.Hinge, row, $"hinge[{index + 1}]", "at", $"at hinge {index + 1}", _places)),
        .. _beam.Loads.SelectMany(Load),
        .. _document.Sections.SelectMany(row => Figures(Fields.Section, row, "section", row.Name)),
        .. _document.Materials.SelectMany(row => Figures(Fields.Material, row, "material", row.Name)),
    ];

    private IEnumerable<UncertainInput> Span(SpanEntry row, int number) =>
    [
        .. OfBeam(Fields.Span, row, $"span[{number}]", "length", $"in the length of span {number}", _places),
        .. OfBeam(Fields.Span, row, $"span[{number}]", "to", $"at the far end of span {number}", _places),
    ];

    private IEnumerable<UncertainInput> Support(NamedSupport named, int index)
    {
        SupportEntry row = _document.Supports[named.Row];
        string path = $"support[{named.Row + 1}]";
        return
        [
            .. OfBeam(Fields.Support, row, path, "at", $"at {named.Label}", _places),
            .. OfBeam(Fields.Support, row, path, "stiffness", $"of the stiffness of {named.Label}"),
            .. OfBeam(Fields.Support, row, path, "rotational_stiffness", $"of the stiffness in rotation of {named.Label}"),
            .. OfBeam(Fields.Support, row, path, "surface", $"in the slope under {named.Label}"),
            .. Movement(row, path, "settlement", $"in the settlement of {named.Label}",
                half => new InputSpread.Settlement(index, half)),
            .. Movement(row, path, "rotation", $"in the rotation of {named.Label}",
                half => new InputSpread.ImposedRotation(index, half)),
        ];
    }

    private IEnumerable<UncertainInput> Load(NamedLoad named, int index)
    {
        if (named.Row is not int row)
        {
            return [];
        }

        int inCase = _beam.Loads.Take(index).Count(other => other.Case == named.Case);
        int ofCase = _beam.Model.Cases.Select(one => one.Name).ToList().IndexOf(named.Case);
        return _loads.Of(_document.Loads[row], row + 1, new LoadIndex(ofCase, inCase));
    }

    private static IEnumerable<UncertainInput> Figures<T>(
        ImmutableArray<Field<T>> fields, T row, string table, string name) =>
        from field in fields
        where field.Wanted is Wanted.Measure
        from input in OfBeam(
            fields, row, KeyPath.Top.Into(table).Into(name).ToString(), field.Key,
            $"in the {field.Key.Replace('_', ' ')} of {name}")
        select input;

    private static IEnumerable<UncertainInput> OfBeam<T>(
        ImmutableArray<Field<T>> fields,
        T row,
        string path,
        string key,
        string words,
        DefaultSpread? tolerance = null) =>
        Cell(fields, row, key, tolerance) is UncertainCell cell
            ? [new($"{path}.{key}", words, cell.Width, new InputSpread.OfBeam(cell.HalfWidth))]
            : [];

    private static IEnumerable<UncertainInput> Movement(
        SupportEntry row, string path, string key, string words, Func<double, InputSpread> spread) =>
        Cell(Fields.Support, row, key, null) is UncertainCell cell
            ? [new($"{path}.{key}", words, cell.Width, spread(cell.HalfWidth))]
            : [];

    private static UncertainCell? Cell<T>(
        ImmutableArray<Field<T>> fields, T row, string key, DefaultSpread? tolerance)
    {
        Field<T> field = fields.First(one => one.Key == key);
        return UncertainCell.Read(field.Get(row), field.Wanted, tolerance);
    }
}
