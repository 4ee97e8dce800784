namespace FieldCheck.Sheet.Presets;

/// <summary>Where a preset was found.</summary>
public enum PresetPlace
{
    /// <summary>It ships with the program and is never written to.</summary>
    BuiltIn,

    /// <summary>In the person's own folder.</summary>
    Personal,

    /// <summary>In a folder named for the site.</summary>
    Site,
}
