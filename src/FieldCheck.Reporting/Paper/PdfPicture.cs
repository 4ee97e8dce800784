using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Reporting.Pictures;
using PdfSharp.Drawing;

namespace FieldCheck.Reporting.Paper;

/// <summary>Draws a picture on a page.</summary>
internal sealed class PdfPicture(PaperLetters letters, XGraphics page, PaperMark.Drawing drawing)
{
    private const double Dash = 3;

    internal void Draw()
    {
        foreach (PictureMark mark in drawing.Picture.Marks)
        {
            Draw(mark);
        }
    }

    private void Draw(PictureMark mark)
    {
        switch (mark)
        {
            case PictureMark.Line line:
                page.DrawLines(Pen(line.Thickness, line.IsDashed), Points(line.Points));
                break;
            case PictureMark.Area area:
                page.DrawPolygon(
                    new XSolidBrush(XColor.FromGrayScale(area.Lightness)), Points(area.Points), XFillMode.Winding);
                break;
            case PictureMark.Circle circle:
                XPoint centre = At(circle.Centre);
                double radius = circle.Radius * drawing.Scale;
                page.DrawEllipse(
                    Pen(circle.Thickness), XBrushes.White, centre.X - radius, centre.Y - radius, 2 * radius, 2 * radius);
                break;
            case PictureMark.Text text:
                Write(text);
                break;
            default:
                throw new UnreachableException();
        }
    }

    private void Write(PictureMark.Text text)
    {
        PaperStyle style = new(PaperFace.Regular, text.Size * drawing.Scale);
        string words = letters.Shown(text.Words, style.Face);
        double width = letters.WidthOf(words, style);
        XPoint at = At(text.At);
        double left = at.X - text.Anchor switch
        {
            TextAnchor.Start => 0,
            TextAnchor.Middle => width / 2,
            TextAnchor.End => width,
            _ => throw new UnreachableException(),
        };
        page.DrawString(words, PaperLetters.Font(style.Face, style.Size), XBrushes.Black, left, at.Y);
    }

    private XPen Pen(double thickness, bool isDashed = false)
    {
        XPen pen = new(XColors.Black, thickness * drawing.Scale) { LineJoin = XLineJoin.Round };
        if (isDashed)
        {
            // In multiples of the pen's width.
            double dash = Dash / thickness;
            pen.DashPattern = [dash, dash];
        }

        return pen;
    }

    private XPoint[] Points(ImmutableArray<PicturePoint> points) => [.. points.Select(At)];

    private XPoint At(PicturePoint point) =>
        new(drawing.X + point.X * drawing.Scale, drawing.Y + point.Y * drawing.Scale);
}
