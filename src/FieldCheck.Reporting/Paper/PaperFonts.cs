using System.IO.Compression;
using PdfSharp.Fonts;

namespace FieldCheck.Reporting.Paper;

/// <summary>The fonts that travel with the program; never those of the machine, so that a record looks alike everywhere.</summary>
internal sealed class PaperFonts : IFontResolver
{
    internal const string Sans = "DejaVu Sans";
    internal const string Mono = "DejaVu Sans Mono";

    private PaperFonts()
    {
    }

    // The library takes one resolver for the whole process, and the same one again.
    internal static PaperFonts Instance { get; } = new();

    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) => new(familyName switch
    {
        Mono => "DejaVuSansMono",
        _ => bold ? "DejaVuSans-Bold" : "DejaVuSans",
    });

    public byte[]? GetFont(string faceName)
    {
        using Stream packed = typeof(PaperFonts).Assembly.GetManifestResourceStream($"fonts/{faceName}.ttf.gz")
            ?? throw new InvalidOperationException($"The font {faceName} is not among the resources.");
        using GZipStream unpacking = new(packed, CompressionMode.Decompress);
        using MemoryStream font = new();
        unpacking.CopyTo(font);
        return font.ToArray();
    }
}
