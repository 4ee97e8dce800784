using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Presets;
using FieldCheck.Tests.Screen;

namespace FieldCheck.Tests.Views;

/// <summary>Random keys on the real toolkit: it shows what the pure picture says, and the beam stays whole.</summary>
public sealed class LongSessionOnTheToolkitTests
{
    private const int Sessions = 10;
    private const int KeysOfASession = 500;

    public static TheoryData<int> Seeds() => new(Enumerable.Range(1, Sessions));

    [Theory]
    [MemberData(nameof(Seeds))]
    public void AnyKeys_ShowThePictureAndKeepTheBeamWhole(int seed)
    {
        RandomKeys keys = new(seed);
        Desk desk = new(Beams.Trench, BeamOrigin.File("trench.toml", BeamFileText.New("trench.toml", Beams.Trench)))
        {
            Choices = Choices.OfEveryKind,
        };
        using Rig rig = new(desk.State, perform: desk.Perform);
        (int width, int height) = (80, 24);
        int presses = 0;
        while (presses < KeysOfASession && !rig.Window.StopRequested)
        {
            IReadOnlyList<KeyStroke> next = keys.Next(rig.Window.State.Focus);
            presses += next.Count;
            rig.Press(next);
            Invariants.Hold(rig.Window.State);
            Picture picture = ScreenPicture.Of(rig.Window.State, width, height);
            Assert.Equal(picture.ToString(), rig.Text);
            Assert.Equal(picture.Cursor, rig.Cursor);
            if (presses % 40 == 0)
            {
                (width, height) = (20 + presses % 113, 5 + presses % 41);
                rig.Resize(width, height);
            }
        }

        Invariants.ReadsAgain(rig.Window.State.Document);
        Invariants.UndoneToTheEnd_IsTheStart(rig.Window.State, undo =>
        {
            rig.Press(Keys.Read(undo));
            return rig.Window.State;
        });
    }
}
