namespace FieldCheck.Sheet.Presets;

/// <summary>A beam file that the library found.</summary>
/// <param name="Name">Its file name without extension.</param>
/// <param name="Place">Where it was found.</param>
/// <param name="Path">Its path, or null for a built-in one.</param>
/// <param name="Text">Its text.</param>
public sealed record Preset(string Name, PresetPlace Place, string? Path, BeamFileText Text);
