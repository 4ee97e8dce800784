using FieldCheck.Sheet.Presets;

namespace FieldCheck.Screen.Files;

/// <summary>A beam that may be opened.</summary>
/// <param name="Name">What it is called: a file without its folder and extension.</param>
/// <param name="Place">Where it was found.</param>
/// <param name="Path">Its file, as the person would name it; null for one that ships with the program.</param>
/// <param name="Read">Reads what it held when it was found: only those seen are worth it.</param>
/// <param name="UsedAt">When it was opened or saved last, in local time; null: never.</param>
internal sealed record BeamChoice(
    string Name, BeamPlace Place, string? Path, Lazy<BeamFileReading> Read, DateTimeOffset? UsedAt)
{
    /// <summary>Its beam, or why it does not read.</summary>
    internal BeamFileReading Reading => Read.Value;

    /// <summary>How it is opened when it is not opened as a copy.</summary>
    internal OpenAs As => Place == BeamPlace.Site ? OpenAs.Pattern : OpenAs.File;

    /// <summary>The name of the folder that its file lies in; as it stands where the path has but one part.</summary>
    internal string Folder
    {
        get
        {
            string[] parts = (Path ?? "").Split(['/', '\\'], StringSplitOptions.RemoveEmptyEntries);
            return parts.Length > 1 ? parts[^2] : Path ?? "";
        }
    }
}
