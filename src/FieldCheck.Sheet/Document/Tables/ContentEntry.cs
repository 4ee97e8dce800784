namespace FieldCheck.Sheet.Document.Tables;

/// <summary>A key and what stands under it.</summary>
internal sealed record ContentEntry(string Key, Content Content);
