namespace FieldCheck.Reporting.Drawing;

/// <summary>A peak of a curve, or the level stretch that it stands on.</summary>
/// <param name="Value">Its value, in SI.</param>
/// <param name="From">Left end of the stretch [m]; the same as <paramref name="To"/> for a single place.</param>
/// <param name="To">Right end of the stretch [m].</param>
/// <param name="Side">On which side of a single place it stands.</param>
internal sealed record PlotPeak(double Value, double From, double To, PeakSide Side)
{
    internal bool IsStretch => From < To;
}
