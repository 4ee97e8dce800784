namespace FieldCheck.Mechanics.Model;

/// <summary>The factors that timber rules put on a strength; the symbols are those of the rules.</summary>
public enum FactorKind
{
    /// <summary>Load duration: C_D of the NDS.</summary>
    Duration,

    /// <summary>Wet service: C_M of the NDS; one for each strength, so given as a yes (1) and looked up.</summary>
    WetService,

    /// <summary>Temperature: C_t of the NDS.</summary>
    Temperature,

    /// <summary>Beam stability: C_L of the NDS, worked out.</summary>
    BeamStability,

    /// <summary>Size: C_F of the NDS.</summary>
    Size,

    /// <summary>Flat use: C_fu of the NDS.</summary>
    FlatUse,

    /// <summary>Incising: C_i of the NDS.</summary>
    Incising,

    /// <summary>Repetitive member: C_r of the NDS.</summary>
    Repetitive,

    /// <summary>Bearing area: C_b of the NDS, worked out.</summary>
    BearingArea,

    /// <summary>Load duration and moisture: k_mod of EN 1995-1-1.</summary>
    Modification,

    /// <summary>Partial factor of the material, γ_M of EN 1995-1-1: divides.</summary>
    PartialFactor,

    /// <summary>Depth: k_h of EN 1995-1-1.</summary>
    Depth,

    /// <summary>Load sharing: k_sys of EN 1995-1-1.</summary>
    System,

    /// <summary>Lateral stability: k_crit of EN 1995-1-1, worked out.</summary>
    LateralStability,

    /// <summary>Cracks: k_cr of EN 1995-1-1, on the width in shear.</summary>
    Cracks,

    /// <summary>Compression across the grain: k_c,90 of EN 1995-1-1.</summary>
    CrossGrain,
}
