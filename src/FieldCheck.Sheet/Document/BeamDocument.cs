using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Document;

/// <summary>One beam, as typed: what a file holds, what the form edits, what a calculation starts from.</summary>
/// <remarks>Every cell is the text as typed, or null where nothing stands.</remarks>
public sealed record BeamDocument
{
    /// <summary>How many cells a preset may ask for.</summary>
    public const int MostAsked = 500;

    /// <summary>What the beam is.</summary>
    public string? Title { get; init; }

    /// <summary>Free text.</summary>
    public string? Notes { get; init; }

    /// <summary>us or si; null is si.</summary>
    public string? Display { get; init; }

    /// <summary>The units that results are shown in and that a bare number in a cell takes.</summary>
    public UnitSystem Units => Display == "us" ? UnitSystem.Us : UnitSystem.Si;

    /// <summary>true: count the flexibility in shear.</summary>
    public string? ShearDeformation { get; init; }

    /// <summary>Key paths of the cells that a preset asks for.</summary>
    public Rows<string> Ask { get; init; } = [];

    /// <summary>Names that cases shall have and cannot have yet: each case with the name typed for it.</summary>
    public Rows<NamedFigure> Renames { get; init; } = [];

    /// <summary>Free text for the check record.</summary>
    public RecordEntry Record { get; init; } = new();

    /// <summary>The spans, left to right.</summary>
    public Rows<SpanEntry> Spans { get; init; } = [];

    /// <summary>The supports, in the order typed.</summary>
    public Rows<SupportEntry> Supports { get; init; } = [];

    /// <summary>The hinges, in the order typed.</summary>
    public Rows<HingeEntry> Hinges { get; init; } = [];

    /// <summary>The loads.</summary>
    public Rows<LoadEntry> Loads { get; init; } = [];

    /// <summary>Weight of the sections as a load; null: not counted.</summary>
    public SelfWeightEntry? SelfWeight { get; init; }

    /// <summary>The named sections.</summary>
    public Rows<SectionEntry> Sections { get; init; } = [];

    /// <summary>The named materials.</summary>
    public Rows<MaterialEntry> Materials { get; init; } = [];

    /// <summary>The combinations.</summary>
    public Rows<CombinationEntry> Combinations { get; init; } = [];

    /// <summary>The cases loaded bay by bay.</summary>
    public Rows<PatternEntry> Patterns { get; init; } = [];

    /// <summary>The rolling loads.</summary>
    public Rows<RollingEntry> Rolling { get; init; } = [];

    /// <summary>The stated reactions.</summary>
    public Rows<StatedEntry> Stated { get; init; } = [];

    /// <summary>How well places and loads are known; null: not said.</summary>
    public ToleranceEntry? Tolerance { get; init; }

    /// <summary>What the beam is held against; null: nothing.</summary>
    public LimitsEntry? Limits { get; init; }
}
