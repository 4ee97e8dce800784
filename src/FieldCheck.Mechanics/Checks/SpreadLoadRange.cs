namespace FieldCheck.Mechanics.Checks;

/// <summary>Least and greatest of what a spread load does to one figure, its ends and its size in their ranges.</summary>
internal static class SpreadLoadRange
{
    internal static (double Low, double High) Of(LoadBox box, InfluenceLine line, bool along)
    {
        InfluenceIntegral integral = line.Integral(along);
        if (!box.KeepsTotal && box.Sizes.All(size => size.Start == size.End))
        {
            return OfEven(box, integral);
        }

        return (-new SpreadLoadSearch(box, line, along, -1).Greatest(), new SpreadLoadSearch(box, line, along, 1).Greatest());
    }

    /// <summary>Of one intensity all along: the two ends have no part in each other.</summary>
    private static (double Low, double High) OfEven(LoadBox box, InfluenceIntegral integral)
    {
        (double startLow, double startHigh) = integral.RangeTo(box.From.Low, box.From.High);
        (double endLow, double endHigh) = integral.RangeTo(box.To.Low, box.To.High);
        double[] corners =
        [
            .. box.Sizes.SelectMany(size => new[]
            {
                size.Start * (endHigh - startLow), size.Start * (endLow - startHigh),
            }),
        ];
        return (corners.Min(), corners.Max());
    }
}
