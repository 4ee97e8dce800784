namespace FieldCheck.Mechanics.Envelopes;

/// <summary>What a search for a greater deflection can come to.</summary>
internal enum SagFindingKind
{
    /// <summary>There is none.</summary>
    Nothing,

    /// <summary>One was met.</summary>
    Greater,

    /// <summary>Too much was looked at without telling.</summary>
    Unsettled,
}
