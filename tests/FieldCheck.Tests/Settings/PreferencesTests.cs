using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Drawing;
using FieldCheck.Screen;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;
using FieldCheck.Screen.Plotting;
using FieldCheck.Screen.Workings;
using FieldCheck.Settings;
using FieldCheck.Sheet.Settings;

namespace FieldCheck.Tests.Settings;

public sealed class PreferencesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("fieldcheck-settings").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void EverySetting_IsRead()
    {
        PreferencesReading read = Read("""
            theme = "high contrast"
            mouse = true
            [plots]
            curves = ["moment", "shear"]
            filled = false
            sag = "down"
            glyphs = "half blocks"
            [working]
            form = "short"
            step_names = false
            [keys]
            save = "F5"
            """);

        Assert.Empty(read.Problems);
        Assert.Equal(Theme.HighContrast, read.Preferences.Theme);
        Assert.True(read.Preferences.HasMouse);
        Assert.Equal(
            new PlotOptions
            {
                Curves = [Curve.Shear, Curve.Moment],
                IsFilled = false,
                IsSagDown = true,
                Glyphs = PlotGlyphs.HalfBlocks,
            },
            read.Preferences.Plots);
        Assert.Equal(new WorkingOptions { IsShort = true, HasStepNames = false }, read.Preferences.Working);
        Assert.Equal("F5", read.Preferences.Table.KeyOf(CommandName.Save));
    }

    [Fact]
    public void NoFile_IsAsItComes()
    {
        PreferencesReading read = PreferencesReading.Of(new SettingsFile(Path.Combine(_folder, "none.toml")));

        Assert.Empty(read.Problems);
        Assert.Equal(new Preferences(), read.Preferences);
    }

    [Theory]
    [InlineData("theme = \"dark\"", "1:10: theme: 'dark' is none of terminal, mono, high contrast")]
    [InlineData("mouse = 1", "1:9: mouse: '1' is none of true, false")]
    [InlineData("[plots]\ncurves = [\"shear\", \"slope\"]", "2:21: plots.curves[2]: 'slope' is none of shear, moment, deflection, axial")]
    [InlineData("[plots]\nsag = \"left\"", "2:8: plots.sag: 'left' is none of up, down")]
    [InlineData("[working]\nform = \"long\"", "2:9: working.form: 'long' is none of full, short")]
    [InlineData("[keys]\nsave = \"F5 F99\"", "2:12: keys.save: 'F99' is no key, as ^D, F5, Tab or = are")]
    [InlineData("thme = \"mono\"\nmouse = true", "1:1: thme: unknown key; did you mean theme?")]
    public void OneSlip_AndNoneOfItIsUsed(string text, string said)
    {
        PreferencesReading read = Read(text);

        Assert.EndsWith($"settings.toml:{said}", read.Problems[0].ToString(), StringComparison.Ordinal);
        Assert.Equal(new Preferences(), read.Preferences);
    }

    [Fact]
    public void WhatTheScreenChanges_IsWrittenBesideWhatStands_AndReadAgain()
    {
        string text = "# mine\ntheme = \"mono\"\n\n[keys]\nsave = \"F5\"\n";
        Preferences read = Read(text).Preferences;
        Preferences wanted = read with { Plots = read.Plots with { IsSagDown = true, Curves = [Curve.Moment] }, Working = new WorkingOptions { IsShort = true } };
        SettingsFile file = new(Path.Combine(_folder, "settings.toml"));

        Assert.Null(file.Change(settings => PreferencesText.Write(settings, wanted)));

        Preferences again = PreferencesReading.Of(file).Preferences;
        Assert.Equal((wanted.Plots, wanted.Working), (again.Plots, again.Working));
        Assert.Equal(Theme.Mono, again.Theme);
        Assert.Equal("F5", again.Table.KeyOf(CommandName.Save));
        Assert.StartsWith(text.Split("\n\n")[0], File.ReadAllText(file.Path), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsAsItComes_IsNotWritten()
    {
        SettingsFile file = new(Path.Combine(_folder, "new.toml"));

        Assert.Null(file.Change(settings => PreferencesText.Write(settings, new Preferences())));
        Assert.False(File.Exists(file.Path));
    }

    private PreferencesReading Read(string text)
    {
        string path = Path.Combine(_folder, "settings.toml");
        File.WriteAllText(path, text);
        return PreferencesReading.Of(new SettingsFile(path));
    }
}
