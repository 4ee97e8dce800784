using System.Globalization;

namespace FieldCheck.Sheet.Reading;

/// <summary>Reads where something stands: "4 ft", "A + 4 ft", "end - 6 in", "joint 1", "mid 2".</summary>
/// <remarks>The rules are "Places" in docs/beam-file.md.</remarks>
public static class PlaceReader
{
    /// <summary>A joint or span number above this is a slip: a beam file has at most so many rows.</summary>
    private const int HighestNumber = 10_000;

    /// <summary>Reads a place; whether its joint, span or label exists shows only on the beam.</summary>
    /// <param name="text">As typed, or as it stands in a file.</param>
    public static Reading<Place> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (string.IsNullOrWhiteSpace(text))
        {
            return Refuse(ReadingMessages.EmptyText(ReadingMessages.PlaceExpected), 0);
        }

        if (text.Length > QuantityReader.LongestText)
        {
            return Refuse(ReadingMessages.TooLong(QuantityReader.LongestText), QuantityReader.LongestText);
        }

        TextCursor cursor = new(text, [QuantityKind.Length]);
        cursor.SkipSpaces();
        if (char.IsAsciiLetter(cursor.Current))
        {
            return ReadAnchored(ref cursor);
        }

        return CanStartDistance(cursor)
            ? QuantityReader.Read(text, QuantityKind.Length)
                .Then<Place>(distance => new Reading<Place>.Accepted(new Place.FromLeft(distance)))
            : Refuse($"expected {ReadingMessages.PlaceExpected}, found {Found.At(cursor)}", cursor.Position);
    }

    /// <summary>Reads the place of a support, which is not given from a support.</summary>
    /// <param name="text">As typed, or as it stands in a file.</param>
    public static Reading<Place> ReadOfSupport(string text) => Read(text).Then<Place>(place => place.Label is null
        ? new Reading<Place>.Accepted(place)
        : Refuse(ReadingMessages.PlaceFromSupport, text.Length - text.TrimStart().Length));

    private static bool CanStartDistance(in TextCursor cursor) =>
        Symbols.StartsNumber(cursor) || Symbols.IsSumSign(cursor.Current) || cursor.Current == '(';

    private static Reading<Place> ReadAnchored(ref TextCursor cursor)
    {
        int start = cursor.Position;
        string word = PlaceText.Word(ref cursor);
        switch (word.ToUpperInvariant())
        {
            case "END":
                return ReadOffset(ref cursor, new Place.RightEnd(), word);
            case "JOINT":
                return TryNumber(ref cursor, out int joint)
                    ? ReadOffset(ref cursor, new Place.Joint(joint), cursor.Since(start))
                    : Refuse(ReadingMessages.JointNumber, cursor.Position);
            case "MID":
                return TryNumber(ref cursor, out int span) && span > 0
                    ? ReadOffset(ref cursor, new Place.Mid(span), cursor.Since(start))
                    : Refuse(ReadingMessages.SpanNumber, cursor.Position);
            default:
                return word.Length > LabelReader.LongestLabel
                    ? Refuse(ReadingMessages.LabelTooLong(LabelReader.LongestLabel), start)
                    : ReadOffset(ref cursor, new Place.SupportNamed(word), word);
        }
    }

    private static bool TryNumber(ref TextCursor cursor, out int number)
    {
        cursor.SkipSpaces();
        TextCursor ahead = cursor;
        while (char.IsAsciiDigit(ahead.Current))
        {
            ahead.Position++;
        }

        string digits = ahead.Since(cursor.Position);
        bool reads = int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out number)
            && number <= HighestNumber;
        cursor = reads ? ahead : cursor;
        return reads;
    }

    /// <summary>Reads the rest, its sign with it: "A - 4 ft + 6 in" is 3 ft 6 in to the left of A.</summary>
    private static Reading<Place> ReadOffset(ref TextCursor cursor, Place anchor, string written)
    {
        cursor.SkipSpaces();
        if (cursor.AtEnd)
        {
            return new Reading<Place>.Accepted(anchor);
        }

        if (Symbols.StartsSpread(cursor))
        {
            return Refuse(ReadingMessages.SpreadOfPlace, cursor.Position);
        }

        if (!Symbols.IsSumSign(cursor.Current))
        {
            return Refuse(ReadingMessages.PlaceSign(Found.Clipped(written), Found.At(cursor)), cursor.Position);
        }

        return QuantityReader.Read(cursor.Text[cursor.Position..], QuantityKind.Length)
            .At(cursor.Position)
            .Then<Place>(offset => new Reading<Place>.Accepted(anchor with { Offset = offset }));
    }

    private static Reading<Place>.Refused Refuse(string text, int offset) => new(text, offset);
}
