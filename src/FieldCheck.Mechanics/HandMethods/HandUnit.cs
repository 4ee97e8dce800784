namespace FieldCheck.Mechanics.HandMethods;

/// <summary>What a number of the working is measured in.</summary>
/// <param name="Force">The power of force in it: 1 for a force, a moment or an intensity.</param>
/// <param name="Length">The power of length in it: 1 for a length or a moment, -1 for an intensity.</param>
/// <param name="IsAngle">True: an angle; both powers are then 0.</param>
public readonly record struct HandUnit(int Force, int Length, bool IsAngle = false)
{
    /// <summary>A plain number.</summary>
    public static HandUnit Ratio => default;

    /// <summary>A force.</summary>
    public static HandUnit OfForce => new(1, 0);

    /// <summary>A length.</summary>
    public static HandUnit OfLength => new(0, 1);

    /// <summary>A moment.</summary>
    public static HandUnit OfMoment => new(1, 1);

    /// <summary>A load spread along a length.</summary>
    public static HandUnit OfIntensity => new(1, -1);

    /// <summary>A flexural rigidity.</summary>
    public static HandUnit OfRigidity => new(1, 2);

    /// <summary>An angle.</summary>
    public static HandUnit OfAngle => new(0, 0, true);

    /// <summary>The unit of a product.</summary>
    public static HandUnit operator *(HandUnit one, HandUnit other) =>
        new(one.Force + other.Force, one.Length + other.Length, one.IsAngle ^ other.IsAngle);

    /// <summary>The unit of a quotient.</summary>
    public static HandUnit operator /(HandUnit one, HandUnit other) =>
        new(one.Force - other.Force, one.Length - other.Length, one.IsAngle ^ other.IsAngle);

    /// <summary>The unit of a product.</summary>
    /// <param name="one">One factor.</param>
    /// <param name="other">The other one.</param>
    public static HandUnit Multiply(HandUnit one, HandUnit other) => one * other;

    /// <summary>The unit of a quotient.</summary>
    /// <param name="one">What is divided.</param>
    /// <param name="other">What it is divided by.</param>
    public static HandUnit Divide(HandUnit one, HandUnit other) => one / other;
}
