namespace FieldCheck.Mechanics.Strength;

/// <summary>What ends the growth of a load.</summary>
public enum HeadroomEnd
{
    /// <summary>Beyond it a check is over.</summary>
    CheckFails,

    /// <summary>Beyond it the beam tips, or no answer is found.</summary>
    Tips,

    /// <summary>A check is over even without any of the load.</summary>
    OverWithout,

    /// <summary>Beyond it a check that was judged can be judged no longer.</summary>
    NotJudged,

    /// <summary>
    /// Beyond it, or even without any of the load, a support would have to hold the beam down of which nobody said that it does.
    /// </summary>
    Pulled,

    /// <summary>Nothing: no check is over however great the load becomes.</summary>
    None,
}
