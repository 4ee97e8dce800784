using System.Collections.Immutable;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Settings;

/// <summary>What came of reading a settings file. Closed set: the cases are the nested records.</summary>
public abstract record SettingsReading
{
    private SettingsReading()
    {
    }

    /// <summary>Sound TOML with known keys.</summary>
    /// <param name="Settings">The settings as they are written.</param>
    /// <param name="Origin">The text they came from, which a change keeps to.</param>
    public sealed record Opened(SettingsDocument Settings, SettingsText Origin) : SettingsReading;

    /// <summary>It cannot be used.</summary>
    /// <param name="Problems">What is wrong, in order of line; one at least.</param>
    public sealed record Refused(ImmutableArray<FileProblem> Problems) : SettingsReading;
}
