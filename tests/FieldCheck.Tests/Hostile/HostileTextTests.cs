using System.Globalization;
using System.Text;
using System.Text.Json;
using CsCheck;
using FieldCheck.Reporting.Pages;
using FieldCheck.Screen.Files;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;
using FieldCheck.Tests.CommandLine;
using FieldCheck.Tests.Plain;
using FieldCheck.Tests.Screen;

namespace FieldCheck.Tests.Hostile;

/// <summary>Whatever stands in a beam file, nothing that commands, hides or reorders comes out of the program anywhere.</summary>
public sealed class HostileTextTests
{
    private static readonly string[] ToEveryView =
    [
        "F3", "F4", "F5", "F6", "F7", "F8", "F3 \\", "F3 / m", "F3 / b", "F3 ?", "F3 /", "F6 Down", "F7 Space", "F7 / h", "F7 / d",
        "F8 / k", "F3 ^O", "F5 x", "F3 ^P", "F3 / w", "F3 Down Tab F2", "F4 i",
    ];

    // How many times as many as at every run.
    private static readonly int Longer = int.Parse(
        Environment.GetEnvironmentVariable("FIELDCHECK_LONGER") ?? "1", CultureInfo.InvariantCulture);

    private static readonly Gen<BeamDocument> Beam =
        HostileText.Any.Array[HostileBeam.Texts].Select(texts => HostileBeam.Of(texts));

    /// <summary>The same with any text in some cells, whatever they want.</summary>
    private static readonly Gen<BeamDocument> BeamToMend = Gen.Select(Beam, Gen.Select(Gen.Int[0, 999], HostileText.Any).Array[1, 4])
        .Select((beam, changes) => changes.Aggregate(beam, (changed, change) =>
        {
            DocumentCell[] cells = [.. DocumentCells.All(changed)];
            return DocumentCells.Set(changed, cells[change.Item1 % cells.Length].Key, change.Item2) ?? changed;
        }));

    [Fact]
    public void Beam_IsWorked() => HostileText.Any.Array[HostileBeam.Texts].Sample(
        texts =>
        {
            using Surroundings around = Around(HostileBeam.Of(texts));
            int status = around.Run("check", "beam.toml");
            Assert.True(status == 1, around.Complaints + around.Written);
        },
        iter: 5 * Longer,
        threads: 1);

    [Fact]
    public void CommandLine_SaysNothingForbidden() => Gen.OneOf(Beam, BeamToMend).Sample(
        beam =>
        {
            string[][] commands =
            [
                ["check", "beam.toml"], ["check", "beam.toml", "--plain"], ["check", "beam.toml", "--json"],
                ["check", "beam.toml", "--working"], ["working", "beam.toml"], ["working", "beam.toml", "--plain"], ["presets"],
            ];
            foreach (string[] command in commands)
            {
                using Surroundings around = Around(beam);
                around.Run(command);
                AssertHarmless(around.Written, string.Join(' ', command));
                AssertHarmless(around.Complaints, string.Join(' ', command));
            }
        },
        iter: 12 * Longer,
        threads: 1);

    [Fact]
    public void Json_GivesTheTextBackAsItStands() => Beam.Sample(
        beam =>
        {
            using Surroundings around = Around(beam);
            around.Run("check", "beam.toml", "--json");
            using JsonDocument json = JsonDocument.Parse(around.Written);
            Assert.Equal(beam.Title, json.RootElement.GetProperty("title").GetString());
            Assert.Equal(
                beam.Combinations.Select(combination => combination.Name),
                json.RootElement.GetProperty("combinations").EnumerateArray().Select(one => one.GetProperty("name").GetString()));
        },
        iter: 10 * Longer,
        threads: 1);

    [Theory]
    [InlineData(".txt")]
    [InlineData(".md")]
    [InlineData(".html")]
    public void Record_HoldsNothingForbidden(string ending) => Beam.Sample(
        beam =>
        {
            string record = Encoding.UTF8.GetString(Record(beam, "record" + ending));
            AssertHarmless(record, ending);
            if (RecordFile.FormatOf(ending) == RecordFormat.Html)
            {
                Markup.AssertOurs(record);
            }
            else if (RecordFile.FormatOf(ending) == RecordFormat.Markdown)
            {
                Markup.AssertNone(record);
            }
        },
        iter: 12 * Longer,
        threads: 1);

    [Fact]
    public void Screen_ShowsNothingForbidden() => Gen.OneOf(Beam, BeamToMend).Sample(
        beam =>
        {
            foreach (string keys in ToEveryView)
            {
                Desk desk = new(beam, BeamOrigin.File("\u202e\u001bbeam.toml", BeamFileText.New("beam.toml", beam)))
                {
                    Choices = [new("\u001b[2Jx\u202e", BeamPlace.Site, "a\u009b/\u001b[2Jx\u202e.toml", new(() => Opened(beam)), null)],
                };
                desk.Press(keys);
                AssertHarmless(desk.Show(80, 24).ToString(), keys);
                AssertHarmless(desk.Show(140, 50).ToString(), keys);
                ScreenPictureTests.Fills(desk.Show(80, 24), 80, 24);
                Assert.All(desk.Texts.Values, text => AssertHarmless(text, keys));
            }
        },
        iter: 4 * Longer,
        threads: 1);

    [Fact]
    public void Conversation_SaysNothingForbidden() => Gen.OneOf(Beam, BeamToMend).Sample(
        beam =>
        {
            DirectoryInfo folder = Directory.CreateTempSubdirectory("fieldcheck-");
            try
            {
                File.WriteAllText(Path.Combine(folder.FullName, "beam.toml"), BeamFileText.New("beam.toml", beam).Text);
                using Talk talk = new("beam.toml", folder);
                talk.Say("show", "more", "results", "working", "checks", "plots", "standard", "", "title \u001b[2J\u202e", "load 1 note \u009b1m", "show");
                AssertHarmless(talk.Said, "lines");
            }
            finally
            {
                folder.Delete(recursive: true);
            }
        },
        iter: 8 * Longer,
        threads: 1);

    private static Surroundings Around(BeamDocument beam)
    {
        Surroundings around = new();
        around.Write("beam.toml", BeamFileText.New("beam.toml", beam).Text);
        around.Write("presets/also.toml", BeamFileText.New("also.toml", beam).Text);
        return around;
    }

    private static byte[] Record(BeamDocument beam, string name)
    {
        using Surroundings around = Around(beam);
        int status = around.Run("report", "beam.toml", "--output", name);
        Assert.True(status == 1, around.Complaints);
        return File.ReadAllBytes(Path.Combine(around.Folder.FullName, name));
    }

    private static BeamFileReading Opened(BeamDocument beam) =>
        BeamFileText.Read("beam.toml", BeamFileText.New("beam.toml", beam).Text);

    private static void AssertHarmless(string text, string where) => Assert.True(
        HostileText.ForbiddenIn(text) is null, $"{where}: {HostileText.ForbiddenIn(text)}");
}
