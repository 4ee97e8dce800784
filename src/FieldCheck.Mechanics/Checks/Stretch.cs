namespace FieldCheck.Mechanics.Checks;

/// <summary>A stretch of beam on which an influence line is one polynomial a kind of load.</summary>
/// <param name="From">Its left end [m].</param>
/// <param name="To">Its right end [m].</param>
/// <param name="Origin">Where the polynomials count from [m].</param>
/// <param name="Unit">What they count in [m].</param>
/// <param name="Coefficients">Of the influence of loads of one across, along and of couples, see UnitLoads.</param>
internal sealed record Stretch(double From, double To, double Origin, double Unit, double[] Coefficients)
{
    internal double Share(double position) => (position - Origin) / Unit;
}
