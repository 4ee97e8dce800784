using CsCheck;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Presets.Toml;
using FieldCheck.Sheet.Tests.Document;

namespace FieldCheck.Sheet.Tests.Presets;

public sealed class RoundTripTests
{
    public static TheoryData<string> Written() => new(TestFile.Names("Written", "*.toml").Append("example.toml"));

    [Fact]
    public void NewFile_OfABeamWithEveryKey_ReadsBackEqual()
    {
        BeamFileText text = BeamFileText.New("full.toml", FullBeam.Document);

        Assert.Equal(FullBeam.Document, Opened(text).Document);
    }

    [Fact]
    public void NewFile_OfAnyBeam_ReadsBackEqual() => Gen.Int.Sample(seed =>
    {
        BeamDocument document = RandomContent.Document(seed);

        Assert.Equal(document, Opened(BeamFileText.New("any.toml", document)).Document);
    });

    [Theory]
    [MemberData(nameof(Written))]
    public void WrittenFile_SavedUnchanged_IsTheSameFile(string name)
    {
        BeamFileReading.Opened opened = Opened(new BeamFileText(name, TestFile.Text(name)));

        Assert.Equal(TestFile.Bytes(name), opened.Origin.With(opened.Document).ToBytes());
    }

    [Theory]
    [MemberData(nameof(Written))]
    public void WrittenFile_ChangedAnyhow_HoldsTheChangedBeam_WithoutBeingWrittenAnew(string name)
    {
        BeamFileText origin = new(name, TestFile.Text(name));
        Gen.Int.Array[1, 4].Sample(seeds => ChangesHold(origin, seeds));
    }

    [Fact]
    public void NewFile_ChangedAnyhow_HoldsTheChangedBeam_WithoutBeingWrittenAnew() =>
        Gen.Select(Gen.Int, Gen.Int.Array[1, 4]).Sample((seed, seeds) =>
            ChangesHold(BeamFileText.New("any.toml", RandomContent.Document(seed)), seeds));

    private static void ChangesHold(BeamFileText text, int[] seeds)
    {
        foreach (int seed in seeds)
        {
            BeamDocument changed = RandomContent.Changed(Opened(text).Document, seed);
            string edited = FileEditor.Changed(TomlReader.Read(text.Unmarked), FileContent.Schema, WritableContent.Of(changed));

            AssertHolds(changed, text with { Text = edited });
            text = text.With(changed);
            AssertHolds(changed, text);
            Assert.Same(text, text.With(changed));
        }
    }

    private static void AssertHolds(BeamDocument expected, BeamFileText text)
    {
        BeamDocument actual = Opened(text).Document;

        // Where they differ, the texts of new files show it better than the documents do.
        Assert.Equal(BeamFileText.New(text.Name, expected).Text, BeamFileText.New(text.Name, actual).Text);
        Assert.Equal(expected, actual);
    }

    private static BeamFileReading.Opened Opened(BeamFileText text) =>
        Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read(text.Name, text.Text));
}
