using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>
/// Just within and just beyond each limit of EN 1993-1-1 Table 5.2 for S355, ε = 0.8136. The table is from memory, the limits worked by hand.
/// </summary>
public sealed class En1993PlateLimitsTests
{
    /// <summary>33·ε = 26.85, 38·ε = 30.92, 42·ε = 34.17 in compression.</summary>
    [Theory]
    [InlineData(26.8, 1)]
    [InlineData(26.9, 2)]
    [InlineData(30.9, 2)]
    [InlineData(31.0, 3)]
    [InlineData(34.1, 3)]
    [InlineData(34.2, 4)]
    public void TubeFlange(double ratio, int expected) =>
        Assert.Equal(expected, ClassOf(Slender.Tube(ratio, ratio)));

    /// <summary>72·ε = 58.58, 83·ε = 67.53, 124·ε = 100.89 in bending.</summary>
    [Theory]
    [InlineData(58.5, 1)]
    [InlineData(58.7, 2)]
    [InlineData(67.5, 2)]
    [InlineData(67.6, 3)]
    [InlineData(100.8, 3)]
    [InlineData(101.0, 4)]
    public void TubeWeb(double ratio, int expected) => Assert.Equal(expected, ClassOf(Slender.Tube(10, ratio)));

    /// <summary>Of a tube that lies flat, flange and web change places.</summary>
    [Fact]
    public void FlatTube()
    {
        Assert.Equal(1, ClassOf(Slender.Tube(10, 32)));
        Assert.Equal(3, ClassOf(Slender.Tube(10, 32) with { IsFlat = true }));
    }

    /// <summary>50·ε² = 33.10, 70·ε² = 46.34, 90·ε² = 59.58.</summary>
    [Theory]
    [InlineData(33.0, 1)]
    [InlineData(33.2, 2)]
    [InlineData(46.3, 2)]
    [InlineData(46.4, 3)]
    [InlineData(59.5, 3)]
    [InlineData(59.7, 4)]
    public void RoundTube(double ratio, int expected) => Assert.Equal(
        expected, ClassOf(Steel.Of(new SectionShape.RoundTube(ratio * Slender.Wall, Slender.Wall), 10, 10, 13)));

    /// <summary>Outstand of a channel: 9·ε = 7.32, 10·ε = 8.14, 14·ε = 11.39.</summary>
    [Theory]
    [InlineData(7.3, 1)]
    [InlineData(7.4, 2)]
    [InlineData(8.1, 2)]
    [InlineData(8.2, 3)]
    [InlineData(11.3, 3)]
    [InlineData(11.5, 4)]
    public void ChannelFlange(double ratio, int expected) =>
        Assert.Equal(expected, ClassOf(Slender.Channel(ratio, 20)));

    /// <summary>The web of a channel: in bending upright, in compression flat.</summary>
    [Theory]
    [InlineData(58.5, false, 1)]
    [InlineData(58.7, false, 2)]
    [InlineData(26.8, true, 1)]
    [InlineData(31.0, true, 3)]
    [InlineData(34.2, true, 4)]
    public void ChannelWeb(double ratio, bool isFlat, int expected) =>
        Assert.Equal(expected, ClassOf(Slender.Channel(5, ratio) with { IsFlat = isFlat }));

    /// <summary>EN 1993-1-1 6.2.6(3): 2·b·tf of what lies flat; A − 2·b·tf + tw·tf of an upright channel [mm²].</summary>
    [Fact]
    public void ShearAreas()
    {
        ShearArea(2 * 100 * 10, Steel.Plates(0.1, 0.01, 0.006, 0.2, false, true));
        ShearArea(2 * 11, Slender.Channel(10, 20) with { IsFlat = true });
        ShearArea(2 * 11 + 20 - 2 * 11 + 1, Slender.Channel(10, 20));
    }

    /// <summary>72·ε = 58.58: beyond it the web of a channel buckles in shear.</summary>
    [Theory]
    [InlineData(58.5, null)]
    [InlineData(58.7, NotJudgedReason.TooSlender)]
    public void WebOfAChannelInShear(double ratio, NotJudgedReason? reason) =>
        Assert.Equal(reason, Shear(Slender.Channel(5, ratio)).Reason);

    /// <summary>EN 1993-1-1 3.2.6: G = E / (2·(1 + ν)) with ν = 0.3, where none is given.</summary>
    [Fact]
    public void ShearModulus_IsThatOfSteel()
    {
        double limit(double? modulus) => Steel.Limit(
            StrengthRules.En1993,
            Steel.Unbraced(Steel.Tube(0.1, 0.2, 0.008), Steel.European(355) with { ShearModulus = modulus }, 10),
            CheckKind.LateralStability);

        Assert.Equal(limit(210e9 / 2.6), limit(null), 1e-6);
        Assert.NotEqual(limit(81e9), limit(null), 1e-3);
    }

    private static int ClassOf(Section section)
    {
        Member member = Steel.Braced(section, Steel.European(355));
        Resistance found = Steel.Find(StrengthRules.En1993, member, CheckKind.Bending)!;
        int number = (int)Steel.Term(found, CheckSymbol.SectionClass);
        Assert.Equal(number == 4 ? NotJudgedReason.TooSlender : null, found.Reason);
        return number;
    }

    private static void ShearArea(double area, Section section)
    {
        Resistance found = Shear(section);

        Assert.Equal(area, Steel.Term(found, CheckSymbol.ShearArea) * 1e6, 1e-6);
        Assert.Equal(area * 355 / Math.Sqrt(3), found.Limit!.Value, 1e-6);
    }

    private static Resistance Shear(Section section) =>
        Steel.Find(StrengthRules.En1993, Steel.Braced(section, Steel.European(355)), CheckKind.Shear)!;
}
