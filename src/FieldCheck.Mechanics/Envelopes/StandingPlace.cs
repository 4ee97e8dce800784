namespace FieldCheck.Mechanics.Envelopes;

/// <summary>A section, under the standing loads of a combination that make the most there.</summary>
/// <param name="Curve">The greatest of the quantity under that combination.</param>
/// <param name="Piece">The piece of beam.</param>
/// <param name="Share">The place as a share of its length [–]; 0 is just inside its left end, 1 just inside its right.</param>
internal readonly record struct StandingPlace(StandingCurve Curve, int Piece, double Share)
{
    /// <summary>Which loads stand.</summary>
    internal Situation Situation(RollingPlace? rolling = null) =>
        Curve.Parts.Superposition.Situation(Curve.Combination, Curve.StandingAt(Piece, Share), rolling);
}
