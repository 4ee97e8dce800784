namespace FieldCheck.Reporting.Drawing;

/// <summary>The characters of one way of drawing.</summary>
/// <param name="Above">Heights of a cell above the zero line, lowest first.</param>
/// <param name="Below">Heights of a cell below the zero line, nearest to it first.</param>
/// <param name="Fill">Between the zero line and the curve.</param>
/// <param name="Jump">From one side of a jump to the other.</param>
/// <param name="Axis">The zero line.</param>
/// <param name="Crossing">Where a jump stands on the zero line.</param>
/// <param name="Reading">The reading line.</param>
internal sealed record PlotInk(
    string Above, string Below, char Fill, char Jump, char Axis, char Crossing, char Reading)
{
    internal const char NoFill = ' ';

    /// <summary>The edges of an envelope.</summary>
    internal const char Edge = '*';

    private static readonly PlotInk Filled = new(".-'", "'-.", ':', '|', '-', '|', '!');
    private static readonly PlotInk Outline = Filled with { Fill = NoFill };
    private static readonly PlotInk Blocks = new("▄█", "▀█", '█', '█', '─', '┼', '│');

    internal static PlotInk Of(PlotStyle style) => style switch
    {
        { Glyphs: PlotGlyphs.HalfBlocks } => Blocks,
        { IsFilled: true } => Filled,
        _ => Outline,
    };

    internal int LevelsPerRow => Above.Length;

    /// <summary>True: the curve cannot be told from its filling, so nothing may be written into it.</summary>
    internal bool IsSolid => Fill == Jump;
}
