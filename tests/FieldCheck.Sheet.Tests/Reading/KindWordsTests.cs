using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Reading;

public sealed class KindWordsTests
{
    public static TheoryData<QuantityKind> Kinds => [.. Enum.GetValues<QuantityKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Example_ReadsAsItsKind(QuantityKind kind) =>
        Assert.True(Read.Value(KindWords.Example(kind), kind) > 0);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void UnitsOffered_AllReadAsTheirKind(QuantityKind kind) =>
        Assert.All(KindWords.Units(kind), unit => Assert.True(Read.Value("1 " + unit, kind) > 0));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void UnitsOffered_StandForEveryKindButAPlainNumber(QuantityKind kind) =>
        Assert.Equal(kind == QuantityKind.Number, KindWords.Units(kind).Length == 0);
}
