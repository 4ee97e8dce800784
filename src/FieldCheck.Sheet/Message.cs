namespace FieldCheck.Sheet;

/// <summary>Something that must be said beside the figures.</summary>
/// <param name="Severity">How grave it is.</param>
/// <param name="Code">A stable word for other programs, as "uplift"; listed in docs/command-line.md.</param>
/// <param name="Text">The sentence for a person.</param>
public sealed record Message(Severity Severity, string Code, string Text);
