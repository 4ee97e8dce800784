using System.Diagnostics;

namespace FieldCheck.Mechanics.Model;

/// <summary>One load on the beam. Closed set: the cases are the nested records.</summary>
public abstract record Load
{
    private Load()
    {
    }

    /// <summary>Where the load ends, to the right [m].</summary>
    internal double End => this switch
    {
        Point point => point.Position,
        Couple couple => couple.Position,
        Distributed distributed => distributed.To,
        _ => throw new UnreachableException(),
    };

    /// <summary>A force at one place.</summary>
    /// <param name="Position">Distance from the left end of the beam [m].</param>
    /// <param name="Down">Its part across the beam [N], positive down.</param>
    /// <param name="Right">Its part along the beam [N], positive toward the right end.</param>
    public sealed record Point(double Position, double Down, double Right = 0) : Load
    {
        /// <summary>Distance from the left end of the beam [m].</summary>
        public double Position { get; } = Require.NotNegative(Position);

        /// <summary>Its part across the beam [N], positive down.</summary>
        public double Down { get; } = Require.Finite(Down);

        /// <summary>Its part along the beam [N], positive toward the right end.</summary>
        public double Right { get; } = Require.Finite(Right);
    }

    /// <summary>A turning moment at one place.</summary>
    /// <param name="Position">Distance from the left end of the beam [m].</param>
    /// <param name="Moment">Its size [N·m], positive counter-clockwise.</param>
    /// <param name="Side">At a hinge, the part that it turns; elsewhere of no effect.</param>
    public sealed record Couple(double Position, double Moment, Side Side = Side.Left) : Load
    {
        /// <summary>Distance from the left end of the beam [m].</summary>
        public double Position { get; } = Require.NotNegative(Position);

        /// <summary>Its size [N·m], positive counter-clockwise.</summary>
        public double Moment { get; } = Require.Finite(Moment);
    }

    /// <summary>A load spread over a stretch, varying in a straight line.</summary>
    /// <param name="From">Its left end [m from the left end of the beam].</param>
    /// <param name="To">Its right end [m from the left end of the beam]; greater than <paramref name="From"/>.</param>
    /// <param name="StartIntensity">
    /// Intensity at its left end [N/m]; positive down, or toward the right end when along.
    /// </param>
    /// <param name="EndIntensity">Intensity at its right end [N/m]; signed as at the left.</param>
    /// <param name="ActsAlong">True: it acts along the beam; false: across.</param>
    public sealed record Distributed(
        double From, double To, double StartIntensity, double EndIntensity, bool ActsAlong = false) : Load
    {
        /// <summary>Its left end [m from the left end of the beam].</summary>
        public double From { get; } = Require.NotNegative(From);

        /// <summary>Its right end [m from the left end of the beam].</summary>
        public double To { get; } = Require.GreaterThan(To, From);

        /// <summary>Intensity at its left end [N/m].</summary>
        public double StartIntensity { get; } = Require.Finite(StartIntensity);

        /// <summary>Intensity at its right end [N/m].</summary>
        public double EndIntensity { get; } = Require.Finite(EndIntensity);
    }
}
