namespace FieldCheck.Mechanics.Model;

/// <summary>What a combination's figures may be compared with.</summary>
public enum CombinationBasis
{
    /// <summary>Loads as they are expected to stand.</summary>
    Service,

    /// <summary>Loads after their safety factors.</summary>
    Factored,
}
