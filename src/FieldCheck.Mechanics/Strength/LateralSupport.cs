namespace FieldCheck.Mechanics.Strength;

/// <summary>How the compression side of a span is kept from moving sideways.</summary>
public abstract record LateralSupport
{
    private LateralSupport()
    {
    }

    /// <summary>It is held all along.</summary>
    public sealed record Braced : LateralSupport;

    /// <summary>It is held at places so far apart.</summary>
    /// <param name="Length">The distance [m]; greater than zero.</param>
    public sealed record Unbraced(double Length) : LateralSupport;
}
