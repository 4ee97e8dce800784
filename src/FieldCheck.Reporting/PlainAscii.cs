using System.Text;

namespace FieldCheck.Reporting;

/// <summary>Text that came from a person, made fit for a line of plain ASCII.</summary>
public static class PlainAscii
{
    private const string From = "ÀÁÂÃÅÇÈÉÊËÌÍÎÏÑÒÓÔÕØÙÚÛÝàáâãåçèéêëìíîïñòóôõøùúûýÿ·×–—−‘’“”′″²³⁴\t\n";
    private const string To = "AAAAACEEEEIIIINOOOOOUUUYaaaaaceeeeiiiinooooouuuyy*x---''\"\"'\"234  ";

    // Latin Extended-A, of which no letter is lost but its mark.
    private const string FromFurther =
        "ĀāĂăĄąĆćĈĉĊċČčĎďĐđĒēĔĕĖėĘęĚěĜĝĞğĠġĢģĤĥĦħĨĩĪīĬĭĮįİıĴĵĶķĸĹĺĻļĽľĿŀŁ"
        + "łŃńŅņŇňŊŋŌōŎŏŐőŔŕŖŗŘřŚśŜŝŞşŠšŢţŤťŦŧŨũŪūŬŭŮůŰűŲųŴŵŶŷŸŹźŻżŽžſ";

    private const string ToFurther =
        "AaAaAaCcCcCcCcDdDdEeEeEeEeEeGgGgGgGgHhHhIiIiIiIiIiJjKkkLlLlLlLlL"
        + "lNnNnNnNnOoOoOoRrRrRrSsSsSsSsTtTtTtUuUuUuUuUuUuWwYyYZzZzZzs";

    private static readonly Dictionary<char, string> Spelled = From.Zip(To)
        .Concat(FromFurther.Zip(ToFurther))
        .ToDictionary(pair => pair.First, pair => pair.Second.ToString())
        .Concat(
        [
            new('Ä', "Ae"), new('Ö', "Oe"), new('Ü', "Ue"), new('ä', "ae"), new('ö', "oe"), new('ü', "ue"),
            new('ß', "ss"), new('Æ', "Ae"), new('æ', "ae"), new('±', "+-"), new('½', "1/2"),
            new('¼', "1/4"), new('¾', "3/4"), new('°', " deg"), new('…', "..."), new('€', "EUR"), new('\u00a0', " "),
            new('Œ', "Oe"), new('œ', "oe"), new('Ĳ', "IJ"), new('ĳ', "ij"), new('ŉ', "'n"), new('Ð', "D"), new('ð', "d"),
            new('Þ', "Th"), new('þ', "th"), new('№', "No."), new('→', "->"), new('←', "<-"), new('≤', "<="), new('≥', ">="),
            new('≈', "~"), new('⅓', "1/3"), new('⅔', "2/3"), new('⅛', "1/8"), new('⅜', "3/8"), new('⅝', "5/8"), new('⅞', "7/8"),
        ])
        .ToDictionary();

    /// <summary>The text with accents dropped, signs spelled, and "?" for all else that is not ASCII.</summary>
    /// <param name="text">The text; null is none.</param>
    public static string Of(string? text) => Of(text, keepsLetters: false);

    /// <summary>The same, or only signs spelled, and letters and what cannot be spelled kept.</summary>
    internal static string Of(string? text, bool keepsLetters)
    {
        StringBuilder plain = new();
        foreach (Rune rune in (text ?? "").EnumerateRunes())
        {
            bool isKept = rune.Value is >= ' ' and <= '~' || (keepsLetters && Rune.IsLetter(rune));
            string spelled = isKept ? rune.ToString()
                : rune.IsBmp && Spelled.TryGetValue((char)rune.Value, out string? known) ? known
                : keepsLetters ? rune.ToString()
                : "?";
            // 6 1/2, which without the space would be read as 61/2.
            bool isApart = spelled.Contains('/') && spelled.Length > 1 && plain.Length > 0 && char.IsAsciiDigit(plain[^1]);
            plain.Append(isApart ? " " : "").Append(spelled);
        }

        return plain.ToString();
    }
}
