using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>One outline that a shape can have.</summary>
/// <param name="Word">Its word in a file.</param>
/// <param name="Sizes">The keys that it needs; each holds a number greater than zero.</param>
/// <param name="More">The keys of sizes that it may have besides.</param>
/// <param name="Outline">Makes it of sound sizes; null where they do not fit together, which has been told.</param>
internal sealed record ShapeForm(
    string Word, ImmutableArray<string> Sizes, ImmutableArray<string> More, Func<Row, SectionShape?> Outline)
{
    /// <summary>True: its sizes say all, so that figures beside them can only be rounded, and are not used.</summary>
    internal bool IsExact => Word is "rectangle" or "round bar";
}
