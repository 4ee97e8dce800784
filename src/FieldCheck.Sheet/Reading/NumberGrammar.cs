using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Reading;

/// <summary>Reads one number with the unit that binds to it.</summary>
internal static class NumberGrammar
{
    internal static bool TryRead(ref TextCursor cursor, out Term term)
    {
        term = default;
        int start = cursor.Position;
        if (!Symbols.StartsNumber(cursor))
        {
            return FailNoNumber(ref cursor);
        }

        if (!MagnitudeGrammar.TryRead(ref cursor, out Magnitude number))
        {
            return false;
        }

        TextCursor ahead = cursor;
        ahead.SkipSpaces();
        if (!Symbols.StartsUnit(ahead))
        {
            term = new Term(number.Value, default, start, cursor.Position)
            {
                HalfDigit = number.HalfDigit,
                IsWritten = true,
            };
            return true;
        }

        cursor = ahead;
        return TryWithUnit(ref cursor, number, start, out term) && IsInRange(ref cursor, number, term);
    }

    private static bool TryWithUnit(ref TextCursor cursor, Magnitude number, int start, out Term term)
    {
        term = default;
        int unitStart = cursor.Position;
        if (Symbols.IsFootMark(cursor.Current))
        {
            cursor.Position++;
            return FeetAndInchesGrammar.TryRead(ref cursor, number, start, marked: true, out term);
        }

        string run = Symbols.IsInchMark(cursor.Current) ? InchMark(ref cursor) : UnitGrammar.Run(ref cursor);
        if (run.Equals("ft", StringComparison.OrdinalIgnoreCase))
        {
            return FeetAndInchesGrammar.TryRead(ref cursor, number, start, marked: false, out term);
        }

        if (!UnitTable.TryFind(run, out Unit unit))
        {
            return cursor.Fail(UnknownUnit.Message(run, number.Value, cursor.Wanted), unitStart);
        }

        term = new Term(unit.ToSi(number.Value), unit.Dimension, start, cursor.Position)
        {
            HalfDigit = number.HalfDigit * unit.Factor,
            HasUnit = true,
            UnitStart = unitStart,
            IsWritten = true,
            IsShare = unit.IsShare,
        };
        return true;
    }

    /// <summary>The unit has carried the number neither beyond the doubles nor down to nothing.</summary>
    private static bool IsInRange(ref TextCursor cursor, Magnitude number, Term term)
    {
        if (!double.IsFinite(term.Value))
        {
            return cursor.Fail(ReadingMessages.TooLarge, term.Start);
        }

        return term.Value != 0 || number.Value == 0 || cursor.Fail(ReadingMessages.TooSmall, term.Start);
    }

    private static string InchMark(ref TextCursor cursor)
    {
        cursor.Position++;
        return "in";
    }

    private static bool FailNoNumber(ref TextCursor cursor) => cursor.AtEnd
        ? cursor.Fail(ReadingMessages.EndsTooSoon, cursor.Text.TrimEnd().Length)
        : cursor.Fail(Expected(cursor), cursor.Position);

    private static string Expected(in TextCursor cursor) =>
        string.IsNullOrWhiteSpace(cursor.Text[..cursor.Position])
            ? ReadingMessages.WrongKind(cursor.Wanted, Found.At(cursor))
            : ReadingMessages.NumberExpected(Found.At(cursor));
}
