namespace FieldCheck.Reporting.Pictures;

/// <summary>Sizes that all pictures share [pt].</summary>
internal static class PictureInk
{
    /// <summary>Width of a picture: fits both A4 and Letter between their margins.</summary>
    internal const double Width = 500;

    /// <summary>Kept free at both sides, for what is written beside the ends of the beam.</summary>
    internal const double Side = 34;

    internal const double Thin = 0.5;

    internal const double Curve = 1.1;

    internal const double Thick = 2.6;

    internal const double Letters = 8;

    internal const double Row = 10.5;

    internal const double Light = 0.88;

    /// <summary>Width of one letter as a share of its size: somewhat more than the common fonts take on average.</summary>
    private const double LetterWidth = 0.62;

    /// <summary>Width of a letter of the scripts that write in squares.</summary>
    private const double SquareWidth = 1.05;

    private const int FirstSquare = 0x1100;

    internal static double WidthOf(string words, double size = Letters) =>
        size * words.EnumerateRunes().Sum(rune => rune.Value < FirstSquare ? LetterWidth : SquareWidth);

    /// <summary>Words that are no wider than a picture; of longer ones what fits, with an ellipsis.</summary>
    internal static string Fitted(string words)
    {
        if (WidthOf(words) <= Width)
        {
            return words;
        }

        const string Ellipsis = "...";
        int kept = words.Length - 1;
        while (char.IsLowSurrogate(words[kept]) || WidthOf(words[..kept] + Ellipsis) > Width)
        {
            kept--;
        }

        return words[..kept] + Ellipsis;
    }

    /// <summary>White behind a label in the middle of its place, so that no line runs through its figures.</summary>
    internal static PictureMark.Area Behind(PictureMark.Text label)
    {
        double half = WidthOf(label.Words, label.Size) / 2;
        (double left, double right) = (label.At.X - half, label.At.X + half);
        (double top, double bottom) = (label.At.Y - label.Size, label.At.Y + 1);
        return new([new(left, top), new(right, top), new(right, bottom), new(left, bottom)], 1);
    }

    /// <summary>Where a place of the beam stands.</summary>
    internal static double X(double position, double length) => Side + position / length * (Width - 2 * Side);
}
