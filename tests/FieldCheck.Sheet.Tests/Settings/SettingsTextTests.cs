using System.Text;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Settings;

namespace FieldCheck.Sheet.Tests.Settings;

public sealed class SettingsTextTests
{
    private const string Text = """
        # as I like it
        theme = "mono"   # for the old screen
        mouse = true

        [plots]
        filled = false
        curves = ["shear", "moment"]

        [keys]
        save = "^S F5"
        """ + "\n";

    [Fact]
    public void EveryKey_IsReadAsWritten()
    {
        SettingsDocument settings = Opened(Text).Settings;

        Assert.Equal(
            new SettingsDocument
            {
                Theme = "mono",
                Mouse = "true",
                Plots = new PlotSettings { Filled = "false", Curves = ["shear", "moment"] },
                Keys = [new NamedFigure("save", "^S F5")],
            },
            settings);
    }

    [Fact]
    public void NoText_IsNoSettings() => Assert.Equal(new SettingsDocument(), Opened("").Settings);

    [Fact]
    public void AChange_KeepsCommentsAndTheRest()
    {
        SettingsReading.Opened opened = Opened(Text);

        SettingsText changed = opened.Origin.With(opened.Settings with
        {
            Plots = opened.Settings.Plots with { Filled = "true", Sag = "down" },
        });

        Assert.Equal(
            Text.Replace("filled = false", "filled = true", StringComparison.Ordinal)
                .Replace("\"moment\"]\n", "\"moment\"]\nsag    = \"down\"\n", StringComparison.Ordinal)
                .Split('\n').Order(),
            changed.Text.Split('\n').Order());
        Assert.StartsWith("# as I like it\ntheme = \"mono\"   # for the old screen\n", changed.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void AFirstChange_WritesOnlyWhatItSays()
    {
        SettingsText changed = new SettingsText("settings.toml", "").With(new SettingsDocument
        {
            Plots = new PlotSettings { Glyphs = "half blocks" },
        });

        Assert.Equal("[plots]\nglyphs = \"half blocks\"\n", changed.Text);
    }

    [Theory]
    [InlineData("thme = \"mono\"", "settings.toml:1:1: thme: unknown key; did you mean theme?")]
    [InlineData("[plots]\nfiled = true", "settings.toml:2:1: plots.filed: unknown key; did you mean filled?")]
    [InlineData("theme = \"mono", "settings.toml:1:13: theme: the closing qu")]
    [InlineData("title = \"x\"", "settings.toml:1:1: title: unknown key; known here: theme, mouse")]
    [InlineData("theme = [1]", "settings.toml:1:9: theme: expected a text, found a list in [ ]")]
    [InlineData("keys = 3", "settings.toml:1:8: keys: expected ")]
    public void ABadText_IsRefusedWithItsPlace(string text, string said)
    {
        SettingsReading reading = new SettingsText("settings.toml", text).Read();

        Assert.StartsWith(said, Assert.IsType<SettingsReading.Refused>(reading).Problems[0].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void ABadText_IsNotRewritten()
    {
        SettingsText bad = new("settings.toml", "theme = \n");

        Assert.Equal(bad, bad.With(new SettingsDocument { Theme = "mono" }));
    }

    [Fact]
    public void BytesThatAreNoText_AreRefused()
    {
        SettingsReading reading = SettingsText.ReadBytes("settings.toml", [0x74, 0xFF]);

        Assert.Equal(
            "settings.toml:1:2: this is not UTF-8 text; save the file as UTF-8",
            Assert.IsType<SettingsReading.Refused>(reading).Problems.Single().ToString());
    }

    [Fact]
    public void AProblem_IsPlacedAtItsCell()
    {
        SettingsText text = new("settings.toml", "mouse = true\n[keys]\nsave = \"F99\"\n");

        Assert.Equal(
            "settings.toml:3:9: keys.save: no such key",
            text.Locate([new Problem("keys.save", "no such key")]).Single().ToString());
    }

    [Fact]
    public void AFileOnDisk_IsChangedAsAWhole()
    {
        string folder = Directory.CreateTempSubdirectory("fieldcheck-settings").FullName;
        SettingsFile file = new(Path.Combine(folder, "not", "yet", "settings.toml"));

        Assert.IsType<SettingsReading.Opened>(file.Read());
        Assert.Null(file.Change(settings => settings with { Theme = "mono" }));
        Assert.Equal("theme = \"mono\"\n", File.ReadAllText(file.Path));
        File.WriteAllText(file.Path, "theme", Encoding.UTF8);
        Assert.Contains("settings.toml:1:", file.Change(settings => settings with { Theme = "mono" }), StringComparison.Ordinal);
        Assert.Equal("theme", File.ReadAllText(file.Path));
        Directory.Delete(folder, recursive: true);
    }

    private static SettingsReading.Opened Opened(string text) =>
        Assert.IsType<SettingsReading.Opened>(new SettingsText("settings.toml", text).Read());
}
