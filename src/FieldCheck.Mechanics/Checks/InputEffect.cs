namespace FieldCheck.Mechanics.Checks;

/// <summary>What one uncertain input by itself does to one part of a reaction.</summary>
/// <param name="Input">Index of the input.</param>
/// <param name="Down">How far it may lower the figure [N or N·m]; zero or less.</param>
/// <param name="Up">How far it may raise it [N or N·m]; zero or greater.</param>
/// <param name="PerUnit">The larger of the two a unit of the input's half width [N or N·m, per m, N/m, rad or –].</param>
public readonly record struct InputEffect(int Input, double Down, double Up, double PerUnit)
{
    /// <summary>How far it may lower the figure [N or N·m].</summary>
    public double Down { get; } = Down;

    /// <summary>How far it may raise it [N or N·m].</summary>
    public double Up { get; } = Up;

    /// <summary>The larger of the two a unit of the input's half width [N or N·m, per m, N/m, rad or –].</summary>
    public double PerUnit { get; } = PerUnit;

    /// <summary>The larger of the two [N or N·m]; zero or greater.</summary>
    public double Size => Math.Max(Up, -Down);
}
