using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using FieldCheck.Screen.Files;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Tests.Screen;

/// <summary>
/// Pictures of the screen in Expected/*.txt. FIELDCHECK_ACCEPT=1 writes them anew; then read the change.
/// </summary>
public sealed class ScreenPictureTests
{
    public static TheoryData<string, int, int> Pictures()
    {
        TheoryData<string, int, int> pictures = [];
        foreach ((int width, int height) in new[] { (80, 24), (120, 40), (60, 20), (40, 12), (20, 5) })
        {
            foreach (string name in Situations.Keys)
            {
                pictures.Add(name, width, height);
            }
        }

        pictures.Add("example", 300, 100);
        return pictures;
    }

    private static Dictionary<string, string> Situations { get; } = new()
    {
        ["trench"] = "",
        ["typing"] = "Down Down Down Down Down Down Down Down 9/m",
        ["bad-cell"] = "Down Down Down Down Down Down Down Down \"12 kn/n\" Enter",
        ["can-move"] = "Down Down Down ^X",
        ["plots"] = "F4",
        ["plots-envelope"] = "F8 \"1.0 dead + 1.0 live\" Enter \"1.2 dead + 1.6 live\" Tab f Enter Up Up Up Tab Space F4",
        ["influence"] = "F4 i b Enter Right Right",
        ["influence-moment"] = "F4 i \"m 1.2\" Enter",
        ["working"] = "F5 PgDn",
        ["stated"] = "F6 10.3 Enter 14.6 Enter",
        ["stated-within-band"] = "F6 10.3 Enter 14.9 Enter",
        ["stated-nothing"] = "F6",
        ["stated-typing"] = "F6 10.3 Enter -14.",
        ["stated-to-mend"] = "F6 10.3 Tab 2 Tab Tab Tab Tab Tab \"hire firm's sheet, rev B\" Enter 14.6kn/m Enter Up",
        ["stated-many"] = "F6 10 Enter 20 Enter ^D",
        ["cases-nothing"] = "F8",
        ["cases"] = "F8 \"1.0 dead + 1.0 live\" Enter \"1.2 dead + 1.6 live\" Tab f Enter Up Up Up Tab Space",
        ["cases-rolling"] = "F8 Down \"hand truck\" Tab \"6, 4 at 1.2\" Tab Tab 30 Enter",
        ["cases-standard"] = "F8 / k Down",
        ["section-nothing"] = "F7",
        ["section-passes"] = "F7 100x300 Down Tab 9000 Tab 12 Tab 1.5 Down Home Tab 360 Tab 180 Up Up",
        ["section-fails-at-the-tip"] = "F7 75x225 Down Tab 9000 Tab 12 Tab 1.5 Down Home Tab 360 Tab Tab 6 Up Up",
        ["section-not-judged"] = "F7 75x225 Down Tab 9000 Tab 12 Down Home \"en 1995\" Tab 360 Up Up",
        ["section-shapes"] = "F7 Space \"ipe 2\" Down",
        ["section-grades"] = "F7 Down Space timber",
        ["section-factors"] = "F7 Down Down \"en 1995\" Up End Left Left Left / k Down",
        ["section-would-do"] = "F7 75x150 Down C24 Tab Tab 12 Tab 1.5 Down Home Tab 360 Tab Tab 6 Enter / d",
        ["section-families"] = "F7 75x150 Down C24 Tab Tab 12 Tab 1.5 Down Home Tab 360 Tab Tab 6 Enter / d Tab Down Down Space",
        ["section-what-if"] = "F7 75x200 Down Tab 9000 Tab 12 Tab 1.5 Down Home Tab 360 Tab Tab 6 Enter / h",
        ["section-prop"] = "F7 75x200 Down Tab 9000 Tab 12 Tab 1.5 Down Home Tab 360 Tab Tab 6 Enter / h 500 Enter Enter",
        ["menu"] = "Down Down Down Down Down Down /",
        ["help"] = "?",
        ["new-beam"] = "^N",
        ["save-as"] = "^S north",
        ["more-of-row"] = "Down Down / m",
        ["example"] = "",
        ["fifty-loads"] = "PgDn PgDn Down Down Down Down Down Down Down Down Down Down Down Down Right",
        ["open"] = "^O Down Down",
        ["open-filter"] = "^O bay",
        ["open-unreadable"] = "^O torn",
        ["open-path"] = "^O site/bay.toml",
        ["open-missing"] = "^O site/bay.toml Enter",
    };

    [Theory]
    [MemberData(nameof(Pictures))]
    public void Screen_LooksAsExpected(string name, int width, int height)
    {
        (BeamDocument document, BeamOrigin origin) = name switch
        {
            "example" => Example(),
            "stated-within-band" => (
                Beams.Trench with { Tolerance = new() { Load = "10 %" } }, new BeamOrigin("trench-bearer")),
            "fifty-loads" or "stated-many" => (Beams.FiftyLoads, new BeamOrigin("floor bay")),
            _ => (Beams.Trench, new BeamOrigin("trench-bearer")),
        };
        Desk desk = new(document, origin) { Choices = Choices.OfEveryKind };
        desk.Press(Situations[name]);

        AssertPicture($"{name}-{width}x{height}.txt", desk.Show(width, height));
    }

    // The bearer carries 9.9 and 16.5 kN; what each pair of figures comes of is worked out in ExplanationLinesTests.
    [Theory]
    [InlineData("agrees", "F6 9.9 Enter 16.5 Enter")]
    [InlineData("swapped", "F6 16.5 Enter 9.9 Enter")]
    [InlineData("own-weight", "F6 9.90 Enter 16.5 Enter")]
    [InlineData("tied", "F6 9.90 Enter 16.50 Enter")]
    [InlineData("no-slip", "F6 10.87 Enter 17.93 Enter")]
    [InlineData("basis-unknown", "F6 13.9 Tab Tab Tab Tab u Enter 23.1 Tab Tab Tab Tab u Enter")]
    public void WhatComesOfStatedFigures_LooksAsExpected(string name, string keys)
    {
        BeamDocument document = name switch
        {
            "own-weight" => Beams.Trench with
            {
                SelfWeight = new SelfWeightEntry { Case = "dead" },
                Sections = [new SectionEntry { Name = "bearer", Width = "75 mm", Depth = "225 mm" }],
                Materials = [new MaterialEntry { Name = "concrete", Modulus = "30 GPa", Density = "2500 kg/m3" }],
            },
            "tied" => Beams.Trench with { Loads = [.. Beams.Trench.Loads, Beams.Trench.Loads[3]] },
            _ => Beams.Trench,
        };
        Desk desk = new Desk(document, new BeamOrigin("trench-bearer")).Press(keys);

        AssertPicture($"stated-{name}-80x24.txt", desk.Show(80, 24));
        AssertPicture($"stated-{name}-120x40.txt", desk.Show(120, 40));
    }

    /// <summary>The screen in the README is the one a first start shows.</summary>
    [Fact]
    public void ReadmesScreen_IsThatOfTheExample() => Assert.Contains(
        "```\n" + File.ReadAllText(Path.Combine(Folder(), "example-80x24.txt")) + "```\n",
        File.ReadAllText(Path.Combine(Folder(), "..", "..", "..", "..", "README.md")),
        StringComparison.Ordinal);

    /// <summary>The screens in docs/using.md are what is seen of the bearer over a trench.</summary>
    [Theory]
    [InlineData("trench", "Beam")]
    [InlineData("plots", "Plots")]
    [InlineData("working", "Working")]
    [InlineData("stated", "Stated")]
    [InlineData("section-fails-at-the-tip", "Section")]
    [InlineData("cases", "Cases")]
    public void ScreenInTheDocumentation_IsWhatIsSeen(string situation, string view)
    {
        string path = Path.Combine(Folder(), "..", "..", "..", "..", "docs", "using.md");
        Desk desk = new Desk(Beams.Trench, new BeamOrigin("trench-bearer")).Press(Situations[situation]);
        string screen = $"```\n{Written(desk.Show(80, 24))}```\n";
        if (Environment.GetEnvironmentVariable("FIELDCHECK_ACCEPT") == "1")
        {
            File.WriteAllText(path, Regex.Replace(
                File.ReadAllText(path).ReplaceLineEndings("\n"), $@"```\ntrench-bearer[^\n]*\[{view}\][^`]*```\n", screen.Replace("$", "$$")));
        }

        Assert.Contains(screen, File.ReadAllText(path).ReplaceLineEndings("\n"), StringComparison.Ordinal);
    }

    [Fact]
    public void AnySize_IsFilledExactlyAndShowsTheCursor()
    {
        Desk desk = new(Beams.Trench, new BeamOrigin("梁 bearer with a name that is longer than the window is wide"))
        {
            Choices = Choices.OfEveryKind,
        };
        foreach (string keys in Situations.Values)
        {
            desk.Press("Esc Esc Esc PgUp PgUp").Press(keys);
            for (int width = 1; width <= 130; width += width < 24 ? 1 : 7)
            {
                for (int height = 1; height <= 50; height += height < 24 ? 1 : 7)
                {
                    Fills(desk.Show(width, height), width, height);
                }
            }
        }
    }

    /// <summary>Where the person is, is seen without colour in every size that has room for a cell.</summary>
    [Theory]
    [InlineData(80, 24)]
    [InlineData(60, 20)]
    [InlineData(40, 12)]
    [InlineData(20, 5)]
    public void CellThatThePersonIsOn_WearsBrackets(int width, int height)
    {
        Desk desk = new(Beams.Trench, new BeamOrigin("trench-bearer"));
        for (int step = 0; step < 60; step++)
        {
            Picture picture = desk.Show(width, height);
            Assert.NotNull(picture.Cursor);
            (int x, int y) = picture.Cursor.Value;
            Assert.Equal('[', picture.Lines[y].ToString()[x - 1]);
            Assert.Equal('>', picture.Lines[y].ToString()[0]);
            desk.Press("Tab");
        }
    }

    internal static void Fills(Picture picture, int width, int height)
    {
        Assert.Equal(height, picture.Lines.Length);
        Assert.All(picture.Lines, line => Assert.Equal(width, TextColumns.Of(line.ToString())));
        Assert.All(picture.Lines.SelectMany(line => line.Runs), run => Assert.DoesNotContain(run.Text, char.IsControl));
        if (picture.Cursor is (int x, int y))
        {
            Assert.InRange(x, 0, width - 1);
            Assert.InRange(y, 0, height - 1);
        }
    }

    // As the program starts without a file.
    private static (BeamDocument Document, BeamOrigin Origin) Example()
    {
        BeamFileText text = PresetLibrary.Example().Text;
        BeamFileReading.Opened opened = Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read(text.Name, text.Text));
        return (opened.Document, new BeamOrigin(BeamOrigin.NameOf(text.Name), null, text, IsExample: true));
    }

    private static void AssertPicture(string file, Picture picture)
    {
        string path = Path.Combine(Folder(), file);
        string actual = Written(picture);
        if (Environment.GetEnvironmentVariable("FIELDCHECK_ACCEPT") == "1")
        {
            File.WriteAllText(path, actual);
        }

        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), actual);
    }

    private static string Written(Picture picture) =>
        string.Join('\n', picture.Lines.Select(line => line.ToString().TrimEnd())) + "\n";

    private static string Folder([CallerFilePath] string file = "") =>
        Path.Combine(Path.GetDirectoryName(file)!, "Expected");
}
