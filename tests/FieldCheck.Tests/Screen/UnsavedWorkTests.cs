using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Tests.Screen;

public sealed class UnsavedWorkTests
{
    private static readonly BeamOrigin Trench =
        BeamOrigin.File("trench.toml", BeamFileText.New("trench.toml", Beams.Trench));

    [Theory]
    [InlineData("5 Enter", "5 m")]
    [InlineData("4 . 2", "4.2 m")]
    [InlineData("4 x", "\"4x\"")]
    [InlineData("F2 Left Left 5", "3.605 m")]
    [InlineData("/ b B e n c h", "Bench")]
    public void ChangeOrHalfTypedCell_IsAskedToBeKeptSoon_AndIsKeptAsIfAccepted(string keys, string kept)
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press(keys);
        ScreenState before = desk.State;
        Assert.IsType<Effect.KeepSoon>(desk.Effects[^1]);
        Assert.DoesNotContain(desk.Effects, effect => effect is Effect.KeepRecovery);

        desk.Happen(new ScreenEvent.KeepDue());
        Assert.Contains(kept, Assert.IsType<Effect.KeepRecovery>(desk.Effects[^1]).Text, StringComparison.Ordinal);
        Assert.Equal(before, desk.State);
    }

    [Fact]
    public void EveryKeystrokeThatChangesSomething_Asks_AndNoOther()
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press("4 . 2 Enter");
        Assert.Equal(3, desk.Effects.Count);

        desk.Press("Down Up F4 F3 ? Esc / Esc F2 Right Left Esc Esc");
        Assert.Equal(3, desk.Effects.Count);
        Assert.All(desk.Effects, effect => Assert.IsType<Effect.KeepSoon>(effect));
    }

    [Theory]
    [InlineData("5 Enter ^Z")]
    [InlineData("5 Esc")]
    [InlineData("5 Enter ^S")]
    [InlineData("5 ^S")]
    [InlineData("5 Enter ^N l")]
    [InlineData("F2 5 Backspace")]
    [InlineData("/ b B Esc")]
    public void NothingUnsavedAnyMore_ForgetsWhatWasKept(string keys)
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press(keys);
        Assert.IsType<Effect.KeepSoon>(desk.Effects[0]);
        Assert.IsType<Effect.DropRecovery>(desk.Effects[^1]);

        int count = desk.Effects.Count;
        desk.Happen(new ScreenEvent.KeepDue());
        Assert.Equal(count, desk.Effects.Count);
    }

    [Fact]
    public void WhatIsKept_ReadsAsTheBeamWithTheTyping()
    {
        Desk desk = new(Beams.Trench, Trench);

        desk.Press("4 . 2").Happen(new ScreenEvent.KeepDue());

        string text = Assert.IsType<Effect.KeepRecovery>(desk.Effects[^1]).Text;
        BeamFileReading.Opened kept = Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read("kept.toml", text));
        Assert.Equal(desk.Press("Enter").State.Document, kept.Document);
    }
}
