using System.Collections.Immutable;

namespace FieldCheck.Screen;

/// <summary>What comes of the combinations, patterns and rolling loads, line by line.</summary>
internal static class EnvelopeLines
{
    private const int MostLines = 100_000;

    /// <summary>The results; why there are none of a beam that cannot be worked out.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    internal static ImmutableArray<string> Of(ScreenState state, int width) => ResultsPicture.All(state, width, MostLines);

    /// <summary>All of it in one line, for where there is no room for more.</summary>
    /// <param name="state">The state.</param>
    /// <param name="width">Columns; 1 or more.</param>
    internal static string InShort(ScreenState state, int width) => ResultsPicture.Header(state, width);
}
