using System.IO.Compression;
using PdfSharp.Pdf;

namespace FieldCheck.Reporting.Paper;

/// <summary>
/// Takes the bytes of a PDF file, and before the first of them takes out of the document what the library drew from a clock
/// or at random, so that the same record gives the same bytes.
/// </summary>
/// <remarks>
/// The library tags its font subsets at random, and when it saves it adds metadata with the time, the time zone and random
/// identifiers; between that and the first byte there is no other place to step in. What it packs lacks the checksum that
/// the format asks for (RFC 1950), so the streams come unpacked and are packed here.
/// </remarks>
/// <param name="document">The document.</param>
/// <param name="tag">Six capital letters: the tag of its font subsets.</param>
internal sealed class PdfStamp(PdfDocument document, string tag) : MemoryStream
{
    private static readonly string[] FontNames = ["/BaseFont", "/FontName"];

    private bool _isStamped;

    public override void Write(byte[] buffer, int offset, int count)
    {
        Stamp();
        base.Write(buffer, offset, count);
    }

    private void Stamp()
    {
        if (_isStamped)
        {
            return;
        }

        _isStamped = true;
        foreach (PdfDictionary dictionary in document.Internals.GetAllObjects().OfType<PdfDictionary>())
        {
            if (dictionary is PdfMetadata metadata)
            {
                document.Internals.Catalog.Elements.Remove("/Metadata");
                document.Internals.RemoveObject(metadata);
            }

            Pack(dictionary);
            foreach (string key in FontNames)
            {
                Tag(dictionary, key);
            }
        }
    }

    private static void Pack(PdfDictionary dictionary)
    {
        if (dictionary.Stream is not PdfDictionary.PdfStream stream)
        {
            return;
        }

        using MemoryStream packed = new();
        using (ZLibStream packing = new(packed, CompressionLevel.SmallestSize))
        {
            packing.Write(stream.Value);
        }

        stream.Value = packed.ToArray();
        dictionary.Elements.SetName("/Filter", "/FlateDecode");
    }

    private void Tag(PdfDictionary dictionary, string key)
    {
        string name = dictionary.Elements.GetName(key);
        int plus = name.IndexOf('+', StringComparison.Ordinal);
        if (plus == tag.Length + 1)
        {
            dictionary.Elements.SetName(key, $"/{tag}{name[plus..]}");
        }
    }
}
