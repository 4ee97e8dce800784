namespace FieldCheck.Sheet.Settings;

/// <summary>How a person wants the working by hand, as it is written: every value is text, and null where none stands.</summary>
public sealed record WorkingSettings
{
    /// <summary>"full", or "short": without the sentences that explain.</summary>
    public string? Form { get; init; }

    /// <summary>"true": every step has its name above it.</summary>
    public string? StepNames { get; init; }
}
