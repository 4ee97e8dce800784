using FieldCheck.Sheet.Presets;

namespace FieldCheck.Screen.Files;

/// <summary>Where the beam on the screen came from, and so where saving puts it.</summary>
/// <param name="Name">What the title line calls it.</param>
/// <param name="Path">The file that saving writes to; null: saving asks for a name first.</param>
/// <param name="Text">The text it was read from, which saving keeps to; null for a beam begun empty.</param>
/// <param name="IsExample">True: the built-in example, marked so until it is changed.</param>
internal sealed record BeamOrigin(string Name, string? Path = null, BeamFileText? Text = null, bool IsExample = false)
{
    /// <summary>A beam begun empty, without a file.</summary>
    internal static BeamOrigin NewBeam { get; } = new("new beam");

    /// <summary>The built-in example.</summary>
    /// <param name="preset">The example.</param>
    internal static BeamOrigin Example(Preset preset) => new(preset.Name, null, preset.Text, IsExample: true);

    /// <summary>A file on disk.</summary>
    /// <param name="path">Its path, as the person named it.</param>
    /// <param name="text">Its text; null where the file does not exist yet.</param>
    internal static BeamOrigin File(string path, BeamFileText? text) => new(NameOf(path), path, text);

    /// <summary>The same, opened as something else: all but a file itself ask for a name when they are saved.</summary>
    /// <param name="what">What it is opened as.</param>
    internal BeamOrigin As(OpenAs what) => what switch
    {
        OpenAs.Copy => this with { Name = $"copy of {Name}", Path = null },
        OpenAs.Pattern => this with { Path = null },
        _ => this,
    };

    /// <summary>What the program was started with.</summary>
    /// <param name="path">The file's path, as the person named it; null for the built-in example.</param>
    /// <param name="text">Its text; null where the file does not exist yet.</param>
    internal static BeamOrigin OfStart(string? path, BeamFileText? text) => path is not null
        ? File(path, text)
        : new BeamOrigin(NameOf(text!.Name), null, text, IsExample: true);

    /// <summary>The name of a file without its folders and its extension.</summary>
    /// <param name="path">The path.</param>
    internal static string NameOf(string path)
    {
        string name = path[(path.LastIndexOfAny(['/', '\\']) + 1)..];
        return name.EndsWith(".toml", StringComparison.OrdinalIgnoreCase) && name.Length > 5 ? name[..^5] : name;
    }
}
