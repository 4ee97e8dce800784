using System.Globalization;

namespace FieldCheck.Sheet.Reading;

/// <summary>Reads "12", "12.50", ".5" and "29e6". The comma is no part of any number.</summary>
internal static class DecimalGrammar
{
    internal static bool TryRead(ref TextCursor cursor, out Magnitude magnitude)
    {
        magnitude = default;
        int start = cursor.Position;
        SkipDigits(ref cursor);
        string digits = cursor.Since(start);
        if (digits.Contains(','))
        {
            return cursor.Fail(ReadingMessages.Comma(digits), start);
        }

        int exponent = SkipExponent(ref cursor);
        string written = cursor.Since(start);
        if (!TryParse(written, out double value))
        {
            return cursor.Fail(ReadingMessages.NotANumber(written), start);
        }

        if (!double.IsFinite(value))
        {
            return cursor.Fail(ReadingMessages.TooLarge, start);
        }

        if (value == 0 && digits.AsSpan().ContainsAnyInRange('1', '9'))
        {
            return cursor.Fail(ReadingMessages.TooSmall, start);
        }

        int point = digits.IndexOf('.');
        int decimals = point < 0 ? 0 : digits.Length - point - 1;
        magnitude = new(value, HalfDigit(exponent - decimals), written.AsSpan().IndexOfAnyExceptInRange('0', '9') < 0);
        return true;
    }

    private static void SkipDigits(ref TextCursor cursor)
    {
        while (char.IsAsciiDigit(cursor.Current) || cursor.Current == '.'
            || (cursor.Current == ',' && char.IsAsciiDigit(cursor.After(1))))
        {
            cursor.Position++;
        }
    }

    /// <summary>Steps over "e6" or "e-6", where there is one.</summary>
    /// <returns>The exponent, or 0 without one or with one beyond any double's.</returns>
    private static int SkipExponent(ref TextCursor cursor)
    {
        if (cursor.Current is not ('e' or 'E'))
        {
            return 0;
        }

        int sign = Symbols.IsSumSign(cursor.After(1)) ? 1 : 0;
        if (!char.IsAsciiDigit(cursor.After(1 + sign)))
        {
            return 0;
        }

        int start = cursor.Position + 1;
        cursor.Position = start + sign;
        while (char.IsAsciiDigit(cursor.Current))
        {
            cursor.Position++;
        }

        string written = cursor.Since(start).Replace('−', '-');
        return int.TryParse(written, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int exponent)
            ? exponent
            : 0;
    }

    private static bool TryParse(string written, out double value) =>
        double.TryParse(
            written.Replace('−', '-'),
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture,
            out value);

    // Parsed rather than raised to a power, whose last digit can be off. "0e999" has no digit to speak of.
    private static double HalfDigit(int place)
    {
        string written = string.Create(CultureInfo.InvariantCulture, $"5E{place - 1}");
        double half = double.Parse(written, NumberStyles.Float, CultureInfo.InvariantCulture);
        return double.IsFinite(half) ? half : 0;
    }
}
