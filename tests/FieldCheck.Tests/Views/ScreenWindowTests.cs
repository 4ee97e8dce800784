using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Keyboard;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Document;
using FieldCheck.Tests.Screen;
using FieldCheck.Views;
using Terminal.Gui.Input;

namespace FieldCheck.Tests.Views;

public sealed class ScreenWindowTests
{
    private const string Colour = "\u001b\\[(3[0-7]|9[0-7]|4[0-7]|10[0-7]|38|48)[;m]";

    [Fact]
    public void KeysTyped_AreSolvedAndDrawn()
    {
        using Rig rig = new(State(new BeamDocument()));

        rig.Type("4");
        rig.Press(Key.Enter, Key.Enter, Key.Enter, Key.Enter, Key.Enter);
        rig.Type("12/m");
        rig.Press(Key.Enter);

        Assert.Contains("A  24.00 kN up", rig.Text);
        Assert.Contains("M  +24.00 kNm at 2.00 m sag", rig.Text);
    }

    [Theory]
    [InlineData(120, 40)]
    [InlineData(60, 20)]
    [InlineData(40, 12)]
    [InlineData(20, 5)]
    public void Resized_ShowsThePictureOfThatSize(int width, int height)
    {
        using Rig rig = new(State(Beams.Trench));

        rig.Resize(width, height);

        Assert.Equal(ScreenPicture.Of(rig.Window.State, width, height).ToString(), rig.Text);
    }

    [Fact]
    public void PageDown_ScrollsByWhatTheWindowShows()
    {
        using Rig rig = new(State(Beams.Trench));

        rig.Resize(60, 12);
        rig.Press(Key.F5, Key.PageDown);

        Assert.Equal(8, rig.Window.State.WorkingTop);
        Assert.Equal(ScreenPicture.Of(rig.Window.State, 60, 12).ToString(), rig.Text);
    }

    /// <summary>What is named stands out from what stands below it in every theme, and without colour.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Headings_StandOutByMoreThanColour(bool hasColour) => Assert.All(Enum.GetValues<Theme>(), theme =>
    {
        Palette palette = new(theme, hasColour);

        Assert.NotEqual(palette.Of(Role.Text).Style, palette.Of(Role.Heading).Style);
    });

    [Fact]
    public void OneCellChanged_LeavesTheTerminalAsThePictureSays()
    {
        using Rig rig = new(State(Beams.Trench));

        rig.Press(Key.CursorDown, Key.CursorDown, Key.CursorRight);
        rig.Type("1.5");
        rig.Press(Key.Tab, Key.Z.WithCtrl);

        Assert.Equal(ScreenPicture.Of(rig.Window.State, 80, 24).ToString(), rig.Text);
    }

    [Fact]
    public void EscapeAndUndo_NeitherQuitNorSuspend()
    {
        using Rig rig = new(State(Beams.Trench));

        rig.Press(Key.Esc, Key.Esc, Key.Z.WithCtrl, Key.F6);

        Assert.Empty(rig.Effects);
        Assert.StartsWith("trench-bearer", rig.Text);
    }

    [Fact]
    public void KeyThatAHostileConfigurationBinds_IsTypedAllTheSame()
    {
        using Rig rig = new(State(Beams.Trench));
        rig.BindToQuit(new Key('x'));

        rig.Type("x");

        Assert.Contains("[x", rig.Text);
        Assert.False(rig.Window.StopRequested);
    }

    [Fact]
    public void TypingWithoutAPause_IsKeptWithinASecondOfItsFirstKey()
    {
        using Rig rig = new(State(Beams.Trench));

        for (int key = 0; key < 4; key++)
        {
            rig.Type("4");
            rig.Pass(TimeSpan.FromSeconds(0.24));
        }

        Effect.KeepRecovery kept = Assert.Single(rig.Effects.OfType<Effect.KeepRecovery>());
        Assert.Contains("\"444", kept.Text, StringComparison.Ordinal);

        rig.Pass(TimeSpan.FromSeconds(1));
        rig.Pass(TimeSpan.FromSeconds(1));
        Assert.Equal(2, rig.Effects.OfType<Effect.KeepRecovery>().Count());
        Assert.Contains("\"4444 m\"", rig.Effects.OfType<Effect.KeepRecovery>().Last().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void EscapeBytesInALabel_NeverReachTheTerminal()
    {
        BeamDocument hostile = Beams.Trench with
        {
            Title = "\u001b[2Jgone",
            Loads = [new LoadEntry { Kind = "point", At = "1 m", Force = "1 kN", Label = "\u001b]0;x\u0007\u009b31m" }],
        };
        using Rig rig = new(State(hostile));

        Assert.DoesNotContain("\u001b[2J", rig.Codes, StringComparison.Ordinal);
        Assert.DoesNotContain("\u001b]0;", rig.Codes, StringComparison.Ordinal);
        Assert.DoesNotContain("\u009b", rig.Codes, StringComparison.Ordinal);
    }

    [Fact]
    public void Click_GoesToTheCellUnderIt_AndTheWheelMovesTheRow()
    {
        using Rig rig = new(State(Beams.Trench));
        string[] lines = rig.Text.Split('\n');
        int y = Array.FindIndex(lines, line => line.Contains("1.60 m", StringComparison.Ordinal));

        rig.Mouse(MouseFlags.LeftButtonPressed, lines[y].IndexOf("1.60 m", StringComparison.Ordinal), y);
        Assert.Contains("[1.60 m", rig.Text);

        rig.Mouse(MouseFlags.WheeledDown, 0, 0);
        Assert.Contains("[2.80 m", rig.Text);
    }

    [Fact]
    public void OtherTheme_IsSeenAtOnce()
    {
        using Rig rig = new(State(Beams.Trench));
        string before = rig.Codes;

        rig.Window.Happen(new ScreenEvent.Key(new KeyStroke.Text("/")));
        rig.Type("i");
        rig.Press(Key.Space, Key.Esc);

        Assert.NotEqual(before, rig.Codes);
        Assert.DoesNotMatch(Colour, rig.Codes);
    }

    [Fact]
    public void HighContrast_IsBrightOnBlackAndNeverFaint()
    {
        using Rig rig = new(State(Beams.Trench) with { Preferences = new Preferences { Theme = Theme.HighContrast } });

        Assert.Empty(ColoursOf(rig.Codes).Except([97, 93, 40]));
        Assert.DoesNotMatch("\u001b\\[(2|\\d+;2)[;m]", rig.Codes);
    }

    [Fact]
    public void TerminalWithoutUtf8_GetsAsciiWhoseColumnsLineUp()
    {
        BeamDocument beam = Beams.Trench with
        {
            Loads = [new LoadEntry { Kind = "point", At = "1 m", Force = "1 kN", Label = "Tr\u00e4ger \u6881" }],
        };
        using Rig full = new(State(beam));
        using Rig plain = new(State(beam), isUtf8: false);

        Assert.Contains("Trager ?? ", plain.Text, StringComparison.Ordinal);
        Assert.True(Ascii.IsValid(plain.Text));
        Assert.Equal(full.Text.Split('\n').Select(TextColumns.Of), plain.Text.Split('\n').Select(TextColumns.Of));
    }

    [Fact]
    public void WithoutColour_NoColourCodeIsWritten()
    {
        using Rig rig = new(State(Beams.Trench), hasColour: false);

        Assert.DoesNotMatch(Colour, rig.Codes);
        Assert.Contains("[3.60 m", rig.Text);
    }

    private static ScreenState State(BeamDocument document) =>
        new Desk(document, new BeamOrigin("trench-bearer")).State;

    private static IEnumerable<int> ColoursOf(string codes) => Regex.Matches(codes, "\u001b\\[([\\d;]*)m")
        .SelectMany(code => code.Groups[1].Value.Split(';', StringSplitOptions.RemoveEmptyEntries))
        .Select(number => int.Parse(number, CultureInfo.InvariantCulture))
        .Where(number => number is >= 30 and not (39 or 49))
        .Distinct();
}
