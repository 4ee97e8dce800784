using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Plotting;
using FieldCheck.Screen.Workings;

namespace FieldCheck.Screen;

/// <summary>What a person wants otherwise than it comes; kept in the settings file.</summary>
internal sealed record Preferences
{
    /// <summary>How the roles of the screen look.</summary>
    internal Theme Theme { get; init; }

    /// <summary>True: the mouse is used; from the next start on.</summary>
    internal bool HasMouse { get; init; }

    /// <summary>How the curves are drawn.</summary>
    internal PlotOptions Plots { get; init; } = new();

    /// <summary>How the working is shown.</summary>
    internal WorkingOptions Working { get; init; } = new();

    /// <summary>The commands and their keys.</summary>
    internal CommandTable Table { get; init; } = CommandTable.Default;
}
