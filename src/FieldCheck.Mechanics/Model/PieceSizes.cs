namespace FieldCheck.Mechanics.Model;

/// <summary>The sizes of a piece of timber that the figures of a grade are for; null: no bound.</summary>
/// <param name="ThicknessFrom">The least smaller size [m].</param>
/// <param name="ThicknessTo">The greatest smaller size [m].</param>
/// <param name="WidthFrom">The least greater size [m].</param>
/// <param name="WidthTo">The greatest greater size [m].</param>
public sealed record PieceSizes(double? ThicknessFrom, double? ThicknessTo, double? WidthFrom, double? WidthTo)
{
    /// <summary>Dried and planed sticks run under their size by so much [m].</summary>
    private const double Slack = 1e-3;

    /// <summary>The greater size is more than so much over the smaller one [m], as of beams and stringers.</summary>
    public double? ExcessOver { get; init; }

    /// <summary>The greater size is at most so much over the smaller one [m], as of posts and timbers.</summary>
    public double? ExcessTo { get; init; }

    /// <summary>
    /// Smaller and greater size [m] of one piece of a section; of a round stick those of the square of its area; null where the
    /// shape is not known, or not of timber.
    /// </summary>
    /// <param name="section">The section; null: none.</param>
    public static (double Thickness, double Width)? PieceOf(Section? section) => section?.Shape switch
    {
        SectionShape.Rectangle one => (Math.Min(one.Width, one.Depth), Math.Max(one.Width, one.Depth)),
        SectionShape.Round one => (SideOf(one), SideOf(one)),
        _ => null,
    };

    /// <summary>Side of the square that has the area of a round stick [m].</summary>
    /// <param name="round">The stick.</param>
    public static double SideOf(SectionShape.Round round)
    {
        ArgumentNullException.ThrowIfNull(round);
        return round.Diameter * Math.Sqrt(Math.PI) / 2;
    }

    /// <summary>True: the figures are for a piece of this thickness, its smaller size [m].</summary>
    /// <param name="thickness">The smaller size [m].</param>
    public bool HasThickness(double thickness) => IsIn(thickness, ThicknessFrom, ThicknessTo);

    /// <summary>True: the figures are for a piece of this width, its greater size [m].</summary>
    /// <param name="width">The greater size [m].</param>
    public bool HasWidth(double width) => IsIn(width, WidthFrom, WidthTo);

    /// <summary>True: the figures are for a piece whose greater size is so much over the smaller one [m].</summary>
    /// <param name="excess">The greater size less the smaller one [m].</param>
    public bool HasExcess(double excess) => !(excess <= ExcessOver + Slack) && !(excess > ExcessTo + Slack);

    /// <summary>False: the figures are for pieces of other sizes than those of a section; true also where its sizes are not known.</summary>
    /// <param name="section">The section.</param>
    public bool Holds(Section? section) => PieceOf(section) is not { } piece
        || (HasThickness(piece.Thickness) && HasWidth(piece.Width) && HasExcess(piece.Width - piece.Thickness));

    private static bool IsIn(double size, double? from, double? to) => !(size < from - Slack) && !(size > to + Slack);
}
