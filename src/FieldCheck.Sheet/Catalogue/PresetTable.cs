using System.Collections.Frozen;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>One named table of texts as it ships.</summary>
/// <param name="Name">Its name, as "IPE 200".</param>
/// <param name="Cells">Its texts by key.</param>
internal sealed record PresetTable(string Name, FrozenDictionary<string, string> Cells)
{
    /// <summary>The text of a key that must stand.</summary>
    /// <exception cref="InvalidDataException">It does not stand: a fault of ours.</exception>
    internal string Text(string key) =>
        Cells.TryGetValue(key, out string? text) ? text : throw new InvalidDataException($"{Name} has no {key}.");

    /// <summary>A quantity that must stand, in SI.</summary>
    /// <exception cref="InvalidDataException">It does not stand or does not read: a fault of ours.</exception>
    internal double Value(string key, QuantityKind kind) => Read(Text(key), kind);

    /// <summary>A quantity in SI, or null where its key does not stand.</summary>
    /// <exception cref="InvalidDataException">It does not read: a fault of ours.</exception>
    internal double? ValueOrNull(string key, QuantityKind kind) =>
        Cells.TryGetValue(key, out string? text) ? Read(text, kind) : null;

    private double Read(string text, QuantityKind kind) => QuantityReader.Read(text, kind) switch
    {
        Reading<Quantity>.Accepted accepted => accepted.Value.Value,
        _ => throw new InvalidDataException($"{Name}: {text} does not read as {kind}."),
    };
}
