using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using FieldCheck.Reporting.Pages;

namespace FieldCheck.Reporting.Pictures;

/// <summary>Writes a picture as SVG 1.1, to stand inside an HTML file.</summary>
internal static class SvgPicture
{
    private const string Dashes = "3 2";

    /// <summary>Writes a picture.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="id">A name that stands once in the file.</param>
    /// <param name="title">What it shows.</param>
    /// <param name="description">What is to be seen in it, for whoever cannot see it.</param>
    internal static string Of(Picture picture, string id, string title, string description)
    {
        StringBuilder svg = new();
        string size = $"{Number(picture.Width)} {Number(picture.Height)}";
        svg.Append(CultureInfo.InvariantCulture, $"""<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {size}" """);
        svg.Append(CultureInfo.InvariantCulture, $"""role="img" aria-labelledby="{id}-t {id}-d">""").Append('\n');
        svg.Append(CultureInfo.InvariantCulture, $"""<title id="{id}-t">{Escaped(title)}</title>""");
        svg.Append(CultureInfo.InvariantCulture, $"""<desc id="{id}-d">{Escaped(description)}</desc>""").Append('\n');
        foreach (PictureMark mark in picture.Marks)
        {
            svg.Append(Mark(mark)).Append('\n');
        }

        return svg.Append("</svg>").ToString();
    }

    private static string Mark(PictureMark mark) => mark switch
    {
        PictureMark.Line line => $"""<polyline points="{Points(line.Points)}" fill="none" stroke="#000" """
            + $"""stroke-width="{Number(line.Thickness)}"{(line.IsDashed ? $" stroke-dasharray=\"{Dashes}\"" : "")}/>""",
        PictureMark.Area area => $"""<polygon points="{Points(area.Points)}" fill="{Grey(area.Lightness)}"/>""",
        PictureMark.Circle circle => $"""<circle cx="{Number(circle.Centre.X)}" cy="{Number(circle.Centre.Y)}" """
            + $"""r="{Number(circle.Radius)}" fill="#fff" stroke="#000" stroke-width="{Number(circle.Thickness)}"/>""",
        PictureMark.Text text => $"""<text x="{Number(text.At.X)}" y="{Number(text.At.Y)}" """
            + $"""font-size="{Number(text.Size)}" text-anchor="{Anchor(text.Anchor)}">{Escaped(text.Words)}</text>""",
        _ => throw new UnreachableException(),
    };

    private static string Points(ImmutableArray<PicturePoint> points) =>
        string.Join(' ', points.Select(point => $"{Number(point.X)},{Number(point.Y)}"));

    private static string Anchor(TextAnchor anchor) => anchor switch
    {
        TextAnchor.Start => "start",
        TextAnchor.Middle => "middle",
        _ => "end",
    };

    private static string Grey(double lightness)
    {
        string part = ((int)Math.Round(255 * lightness)).ToString("x2", CultureInfo.InvariantCulture);
        return $"#{part}{part}{part}";
    }

    // A hundredth of a point is far below what can be seen, and -0 is 0.
    private static string Number(double value) => (Math.Round(value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);

    private static string Escaped(string text) => HtmlText.Of(text);
}
