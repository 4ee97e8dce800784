namespace FieldCheck.Mechanics.Checks;

/// <summary>One sum of stated reactions against that of the loads.</summary>
/// <param name="Stated">Sum of what is stated: forces up [N], or moments counter-clockwise [N·m].</param>
/// <param name="Loads">Sum that it has to hold up: forces down [N], or moments clockwise [N·m].</param>
/// <param name="Allowed">By how much the stated figures may be off together and agree one by one [N or N·m].</param>
public readonly record struct BalanceSide(double Stated, double Loads, double Allowed)
{
    /// <summary>Stated less loads [N or N·m]; negative where the stated figures are short.</summary>
    public double Difference => Stated - Loads;

    /// <summary>Whether the two sums are as near as the rounding and the tolerance of the figures allow.</summary>
    public bool Closes => Math.Abs(Difference) <= Allowed;
}
