namespace FieldCheck.Mechanics.Model;

/// <summary>Which senses of reaction a support can give.</summary>
public enum SupportAction
{
    /// <summary>It pushes and holds down alike.</summary>
    Both,

    /// <summary>It can only push the beam up (along its normal, on a slope); pulled, it lets go.</summary>
    PushesOnly,

    /// <summary>It can only hold the beam down, as a strap does; pushed, it goes slack.</summary>
    HoldsDownOnly,
}
