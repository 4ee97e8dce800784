using System.Collections.Immutable;

namespace FieldCheck.Sheet.Building;

/// <summary>How far the values in some cells are taken as off from what stands there.</summary>
/// <param name="ByKey">By key path, in SI.</param>
internal sealed record CellOffsets(ImmutableDictionary<string, double> ByKey)
{
    internal double Of(string key) => ByKey.GetValueOrDefault(key);
}
