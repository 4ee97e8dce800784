using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Settings;

/// <summary>How a person wants diagrams drawn, as it is written: every value is text, and null where none stands.</summary>
public sealed record PlotSettings
{
    /// <summary>The curves of the Plots view; empty where none are named.</summary>
    public Rows<string> Curves { get; init; } = [];

    /// <summary>"true": filled; "false": outlined.</summary>
    public string? Filled { get; init; }

    /// <summary>Where sagging moments are drawn: "up" or "down".</summary>
    public string? Sag { get; init; }

    /// <summary>"true": the envelope is drawn round them; "false": it is not.</summary>
    public string? Envelope { get; init; }

    /// <summary>What they are drawn with.</summary>
    public string? Glyphs { get; init; }
}
