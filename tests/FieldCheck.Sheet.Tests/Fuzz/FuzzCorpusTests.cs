using CsCheck;
using FieldCheck.Fuzz;

namespace FieldCheck.Sheet.Tests.Fuzz;

/// <summary>Texts that fuzzing left, read again: what they reach, and that all that is promised of any text holds of them.</summary>
public sealed class FuzzCorpusTests
{
    public static TheoryData<string> Targets => ["quantity", "file"];

    [Theory]
    [MemberData(nameof(Targets))]
    public void EveryText_IsAnsweredAsPromised(string name)
    {
        FuzzTarget target = Target(name);

        Assert.All(Texts(target), text => Assert.NotEmpty(target.Check(text)));
    }

    /// <summary>A corpus that reaches less than it did must be made anew: .ci/fuzz --corpus.</summary>
    [Theory]
    [InlineData("quantity", 1150)]
    [InlineData("file", 250)]
    public void Corpus_IsSmallAndReachesMuch(string name, int kinds)
    {
        FuzzTarget target = Target(name);
        string[] texts = Texts(target);

        Assert.InRange(texts.Length, 100, 300);
        Assert.InRange(texts.Sum(text => text.Length), 1, 200_000);
        Assert.InRange(texts.SelectMany(target.Check).Distinct(StringComparer.Ordinal).Count(), kinds, int.MaxValue);
    }

    [Fact]
    public void Fewest_HaveEveryKindOfAnswer()
    {
        Gen<Dictionary<string, IReadOnlySet<string>>> any = Gen.Select(Gen.String[Gen.Char.AlphaNumeric, 0, 6], Gen.Int[0, 9].Array[0, 5])
            .Array[0, 20]
            .Select(pairs => pairs
                .DistinctBy(pair => pair.Item1)
                .ToDictionary(
                    pair => pair.Item1,
                    IReadOnlySet<string> (pair) => pair.Item2.Select(kind => $"{kind}").ToHashSet()));

        any.Sample(kinds =>
        {
            IReadOnlyList<string> few = FuzzCorpus.Fewest(kinds, 10);

            Assert.Equal(
                kinds.Values.SelectMany(kind => kind).Distinct().Order(), few.SelectMany(text => kinds[text]).Distinct().Order());
            Assert.InRange(few.Count, 0, 10);
            Assert.Equal(few.Distinct(), few);
        });
    }

    [Fact]
    public void Fewest_OfTwoThatReachAsMuch_IsTheShorter() => Assert.Equal(
        ["d", "aa"],
        FuzzCorpus.Fewest(new Dictionary<string, IReadOnlySet<string>>
        {
            ["bbb"] = new HashSet<string> { "1", "2" },
            ["aa"] = new HashSet<string> { "1", "2" },
            ["c"] = new HashSet<string> { "2" },
            ["d"] = new HashSet<string> { "3" },
        }, most: 5));

    [Fact]
    public void AnyText_IsQuotedInPlainLettersOnOneLine_AndReadAgain() => Gen.Char.Array.Select(signs => new string(signs)).Sample(text =>
    {
        string quoted = QuotedText.Of(text);

        Assert.All(quoted, sign => Assert.InRange(sign, ' ', '~'));
        Assert.Equal(text, QuotedText.Read(quoted));
    });

    [Fact]
    public void Fewest_OfTooMany_AreThoseThatAddMost() => Assert.Equal(
        ["b", "ccc"],
        FuzzCorpus.Fewest(new Dictionary<string, IReadOnlySet<string>>
        {
            ["a"] = new HashSet<string> { "1" },
            ["b"] = new HashSet<string> { "2", "3" },
            ["ccc"] = new HashSet<string> { "1", "4", "5" },
            ["d"] = new HashSet<string> { "6" },
        }, most: 2));

    [Fact]
    public void Text_IsQuotedAsAStringOfJson() =>
        Assert.Equal("\"a\\nb \\\"\\\\ \\u001b\\ud800\"", QuotedText.Of("a\nb \"\\ \u001b\ud800"));

    private static string[] Texts(FuzzTarget target) => [.. target.Seeds, .. FuzzCorpus.Of(target.Name)];

    private static FuzzTarget Target(string name) => name == "quantity" ? new QuantityTarget() : new BeamFileTarget();
}
