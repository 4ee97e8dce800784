namespace FieldCheck.Sheet.Document;

/// <summary>A cell of a beam, found by its key path.</summary>
/// <param name="Key">The key path, rows counted from 1, as "load[2].at".</param>
/// <param name="Wanted">What it asks for.</param>
/// <param name="Text">The text as typed, or null where nothing stands.</param>
public sealed record DocumentCell(string Key, Wanted Wanted, string? Text);
