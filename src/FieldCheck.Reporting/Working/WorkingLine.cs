namespace FieldCheck.Reporting.Working;

/// <summary>One line of the working by hand.</summary>
/// <param name="Text">The line, within the width asked for: plain ASCII.</param>
/// <param name="Kind">What it is.</param>
public sealed record WorkingLine(string Text, WorkingLineKind Kind)
{
    /// <summary>The line that heads the table of which it is a row; null: it is a row of none.</summary>
    public string? Head { get; init; }
}
