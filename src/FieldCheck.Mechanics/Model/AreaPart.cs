namespace FieldCheck.Mechanics.Model;

/// <summary>A piece of a plane area, added to it or cut out of it; heights are from a level that all pieces share.</summary>
internal abstract record AreaPart
{
    private AreaPart()
    {
    }

    /// <summary>Where it begins [m].</summary>
    internal abstract double Bottom { get; }

    /// <summary>Where it ends [m].</summary>
    internal abstract double Top { get; }

    /// <summary>Its area [m²]; negative of what is cut out.</summary>
    internal double Area => AreaAbove(Bottom);

    /// <summary>Its second moment of area about the level [m⁴].</summary>
    internal abstract double SecondMoment { get; }

    /// <summary>Its area above a cut [m²].</summary>
    internal abstract double AreaAbove(double cut);

    /// <summary>First moment, about the level, of its area above a cut [m³].</summary>
    internal abstract double FirstMomentAbove(double cut);

    /// <summary>Its width just above a height, or just below it [m].</summary>
    internal double Width(double height, bool above)
    {
        bool reaches = above ? height >= Bottom && height < Top : height > Bottom && height <= Top;
        return reaches ? WidthInside(height) : 0;
    }

    private protected abstract double WidthInside(double height);

    /// <summary>A rectangle.</summary>
    internal sealed record Strip(double Breadth, double From, double To, int Sign = 1) : AreaPart
    {
        internal override double Bottom => From;

        internal override double Top => To;

        internal override double SecondMoment
        {
            get
            {
                double height = To - From;
                double middle = (From + To) / 2;
                return Sign * Breadth * height * (middle * middle + height * height / 12);
            }
        }

        internal override double AreaAbove(double cut) => Sign * Breadth * (To - Math.Clamp(cut, From, To));

        internal override double FirstMomentAbove(double cut)
        {
            double from = Math.Clamp(cut, From, To);
            return Sign * Breadth * (To - from) * (To + from) / 2;
        }

        private protected override double WidthInside(double height) => Sign * Breadth;
    }

    /// <summary>A strip whose width changes evenly.</summary>
    internal sealed record Taper(double LowerBreadth, double UpperBreadth, double From, double To) : AreaPart
    {
        internal override double Bottom => From;

        internal override double Top => To;

        internal override double SecondMoment
        {
            get
            {
                double height = To - From;
                double toEdges = LowerBreadth * (To * To + 2 * To * From + 3 * From * From)
                    + UpperBreadth * (3 * To * To + 2 * To * From + From * From);
                return height * toEdges / 12;
            }
        }

        internal override double AreaAbove(double cut)
        {
            double from = Math.Clamp(cut, From, To);
            return (To - from) * (WidthInside(from) + UpperBreadth) / 2;
        }

        internal override double FirstMomentAbove(double cut)
        {
            double from = Math.Clamp(cut, From, To);
            double lower = WidthInside(from);
            return (To - from) * (lower * (To + 2 * from) + UpperBreadth * (2 * To + from)) / 6;
        }

        private protected override double WidthInside(double height) =>
            LowerBreadth + (UpperBreadth - LowerBreadth) * (height - From) / (To - From);
    }

    /// <summary>Half a disc whose straight edge lies at its centre.</summary>
    internal sealed record HalfDisc(double Radius, double Centre, bool IsUpper, int Sign = 1) : AreaPart
    {
        internal override double Bottom => IsUpper ? Centre : Centre - Radius;

        internal override double Top => IsUpper ? Centre + Radius : Centre;

        internal override double SecondMoment
        {
            get
            {
                double area = Math.PI / 2 * Radius * Radius;
                double offset = (IsUpper ? 4 : -4) * Radius / (3 * Math.PI);
                return Sign * area * (Radius * Radius / 4 + 2 * offset * Centre + Centre * Centre);
            }
        }

        internal override double AreaAbove(double cut) => IsUpper
            ? Sign * Segment(cut - Centre)
            : Sign * (Segment(0) - Segment(Centre - cut));

        internal override double FirstMomentAbove(double cut) => IsUpper
            ? Sign * SegmentMoment(cut - Centre) + Centre * AreaAbove(cut)
            : Sign * (SegmentMoment(Centre - cut) - SegmentMoment(0)) + Centre * AreaAbove(cut);

        private protected override double WidthInside(double height) =>
            Sign * 2 * Math.Sqrt(Math.Max(0, (Radius - height + Centre) * (Radius + height - Centre)));

        /// <summary>Area of the disc farther than a distance from its centre, on one side.</summary>
        private double Segment(double distance)
        {
            double share = Math.Clamp(distance / Radius, 0, 1);
            return Radius * Radius * (Math.Acos(share) - share * Math.Sqrt(1 - share * share));
        }

        /// <summary>First moment of that area about the centre.</summary>
        private double SegmentMoment(double distance)
        {
            double share = Math.Clamp(distance / Radius, 0, 1);
            return 2.0 / 3 * Math.Pow(Radius, 3) * Math.Pow(1 - share * share, 1.5);
        }
    }
}
