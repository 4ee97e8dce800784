namespace FieldCheck.Reporting.Working;

/// <summary>One line of the working by hand.</summary>
/// <param name="Text">The line, within the width asked for: plain ASCII.</param>
/// <param name="Kind">What it is.</param>
public sealed record WorkingLine(string Text, WorkingLineKind Kind);
