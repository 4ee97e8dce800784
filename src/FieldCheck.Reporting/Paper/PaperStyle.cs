namespace FieldCheck.Reporting.Paper;

/// <summary>Letters of one kind and size, and the lines that they stand on.</summary>
/// <param name="Face">The typeface.</param>
/// <param name="Size">Size of the letters [pt].</param>
internal sealed record PaperStyle(PaperFace Face, double Size)
{
    // The letters reach 0.93 of their size up and 0.24 down: lines of this height do not touch.
    private const double Leading = 1.3;

    internal static PaperStyle Title { get; } = new(PaperFace.Bold, 15);

    internal static PaperStyle Section { get; } = new(PaperFace.Bold, 11.5);

    internal static PaperStyle Part { get; } = new(PaperFace.Bold, 9.5);

    internal static PaperStyle Body { get; } = new(PaperFace.Regular, 9);

    internal static PaperStyle Strong { get; } = new(PaperFace.Bold, 9);

    internal static PaperStyle Caption { get; } = new(PaperFace.Bold, 8.5);

    internal static PaperStyle Cell { get; } = new(PaperFace.Regular, 8);

    internal static PaperStyle ColumnHead { get; } = new(PaperFace.Bold, 8);

    internal static PaperStyle Frame { get; } = new(PaperFace.Regular, 7.5);

    /// <summary>Height of a line [pt].</summary>
    internal double Line => Leading * Size;

    /// <summary>From the top of a line down to where its letters stand [pt].</summary>
    internal double Base => Size;
}
