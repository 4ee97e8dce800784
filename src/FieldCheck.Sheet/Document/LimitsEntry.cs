namespace FieldCheck.Sheet.Document;

/// <summary>What the beam is held against.</summary>
/// <remarks>Every cell is the text as typed, or null where nothing stands.</remarks>
public sealed record LimitsEntry
{
    /// <summary>Limit of each bay, as "L/360".</summary>
    public string? Deflection { get; init; }

    /// <summary>Limit of each overhang.</summary>
    public string? DeflectionOverhang { get; init; }

    /// <summary>Limit of each bay, of the deflection with what lasting loads add in time.</summary>
    public string? DeflectionFinal { get; init; }

    /// <summary>Limit of each overhang, of the deflection with what lasting loads add in time.</summary>
    public string? DeflectionFinalOverhang { get; init; }

    /// <summary>Limits for single cases.</summary>
    public Rows<NamedFigure> DeflectionCases { get; init; } = [];

    /// <summary>Limit as a length.</summary>
    public string? DeflectionAbsolute { get; init; }

    /// <summary>Share of each case that lasts, and so makes timber creep.</summary>
    public Rows<NamedFigure> Lasting { get; init; } = [];

    /// <summary>Rules that strengths are judged by.</summary>
    public string? Rules { get; init; }
}
