using System.Globalization;
using FieldCheck.Screen;
using FieldCheck.Screen.Files;
using FieldCheck.Sheet.Presets;
using FieldCheck.Tests.Screen;
using Xunit.Abstractions;

namespace FieldCheck.Tests.Terminal;

/// <summary>The window is dragged to other sizes, many a second: once it rests, the screen is the picture of its size.</summary>
public sealed class ResizeTests(ITestOutputHelper output)
{
    private const int SizesInABurst = 40;

    [TerminalFact]
    public void AfterABurstOfSizes_TheScreenIsThePictureOfTheLast()
    {
        int seed = Environment.GetEnvironmentVariable("FIELDCHECK_SEED") is string given
            ? int.Parse(given, CultureInfo.InvariantCulture)
            : Random.Shared.Next();
        output.WriteLine($"FIELDCHECK_SEED={seed}");
        Random random = new(seed);
        ScreenState example = Example();
        using Session session = new();
        using PseudoTerminal terminal = session.Open([], (80, 24));

        foreach ((int width, int height) in new[] { (300, 100), (1, 1), (80, 24), (2, 60), (120, 2), (40, 12), (200, 60) })
        {
            for (int size = 0; size < SizesInABurst; size++)
            {
                terminal.Resize(random.Next(1, 301), random.Next(1, 101));
                Thread.Sleep(random.Next(0, 30));
            }

            terminal.Resize(width, height);
            string picture = Trimmed(ScreenPicture.Of(example, width, height).ToString());
            terminal.WaitUntil(image => image.ToString() == picture, $"the picture of {width} x {height}, seed {seed}:\n{picture}");
        }

        terminal.Signal("TERM");
        Assert.Equal(128 + 15, terminal.Finish());
    }

    private static ScreenState Example()
    {
        BeamFileText text = PresetLibrary.Example().Text;
        BeamFileReading.Opened opened = Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read(text.Name, text.Text));
        return new Desk(
            opened.Document, new BeamOrigin(BeamOrigin.NameOf(opened.Origin.Name), null, opened.Origin, IsExample: true)).State;
    }

    private static string Trimmed(string picture) =>
        string.Join('\n', picture.Split('\n').Select(line => line.TrimEnd(' '))).TrimEnd('\n');
}
