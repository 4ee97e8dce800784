namespace FieldCheck.Mechanics.Envelopes;

/// <summary>How well a greatest or least value over all situations is known.</summary>
public enum EnvelopeCertainty
{
    /// <summary>No situation gives more or less, but for rounding.</summary>
    Exact,

    /// <summary>Found among situations that were tried; another may give somewhat more or less.</summary>
    Estimate,
}
