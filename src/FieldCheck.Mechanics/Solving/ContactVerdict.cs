namespace FieldCheck.Mechanics.Solving;

/// <summary>What a search for the touching supports came to.</summary>
internal enum ContactVerdict
{
    /// <summary>The beam stands on what touches.</summary>
    Stands,

    /// <summary>What touches cannot hold it.</summary>
    Tips,

    /// <summary>No set of touching supports agrees with itself.</summary>
    Contradicts,

    /// <summary>The arithmetic cannot hold the figures.</summary>
    Fails,
}
