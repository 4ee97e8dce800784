namespace FieldCheck.Fuzz;

/// <summary>Changes texts by characters and pieces, whatever language they are in.</summary>
internal static class TextChange
{
    private static readonly string[] Odd =
    [
        "\0", "\u0001", "\t", "\n", "\r", "\r\n", "\u001b[2J", "\u007f", "\u0085", "\u009b", "\u00a0", "\u200b", "\u200e",
        "\u202e", "\u2028", "\u2029", "\u2066", "\ufeff", "\ufffd", "\ud800", "\udc00", "\U000E0041", "\U0010FFFF",
        "e\u0301", "é", "梁", "𝄞", "٣", "Ⅷ", "½", "−", "′", "″", "±", "×", "·", "²", "∞", "İ", "ſ", "K",
    ];

    /// <summary>One change by chance.</summary>
    internal static string One(string text, string other, IReadOnlyList<string> words, Random random)
    {
        int at = random.Next(text.Length + 1);
        int cut = Math.Min(Length(random), text.Length - at);
        return random.Next(9) switch
        {
            0 => text.Remove(at, cut),
            1 or 2 => text.Insert(at, words[random.Next(words.Count)]),
            3 => text.Remove(at, cut).Insert(at, words[random.Next(words.Count)]),
            4 => text.Insert(at, Odd[random.Next(Odd.Length)]),
            5 => text.Insert(at, Piece(other, random)),
            6 => text.Insert(at, text.Substring(at, cut)),
            7 => text.Insert(at, ((char)random.Next(random.Next(2) == 0 ? 128 : 65536)).ToString()),
            _ => Repeated(text, at, cut, random),
        };
    }

    /// <summary>A piece of a text.</summary>
    internal static string Piece(string text, Random random)
    {
        int at = random.Next(text.Length + 1);
        return text.Substring(at, Math.Min(Length(random), text.Length - at));
    }

    // Mostly short, sometimes long.
    private static int Length(Random random) => random.Next(1 << random.Next(1, 8));

    private static string Repeated(string text, int at, int length, Random random)
    {
        int times = 1 << random.Next(1, random.Next(20) == 0 ? 14 : 5);
        return length * times > 1 << 20
            ? text
            : text.Insert(at, string.Concat(Enumerable.Repeat(text.Substring(at, length), times)));
    }
}
