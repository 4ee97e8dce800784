namespace FieldCheck.Sheet.Reading;

/// <summary>Sums, products and quotients of terms, with what must not be worked out.</summary>
internal static class TermArithmetic
{
    /// <summary>No unit here goes beyond m⁴; more is a slip, and the exponents must stay in their range.</summary>
    private const int HighestExponent = 12;

    internal static bool TryAdd(ref TextCursor cursor, Term left, Term right, bool subtract, out Term sum)
    {
        sum = default;
        if (left.Dimension != right.Dimension || left.IsShare != right.IsShare)
        {
            return FailUnlike(ref cursor, left, right, subtract);
        }

        double value = subtract ? left.Value - right.Value : left.Value + right.Value;
        sum = new Term(value, left.Dimension, left.Start, right.End)
        {
            HasUnit = left.HasUnit || right.HasUnit,
            IsShare = left.IsShare,
        };
        return double.IsFinite(value) || cursor.Fail(ReadingMessages.TooLarge, left.Start);
    }

    internal static bool TryMultiply(ref TextCursor cursor, Term left, Term right, out Term product)
    {
        Dimension dimension = left.Dimension.Times(right.Dimension);
        product = new Term(left.Value * right.Value, dimension, left.Start, right.End)
        {
            HasUnit = left.HasUnit || right.HasUnit,
            IsShare = dimension.IsNone && (left.IsShare || right.IsShare),
        };
        return IsWithinBounds(ref cursor, product, vanishes: left.Value != 0 && right.Value != 0);
    }

    internal static bool TryDivide(ref TextCursor cursor, Term left, Term right, out Term quotient)
    {
        quotient = default;
        if (right.Value == 0)
        {
            return cursor.Fail(ReadingMessages.DivisionByZero, right.Start);
        }

        Dimension dimension = left.Dimension.Over(right.Dimension);
        quotient = new Term(left.Value / right.Value, dimension, left.Start, right.End)
        {
            HasUnit = left.HasUnit || right.HasUnit,
            IsShare = dimension.IsNone && left.IsShare && !right.IsShare,
        };
        return IsWithinBounds(ref cursor, quotient, vanishes: left.Value != 0);
    }

    private static bool IsWithinBounds(ref TextCursor cursor, Term result, bool vanishes)
    {
        if (result.Dimension.Height > HighestExponent)
        {
            return cursor.Fail(ReadingMessages.TooManyUnits, result.Start);
        }

        if (!double.IsFinite(result.Value))
        {
            return cursor.Fail(ReadingMessages.TooLarge, result.Start);
        }

        return result.Value != 0 || !vanishes || cursor.Fail(ReadingMessages.TooSmall, result.Start);
    }

    private static bool FailUnlike(ref TextCursor cursor, Term left, Term right, bool subtract)
    {
        if (left.IsBare != right.IsBare && !left.IsShare && !right.IsShare)
        {
            Term bare = left.IsBare ? left : right;
            Term other = left.IsBare ? right : left;
            string written = cursor.Text[bare.Start..bare.End];
            return cursor.Fail(ReadingMessages.BareInSum(written, KindWords.Found(other)), bare.Start);
        }

        string message = subtract
            ? ReadingMessages.CannotSubtract(KindWords.Found(right), KindWords.Found(left))
            : ReadingMessages.CannotAdd(KindWords.Found(right), KindWords.Found(left));
        return cursor.Fail(message, right.Start);
    }
}
