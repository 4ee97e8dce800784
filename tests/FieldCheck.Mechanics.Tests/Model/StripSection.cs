using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Model;

/// <summary>Figures of a section by fine strips: knows its width at every height, and nothing else of the program.</summary>
internal sealed class StripSection
{
    private const int StripsPerBand = 2000;

    private readonly List<(double From, double To, double Width)> _strips = [];

    private StripSection(double[] levels, Func<double, double> width)
    {
        double[] ordered = [.. levels.Distinct().Order()];
        for (int i = 0; i + 1 < ordered.Length; i++)
        {
            double height = ordered[i + 1] - ordered[i];
            for (int k = 0; k < StripsPerBand; k++)
            {
                double from = ordered[i] + height * Share(k);
                double to = ordered[i] + height * Share(k + 1);
                _strips.Add((from, to, width((from + to) / 2)));
            }
        }

        Area = _strips.Sum(strip => strip.Width * (strip.To - strip.From));
        Centroid = _strips.Sum(strip => strip.Width * (strip.To - strip.From) * (strip.From + strip.To) / 2) / Area;
        Inertia = _strips.Sum(strip =>
            strip.Width * (Math.Pow(strip.To - Centroid, 3) - Math.Pow(strip.From - Centroid, 3)) / 3);
        Modulus = Inertia / Math.Max(ordered[^1] - Centroid, Centroid - ordered[0]);
    }

    internal double Area { get; }

    internal double Centroid { get; }

    internal double Inertia { get; }

    internal double Modulus { get; }

    /// <summary>The moment of a stress of one on either side of the axis that halves the area, whichever way.</summary>
    internal double PlasticModulus()
    {
        double below = 0;
        double moment = 0;
        foreach ((double from, double to, double width) in _strips)
        {
            double part = width * (to - from);
            double share = part == 0 ? 1 : Math.Clamp((Area / 2 - below) / part, 0, 1);
            double middle = from + share * (to - from);
            moment -= width * (middle - from) * ((from + middle) / 2 - Centroid);
            moment += width * (to - middle) * ((middle + to) / 2 - Centroid);
            below += part;
        }

        return moment;
    }

    internal double PeakShearArea()
    {
        double above = 0;
        double greatest = 0;
        foreach ((double from, double to, double width) in Enumerable.Reverse(_strips))
        {
            double added = width * (to - from) * ((from + to) / 2 - Centroid);
            if (to - from > 0 && width > 0)
            {
                greatest = Math.Max(greatest, (above + added / 2) / width);
            }

            above += added;
        }

        return Inertia / greatest;
    }

    internal static StripSection Of(SectionShape shape, bool flat) => shape switch
    {
        SectionShape.Rectangle s when flat => new([0, s.Width], _ => s.Plies * s.Depth),
        SectionShape.Rectangle s => new([0, s.Depth], _ => s.Plies * s.Width),
        SectionShape.Round s => new([-s.Diameter / 2, 0, s.Diameter / 2], y => Chord(s.Diameter, y)),
        SectionShape.RoundTube s => new(
            [-s.Diameter / 2, s.Wall - s.Diameter / 2, 0, s.Diameter / 2 - s.Wall, s.Diameter / 2],
            y => Chord(s.Diameter, y) - Chord(s.Diameter - 2 * s.Wall, y)),
        SectionShape.RectangularTube s when flat => Tube(s.Depth, s.Width, s),
        SectionShape.RectangularTube s => Tube(s.Width, s.Depth, s),
        SectionShape.I s when flat => FlatI(s),
        SectionShape.I s => UprightI(s.FlangeWidth, s.FlangeThickness, s.WebThickness, s.Depth, s.RootRadius),
        SectionShape.Channel s when flat => new(
            [0, s.WebThickness, s.FlangeWidth], y => y < s.WebThickness ? s.Depth : 2 * FlangeOf(s, y)),
        SectionShape.Channel s => UprightChannel(s),
        _ => throw new ArgumentException("Unknown shape.", nameof(shape)),
    };

    // Finer towards the ends of a band, where round edges may stand upright.
    private static double Share(int strip) => (1 - Math.Cos(Math.PI * strip / StripsPerBand)) / 2;

    private static StripSection UprightI(double b, double tf, double tw, double d, double r)
    {
        double clear = d / 2 - tf;
        return new(
            [-d / 2, -clear, r - clear, 0, clear - r, clear, d / 2],
            y => Math.Abs(y) > clear ? b : tw + 2 * Fillet(r, clear - Math.Abs(y)));
    }

    /// <summary>Thickness of a flange at a distance from the back of the web.</summary>
    private static double FlangeOf(SectionShape.Channel s, double distance) =>
        s.FlangeThickness + s.FlangeSlope * ((s.WebThickness + s.FlangeWidth) / 2 - distance);

    private static StripSection UprightChannel(SectionShape.Channel s)
    {
        double edge = s.Depth / 2;
        double tip = edge - FlangeOf(s, s.FlangeWidth);
        double root = edge - FlangeOf(s, s.WebThickness);
        return new(
            [-edge, -tip, -root, root, tip, edge],
            y => Math.Abs(y) >= tip ? s.FlangeWidth
                : Math.Abs(y) <= root ? s.WebThickness
                : s.WebThickness + (s.FlangeWidth - s.WebThickness) * (Math.Abs(y) - root) / (tip - root));
    }

    private static StripSection FlatI(SectionShape.I s)
    {
        double web = s.WebThickness / 2;
        return new(
            [-s.FlangeWidth / 2, -web - s.RootRadius, -web, 0, web, web + s.RootRadius, s.FlangeWidth / 2],
            y => Math.Abs(y) < web
                ? s.Depth
                : 2 * s.FlangeThickness + 2 * Fillet(s.RootRadius, Math.Abs(y) - web));
    }

    private static StripSection Tube(double b, double h, SectionShape.RectangularTube s)
    {
        double inner = h / 2 - s.Wall;
        double[] upper = [0, inner - s.InnerRadius, inner, h / 2 - s.OuterRadius, h / 2];
        return new(
            [.. upper, .. upper.Select(y => -y)],
            y => Rounded(b, h, s.OuterRadius, y) - Rounded(b - 2 * s.Wall, 2 * inner, s.InnerRadius, y));
    }

    private static double Rounded(double b, double h, double r, double y) =>
        Math.Abs(y) > h / 2 ? 0 : b - 2 * Fillet(r, h / 2 - Math.Abs(y));

    /// <summary>How far a fillet reaches out at a distance from the plate that it runs into.</summary>
    private static double Fillet(double r, double distance) =>
        distance >= r ? 0 : r - Math.Sqrt(r * r - (r - distance) * (r - distance));

    private static double Chord(double diameter, double y) =>
        Math.Abs(y) >= diameter / 2 ? 0 : 2 * Math.Sqrt(diameter * diameter / 4 - y * y);
}
