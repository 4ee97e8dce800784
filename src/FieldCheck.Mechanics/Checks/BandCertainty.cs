namespace FieldCheck.Mechanics.Checks;

/// <summary>What is known of a band; ordered from best to least.</summary>
public enum BandCertainty
{
    /// <summary>All that can come out lies inside, and the ends are reached (to a thousandth of the value).</summary>
    Exact,

    /// <summary>All that can come out lies inside; an end may lie farther out than need be.</summary>
    Bound,

    /// <summary>From the corners of what was measured, not proved in between.</summary>
    Estimate,

    /// <summary>An estimate from part of what may be: elsewhere within what was measured there is no answer.</summary>
    Partial,
}
