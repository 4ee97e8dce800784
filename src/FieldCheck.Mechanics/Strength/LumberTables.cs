namespace FieldCheck.Mechanics.Strength;

/// <summary>Factors of dimension lumber by the size of the piece, as beside Table 4A of the NDS Supplement.</summary>
/// <remarks>
/// A piece between two rows takes the row with the smaller factor. C_F: seen in a reprint; C_fu: from memory
/// (docs/sources.md).
/// </remarks>
internal static class LumberTables
{
    private const double Inch = 0.0254;

    /// <summary>Dried and planed sticks run under their size by so much [m].</summary>
    private const double Slack = 1e-3;

    private const double Thinnest = 1.5 * Inch - Slack;
    private const double ThinTo = 3 * Inch + Slack;
    private const double ThickFrom = 3.5 * Inch - Slack;
    private const double Thickest = 4 * Inch + Slack;

    /// <summary>A nominal 5 in, dressed.</summary>
    private const double TimberFrom = 4.5 * Inch - Slack;

    private const double DeepFrom = 12 * Inch;

    // Nominal depth up to which the row goes, C_F of pieces 2 and 3 in thick, and 4 in.
    private static readonly (double Depth, double Thin, double Thick)[] Size =
    [
        (4, 1.5, 1.5), (5, 1.4, 1.4), (6, 1.3, 1.3), (8, 1.2, 1.3), (10, 1.1, 1.2), (12, 1.0, 1.1),
        (double.PositiveInfinity, 0.9, 1.0),
    ];

    // Dressed width from which the row goes, C_fu of pieces 2 and 3 in thick, and 4 in.
    private static readonly (double Width, double Thin, double Thick)[] Flat =
    [
        (9.25, 1.2, 1.1), (7.25, 1.15, 1.05), (5.5, 1.15, 1.05), (4.5, 1.1, 1.05), (3.5, 1.1, 1.0), (0, 1.0, 1.0),
    ];

    /// <summary>Size factor C_F of bending [–]; null where the table has no such piece.</summary>
    /// <param name="thickness">The smaller size of the piece [m].</param>
    /// <param name="face">The greater size of the piece [m].</param>
    internal static double? SizeFactor(double thickness, double face)
    {
        (double _, double thin, double thick) = Size.First(row => face <= row.Depth * Inch * (1 + 1e-9));
        return IsInTable(thickness) ? thickness < ThickFrom ? thin : thick : null;
    }

    /// <summary>Size factor C_F of tension [–], from memory; null where the table has no such piece.</summary>
    /// <param name="thickness">The smaller size of the piece [m].</param>
    /// <param name="face">The greater size of the piece [m].</param>
    internal static double? TensionSizeFactor(double thickness, double face) => IsInTable(thickness)
        ? Size.First(row => face <= row.Depth * Inch * (1 + 1e-9)).Thin
        : null;

    /// <summary>Flat use factor C_fu of a load on the wide face [–]; null where the table has no such piece.</summary>
    /// <param name="thickness">The smaller size of the piece [m].</param>
    /// <param name="face">The greater size of the piece [m].</param>
    internal static double? FlatUseFactor(double thickness, double face)
    {
        (double _, double thin, double thick) = Flat.First(row => face >= row.Width * Inch - Slack);
        return IsInTable(thickness) ? thickness <= ThinTo ? thin : thick : null;
    }

    /// <summary>
    /// Size factor C_F of a sawn timber 5 in and thicker that is deeper than 12 in, (12 in/d)^(1/9) [–]; else 1 (NDS 4.3.6,
    /// from memory).
    /// </summary>
    /// <param name="thickness">The smaller size of the piece [m].</param>
    /// <param name="depth">Its depth in the direction of the load [m].</param>
    internal static double TimberSizeFactor(double thickness, double depth) =>
        IsTimber(thickness) && depth > DeepFrom ? Math.Pow(DeepFrom / depth, 1.0 / 9) : 1;

    /// <summary>Whether a piece is 5 in thick or more by its nominal size.</summary>
    /// <param name="thickness">The smaller size of the piece [m].</param>
    internal static bool IsTimber(double thickness) => thickness >= TimberFrom;

    private static bool IsInTable(double thickness) => thickness is >= Thinnest and <= Thickest;
}
