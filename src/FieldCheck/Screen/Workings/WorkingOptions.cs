namespace FieldCheck.Screen.Workings;

/// <summary>How a person wants the working.</summary>
internal sealed record WorkingOptions
{
    /// <summary>True: results and the equations they come from, without the sentences that explain.</summary>
    internal bool IsShort { get; init; }

    /// <summary>True: every step has its name above it.</summary>
    internal bool HasStepNames { get; init; } = true;
}
