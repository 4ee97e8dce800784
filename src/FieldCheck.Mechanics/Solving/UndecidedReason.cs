namespace FieldCheck.Mechanics.Solving;

/// <summary>Why a beam was not answered.</summary>
public enum UndecidedReason
{
    /// <summary>
    /// No set of touching supports agrees with itself: the rotational stiffness of a support that only pushes, or holds
    /// down, both lifts it off and presses it back.
    /// </summary>
    ContactContradictsItself,

    /// <summary>Sizes differ so widely that the arithmetic cannot hold them (over some thirty powers of ten).</summary>
    BeyondArithmetic,
}
