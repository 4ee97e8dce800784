using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Strength;

/// <summary>How far the beam may deflect; null where no such limit is given.</summary>
public sealed record DeflectionLimits
{
    /// <summary>Length of a bay over its greatest deflection from the chord between its supports [–]; greater than zero.</summary>
    public double? BayRatio { get; init; }

    /// <summary>Length of an overhang over the greatest movement of it from its support's level [–]; greater than zero.</summary>
    public double? OverhangRatio { get; init; }

    /// <summary>The greatest deflection anywhere, from the unloaded line [m]; greater than zero.</summary>
    public double? Absolute { get; init; }

    /// <summary>As <see cref="BayRatio"/>, of the final deflection with what lasting loads add in time [–].</summary>
    public double? FinalBayRatio { get; init; }

    /// <summary>As <see cref="OverhangRatio"/>, of the final deflection [–].</summary>
    public double? FinalOverhangRatio { get; init; }

    /// <summary>Limits on bays (and overhangs of twice their length, common practice) under one case alone.</summary>
    public ImmutableArray<CaseDeflectionLimit> Cases { get; init; } = [];

    /// <summary>For each case of the model what share of it lasts and makes the beam creep [–], 0 to 1.</summary>
    public ImmutableArray<double> Lasting { get; init; } = [];
}
