using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Settings;

/// <summary>A person's settings as they are written: every value is text, and null where none stands.</summary>
public sealed record SettingsDocument
{
    /// <summary>How the roles of the screen look.</summary>
    public string? Theme { get; init; }

    /// <summary>"true": the mouse is used.</summary>
    public string? Mouse { get; init; }

    /// <summary>How diagrams are drawn.</summary>
    public PlotSettings Plots { get; init; } = new();

    /// <summary>How the working by hand is shown.</summary>
    public WorkingSettings Working { get; init; } = new();

    /// <summary>Keys bound otherwise than they come: the name of a command and its keys, parted by blanks.</summary>
    public Rows<NamedFigure> Keys { get; init; } = [];
}
