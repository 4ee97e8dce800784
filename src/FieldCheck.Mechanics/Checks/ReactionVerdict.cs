namespace FieldCheck.Mechanics.Checks;

/// <summary>What a stated reaction comes to beside the computed one.</summary>
public enum ReactionVerdict
{
    /// <summary>There is nothing that it may be held against.</summary>
    NotJudged,

    /// <summary>It lies within the allowed difference.</summary>
    Agrees,

    /// <summary>The support gets more than is stated, or the other way round: the unsafe side.</summary>
    Low,

    /// <summary>The support gets less than is stated.</summary>
    High,

    /// <summary>It lies beyond the allowed difference, and inside what the entered values leave open.</summary>
    WithinBand,
}
