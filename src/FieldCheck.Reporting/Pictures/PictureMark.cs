using System.Collections.Immutable;

namespace FieldCheck.Reporting.Pictures;

/// <summary>A part of a picture. Closed set: the cases are the nested records.</summary>
public abstract record PictureMark
{
    private PictureMark()
    {
    }

    /// <summary>A line from point to point.</summary>
    /// <param name="Points">Two points or more.</param>
    /// <param name="Thickness">Its thickness [pt].</param>
    /// <param name="IsDashed">True: dashed.</param>
    public sealed record Line(ImmutableArray<PicturePoint> Points, double Thickness, bool IsDashed = false) : PictureMark;

    /// <summary>A filled area without an edge.</summary>
    /// <param name="Points">Its corners, three or more; the last is joined to the first.</param>
    /// <param name="Lightness">0 for black to 1 for white.</param>
    public sealed record Area(ImmutableArray<PicturePoint> Points, double Lightness) : PictureMark;

    /// <summary>A circle, white inside.</summary>
    /// <param name="Centre">Its centre.</param>
    /// <param name="Radius">Its radius [pt].</param>
    /// <param name="Thickness">Thickness of its line [pt].</param>
    public sealed record Circle(PicturePoint Centre, double Radius, double Thickness) : PictureMark;

    /// <summary>Words on one line.</summary>
    /// <param name="At">Where its base line is, at its anchor.</param>
    /// <param name="Words">The words.</param>
    /// <param name="Anchor">Which part of it stands there.</param>
    /// <param name="Size">Size of its letters [pt].</param>
    public sealed record Text(PicturePoint At, string Words, TextAnchor Anchor, double Size) : PictureMark;
}
