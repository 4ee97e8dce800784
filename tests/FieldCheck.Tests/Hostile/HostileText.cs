using System.Globalization;
using System.Text;
using CsCheck;

namespace FieldCheck.Tests.Hostile;

/// <summary>Text made to command a terminal, to look like something else, or to be taken for markup.</summary>
internal static class HostileText
{
    private static readonly string[] Pieces =
    [
        "\u001b[2J", "\u001b]0;owned\u0007", "\u001bP1$r\u001b\\", "\u009b31m", "\u0090x\u009c", "\0", "\b\b\b", "\u007f", "\u0085", "\u0007",
        "\u202egnp.exe", "\u202d", "\u2066x", "\u2067y\u2069", "\u200f", "\u061c", "\u200b", "\u200d", "\u2060", "\ufeff", "\u00ad", "\u034f",
        "\u115f", "\u3164", "\uffa0", "\u180b", "\u180e", "\ufe0f", "\U000E0041", "\U000E0101", "\u2028", "\u2029", "\u2065", "\ufff9",
        "<script>alert(1)</script>", "\" onmouseover=\"alert(1)", "' onload='x", "</title>", "]]>", "<!--", "-->", "&lt;", "&#x1b;",
        "<img src=x>", "```", "| a |", "# h", "1. x", "- x", "[a](javascript:alert(1))", "](http://a.b)", "<http://a.b>", "\\", "{{x}}", "$(x)",
        "%0a", "=1+1", "\r", "\n", "\t", "plain", "é", "梁", "𝄞", "e\u0301",
    ];

    /// <summary>One to six pieces.</summary>
    internal static Gen<string> Any { get; } =
        Gen.Int[0, Pieces.Length - 1].Array[1, 6].Select(chosen => string.Concat(chosen.Select(number => Pieces[number])));

    /// <summary>
    /// The first sign that must not come out, as its code point; null where there is none. Line feeds may.
    /// </summary>
    /// <remarks>
    /// Unicode 16: the general categories Cc, Cf, Cs, Zl and Zp (UnicodeData.txt), and the code points with the property
    /// Default_Ignorable_Code_Point (DerivedCoreProperties.txt), which a screen may pass over.
    /// </remarks>
    internal static string? ForbiddenIn(string text)
    {
        for (int at = 0; at < text.Length; at++)
        {
            bool isWhole = Rune.TryGetRuneAt(text, at, out Rune rune);
            if (!isWhole || (text[at] != '\n' && (IsIgnorable(rune.Value) || Rune.GetUnicodeCategory(rune)
                is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate
                or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator)))
            {
                return $"U+{(isWhole ? rune.Value : text[at]):X4} after '{text[Math.Max(0, at - 40)..at]}'";
            }

            at += rune.Utf16SequenceLength - 1;
        }

        return null;
    }

    private static bool IsIgnorable(int code) => code
        is 0x00AD or 0x034F or 0x061C or 0x115F or 0x1160 or 0x17B4 or 0x17B5 or (>= 0x180B and <= 0x180F)
        or (>= 0x200B and <= 0x200F) or (>= 0x202A and <= 0x202E) or (>= 0x2060 and <= 0x206F) or 0x3164
        or (>= 0xFE00 and <= 0xFE0F) or 0xFEFF or 0xFFA0 or (>= 0xFFF0 and <= 0xFFF8) or (>= 0x1BCA0 and <= 0x1BCA3)
        or (>= 0x1D173 and <= 0x1D17A) or (>= 0xE0000 and <= 0xE0FFF);
}
