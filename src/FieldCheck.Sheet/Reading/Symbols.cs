namespace FieldCheck.Sheet.Reading;

/// <summary>The signs and marks that are read, in the forms that keyboards and word processors give them.</summary>
internal static class Symbols
{
    internal const char PlusMinus = '±';

    internal static bool IsMinus(char c) => c is '-' or '−';

    internal static bool IsSumSign(char c) => c == '+' || IsMinus(c);

    internal static bool IsTimes(char c) => c is '*' or '×' or '·';

    internal static bool IsFootMark(char c) => c is '\'' or '′' or '’';

    internal static bool IsInchMark(char c) => c is '"' or '″' or '”';

    internal static double? Vulgar(char c) => c switch
    {
        '½' => 0.5,
        '¼' => 0.25,
        '¾' => 0.75,
        _ => null,
    };

    internal static bool StartsNumber(in TextCursor cursor) =>
        char.IsAsciiDigit(cursor.Current)
        || (cursor.Current is '.' or ',' && char.IsAsciiDigit(cursor.After(1)))
        || Vulgar(cursor.Current) is not null;

    internal static bool StartsSpread(in TextCursor cursor) =>
        cursor.Current == PlusMinus || (cursor.Current == '+' && IsMinus(cursor.After(1)));

    internal static bool StartsUnit(in TextCursor cursor) =>
        IsUnitLetter(cursor.Current) || IsFootMark(cursor.Current) || IsInchMark(cursor.Current);

    /// <summary>Letters, and signs that people write for units, so that the refusal can name the whole of it.</summary>
    internal static bool IsUnitLetter(char c) => char.IsLetter(c) || c is '%' or '#' or '°';
}
