namespace FieldCheck.Reporting.Drawing;

/// <summary>Which column stands for which place, one rule for sketch and diagrams so that they line up.</summary>
/// <param name="Length">Length of the beam [m].</param>
/// <param name="Width">Columns the beam takes.</param>
internal readonly record struct BeamColumns(double Length, int Width)
{
    // A place on the border of two columns belongs to the left one; the slack hides the rounding of x/L.
    private const double Slack = 1e-9;

    /// <summary>The column of a place: the whole number nearest x/L·W - 1/2.</summary>
    /// <param name="position">The place [m from the left end].</param>
    internal int Of(double position) =>
        Math.Clamp((int)Math.Ceiling(position / Length * Width - 1 - Slack * Width), 0, Width - 1);

    /// <summary>The place in the middle of a column [m from the left end].</summary>
    internal double Centre(int column) => (column + 0.5) / Width * Length;
}
