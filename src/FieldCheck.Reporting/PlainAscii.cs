using System.Text;

namespace FieldCheck.Reporting;

/// <summary>Text that came from a person, made fit for a line of plain ASCII.</summary>
public static class PlainAscii
{
    private const string From = "ÀÁÂÃÅÇÈÉÊËÌÍÎÏÑÒÓÔÕØÙÚÛÝàáâãåçèéêëìíîïñòóôõøùúûýÿ·×–—−‘’“”′″²³⁴\t\n";
    private const string To = "AAAAACEEEEIIIINOOOOOUUUYaaaaaceeeeiiiinooooouuuyy*x---''\"\"'\"234  ";

    private static readonly Dictionary<char, string> Spelled = From.Zip(To)
        .ToDictionary(pair => pair.First, pair => pair.Second.ToString())
        .Concat(
        [
            new('Ä', "Ae"), new('Ö', "Oe"), new('Ü', "Ue"), new('ä', "ae"), new('ö', "oe"), new('ü', "ue"),
            new('ß', "ss"), new('Æ', "Ae"), new('æ', "ae"), new('±', "+-"), new('½', "1/2"),
            new('¼', "1/4"), new('¾', "3/4"), new('°', " deg"), new('…', "..."), new('€', "EUR"), new('\u00a0', " "),
        ])
        .ToDictionary();

    /// <summary>The text with accents dropped, signs spelled, and "?" for all else that is not ASCII.</summary>
    /// <param name="text">The text; null is none.</param>
    public static string Of(string? text)
    {
        StringBuilder plain = new();
        foreach (Rune rune in (text ?? "").EnumerateRunes())
        {
            _ = rune.Value is >= ' ' and <= '~'
                ? plain.Append((char)rune.Value)
                : plain.Append(rune.IsBmp && Spelled.TryGetValue((char)rune.Value, out string? known) ? known : "?");
        }

        return plain.ToString();
    }
}
