namespace FieldCheck.Sheet.Reading;

/// <summary>Reads quantities as people write them: units, arithmetic, feet and inches, plus-or-minus.</summary>
/// <remarks>The rules are "Quantities" in docs/beam-file.md: one text reads alike in a cell and in a file.</remarks>
public static class QuantityReader
{
    /// <summary>The longest text that is looked at; a longer one is refused.</summary>
    public const int LongestText = 200;

    /// <summary>Reads a text that must be of one kind.</summary>
    /// <param name="text">As typed, or as it stands in a file.</param>
    /// <param name="kind">What the cell asks for.</param>
    public static Reading<Quantity> Read(string text, QuantityKind kind) => Read(text, [kind]);

    /// <summary>
    /// Reads a text that may be of several kinds, as a load's size: <see cref="Quantity.Dimension"/> says which it is.
    /// </summary>
    /// <param name="text">As typed, or as it stands in a file.</param>
    /// <param name="kinds">What the cell takes, the commonest first; one or more.</param>
    public static Reading<Quantity> Read(string text, params ReadOnlySpan<QuantityKind> kinds)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (kinds.IsEmpty)
        {
            throw new ArgumentException("A cell takes at least one kind.", nameof(kinds));
        }

        if (string.IsNullOrWhiteSpace(text))
        {
            return Refuse(ReadingMessages.Empty(kinds), 0);
        }

        if (text.Length > LongestText)
        {
            return Refuse(ReadingMessages.TooLong(LongestText), LongestText);
        }

        TextCursor cursor = new(text, kinds);
        return QuantityGrammar.TryMeasured(ref cursor, out Measured measured)
            ? Accept(text, measured, kinds)
            : Refuse(cursor.Fault!.Text, cursor.Fault.Offset);
    }

    private static Reading<Quantity> Accept(string text, Measured measured, ReadOnlySpan<QuantityKind> kinds)
    {
        Term value = measured.Value;
        if (!TryFit(value, kinds, out QuantityKind kind))
        {
            return RefuseKind(text, value, kinds);
        }

        double halfDigit = double.IsFinite(value.HalfDigit) ? value.HalfDigit : 0;
        Quantity quantity = new(value.Value, value.Dimension, HalfDigit: halfDigit);
        if (measured.Spread is not Term spread)
        {
            return new Reading<Quantity>.Accepted(quantity);
        }

        if (kind is QuantityKind.Number or QuantityKind.Share)
        {
            return Refuse(ReadingMessages.SpreadNotMeasured(kind), spread.Start);
        }

        return Spread(text, value, spread, kind).Then<Quantity>(
            half => new Reading<Quantity>.Accepted(quantity with { Spread = half }));
    }

    private static Reading<double> Spread(string text, Term value, Term spread, QuantityKind kind)
    {
        if (spread.Value < 0)
        {
            return new Reading<double>.Refused(ReadingMessages.SpreadNegative, spread.Start);
        }

        if (spread.IsShare)
        {
            double half = Math.Abs(value.Value) * spread.Value;
            return double.IsFinite(half)
                ? new Reading<double>.Accepted(half)
                : new Reading<double>.Refused(ReadingMessages.TooLarge, spread.Start);
        }

        if (spread.Dimension == value.Dimension)
        {
            return new Reading<double>.Accepted(spread.Value);
        }

        string message = spread.IsBare
            ? ReadingMessages.Bare(text[spread.Start..spread.End], [kind])
            : ReadingMessages.SpreadUnlike(KindWords.Found(spread), KindWords.Name(kind));
        return new Reading<double>.Refused(message, spread.Start);
    }

    private static bool TryFit(Term value, ReadOnlySpan<QuantityKind> kinds, out QuantityKind fitting)
    {
        foreach (QuantityKind kind in kinds)
        {
            if (Dimension.Of(kind) == value.Dimension && value.IsShare == (kind == QuantityKind.Share))
            {
                fitting = kind;
                return true;
            }
        }

        fitting = default;
        return false;
    }

    private static Reading<Quantity> RefuseKind(string text, Term value, ReadOnlySpan<QuantityKind> kinds)
    {
        string written = text[value.Start..value.End].TrimStart('+', ' ');
        if (!value.IsBare || value.IsShare)
        {
            return Refuse(ReadingMessages.WrongKind(kinds, KindWords.Found(value)), value.Start);
        }

        return kinds is [QuantityKind.Share]
            ? Refuse(ReadingMessages.BareShare(written, value.Value), value.Start)
            : Refuse(ReadingMessages.Bare(written, kinds), value.Start);
    }

    private static Reading<Quantity>.Refused Refuse(string text, int offset) => new(text, offset);
}
