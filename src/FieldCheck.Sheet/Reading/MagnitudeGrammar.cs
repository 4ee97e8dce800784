using System.Globalization;

namespace FieldCheck.Sheet.Reading;

/// <summary>Reads a number with the fraction of a tape: "5 1/4", "1/4", "5½", or a plain one.</summary>
/// <remarks>A fraction has 2, 4, 8, 16, 32 or 64 below the line and no spaces round it; the rest is division.</remarks>
internal static class MagnitudeGrammar
{
    internal static bool TryRead(ref TextCursor cursor, out Magnitude magnitude)
    {
        magnitude = default;
        if (TryVulgar(ref cursor, out double part))
        {
            magnitude = Magnitude.Fraction(part);
            return true;
        }

        int start = cursor.Position;
        if (!DecimalGrammar.TryRead(ref cursor, out Magnitude number))
        {
            return false;
        }

        magnitude = number;
        return !number.IsWhole || TryFraction(ref cursor, start, ref magnitude);
    }

    private static bool TryFraction(ref TextCursor cursor, int start, ref Magnitude whole)
    {
        if (cursor.Current == '/' && char.IsAsciiDigit(cursor.After(1)))
        {
            return TryOverLine(ref cursor, start, ref whole);
        }

        TextCursor ahead = cursor;
        ahead.SkipSpaces();
        if (TryVulgar(ref ahead, out double part))
        {
            whole = Magnitude.Fraction(whole.Value + part);
            cursor = ahead;
            return true;
        }

        return ahead.Position == cursor.Position || TryMixed(ref cursor, ahead, start, ref whole);
    }

    /// <summary>The number just read is the upper part of "b/c", unless this divides plain numbers.</summary>
    private static bool TryOverLine(ref TextCursor cursor, int start, ref Magnitude upper)
    {
        TextCursor ahead = cursor;
        if (TryLower(ref ahead, out int lower))
        {
            cursor = ahead;
            upper = Magnitude.Fraction(upper.Value / lower);
            return true;
        }

        string fraction = ahead.Since(start);
        string above = cursor.Since(start);
        ahead.SkipSpaces();
        return !Symbols.StartsUnit(ahead)
            || cursor.Fail(ReadingMessages.NotATapeFraction(fraction, above, UnitAhead(ahead)), start);
    }

    /// <summary>After a whole number and a space: "1/4" joins it, a lone number does not.</summary>
    private static bool TryMixed(ref TextCursor cursor, TextCursor ahead, int start, ref Magnitude whole)
    {
        int upperStart = ahead.Position;
        while (char.IsAsciiDigit(ahead.Current))
        {
            ahead.Position++;
        }

        string above = ahead.Since(upperStart);
        if (above.Length == 0 || ahead.Current != '/' || !char.IsAsciiDigit(ahead.After(1)))
        {
            return true;
        }

        double upper = double.Parse(above, NumberStyles.None, CultureInfo.InvariantCulture);
        bool isTapeFraction = TryLower(ref ahead, out int lower);
        string fraction = ahead.Since(upperStart);
        if (!isTapeFraction)
        {
            ahead.SkipSpaces();
            string unit = UnitAhead(ahead);
            string before = cursor.Since(start) + " " + unit + " + " + above;
            return cursor.Fail(ReadingMessages.NotATapeFraction(fraction, before, unit), upperStart);
        }

        if (upper >= lower)
        {
            return cursor.Fail(ReadingMessages.FractionNotBelowOne(fraction, cursor.Since(start)), upperStart);
        }

        whole = Magnitude.Fraction(whole.Value + (upper / lower));
        cursor = ahead;
        return true;
    }

    /// <summary>Reads "/c"; steps over what stands there even where it is not the lower part of a fraction.</summary>
    private static bool TryLower(ref TextCursor cursor, out int lower)
    {
        int start = ++cursor.Position;
        while (char.IsAsciiDigit(cursor.Current) || cursor.Current is '.' or ',')
        {
            cursor.Position++;
        }

        lower = cursor.Since(start) switch { "2" => 2, "4" => 4, "8" => 8, "16" => 16, "32" => 32, "64" => 64, _ => 0 };
        return lower > 0 && !(cursor.Current is 'e' or 'E' && char.IsAsciiDigit(cursor.After(1)));
    }

    private static string UnitAhead(TextCursor ahead)
    {
        if (Symbols.IsFootMark(ahead.Current))
        {
            return "ft";
        }

        string run = UnitGrammar.Run(ref ahead);
        return run.Length == 0 ? "in" : run;
    }

    private static bool TryVulgar(ref TextCursor cursor, out double value)
    {
        double? part = Symbols.Vulgar(cursor.Current);
        value = part ?? 0;
        cursor.Position += part is null ? 0 : 1;
        return part is not null;
    }
}
