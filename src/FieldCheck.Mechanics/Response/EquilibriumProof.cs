namespace FieldCheck.Mechanics.Response;

/// <summary>Loads as entered against reactions, summed anew: it never sees the stiffness matrix.</summary>
/// <param name="LoadDown">Sum of the loads across the beam [N], positive down.</param>
/// <param name="ReactionUp">Sum of the reactions across the beam [N], positive up.</param>
/// <param name="LoadRight">Sum of the loads along the beam [N], positive right.</param>
/// <param name="ReactionRight">Sum of the reactions along the beam [N], positive right.</param>
/// <param name="LoadMoment">Moment of the loads about x = 0 [N·m], positive counter-clockwise.</param>
/// <param name="ReactionMoment">Moment of the reactions about x = 0 [N·m], positive counter-clockwise.</param>
/// <param name="Residual">
/// The larger of |ΣF| / Σ|F| and |ΣM about x = 0| / Σ|terms| [–]; zero when nothing acts.
/// </param>
public sealed record EquilibriumProof(
    double LoadDown,
    double ReactionUp,
    double LoadRight,
    double ReactionRight,
    double LoadMoment,
    double ReactionMoment,
    double Residual);
