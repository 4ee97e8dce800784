using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Reading;

/// <summary>Reads what may follow feet: "6 1/2 in" after a space, and after a foot mark also with a dash.</summary>
internal static class FeetAndInchesGrammar
{
    private const double InchesPerFoot = 12;

    /// <summary>Reads on after the foot mark or "ft".</summary>
    /// <param name="cursor">Just past the mark or unit.</param>
    /// <param name="feet">The number before it.</param>
    /// <param name="start">Where that number starts.</param>
    /// <param name="marked">A foot mark stands there, so that a dash joins.</param>
    /// <param name="term">The whole length.</param>
    internal static bool TryRead(ref TextCursor cursor, Magnitude feet, int start, bool marked, out Term term)
    {
        term = InFeet(feet, start, cursor.Position);
        TextCursor ahead = cursor;
        ahead.SkipSpaces();
        bool dashed = Symbols.IsMinus(ahead.Current);
        if (dashed)
        {
            ahead.Position++;
            ahead.SkipSpaces();
        }

        if (!Symbols.StartsNumber(ahead))
        {
            return true;
        }

        int inchStart = ahead.Position;
        bool reads = MagnitudeGrammar.TryRead(ref ahead, out Magnitude inches);
        if (!reads && !dashed)
        {
            return cursor.Fail(ahead.Fault!.Text, ahead.Fault.Offset);
        }

        string written = ahead.Since(inchStart);
        if (!reads || !TrySkipInch(ref ahead))
        {
            return dashed || IsFollowedByUnit(ahead) || cursor.Fail(ReadingMessages.InchesUnmarked(written), inchStart);
        }

        if (dashed && !marked)
        {
            string joined = cursor.Since(start);
            return cursor.Fail(ReadingMessages.JoinOrSubtract(joined, written), start);
        }

        return TryJoin(ref cursor, ahead, feet, inches, (start, inchStart), out term);
    }

    private static bool TryJoin(
        ref TextCursor cursor,
        TextCursor ahead,
        Magnitude feet,
        Magnitude inches,
        (int Feet, int Inches) starts,
        out Term term)
    {
        Unit inch = UnitTable.Of("in");
        double value = inch.ToSi((InchesPerFoot * feet.Value) + inches.Value);
        term = new Term(value, inch.Dimension, starts.Feet, ahead.Position)
        {
            HalfDigit = inches.HalfDigit * inch.Factor,
            HasUnit = true,
            IsWritten = true,
        };
        if (!feet.IsWhole)
        {
            return cursor.Fail(ReadingMessages.FeetNotWhole(cursor.Since(starts.Feet)), starts.Feet);
        }

        if (inches.Value >= InchesPerFoot)
        {
            return cursor.Fail(ReadingMessages.InchesTooMany(ahead.Since(starts.Inches)), starts.Inches);
        }

        cursor = ahead;
        return true;
    }

    private static Term InFeet(Magnitude feet, int start, int end)
    {
        Unit foot = UnitTable.Of("ft");
        return new Term(foot.ToSi(feet.Value), foot.Dimension, start, end)
        {
            HalfDigit = feet.HalfDigit * foot.Factor,
            HasUnit = true,
            IsWritten = true,
        };
    }

    private static bool TrySkipInch(ref TextCursor cursor)
    {
        TextCursor ahead = cursor;
        ahead.SkipSpaces();
        if (Symbols.IsInchMark(ahead.Current))
        {
            ahead.Position++;
            cursor = ahead;
            return true;
        }

        if (!UnitGrammar.Run(ref ahead).Equals("in", StringComparison.OrdinalIgnoreCase))
        {
            return false;
        }

        cursor = ahead;
        return true;
    }

    private static bool IsFollowedByUnit(TextCursor ahead)
    {
        ahead.SkipSpaces();
        return Symbols.StartsUnit(ahead);
    }
}
