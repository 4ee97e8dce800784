using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>
/// Just within and just beyond each limit of the slenderness of plates: EN 1993-1-1 Table 5.2 for S355, ε = 0.8136, and
/// AISC 360-16 Tables B4.1b, F7, F8 and G6 for 50 ksi, √(E/Fy) = 24.08. The tables are from memory, the limits worked by hand.
/// </summary>
public sealed class SteelPlateLimitsTests
{
    private const double Wall = 0.001;

    /// <summary>33·ε = 26.85, 38·ε = 30.92, 42·ε = 34.17 in compression.</summary>
    [Theory]
    [InlineData(26.8, 1)]
    [InlineData(26.9, 2)]
    [InlineData(30.9, 2)]
    [InlineData(31.0, 3)]
    [InlineData(34.1, 3)]
    [InlineData(34.2, 4)]
    public void En1993_TubeFlange(double ratio, int expected) =>
        Assert.Equal(expected, ClassOf(Tube(ratio, ratio)));

    /// <summary>72·ε = 58.58, 83·ε = 67.53, 124·ε = 100.89 in bending.</summary>
    [Theory]
    [InlineData(58.5, 1)]
    [InlineData(58.7, 2)]
    [InlineData(67.5, 2)]
    [InlineData(67.6, 3)]
    [InlineData(100.8, 3)]
    [InlineData(101.0, 4)]
    public void En1993_TubeWeb(double ratio, int expected) => Assert.Equal(expected, ClassOf(Tube(10, ratio)));

    /// <summary>Of a tube that lies flat, flange and web change places.</summary>
    [Fact]
    public void En1993_FlatTube()
    {
        Assert.Equal(1, ClassOf(Tube(10, 32)));
        Assert.Equal(3, ClassOf(Tube(10, 32) with { IsFlat = true }));
    }

    /// <summary>50·ε² = 33.10, 70·ε² = 46.34, 90·ε² = 59.58.</summary>
    [Theory]
    [InlineData(33.0, 1)]
    [InlineData(33.2, 2)]
    [InlineData(46.3, 2)]
    [InlineData(46.4, 3)]
    [InlineData(59.5, 3)]
    [InlineData(59.7, 4)]
    public void En1993_RoundTube(double ratio, int expected) => Assert.Equal(
        expected, ClassOf(Steel.Of(new SectionShape.RoundTube(ratio * Wall, Wall), 10, 10, 13)));

    /// <summary>Outstand of a channel: 9·ε = 7.32, 10·ε = 8.14, 14·ε = 11.39.</summary>
    [Theory]
    [InlineData(7.3, 1)]
    [InlineData(7.4, 2)]
    [InlineData(8.1, 2)]
    [InlineData(8.2, 3)]
    [InlineData(11.3, 3)]
    [InlineData(11.5, 4)]
    public void En1993_ChannelFlange(double ratio, int expected) =>
        Assert.Equal(expected, ClassOf(Channel(ratio, 20)));

    /// <summary>The web of a channel: in bending upright, in compression flat.</summary>
    [Theory]
    [InlineData(58.5, false, 1)]
    [InlineData(58.7, false, 2)]
    [InlineData(26.8, true, 1)]
    [InlineData(31.0, true, 3)]
    [InlineData(34.2, true, 4)]
    public void En1993_ChannelWeb(double ratio, bool isFlat, int expected) =>
        Assert.Equal(expected, ClassOf(Channel(5, ratio) with { IsFlat = isFlat }));

    /// <summary>F7: flanges from 1.12·24.08 = 26.97 to 1.40·24.08 = 33.72, webs from 2.42·24.08 = 58.28 to 5.70·24.08 = 137.3.</summary>
    [Theory]
    [InlineData(26.9, 26.9, CheckClause.Aisc360F7Yielding, null)]
    [InlineData(27.2, 27.2, CheckClause.Aisc360F7Flange, null)]
    [InlineData(33.6, 33.6, CheckClause.Aisc360F7Flange, null)]
    [InlineData(33.8, 33.8, CheckClause.Aisc360Flexure, NotJudgedReason.TooSlender)]
    [InlineData(20, 58.2, CheckClause.Aisc360F7Yielding, null)]
    [InlineData(20, 59.0, CheckClause.Aisc360F7Web, null)]
    [InlineData(20, 137.2, CheckClause.Aisc360F7Web, null)]
    [InlineData(20, 137.4, CheckClause.Aisc360Flexure, NotJudgedReason.TooSlender)]
    public void Aisc360_Tube(double flange, double web, CheckClause clause, NotJudgedReason? reason)
    {
        Resistance found = Bending(Tube(flange, web));

        Assert.Equal((clause, reason), (found.Clause, found.Reason));
        Limits(found, 0, 26.973, 33.716);
        Limits(found, 1, 58.281, 137.274);
    }

    /// <summary>F8: walls from 0.07·580 = 40.6 by 0.31·580 = 179.8 to 0.45·580 = 261; Z = 1.3·S.</summary>
    [Theory]
    [InlineData(40.5, CheckClause.Aisc360F8Yielding, 65)]
    [InlineData(40.7, CheckClause.Aisc360F8Local, 64.963)]
    [InlineData(100, CheckClause.Aisc360F8Local, 56.09)]
    [InlineData(179, CheckClause.Aisc360F8Local, 53.402)]
    [InlineData(181, CheckClause.Aisc360F8Local, 52.873)]
    [InlineData(260, CheckClause.Aisc360F8Local, 36.808)]
    public void Aisc360_RoundTube(double wall, CheckClause clause, double stress)
    {
        Resistance found = Bending(Steel.Of(new SectionShape.RoundTube(wall * Wall, Wall), 10, 1, 1.3));

        Assert.Equal(clause, found.Clause);
        Assert.Equal(stress, found.Limit!.Value / (0.9 * Steel.KipInch), 0.001);
        Limits(found, 0, 40.6, 179.8);
    }

    [Fact]
    public void Aisc360_RoundTubeOfThinnestWall_IsNotJudged() => Assert.Equal(
        NotJudgedReason.TooSlender,
        Bending(Steel.Of(new SectionShape.RoundTube(262 * Wall, Wall), 10, 1, 1.3)).Reason);

    /// <summary>G6 with kv = 1.2: Cv2 is 1 to 29.02, 29.02/λ to 36.14, then 1.51·1.2·580/λ² = 1050.96/λ².</summary>
    [Theory]
    [InlineData(29, 1)]
    [InlineData(32, 0.9069)]
    [InlineData(36, 0.8061)]
    [InlineData(37, 0.7677)]
    [InlineData(40, 0.6569)]
    public void Aisc360_FlangesInShear(double ratio, double coefficient)
    {
        Section wide = Steel.Plates(2 * ratio * Wall, Wall, Wall, 20 * Wall, false, true);
        Section channel = Channel(ratio - 1, 20) with { IsFlat = true };

        Assert.All([wide, channel], section => Assert.Equal(
            coefficient,
            Steel.Term(Steel.Find(StrengthRules.Aisc360Lrfd, American(section), CheckKind.Shear)!, CheckSymbol.ShearCoefficient),
            0.0001));
    }

    /// <summary>Table B4.1b of an outstand: 0.38·24.08 = 9.152 and 1.0·24.08 = 24.083.</summary>
    [Fact]
    public void Aisc360_FlangeOfAChannel()
    {
        Resistance found = Bending(Channel(5, 20));

        Assert.Equal(6, Steel.Term(found, CheckSymbol.FlangeSlenderness), 1e-9);
        Assert.Equal(9.152, found.Terms.Last(term => term.Symbol == CheckSymbol.CompactLimit).Value, 0.001);
        Assert.Equal(24.083, Steel.Term(found, CheckSymbol.NoncompactLimit), 0.001);
    }

    private static void Limits(Resistance found, int plate, double compact, double noncompact)
    {
        double[] of(CheckSymbol symbol) => [.. found.Terms.Where(term => term.Symbol == symbol).Select(term => term.Value)];
        Assert.Equal(compact, of(CheckSymbol.CompactLimit)[plate], 0.001);
        Assert.Equal(noncompact, of(CheckSymbol.NoncompactLimit)[plate], 0.001);
    }

    private static int ClassOf(Section section)
    {
        Member member = Steel.Braced(section, Steel.European(355));
        Resistance found = Steel.Find(StrengthRules.En1993, member, CheckKind.Bending)!;
        int number = (int)Steel.Term(found, CheckSymbol.SectionClass);
        Assert.Equal(number == 4 ? NotJudgedReason.TooSlender : null, found.Reason);
        return number;
    }

    private static Resistance Bending(Section section) =>
        Steel.Find(StrengthRules.Aisc360Lrfd, American(section), CheckKind.Bending)!;

    private static Member American(Section section) => Steel.Braced(section, Steel.American(50));

    /// <summary>A tube of a clear width and a clear depth over its wall.</summary>
    private static Section Tube(double flange, double web) => Steel.Tube((flange + 2) * Wall, (web + 2) * Wall, Wall);

    /// <summary>A channel of an outstand and a clear web over their thickness.</summary>
    private static Section Channel(double outstand, double web) =>
        Section.Of(new SectionShape.Channel((outstand + 1) * Wall, Wall, Wall, (web + 2) * Wall), false);
}
