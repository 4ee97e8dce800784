using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Overlays;

namespace FieldCheck.Tests.Screen;

public sealed class SettingsTests
{
    [Fact]
    public void EveryLine_ChangesWhatIsKept_AndComesBackRound()
    {
        int lines = SettingsLines.Of(new Preferences()).Length;
        for (int line = 0; line < lines; line++)
        {
            Desk desk = Trench().Press("/ i").Press(Enumerable.Repeat<KeyStroke>(new KeyStroke.Named(KeyName.Down), line));
            desk.Press("Space");
            Preferences changed = desk.State.Preferences;

            Assert.NotEqual(new Preferences(), changed);
            Assert.Equal(changed, desk.Effects.OfType<Effect.KeepPreferences>().Last().Preferences);
            Assert.Contains(SettingsLines.Of(changed)[line].Value, desk.Picture, StringComparison.Ordinal);
            desk.Press("Enter Enter");
            Assert.Equal(line == 0 ? new Preferences() : changed, desk.State.Preferences);
        }
    }

    [Fact]
    public void SettingsAreNotTheBeams()
    {
        Desk desk = Trench().Press("/ i Space Esc");

        Assert.False(desk.State.IsUnsaved);
        Assert.Null(desk.State.History.ToUndo);
        Assert.Null(desk.State.Overlay);
    }

    [Fact]
    public void WhatCannotBeKept_IsTold()
    {
        Desk desk = Trench().Happen(new ScreenEvent.PreferencesRefused("settings.toml:3:1: theme: unknown"));

        Assert.Equal("Not kept for next time: settings.toml:3:1: theme: unknown", desk.Says);
    }

    [Fact]
    public void WhatIsToldAtTheStart_OutlastsTheOfferOfWorkLeft()
    {
        Desk desk = Trench()
            .Happen(new ScreenEvent.Told("settings.toml:1:1: no such key - none of these settings is used."))
            .Happen(new ScreenEvent.RecoveryFound(Beams.Trench, new BeamOrigin("left"), "Unsaved work."));

        Assert.Contains("Unsaved work.", desk.Picture, StringComparison.Ordinal);
        desk.Press("Esc");
        Assert.Contains("settings.toml:1:1: no such key", desk.Picture, StringComparison.Ordinal);
        desk.Press("Down");
        Assert.DoesNotContain("settings.toml", desk.Picture, StringComparison.Ordinal);
    }

    private static Desk Trench() => new(Beams.Trench, new BeamOrigin("trench-bearer"));
}
