using CsCheck;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>The search for the greatest load alone, on utilisations written down as formulas.</summary>
public sealed class HeadroomSearchTests
{
    [Fact]
    public void LoadThatHolds_GrowsUntilTheUtilisationIsOne()
    {
        Headroom found = HeadroomSearch.Of(load => new Judgement(0.2 + 0.3 * load, null), 1);

        Assert.Equal(0.8 / 0.3, found.Most!.Value, 1e-11);
        Assert.Equal(HeadroomEnd.CheckFails, found.End);
    }

    [Fact]
    public void LoadThatDoesNotHold_IsLessened()
    {
        Headroom found = HeadroomSearch.Of(load => new Judgement(0.2 + 1.6 * load, null), 1);

        Assert.Equal(0.5, found.Most!.Value, 1e-12);
    }

    [Fact]
    public void NothingFails_IsWithoutEnd()
    {
        Headroom found = HeadroomSearch.Of(_ => new Judgement(0.9, null), 1);

        Assert.Equal(new Headroom(null, HeadroomEnd.None, null), found);
    }

    [Fact]
    public void OverWithoutAny_IsSaid()
    {
        Headroom found = HeadroomSearch.Of(load => new Judgement(1.1 + load, null), 1);

        Assert.Equal(new Headroom(null, HeadroomEnd.OverWithout, null), found);
    }

    [Theory]
    [InlineData(0.4)]
    [InlineData(1.7)]
    [InlineData(812.5)]
    public void Tipping_IsFoundThoughItIsAJump(double tips)
    {
        Headroom found = HeadroomSearch.Of(
            load => new Judgement(load <= tips ? 0.3 : double.PositiveInfinity, null), 1);

        Assert.Equal(HeadroomEnd.Tips, found.End);
        Assert.Equal(tips, found.Most!.Value, tips * 1e-9);
    }

    [Fact]
    public void TippingWithoutAny_IsSaid()
    {
        Headroom found = HeadroomSearch.Of(_ => new Judgement(double.PositiveInfinity, null), 1);

        Assert.Equal(new Headroom(null, HeadroomEnd.Tips, null), found);
    }

    /// <summary>The greatest of several straight lines is what the utilisation of a beam without lift-off is.</summary>
    [Fact]
    public void GreatestOfStraightLines_MeetsOneAtTheGreatestLoad() => Gen
        .Select(Gen.Double[0, 0.95], Gen.Double[-2, 3])
        .Array[1, 8]
        .Where(lines => lines.All(line => Math.Abs(line.Item2) > 1e-3))
        .Sample(lines =>
        {
            double At(double load) => lines.Max(line => Math.Abs(line.Item1 + line.Item2 * load));
            double expected = lines.Min(line => ((line.Item2 > 0 ? 1 : -1) - line.Item1) / line.Item2);
            Headroom found = HeadroomSearch.Of(load => new Judgement(At(load), null), 1);

            Assert.Equal(expected, found.Most!.Value, 1e-9 * expected);
        });
}
