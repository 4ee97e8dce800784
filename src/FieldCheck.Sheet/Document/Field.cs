namespace FieldCheck.Sheet.Document;

/// <summary>One key of a table: its name in the file, what it asks for, and how a row gives and takes it.</summary>
/// <typeparam name="TRow">The row.</typeparam>
/// <param name="Key">The key in the file.</param>
/// <param name="Wanted">What it asks for.</param>
/// <param name="Get">The text that stands in a row, or null.</param>
/// <param name="Set">The row with another text in this place.</param>
public sealed record Field<TRow>(
    string Key,
    Wanted Wanted,
    Func<TRow, string?> Get,
    Func<TRow, string?, TRow> Set);
