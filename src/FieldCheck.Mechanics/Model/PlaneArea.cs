using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Model;

/// <summary>A plane area of pieces, some of them cut out of others; every figure of it is exact.</summary>
/// <remarks>Heights are from a level that all pieces share; what is above is compressed when the area sags.</remarks>
internal sealed class PlaneArea
{
    private readonly ImmutableArray<AreaPart> _parts;

    /// <param name="parts">Its pieces; where they end is where its width may jump.</param>
    internal PlaneArea(params ImmutableArray<AreaPart> parts)
    {
        _parts = Require.NotEmpty(parts);
        Bottom = parts.Min(part => part.Bottom);
        Top = parts.Max(part => part.Top);
        Area = AreaAbove(Bottom);
        Centroid = parts.Sum(part => part.FirstMomentAbove(Bottom)) / Area;
        SecondMoment = parts.Sum(part => part.SecondMoment) - Area * Centroid * Centroid;
    }

    /// <summary>Where it begins [m].</summary>
    internal double Bottom { get; }

    /// <summary>Where it ends [m].</summary>
    internal double Top { get; }

    /// <summary>The area [m²].</summary>
    internal double Area { get; }

    /// <summary>Height of its centroid [m]: the neutral axis of elastic bending.</summary>
    internal double Centroid { get; }

    /// <summary>Second moment of area about its centroid [m⁴].</summary>
    internal double SecondMoment { get; }

    /// <summary>Section modulus of the farther edge [m³].</summary>
    internal double SectionModulus => SecondMoment / Math.Max(Top - Centroid, Centroid - Bottom);

    /// <summary>Section modulus, plastic [m³]: first moments, about it, of the halves beside the axis of equal areas.</summary>
    internal double PlasticModulus => 2 * FirstMomentAbove(EqualAreaAxis());

    /// <summary>Its area above a cut [m²].</summary>
    internal double AreaAbove(double cut)
    {
        double sum = 0;
        foreach (AreaPart part in _parts)
        {
            sum += part.AreaAbove(cut);
        }

        return sum;
    }

    /// <summary>First moment Q, about the centroid, of the area above a cut [m³].</summary>
    internal double FirstMomentAbove(double cut)
    {
        double sum = 0;
        foreach (AreaPart part in _parts)
        {
            sum += part.FirstMomentAbove(cut);
        }

        return sum - Centroid * AreaAbove(cut);
    }

    /// <summary>Its width just above a height, or just below it [m].</summary>
    internal double Width(double height, bool above)
    {
        double sum = 0;
        foreach (AreaPart part in _parts)
        {
            sum += part.Width(height, above);
        }

        return sum;
    }

    /// <summary>A width that it has at least between two neighbouring levels [m]; every piece narrows or widens there.</summary>
    internal double LeastWidth(double low, double high)
    {
        double sum = 0;
        foreach (AreaPart part in _parts)
        {
            sum += Math.Min(part.Width(low, above: true), part.Width(high, above: false));
        }

        return sum;
    }

    /// <summary>Where its pieces begin and end, and the centroid, from below [m].</summary>
    internal ImmutableArray<double> Levels() =>
        [.. _parts.SelectMany(part => new[] { part.Bottom, part.Top }).Append(Centroid).Distinct().Order()];

    private double EqualAreaAxis()
    {
        double low = Bottom;
        double high = Top;
        double cut = (low + high) / 2;

        // A symmetric area is halved by its middle; rounding may leave a trace.
        while (Math.Abs(AreaAbove(cut) - Area / 2) > 1e-14 * Area && cut > low && cut < high)
        {
            (low, high) = AreaAbove(cut) > Area / 2 ? (cut, high) : (low, cut);
            cut = (low + high) / 2;
        }

        return cut;
    }
}
