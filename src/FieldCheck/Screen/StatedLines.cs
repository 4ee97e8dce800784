using System.Collections.Immutable;

namespace FieldCheck.Screen;

/// <summary>What comes of the stated figures, line by line.</summary>
internal static class StatedLines
{
    private const int MostLines = 100_000;

    /// <summary>The lines; of a beam that cannot be worked out, why.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    internal static ImmutableArray<string> Of(ScreenState state, int width) => ResultsPicture.All(state, width, MostLines);
}
