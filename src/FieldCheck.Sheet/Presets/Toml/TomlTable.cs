using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Presets.Toml;

/// <summary>A table in any form.</summary>
internal sealed class TomlTable(TomlSpan span, KeyPath path, TomlForm form) : TomlNode(span, path)
{
    private readonly Dictionary<string, TomlEntry> _byKey = new(StringComparer.Ordinal);

    internal TomlForm Form { get; set; } = form;

    /// <summary>Its keys, in the order of the file.</summary>
    internal List<TomlEntry> Entries { get; } = [];

    /// <summary>What stands under a key, or null.</summary>
    internal TomlEntry? this[string key] => _byKey.GetValueOrDefault(key);

    /// <summary>Adds a key that does not stand yet.</summary>
    internal void Add(TomlEntry entry)
    {
        _byKey.Add(entry.Key, entry);
        Entries.Add(entry);
    }
}
