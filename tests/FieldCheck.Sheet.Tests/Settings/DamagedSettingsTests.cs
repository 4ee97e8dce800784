using CsCheck;
using FieldCheck.Sheet.Settings;

namespace FieldCheck.Sheet.Tests.Settings;

/// <summary>Settings files by chance: read or refused at a place in them, and what a change does not concern stays.</summary>
public sealed class DamagedSettingsTests
{
    private const string Name = "settings.toml";

    private const string Text = """
        # as I like it
        theme = "terminal"       # or another
        mouse = false

        [plots]
        curves = ["shear", "moment", "deflection"]
        filled = true
        sag = "up"
        envelope = true
        glyphs = "ascii"

        [working]
        form = "full"
        step_names = true

        [keys]
        copy_row = "^D ^K"
        redo = "^U"
        """ + "\n";

    [Fact]
    public void DamagedFile_IsReadOrRefusedAtAPlaceInIt() => Damage.Some(1, 4).Sample(
        hits =>
        {
            SettingsText text = new(Name, Damage.On(Text, hits));
            switch (text.Read())
            {
                case SettingsReading.Opened opened:
                    SettingsDocument changed = opened.Settings with { Theme = opened.Settings.Theme == "mono" ? "terminal" : "mono" };
                    Assert.Equal(changed, Assert.IsType<SettingsReading.Opened>(opened.Origin.With(changed).Read()).Settings);
                    Assert.Equal(text, text.With(opened.Settings));
                    break;
                case SettingsReading.Refused refused:
                    Damage.AssertTold(Name, text.Text, refused.Problems);
                    Assert.Equal(text, text.With(new SettingsDocument { Theme = "mono" }));
                    break;
            }
        },
        iter: 300 * Damage.Longer);
}
