using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Tests.Strength;

/// <summary>Everything that a check may name has words of its own, in plain ASCII.</summary>
public sealed class WordsTests
{
    [Fact]
    public void EveryClause_HasWordsOfItsOwn() => AreOwn(Enum.GetValues<CheckClause>().Select(ClauseWords.Of));

    [Fact]
    public void EverySymbol_HasWordsOfItsOwn()
    {
        AreOwn(Enum.GetValues<CheckSymbol>().Select(symbol => SymbolWords.Of(symbol).Words));
        Assert.All(Enum.GetValues<CheckSymbol>(), symbol => IsPlain(SymbolWords.Of(symbol).Symbol));
    }

    [Fact]
    public void EveryFactor_HasASignAndWordsOfItsOwn()
    {
        AreOwn(Enum.GetValues<FactorKind>().Select(kind => FactorWords.Of(kind).Symbol));
        Assert.All(Enum.GetValues<FactorKind>(), kind => IsPlain(FactorWords.Of(kind).Words));
    }

    private static void AreOwn(IEnumerable<string> words)
    {
        string[] all = [.. words];
        Assert.All(all, IsPlain);
        Assert.Equal(all.Length, all.Distinct().Count());
    }

    private static void IsPlain(string words)
    {
        Assert.NotEqual("", words);
        Assert.All(words, letter => Assert.InRange(letter, ' ', '~'));
    }
}
