using FieldCheck.Mechanics.Response;

namespace FieldCheck.Sheet.Influence;

/// <summary>What an influence line is of. Closed set: the cases are the nested records.</summary>
public abstract record InfluenceOf
{
    private InfluenceOf()
    {
    }

    /// <summary>The force of a support across the beam, positive up.</summary>
    /// <param name="Support">Which, counted from 0 in the order of the beam's supports.</param>
    public sealed record Reaction(int Support) : InfluenceOf;

    /// <summary>Shear or moment at a section.</summary>
    /// <param name="Curve">Which of the two.</param>
    /// <param name="Position">Where [m from the left end]; at a support, just right of it.</param>
    public sealed record Section(Curve Curve, double Position) : InfluenceOf;
}
