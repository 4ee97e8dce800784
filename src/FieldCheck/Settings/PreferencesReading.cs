using System.Collections.Immutable;
using FieldCheck.Screen;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Settings;

namespace FieldCheck.Settings;

/// <summary>The preferences of a settings file.</summary>
/// <param name="Preferences">The preferences; those that come with the program where the file is of no use.</param>
/// <param name="Problems">What is wrong with the file, in order of line; empty where it is in use.</param>
internal sealed record PreferencesReading(Preferences Preferences, ImmutableArray<FileProblem> Problems)
{
    /// <summary>Reads a settings file. One slip and none of it is used: half a set of keys helps nobody.</summary>
    /// <param name="file">The file; it need not exist.</param>
    internal static PreferencesReading Of(SettingsFile file)
    {
        switch (file.Read())
        {
            case SettingsReading.Refused refused:
                return new(new Preferences(), refused.Problems);
            case SettingsReading.Opened opened:
                (Preferences preferences, var problems) = PreferencesText.Read(opened.Settings);
                return problems.IsEmpty
                    ? new(preferences, [])
                    : new(new Preferences(), opened.Origin.Locate(problems));
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }
}
