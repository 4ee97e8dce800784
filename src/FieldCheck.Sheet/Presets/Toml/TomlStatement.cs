namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>A header, or a key with its value: what takes whole lines of a file.</summary>
/// <param name="IsHeader">True: a header.</param>
/// <param name="Key">The first part of its key, without quotation marks.</param>
/// <param name="Span">Where it stands, without what precedes or follows it on its lines.</param>
/// <param name="Name">Where the last part of its key stands.</param>
/// <param name="Value">The value after the key; null for a header, or where the key was not taken.</param>
internal sealed record TomlStatement(bool IsHeader, string Key, TomlSpan Span, TomlSpan Name, TomlNode? Value);
