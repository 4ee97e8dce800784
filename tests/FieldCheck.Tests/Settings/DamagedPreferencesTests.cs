using System.Globalization;
using System.Text.Json;
using CsCheck;
using FieldCheck.Screen;
using FieldCheck.Screen.Painting;
using FieldCheck.Settings;
using FieldCheck.Sheet.Settings;
using FieldCheck.Tests.Hostile;

namespace FieldCheck.Tests.Settings;

/// <summary>Settings with a word that is none: told at its line, the file is left as it stands, and none of it is used.</summary>
public sealed class DamagedPreferencesTests : IDisposable
{
    private static readonly string[] Lines =
    [
        "theme = \"high contrast\"", "mouse = true", "[plots]", "curves = [\"moment\", \"shear\"]", "filled = false", "sag = \"down\"",
        "glyphs = \"half blocks\"", "[working]", "form = \"short\"", "step_names = false", "[keys]", "save = \"F5\"",
    ];

    // How many times as many as at every run.
    private static readonly int Longer = int.Parse(
        Environment.GetEnvironmentVariable("FIELDCHECK_LONGER") ?? "1", CultureInfo.InvariantCulture);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("fieldcheck-settings");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void AnyWord_InAnyCell_IsToldAtItsLine() => Gen.Select(Gen.Int[0, Lines.Length - 1], HostileText.Any).Sample(
        (line, word) =>
        {
            if (Lines[line].StartsWith('['))
            {
                return;
            }

            // A string of JSON is one of TOML too.
            string[] lines = [.. Lines];
            lines[line] = $"{Lines[line].Split('=')[0]}= {JsonSerializer.Serialize(word)}";
            string text = string.Join('\n', lines);
            string path = Path.Combine(_folder.FullName, "settings.toml");
            File.WriteAllText(path, text);

            PreferencesReading read = PreferencesReading.Of(new SettingsFile(path));

            Assert.Equal(text, File.ReadAllText(path));
            Assert.All(read.Problems, problem => Assert.Equal((path, line + 1), (problem.File, problem.Line)));
            Assert.All(read.Problems, problem => Assert.InRange(problem.Text.Length, 1, 1000));
            if (read.Problems.IsEmpty)
            {
                // Blanks take the keys away, and one letter may be a key; all else is as it was.
                Assert.Equal(Lines.Length - 1, line);
                Assert.Equal((Theme.HighContrast, true), (read.Preferences.Theme, read.Preferences.HasMouse));
            }
            else
            {
                Assert.Equal(new Preferences(), read.Preferences);
            }
        },
        iter: 100 * Longer,
        threads: 1);
}
