namespace FieldCheck.Sheet.Catalogue;

/// <summary>The sizes of a piece of timber that the figures of a grade are for; null: no bound.</summary>
/// <param name="ThicknessFrom">The least smaller size [m].</param>
/// <param name="ThicknessTo">The greatest smaller size [m].</param>
/// <param name="WidthFrom">The least greater size [m].</param>
/// <param name="WidthTo">The greatest greater size [m].</param>
public sealed record PieceSizes(double? ThicknessFrom, double? ThicknessTo, double? WidthFrom, double? WidthTo)
{
    /// <summary>Dried and planed sticks run under their size by so much [m].</summary>
    private const double Slack = 1e-3;

    /// <summary>True: the figures are for a piece of this thickness, its smaller size [m].</summary>
    /// <param name="thickness">The smaller size [m].</param>
    public bool HasThickness(double thickness) => IsIn(thickness, ThicknessFrom, ThicknessTo);

    /// <summary>True: the figures are for a piece of this width, its greater size [m].</summary>
    /// <param name="width">The greater size [m].</param>
    public bool HasWidth(double width) => IsIn(width, WidthFrom, WidthTo);

    private static bool IsIn(double size, double? from, double? to) => !(size < from - Slack) && !(size > to + Slack);
}
