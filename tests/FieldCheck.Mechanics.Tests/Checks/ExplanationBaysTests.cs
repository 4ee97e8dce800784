using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>Which bays may carry their load, on spans of 4 m that are simple since each is hinged over its supports.</summary>
public sealed class ExplanationBaysTests
{
    // 10 kN in the middle of each bay: 5 kN at either end of it.
    [Theory]
    [InlineData(1, "")]
    [InlineData(2, "0 1")]
    [InlineData(3, "0 01 02 1 12 2")]
    [InlineData(4, "0 01 012 013 02 023 03 1 12 123 13 2 23 3")] // every choice: 2⁴ less none and all
    [InlineData(5, "0 0123 0124 0134 0234 024 1 1234 13 2 3 4")] // one, all but one, every other
    public void SomeBaysAndNotAll_AreKept(int bays, string kept)
    {
        ImmutableArray<(Slip Slip, double[] Kilo)> tried = Tried(
            Model(bays, [.. Enumerable.Range(0, bays).Select(bay => Said.Point(4 * bay + 2, 10))]));

        Assert.Equal(kept, Choices(tried));
        foreach ((Slip slip, double[] kilo) in tried)
        {
            ImmutableArray<int> on = ((Slip.Pattern)slip).Bays;
            Assert.Equal(
                Enumerable.Range(0, bays + 1).Select(at => (on.Contains(at - 1) ? 5.0 : 0) + (on.Contains(at) ? 5.0 : 0)), kilo);
        }
    }

    [Fact]
    public void BaysWithoutALoad_DoNotCount() =>
        Assert.Equal("0 2", Choices(Tried(Model(3, Said.Point(2, 10), Said.Point(10, 10)))));

    // 8 kN of another case and 4 kN of own weight stay on the first bay, whichever bay of the case is kept.
    [Fact]
    public void OtherCasesAndOwnWeight_Stay()
    {
        BeamModel model = Model(2, Said.Point(2, 10), Said.Spread(0, 4, 1), Said.Point(6, 10));
        model = model with { Cases = [.. model.Cases, new LoadCase("other", [Said.Point(2, 8)])] };

        ImmutableArray<(Slip Slip, double[] Kilo)> tried = Rough.Tried(
            Rough.Set(model, 100, ReactionPart.Vertical) with { OwnWeight = [1] }, ExplanationBays.Try);

        Assert.Equal("0 1", Choices(tried));
        Assert.All(tried, one => Assert.Equal(0, ((Slip.Pattern)one.Slip).Case));
        Assert.Equal([11, 11, 0], Kept(0));
        Assert.Equal([6, 11, 5], Kept(1));

        double[] Kept(int bay) => Assert.Single(tried, one => ((Slip.Pattern)one.Slip).Bays[0] == bay).Kilo;
    }

    private static BeamModel Model(int bays, params Load[] loads) => Said.On(
        [.. Enumerable.Repeat(4.0, bays)], [.. Enumerable.Range(0, bays + 1).Select(i => 4.0 * i)], loads) with
    {
        Hinges = [.. Enumerable.Range(1, bays - 1).Select(i => 4.0 * i)],
    };

    private static ImmutableArray<(Slip Slip, double[] Kilo)> Tried(BeamModel model) =>
        Rough.Tried(Rough.Set(model, 100, ReactionPart.Vertical), ExplanationBays.Try);

    private static string Choices(ImmutableArray<(Slip Slip, double[] Kilo)> tried) => string.Join(
        ' ', tried.Select(one => string.Concat(((Slip.Pattern)one.Slip).Bays)).Order(StringComparer.Ordinal));
}
