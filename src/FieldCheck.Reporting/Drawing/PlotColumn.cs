namespace FieldCheck.Reporting.Drawing;

/// <summary>What a diagram shows in one column.</summary>
/// <param name="Level">Level at the middle of the column; of no account at a jump.</param>
/// <param name="Low">Lowest level to be seen in the column.</param>
/// <param name="High">Highest level to be seen in the column.</param>
/// <param name="IsJump">True: a jump from the one to the other stands in it.</param>
internal readonly record struct PlotColumn(int Level, int Low, int High, bool IsJump)
{
    /// <summary>The column with one more level to be seen in it.</summary>
    internal PlotColumn Showing(int level) => this with { Low = Math.Min(Low, level), High = Math.Max(High, level) };
}
