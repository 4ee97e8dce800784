using CsCheck;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.Presets;

/// <summary>Texts that no person writes: they are read or refused, and refused at a place that is in them.</summary>
public sealed class HostileFilesTests
{
    private static readonly string[] Files =
        [.. TestFile.Names("Written", "*.toml").Concat(TestFile.Names("Broken", "*.toml")).Append("example.toml").Select(TestFile.Text)];

    private static readonly Gen<string> AnyFile = Gen.Int[0, Files.Length - 1].Select(number => Files[number]);

    [Fact]
    public void DamagedFile_IsReadOrRefusedAtAPlaceInIt() =>
        Gen.Select(AnyFile, Damage.Some(1, 5)).Sample((file, hits) => AssertSensible(Damage.On(file, hits)));

    [Fact]
    public void AnyText_IsReadOrRefusedAtAPlaceInIt() => Gen.OneOf(Gen.String, Damage.AnyBit.Array[0, 20].Select(string.Concat))
        .Sample(AssertSensible);

    [Fact]
    public void DamagedFileThatStillOpens_TakesAnyChange() =>
        Gen.Select(AnyFile, Damage.Some(0, 2, longestCut: 2), Gen.Int).Sample((file, hits, seed) =>
        {
            if (BeamFileText.Read("d.toml", Damage.On(file, hits)) is BeamFileReading.Opened opened)
            {
                BeamDocument changed = RandomContent.Changed(opened.Document, seed);
                BeamFileReading saved = BeamFileText.Read("d.toml", opened.Origin.With(changed).Text);
                Assert.Equal(changed, Assert.IsType<BeamFileReading.Opened>(saved).Document);
            }
        });

    [Theory]
    [InlineData("dots in a key", "a.", "1 = 1")]
    [InlineData("brackets", "[", "")]
    [InlineData("braces", "a={", "")]
    [InlineData("headers", "[a]\n", "")]
    [InlineData("rows", "[[span]]\n", "")]
    [InlineData("slips", "a 1\n", "")]
    [InlineData("open quotes", "a=\"\n", "")]
    [InlineData("keys alike", "a=1\n", "")]
    [InlineData("dotted keys", "record.a.b.c=1\n", "")]
    public void MebibyteOf_IsRefused_WithTwentyProblemsAtMost(string what, string part, string end)
    {
        string text = string.Concat(Enumerable.Repeat(part, (BeamFileText.MostBytes - 10) / part.Length)) + end;

        BeamFileReading.Refused refused = Assert.IsType<BeamFileReading.Refused>(BeamFileText.Read(what, text));

        Assert.InRange(refused.Problems.Length, 1, FileProblem.Most);
    }

    private static void AssertSensible(string text)
    {
        if (BeamFileText.Read("any.toml", text) is BeamFileReading.Refused refused)
        {
            Damage.AssertTold("any.toml", text, refused.Problems);
        }
    }
}
