namespace FieldCheck.Mechanics.Model;

/// <summary>How one movement of a support is resisted. Closed set: the cases are the nested records.</summary>
public abstract record Restraint
{
    private Restraint()
    {
    }

    /// <summary>Moves freely.</summary>
    public static Restraint Free { get; } = new None();

    /// <summary>Does not move, but for an imposed movement.</summary>
    public static Restraint Held { get; } = new Rigid();

    /// <summary>Moves freely.</summary>
    public sealed record None : Restraint;

    /// <summary>Does not move, but for an imposed movement.</summary>
    public sealed record Rigid : Restraint;

    /// <summary>Moves in proportion to the force or moment on it.</summary>
    /// <param name="Stiffness">Force per movement [N/m], or moment per turn [N·m/rad]; greater than zero.</param>
    public sealed record Spring(double Stiffness) : Restraint
    {
        /// <summary>Force per movement [N/m], or moment per turn [N·m/rad].</summary>
        public double Stiffness { get; } = Require.Positive(Stiffness);
    }
}
