namespace FieldCheck.Mechanics.Envelopes;

/// <summary>How well a greatest or least value over all situations is known.</summary>
public enum EnvelopeCertainty
{
    /// <summary>
    /// No situation gives more or less, but for rounding; with a deflection under a rolling load, by 1e-10 of the size of
    /// deflections.
    /// </summary>
    Exact,

    /// <summary>Found among situations that were tried; another may give somewhat more or less.</summary>
    Estimate,
}
