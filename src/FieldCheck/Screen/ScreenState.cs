using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Screen;

/// <summary>All that the screen knows. Immutable: an event makes a new one.</summary>
internal sealed record ScreenState
{
    /// <summary>Where the beam came from.</summary>
    internal required BeamOrigin Origin { get; init; }

    /// <summary>The beam as typed.</summary>
    internal required BeamDocument Document { get; init; }

    /// <summary>How a beam is calculated.</summary>
    internal required Func<BeamDocument, Calculation> Calculate { get; init; }

    /// <summary>The screen with a beam just opened on it.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="origin">Where it came from.</param>
    /// <param name="calculate">How a beam is calculated; called at every keystroke that reads.</param>
    internal static ScreenState Start(
        BeamDocument document, BeamOrigin origin, Func<BeamDocument, Calculation> calculate) =>
        new() { Document = document, Origin = origin, Calculate = calculate };
}
