namespace FieldCheck.Mechanics.Solving;

/// <summary>Why a beam was not answered.</summary>
public enum UndecidedReason
{
    /// <summary>
    /// No set of touching supports agrees with itself: what a one-way support holds besides its push (rotation, or
    /// along where a surface slopes) lifts it off, and without that it is pressed back.
    /// </summary>
    ContactContradictsItself,

    /// <summary>Sizes differ so widely that the arithmetic cannot hold them (over some thirty powers of ten).</summary>
    BeyondArithmetic,
}
