using FieldCheck.Reporting.Pages;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Reporting.Tests.Pages;

/// <summary>Records to look at.</summary>
internal static class Records
{
    internal const string Digest = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    internal static RecordRequest Request { get; } = new("beam.toml", Digest, "9.8.7") { IsWorkingShort = true };

    internal static CheckRecord OfPreset(string name) => Of(Sheets.Preset(name));

    internal static CheckRecord Of(BeamDocument document) => Of(Sheets.Run(document));

    internal static CheckRecord Of(Calculation calculation) => Of(calculation, Request);

    internal static CheckRecord Of(Calculation calculation, RecordRequest request) =>
        RecordBuilder.Of(calculation, SectionCatalogue.BuiltIn(), request);

    /// <summary>A record with one block of every kind, some of it as bad as text from a file can be.</summary>
    internal static CheckRecord OfEveryKind(string text) => new(
        text,
        [
            new RecordBlock.Heading(2, text),
            new RecordBlock.Facts([new("job", text), new("place", "")]),
            new RecordBlock.Heading(3, text),
            new RecordBlock.Paragraph(text),
            new RecordBlock.Paragraph(text, IsWarning: true),
            new RecordBlock.Sentences([text, "second"]),
            new RecordBlock.Table(text, [new(text), new("at", IsNumber: true)], [[text, "1.5"], ["", "2"]]),
            new RecordBlock.Figure(
                text,
                new(
                    100,
                    50,
                    [
                        new Reporting.Pictures.PictureMark.Line([new(0, 1), new(100, 1)], 1, IsDashed: true),
                        new Reporting.Pictures.PictureMark.Area([new(0, 0), new(4, 0), new(4, 4)], 0.5),
                        new Reporting.Pictures.PictureMark.Circle(new(5, 5), 2, 0.5),
                        new Reporting.Pictures.PictureMark.Text(new(5, 5), text, Reporting.Pictures.TextAnchor.End, 8),
                    ]),
                ["===o==="],
                text),
            new RecordBlock.Lines([new("V = 1 + 2 = 3"), new(""), new("  closes")]),
            new RecordBlock.Signatures([new("prepared by", text), new("checked by", "")]),
        ]);
}
