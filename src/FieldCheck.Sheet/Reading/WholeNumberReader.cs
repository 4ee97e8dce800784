using System.Globalization;

namespace FieldCheck.Sheet.Reading;

/// <summary>Reads a count, as the plies of a beam or the number of a span.</summary>
public static class WholeNumberReader
{
    /// <summary>Reads a whole number within bounds; signs, points and commas are refused.</summary>
    /// <param name="text">As typed; spaces round it do not count.</param>
    /// <param name="least">The smallest that is accepted; 0 or more.</param>
    /// <param name="most">The largest that is accepted.</param>
    public static Reading<int> Read(string text, int least, int most)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentOutOfRangeException.ThrowIfNegative(least);
        ArgumentOutOfRangeException.ThrowIfLessThan(most, least);
        string digits = text.Trim();
        bool reads = int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out int number);
        if (reads && number >= least && number <= most)
        {
            return new Reading<int>.Accepted(number);
        }

        string found = digits.Length == 0 ? "nothing" : Found.Quoted(digits);
        return new Reading<int>.Refused(
            ReadingMessages.WholeNumber(least, most, found), text.Length - text.TrimStart().Length);
    }
}
