namespace FieldCheck.Sheet.Reading;

/// <summary>
/// Works out a text: a unit binds to the number before it, then * and /, then + and -; brackets; one ± at the end.
/// </summary>
internal static class QuantityGrammar
{
    private const int DeepestNesting = 32;

    /// <summary>Reads the whole text.</summary>
    internal static bool TryMeasured(ref TextCursor cursor, out Measured measured)
    {
        measured = default;
        if (!TrySum(ref cursor, out Term value))
        {
            return false;
        }

        measured = new Measured(value, null);
        if (Symbols.StartsSpread(cursor))
        {
            cursor.Position += cursor.Current == Symbols.PlusMinus ? 1 : 2;
            if (!TrySum(ref cursor, out Term spread))
            {
                return false;
            }

            measured = new Measured(value, spread);
        }

        return cursor.AtEnd || FailLeftOver(ref cursor);
    }

    private static bool TrySum(ref TextCursor cursor, out Term sum)
    {
        if (!TryProduct(ref cursor, out sum))
        {
            return false;
        }

        while (Symbols.IsSumSign(cursor.Current) && !Symbols.StartsSpread(cursor))
        {
            bool subtract = Symbols.IsMinus(cursor.Current);
            if (!subtract && cursor.After(1) == '/')
            {
                return cursor.Fail(ReadingMessages.PlusSlash, cursor.Position);
            }

            cursor.Position++;
            Term left = sum;
            if (!TryProduct(ref cursor, out Term right)
                || !TermArithmetic.TryAdd(ref cursor, left, right, subtract, out sum))
            {
                return false;
            }
        }

        return true;
    }

    private static bool TryProduct(ref TextCursor cursor, out Term product)
    {
        if (!TrySigned(ref cursor, out product))
        {
            return false;
        }

        while (Symbols.IsTimes(cursor.Current) || cursor.Current == '/')
        {
            bool divide = cursor.Current == '/';
            int sign = cursor.Position++;
            Term left = product;
            if (divide && left.IsBare && char.IsLetter(cursor.Current))
            {
                return cursor.Fail(ReadingMessages.PerAlone(UnitAhead(cursor)), sign);
            }

            if (!TrySigned(ref cursor, out Term right))
            {
                return false;
            }

            bool reads = divide
                ? TermArithmetic.TryDivide(ref cursor, left, right, out product)
                : TermArithmetic.TryMultiply(ref cursor, left, right, out product);
            if (!reads)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Leaves the cursor past the spaces that follow: the callers look straight at the next sign.</summary>
    private static bool TrySigned(ref TextCursor cursor, out Term term)
    {
        cursor.SkipSpaces();
        int start = cursor.Position;
        bool negative = false;
        while (Symbols.IsSumSign(cursor.Current) && !Symbols.StartsSpread(cursor))
        {
            negative ^= Symbols.IsMinus(cursor.Current);
            cursor.Position++;
            cursor.SkipSpaces();
        }

        bool reads = cursor.Current == '('
            ? TryBracket(ref cursor, out term)
            : NumberGrammar.TryRead(ref cursor, out term);
        term = term with { Value = negative ? -term.Value : term.Value, Start = start };
        cursor.SkipSpaces();
        return reads;
    }

    private static bool TryBracket(ref TextCursor cursor, out Term term)
    {
        term = default;
        int start = cursor.Position;
        if (++cursor.Depth > DeepestNesting)
        {
            return cursor.Fail(ReadingMessages.NestedTooDeep(DeepestNesting), start);
        }

        cursor.Position++;
        if (!TrySum(ref cursor, out Term inner))
        {
            return false;
        }

        if (cursor.Current != ')')
        {
            return cursor.AtEnd
                ? cursor.Fail(ReadingMessages.BracketNotClosed, start)
                : FailLeftOver(ref cursor);
        }

        cursor.Position++;
        cursor.Depth--;
        term = inner with { Start = start, End = cursor.Position, HalfDigit = 0, IsWritten = false };
        TextCursor ahead = cursor;
        ahead.SkipSpaces();
        return !Symbols.StartsUnit(ahead)
            || cursor.Fail(ReadingMessages.UnitAfterBracket(cursor.Since(start), UnitAhead(ahead)), ahead.Position);
    }

    private static string UnitAhead(TextCursor ahead)
    {
        string run = UnitGrammar.Run(ref ahead);
        return run.Length > 0 ? run : Symbols.IsFootMark(ahead.Current) ? "ft" : "in";
    }

    private static bool FailLeftOver(ref TextCursor cursor)
    {
        int offset = cursor.Position;
        string message = cursor.Current switch
        {
            ')' => ReadingMessages.BracketNotOpened,
            '±' or '+' => ReadingMessages.SpreadNotLast,
            _ when Symbols.StartsNumber(cursor) => ReadingMessages.SideBySide(Found.At(cursor)),
            _ => ReadingMessages.SignExpected(Found.At(cursor)),
        };
        return cursor.Fail(message, offset);
    }
}
