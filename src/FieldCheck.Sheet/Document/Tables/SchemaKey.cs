namespace FieldCheck.Sheet.Document.Tables;

/// <summary>A key and what may stand under it.</summary>
internal sealed record SchemaKey(string Key, Schema Schema);
