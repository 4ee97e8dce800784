namespace FieldCheck.Reporting.Drawing;

/// <summary>Rows above and below the zero line, and how many levels a value rises: one scale for both sides.</summary>
internal sealed record PlotScale
{
    /// <summary>Share of the largest value up to which a part of the curve may lie on the axis.</summary>
    internal const double OnAxis = 0.015;

    private readonly double _levelsPerUnit;
    private readonly double _threshold;

    private PlotScale(int zeroRow, int height, int levelsPerRow, double rowsPerUnit, double threshold)
    {
        ZeroRow = zeroRow;
        Height = height;
        LevelsPerRow = levelsPerRow;
        _levelsPerUnit = rowsPerUnit * levelsPerRow;
        _threshold = threshold;
    }

    internal int ZeroRow { get; }

    internal int Height { get; }

    internal int LevelsPerRow { get; }

    /// <summary>Puts the zero line where the largest scale fits.</summary>
    /// <param name="top">Greatest height above the zero line; zero or more.</param>
    /// <param name="bottom">Greatest depth below the zero line; zero or more.</param>
    /// <param name="height">Rows of the picture.</param>
    /// <param name="levelsPerRow">Heights in one cell.</param>
    internal static PlotScale Fit(double top, double bottom, int height, int levelsPerRow)
    {
        double largest = Math.Max(top, bottom);
        if (largest == 0)
        {
            return new PlotScale(height / 2, height, levelsPerRow, 0, 0);
        }

        double threshold = OnAxis * largest;
        double up = top > threshold ? top : 0;
        double down = bottom > threshold ? bottom : 0;
        int best = 0;
        for (int row = 1; row < height; row++)
        {
            best = Rows(row) > Rows(best) ? row : best;
        }

        return new PlotScale(best, height, levelsPerRow, Rows(best), threshold);

        double Rows(int row) => Math.Min(PerUnit(row, up), PerUnit(height - 1 - row, down));
        static double PerUnit(int rows, double reach) => reach > 0 ? rows / reach : double.PositiveInfinity;
    }

    /// <summary>The level of a height, signed as it is; a height that may not be lost has at least one.</summary>
    internal int LevelOf(double height)
    {
        if (Math.Abs(height) <= _threshold || _levelsPerUnit == 0)
        {
            return 0;
        }

        int level = (int)Math.Round(Math.Abs(height) * _levelsPerUnit, MidpointRounding.AwayFromZero);
        int most = LevelsPerRow * (height > 0 ? ZeroRow : Height - 1 - ZeroRow);
        return Math.Sign(height) * Math.Clamp(level, 1, most);
    }

    /// <summary>The row that a level lies in.</summary>
    internal int RowOf(int level)
    {
        int rows = (Math.Abs(level) + LevelsPerRow - 1) / LevelsPerRow;
        return ZeroRow - Math.Sign(level) * rows;
    }

    /// <summary>Which of the heights of its cell a level is, from 0 at the zero line's side.</summary>
    internal int StepOf(int level) => (Math.Abs(level) - 1) % LevelsPerRow;
}
