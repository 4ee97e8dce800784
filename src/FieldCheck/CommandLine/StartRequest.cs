using FieldCheck.Screen;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.CommandLine;

/// <summary>What the form is to open with.</summary>
internal sealed record StartRequest
{
    /// <summary>The beam's file as the person named it; it need not exist. Null for the built-in example.</summary>
    public required string? Path { get; init; }

    /// <summary>The beam as typed; empty for a file that does not exist yet.</summary>
    public required BeamDocument Document { get; init; }

    /// <summary>The text it came from, which saving keeps to; null for a file that does not exist yet.</summary>
    public required BeamFileText? Origin { get; init; }

    /// <summary>True: it is the built-in example, to be marked as such until changed.</summary>
    public bool IsExample => Path is null;

    /// <summary>What the person wants otherwise than it comes.</summary>
    public Preferences Preferences { get; init; } = new();

    /// <summary>Sections and materials that a beam may name.</summary>
    public SectionCatalogue Catalogue { get; init; } = SectionCatalogue.BuiltIn();

    /// <summary>
    /// What is told of a settings file that is wrong, so that none of it is used, and of catalogue files; null: nothing.
    /// </summary>
    public string? Problem { get; init; }

    /// <summary>True: no colour.</summary>
    public required bool NoColor { get; init; }

    /// <summary>False: the terminal shows ASCII only.</summary>
    public bool IsUtf8 { get; init; } = true;

    /// <summary>Where presets and unsaved work lie.</summary>
    public required Folders Folders { get; init; }

    /// <summary>The folder that relative names start from.</summary>
    public required string CurrentFolder { get; init; }

    /// <summary>The person's home folder, which a name may begin with as "~".</summary>
    public required string HomeFolder { get; init; }

    /// <summary>The clock.</summary>
    public required TimeProvider Clock { get; init; }
}
