using System.Text;

namespace FieldCheck.Reporting.Paper;

/// <summary>
/// A number that tells one record from another: FNV-1a of 128 bits, RFC 9923. It guards against nothing, and needs no library
/// of the system's, which a bare machine may lack.
/// </summary>
internal static class PaperDigest
{
    private static readonly UInt128 Basis = new(0x6c62272e07bb0142, 0x62b821756295c58d);
    private static readonly UInt128 Prime = new(0x0000000001000000, 0x000000000000013B);

    internal static UInt128 Of(string text) => Of([text]);

    /// <summary>Of what stands on pages.</summary>
    internal static UInt128 Of(IEnumerable<PaperPage> pages) => Of(pages.SelectMany(page => page.Marks).Select(mark => mark switch
    {
        PaperMark.Words words => words.Text,
        PaperMark.Drawing drawing => drawing.Element?.Description ?? "",
        _ => "",
    }));

    /// <summary>Six capital letters of it.</summary>
    internal static string Letters(UInt128 digest) => string.Create(6, digest, (letters, rest) =>
    {
        for (int i = 0; i < letters.Length; i++)
        {
            letters[i] = (char)('A' + (int)(rest % 26));
            rest /= 26;
        }
    });

    private static UInt128 Of(IEnumerable<string> texts)
    {
        UInt128 digest = Basis;
        foreach (byte part in texts.SelectMany(Encoding.UTF8.GetBytes))
        {
            digest = unchecked((digest ^ part) * Prime);
        }

        return digest;
    }
}
