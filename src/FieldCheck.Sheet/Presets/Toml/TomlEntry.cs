namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>A key of a table and what stands under it.</summary>
/// <param name="Key">The key, without quotation marks.</param>
/// <param name="KeySpan">Where the key stands.</param>
/// <param name="Node">What stands under it.</param>
internal sealed record TomlEntry(string Key, TomlSpan KeySpan, TomlNode Node);
