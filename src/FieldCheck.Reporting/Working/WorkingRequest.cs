namespace FieldCheck.Reporting.Working;

/// <summary>How a working is wanted.</summary>
/// <param name="Width">Columns of a line; 40 or more.</param>
public sealed record WorkingRequest(int Width)
{
    /// <summary>The point that moments are taken about [m from the left end]; null: the one that leaves fewest unknowns.</summary>
    public double? About { get; init; }

    /// <summary>True: results and the equations they come from, without the sentences that explain.</summary>
    public bool IsShort { get; init; }

    /// <summary>True: every step has its name above it.</summary>
    public bool HasStepNames { get; init; } = true;

    /// <summary>False: what would stand in columns is said in sentences.</summary>
    public bool HasTables { get; init; } = true;
}
