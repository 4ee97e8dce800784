using CsCheck;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.Tests.Presets;

/// <summary>Texts that no person writes: they are read or refused, and refused at a place that is in them.</summary>
public sealed class HostileFilesTests
{
    private static readonly string[] Files =
        [.. TestFile.Names("Written", "*.toml").Concat(TestFile.Names("Broken", "*.toml")).Append("example.toml").Select(TestFile.Text)];

    private static readonly string[] Bits =
    [
        "\"", "'", "\\", "[", "]", "{", "}", "=", ",", ".", "#", "\n", "\r", "\t", "\"\"\"", "'''", "[[", "]]", "\r\n",
        "\\u", "\\U0010FFFF", "\uD800", "\uDC00", "\uFFFD", "\uFEFF", "\u0000", "\u0085", "é", "𝄞", "0x", "1e999", "nan",
        "2031-02-30", "07:30", "a.b.c", "[span]\n", "[[span]]\n", "[span.a]\n", "format = 2\n",
    ];

    private static readonly Gen<string> AnyFile = Gen.Int[0, Files.Length - 1].Select(number => Files[number]);

    private static readonly Gen<string> AnyBit = Gen.Int[0, Bits.Length - 1].Select(number => Bits[number]);

    [Fact]
    public void DamagedFile_IsReadOrRefusedAtAPlaceInIt()
    {
        Gen<(int At, int Cut, string Bit)[]> damage = Gen.Select(Gen.Int[0, 4000], Gen.Int[0, 6], AnyBit).Array[1, 5];

        Gen.Select(AnyFile, damage).Sample((file, hits) => AssertSensible(hits.Aggregate(file, Hit)));
    }

    [Fact]
    public void AnyText_IsReadOrRefusedAtAPlaceInIt() => Gen.OneOf(Gen.String, AnyBit.Array[0, 20].Select(string.Concat))
        .Sample(AssertSensible);

    [Fact]
    public void DamagedFileThatStillOpens_TakesAnyChange()
    {
        Gen<(int At, int Cut, string Bit)[]> damage = Gen.Select(Gen.Int[0, 4000], Gen.Int[0, 2], AnyBit).Array[0, 2];

        Gen.Select(AnyFile, damage, Gen.Int).Sample((file, hits, seed) =>
        {
            if (BeamFileText.Read("d.toml", hits.Aggregate(file, Hit)) is BeamFileReading.Opened opened)
            {
                BeamDocument changed = RandomContent.Changed(opened.Document, seed);
                BeamFileReading saved = BeamFileText.Read("d.toml", opened.Origin.With(changed).Text);
                Assert.Equal(changed, Assert.IsType<BeamFileReading.Opened>(saved).Document);
            }
        });
    }

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

    private static string Hit(string text, (int At, int Cut, string Bit) hit)
    {
        int at = Math.Min(hit.At, text.Length);
        return text.Remove(at, Math.Min(hit.Cut, text.Length - at)).Insert(at, hit.Bit);
    }

    private static void AssertSensible(string text)
    {
        if (BeamFileText.Read("any.toml", text) is BeamFileReading.Refused refused)
        {
            string[] lines = text.Split('\n');
            Assert.InRange(refused.Problems.Length, 1, FileProblem.Most);
            Assert.All(refused.Problems, problem =>
            {
                Assert.InRange(problem.Line, 1, lines.Length);
                Assert.InRange(problem.Column, 1, lines[problem.Line - 1].Length + 2);
                Assert.True(problem.Key.Length == 0 || KeyPath.Parse(problem.Key) is not null, problem.Key);
            });
        }
    }
}
