using System.Globalization;
using CsCheck;
using FieldCheck.Reporting.Pages;
using FieldCheck.Sheet.Document;
using FieldCheck.Tests.Hostile;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;
using UglyToad.PdfPig.Tokens;

namespace FieldCheck.Reporting.Tests.Pages;

/// <summary>
/// Whatever stands in a beam file, nothing that commands, hides or reorders stands in its record as PDF: not on a page, nor in
/// what the document tells of itself, its bookmarks, or the words for whoever cannot see a drawing. Read back by another
/// library than the one that wrote it.
/// </summary>
public sealed class HostilePdfTests
{
    // How many times as many as at every run.
    private static readonly int Longer = int.Parse(
        Environment.GetEnvironmentVariable("FIELDCHECK_LONGER") ?? "1", CultureInfo.InvariantCulture);

    private static readonly Gen<BeamDocument> Beam =
        HostileText.Any.Array[HostileBeam.Texts].Select(texts => HostileBeam.Of(texts));

    [Fact]
    public void RecordOfABeam_HoldsNothingForbidden() => Gen.Select(Beam, HostileText.Any).Sample(
        (beam, file) => AssertHarmless(Records.Of(Sheets.Run(beam), Records.Request with { File = file })),
        iter: 5 * Longer,
        threads: 1);

    /// <summary>Whatever a record says of its own, too: paper trusts nobody before it.</summary>
    [Fact]
    public void AnyRecord_HoldsNothingForbidden() => HostileText.Any.Select(hostile => "x" + hostile).Sample(
        text => AssertHarmless(new CheckRecord(
            text, [new RecordBlock.Facts([new("prepared by", text), new("file", text)]), .. Records.OfEveryKind(text).Blocks])),
        iter: 30 * Longer,
        threads: 1);

    private static void AssertHarmless(CheckRecord record)
    {
        using PdfDocument pdf = PdfDocument.Open(PdfRecord.Of(record));

        Assert.All(pdf.GetPages(), page => AssertHarmless(string.Concat(page.Letters.Select(letter => letter.Value)), "page"));
        AssertHarmless(pdf.Information.Title!, "title");

        // There is none where all of the name was signs that only tell how others look.
        AssertHarmless(pdf.Information.Author ?? "none", "author");
        Assert.True(pdf.TryGetBookmarks(out Bookmarks? bookmarks));
        Assert.All(bookmarks.GetNodes(), node => AssertHarmless(node.Title, "bookmark"));
        string[] described = [.. Objects(pdf).OfType<DictionaryToken>().SelectMany(Descriptions)];
        Assert.Equal(record.Blocks.OfType<RecordBlock.Figure>().Count(), described.Length);
        Assert.All(described, text => AssertHarmless(text, "description"));
        Assert.All(Objects(pdf).SelectMany(Texts), text => Assert.Null(HostileText.ForbiddenIn(text)));
    }

    private static IEnumerable<IToken> Objects(PdfDocument pdf) =>
        pdf.Structure.CrossReferenceTable.ObjectOffsets.Keys.Select(reference => pdf.Structure.GetObject(reference).Data);

    private static IEnumerable<string> Descriptions(DictionaryToken dictionary) =>
        dictionary.Data.TryGetValue("Alt", out IToken? value) ? Texts(value) : [];

    /// <summary>Every text of an object, wherever it stands in it.</summary>
    private static IEnumerable<string> Texts(IToken token) => token switch
    {
        StringToken text => [text.Data],
        HexToken text => [text.Data],
        ArrayToken array => array.Data.SelectMany(Texts),
        DictionaryToken dictionary => dictionary.Data.Values.SelectMany(Texts),
        StreamToken stream => Texts(stream.StreamDictionary),
        _ => [],
    };

    private static void AssertHarmless(string text, string where)
    {
        Assert.NotEmpty(text);
        Assert.True(HostileText.ForbiddenIn(text) is null, $"{where}: {HostileText.ForbiddenIn(text)}");
        Assert.DoesNotContain('\n', text);
    }
}
