namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>Whole lines of a block: a statement with its own comments, or lines between statements.</summary>
/// <param name="Lead">The comments above the statement that are its own.</param>
/// <param name="Text">The lines of the statement, or those between statements.</param>
/// <param name="Statement">The number of the statement as the file stood; null for other lines and for what is new.</param>
/// <param name="Key">The first part of its key; null for a header and for lines between statements.</param>
internal sealed record PieceDraft(string Lead, string Text, int? Statement, string? Key);
