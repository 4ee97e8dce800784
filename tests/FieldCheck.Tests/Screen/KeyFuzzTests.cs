using CsCheck;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Tests.Screen;

/// <summary>
/// Whatever keys are pressed: nothing throws, undo leads back to the start, and what is saved reads again.
/// </summary>
public sealed class KeyFuzzTests
{
    private static readonly Gen<KeyStroke[]> Strokes = Gen.Frequency(
        (6, OneOf(Enum.GetValues<KeyName>()).Select(name => new KeyStroke[] { new KeyStroke.Named(name) })),
        (3, OneOf(" ", "<", ">", "/", "?", "[", "]").Select(text => new KeyStroke[] { new KeyStroke.Text(text) })),
        (3, OneOf("DXZYSONEL".ToCharArray()).Select(letter => new KeyStroke[] { new KeyStroke.Control(letter) })),
        (2, OneOf("abcdefghijklmnopqrstuvwxyz".ToCharArray())
            .Select(letter => new KeyStroke[] { new KeyStroke.Text($"{letter}") })),
        (6, OneOf(RandomKeys.Words).Select(word => Keys.Typed(word).Append(new KeyStroke.Named(KeyName.Enter)).ToArray())),
        (4, OneOf(RandomKeys.Words).Select(word => Keys.Typed(word).Append(new KeyStroke.Named(KeyName.Tab)).ToArray())),
        (1, OneOf(RandomKeys.Pastes)
            .Select(text => new KeyStroke[] { new KeyStroke.Paste(text) })));

    [Fact]
    public void AnyKeys_NeverThrowAndFillTheScreen() => Strokes.Array[1, 40].Sample(
        strokes =>
        {
            Desk desk = Start();
            foreach (KeyStroke[] keys in strokes)
            {
                desk.Press(keys);
            }

            ScreenPictureTests.Fills(desk.Show(80, 24), 80, 24);
            ScreenPictureTests.Fills(desk.Show(33, 9), 33, 9);
            Assert.InRange(desk.State.Focus.Row, -1, desk.State.Sheet.RowsOf(desk.State.Focus.Block));
            Assert.Equal(desk.State.Document, desk.State.Settled.Document);
        },
        iter: 300);

    [Fact]
    public void AnyKeys_UndoneToTheEnd_LeadBackToTheStart() => Strokes.Array[1, 40].Sample(
        strokes =>
        {
            Desk desk = Start();
            foreach (KeyStroke[] keys in strokes)
            {
                desk.Press(keys);
            }

            BeamDocument start = desk.State.History.Steps[0].Sheet.Document;
            desk.Press("Esc Esc Esc");
            while (desk.State.History.ToUndo is not null)
            {
                desk.Press("^Z");
            }

            Assert.Equal(start, desk.State.Document);
            while (desk.State.History.ToRedo is not null)
            {
                desk.Press("^Y");
            }

            Assert.Equal(desk.State.History.Steps[^1].Sheet.Document, desk.State.Document);
        },
        iter: 200);

    [Fact]
    public void AnyBeamTyped_ReadsAgainAsItWasSaved() => Strokes.Array[1, 40].Sample(
        strokes =>
        {
            Desk desk = Start();
            foreach (KeyStroke[] keys in strokes)
            {
                desk.Press(keys);
            }

            BeamFileText text = BeamFileText.New("beam.toml", desk.State.Document);
            BeamFileReading reading = BeamFileText.Read(text.Name, text.Text);
            BeamFileReading.Opened read = Assert.IsType<BeamFileReading.Opened>(reading);
            Assert.Equal(desk.State.Document, read.Document);
        },
        iter: 200);

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(index => values[index]);

    private static Desk Start() =>
        new(Beams.Trench, BeamOrigin.File("trench.toml", BeamFileText.New("trench.toml", Beams.Trench)));
}
