using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>The sizes of a solid rectangle of timber, alone or of several plies, as the rules ask for them.</summary>
/// <param name="Width">Width that it bears by [m]: of all plies on edge; of one laid flat, as in a pile.</param>
/// <param name="PlyWidth">Width of one ply across the load [m]: loose plies buckle one by one.</param>
/// <param name="Depth">In the direction of the load [m].</param>
/// <param name="Thickness">The smaller size of one piece [m].</param>
/// <param name="Face">The greater size of one piece [m].</param>
/// <param name="IsOnItsFace">True: the load stands on the wide face of the pieces.</param>
internal sealed record TimberOutline(
    double Width, double PlyWidth, double Depth, double Thickness, double Face, bool IsOnItsFace)
{
    /// <returns>Null where the section is no rectangle, or is given by figures alone.</returns>
    internal static TimberOutline? Of(Section section) => section.Shape is SectionShape.Rectangle piece
        ? new TimberOutline(
            section.IsFlat ? piece.Depth : piece.Width * piece.Plies,
            section.IsFlat ? piece.Depth : piece.Width,
            section.IsFlat ? piece.Width : piece.Depth,
            Math.Min(piece.Width, piece.Depth),
            Math.Max(piece.Width, piece.Depth),
            section.IsFlat ? piece.Depth > piece.Width : piece.Width > piece.Depth)
        : null;

    /// <summary>True: a solid stick or figures alone: the rules on timber speak of no more here.</summary>
    internal static bool IsSolid(Section section) =>
        section.Shape is null or SectionShape.Rectangle or SectionShape.Round;

    /// <summary>True: it can buckle sideways unless its compression side is held.</summary>
    internal static bool CanBuckle(Section section) =>
        Of(section) is TimberOutline outline ? outline.Depth > outline.PlyWidth
        : section.Shape is not SectionShape.Round && !section.IsFlat;
}
