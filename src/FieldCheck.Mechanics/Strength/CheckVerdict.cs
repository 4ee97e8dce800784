namespace FieldCheck.Mechanics.Strength;

/// <summary>What a check comes to.</summary>
public enum CheckVerdict
{
    /// <summary>The demand is at most the limit.</summary>
    Ok,

    /// <summary>The demand is more than the limit.</summary>
    Over,

    /// <summary>A figure to judge by is missing.</summary>
    NotJudged,
}
