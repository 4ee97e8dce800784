using System.Collections.Immutable;

namespace FieldCheck.Sheet.Document.Tables;

/// <summary>The tables of the beam file: which there are, in which order, and what of the document each one holds.</summary>
internal static class FileContent
{
    private static readonly TableMapping<BeamDocument> Document = new(() => new BeamDocument(),
    [
        .. Cells(Fields.Top),
        Part<BeamDocument>.Of("ask", new TextsMapping(), beam => beam.Ask, (beam, ask) => beam with { Ask = ask }),
        Part<BeamDocument>.Of(Fields.Renames),
        Part<BeamDocument>.Of("record", Table(() => new RecordEntry(), Cells(Fields.Record), saysByStanding: false),
            beam => beam.Record, (beam, record) => beam with { Record = record }),
        Part<BeamDocument>.Of("span", Rows(() => new SpanEntry(), Cells(Fields.Span)),
            beam => beam.Spans, (beam, rows) => beam with { Spans = rows }),
        Part<BeamDocument>.Of("support", Rows(() => new SupportEntry(), Cells(Fields.Support)),
            beam => beam.Supports, (beam, rows) => beam with { Supports = rows }),
        Part<BeamDocument>.Of("hinge", Rows(() => new HingeEntry(), Cells(Fields.Hinge)),
            beam => beam.Hinges, (beam, rows) => beam with { Hinges = rows }),
        Part<BeamDocument>.Of("load", Rows(() => new LoadEntry(), Cells(Fields.Load)),
            beam => beam.Loads, (beam, rows) => beam with { Loads = rows }),
        Part<BeamDocument>.Of("self_weight", Optional(() => new SelfWeightEntry(), Cells(Fields.SelfWeight)),
            beam => beam.SelfWeight, (beam, table) => beam with { SelfWeight = table }),
        Part<BeamDocument>.Of("section", Sections(),
            beam => beam.Sections, (beam, rows) => beam with { Sections = rows }),
        Part<BeamDocument>.Of("material", Materials(),
            beam => beam.Materials, (beam, rows) => beam with { Materials = rows }),
        Part<BeamDocument>.Of("combination", Combinations(),
            beam => beam.Combinations, (beam, rows) => beam with { Combinations = rows }),
        Part<BeamDocument>.Of("pattern", Rows(() => new PatternEntry(), Cells(Fields.Pattern)),
            beam => beam.Patterns, (beam, rows) => beam with { Patterns = rows }),
        Part<BeamDocument>.Of("rolling", RollingLoads(),
            beam => beam.Rolling, (beam, rows) => beam with { Rolling = rows }),
        Part<BeamDocument>.Of("stated", Rows(() => new StatedEntry(), Cells(Fields.Stated)),
            beam => beam.Stated, (beam, rows) => beam with { Stated = rows }),
        Part<BeamDocument>.Of("tolerance", Optional(() => new ToleranceEntry(), Cells(Fields.Tolerance)),
            beam => beam.Tolerance, (beam, table) => beam with { Tolerance = table }),
        Part<BeamDocument>.Of("limits", Optional(() => new LimitsEntry(), LimitParts()),
            beam => beam.Limits, (beam, table) => beam with { Limits = table }),
    ]);

    /// <summary>What may stand in a file, <c>format</c> left out: the document does not hold it.</summary>
    internal static Schema.Table Schema => Document.Schema;

    /// <summary>The content of a document.</summary>
    internal static Content.Table Of(BeamDocument document) => (Content.Table)Document.Write(document)!;

    /// <summary>The document with this content.</summary>
    internal static BeamDocument Read(Content content) => Document.Read(content);

    private static NamedTablesMapping<SectionEntry> Sections() => new(
        Table(() => new SectionEntry { Name = "" }, Cells(Fields.Section)),
        row => row.Name, (row, name) => row with { Name = name });

    private static NamedTablesMapping<MaterialEntry> Materials() => new(
        Table(() => new MaterialEntry { Name = "" },
            [.. Cells(Fields.Material), Part<MaterialEntry>.Of(Fields.MaterialFactors)]),
        row => row.Name, (row, name) => row with { Name = name });

    private static TableRowsMapping<CombinationEntry> Combinations() => Rows(() => new CombinationEntry(),
        [.. Cells(Fields.Combination), Part<CombinationEntry>.Of(Fields.CombinationFactors)]);

    private static TableRowsMapping<RollingEntry> RollingLoads() => Rows(() => new RollingEntry(),
    [
        .. Cells(Fields.Rolling),
        Part<RollingEntry>.Of("axles", Axles(), row => row.Axles, (row, axles) => row with { Axles = axles }),
    ]);

    private static TableRowsMapping<AxleEntry> Axles() =>
        new(Table(() => new AxleEntry(), Cells(Fields.Axle)), inline: true);

    private static ImmutableArray<Part<LimitsEntry>> LimitParts() =>
    [
        .. Cells(Fields.Limits),
        Part<LimitsEntry>.Of(Fields.DeflectionCases),
        Part<LimitsEntry>.Of(Fields.Lasting),
    ];

    private static ImmutableArray<Part<TRow>> Cells<TRow>(ImmutableArray<Field<TRow>> fields) =>
        [.. fields.Select(field => Part<TRow>.Of(field))];

    private static TableMapping<TRow> Table<TRow>(
        Func<TRow> empty, ImmutableArray<Part<TRow>> parts, bool saysByStanding = true) =>
        new(empty, parts, saysByStanding);

    private static OptionalMapping<TRow> Optional<TRow>(Func<TRow> empty, ImmutableArray<Part<TRow>> parts)
        where TRow : class => new(Table(empty, parts));

    private static TableRowsMapping<TRow> Rows<TRow>(Func<TRow> empty, ImmutableArray<Part<TRow>> parts) =>
        new(Table(empty, parts));
}
