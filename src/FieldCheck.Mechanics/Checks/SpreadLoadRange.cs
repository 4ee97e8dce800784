namespace FieldCheck.Mechanics.Checks;

/// <summary>Least and greatest of what a spread load does to one figure, its ends and its size in their ranges.</summary>
internal static class SpreadLoadRange
{
    /// <summary>A bound where the search is given up, exact elsewhere.</summary>
    internal static Band Of(LoadBox box, InfluenceLine line, bool along)
    {
        InfluenceIntegral integral = line.Integral(along);
        if (!box.KeepsTotal && box.Sizes.All(size => size.Start == size.End))
        {
            return OfEven(box, integral);
        }

        SpreadLoadSearch down = new(box, line, along, -1);
        SpreadLoadSearch up = new(box, line, along, 1);
        double low = -down.Greatest();
        double high = up.Greatest();
        return new Band(low, high, down.IsNear && up.IsNear ? BandCertainty.Exact : BandCertainty.Bound);
    }

    /// <summary>Of one intensity all along: the two ends have no part in each other.</summary>
    private static Band OfEven(LoadBox box, InfluenceIntegral integral)
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
        return new Band(corners.Min(), corners.Max(), BandCertainty.Exact);
    }
}
