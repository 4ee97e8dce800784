namespace FieldCheck.Mechanics.Envelopes;

/// <summary>A stretch on which an influence line is one cubic.</summary>
/// <param name="From">Its left end [m].</param>
/// <param name="To">Its right end [m].</param>
/// <param name="Coefficients">In the share of the stretch, constant term first.</param>
internal sealed record InfluenceCubic(double From, double To, double[] Coefficients);
