namespace FieldCheck.Sheet.Document;

/// <summary>A name and what is written beside it, as in { dead = 1.2 }.</summary>
/// <param name="Name">The name.</param>
/// <param name="Text">What is written, as typed.</param>
public sealed record NamedFigure(string Name, string Text);
