namespace FieldCheck.Reporting.Pictures;

/// <summary>Puts labels beside each other on as few rows as hold them without one lying over another.</summary>
internal sealed class LabelRows(int most)
{
    private const double Gap = 5;

    private readonly List<List<(double From, double To)>> _rows = [];

    /// <summary>How many rows are in use.</summary>
    internal int Count => _rows.Count;

    /// <summary>The row for a label, counted from 0, and where its middle stands; null where there is no room.</summary>
    /// <param name="middle">Where its middle should stand [pt].</param>
    /// <param name="words">The label.</param>
    internal (int Row, double Middle)? Put(double middle, string words)
    {
        double half = PictureInk.WidthOf(words) / 2;
        double at = Math.Clamp(middle, half, Math.Max(half, PictureInk.Width - half));
        for (int row = 0; row < most; row++)
        {
            if (row == _rows.Count)
            {
                _rows.Add([]);
            }

            if (_rows[row].All(taken => at + half + Gap <= taken.From || at - half - Gap >= taken.To))
            {
                _rows[row].Add((at - half, at + half));
                return (row, at);
            }
        }

        return null;
    }
}
