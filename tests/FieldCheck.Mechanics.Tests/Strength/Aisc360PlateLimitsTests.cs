using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>
/// Just within and just beyond each limit of AISC 360-16 Tables B4.1b, F7, F8 and G6 for 50 ksi, √(E/Fy) = 24.08. The tables are from
/// memory, the limits worked by hand.
/// </summary>
public sealed class Aisc360PlateLimitsTests
{
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
    public void Tube(double flange, double web, CheckClause clause, NotJudgedReason? reason)
    {
        Resistance found = Bending(Slender.Tube(flange, web));

        Assert.Equal((clause, reason), (found.Clause, found.Reason));
        Limits(found, CheckSymbol.FlangeCompactLimit, 26.973, CheckSymbol.FlangeNoncompactLimit, 33.716);
        Limits(found, CheckSymbol.WebCompactLimit, 58.281, CheckSymbol.WebNoncompactLimit, 137.274);
    }

    /// <summary>F8: walls from 0.07·580 = 40.6 by 0.31·580 = 179.8 to 0.45·580 = 261; Z = 1.3·S.</summary>
    [Theory]
    [InlineData(40.5, CheckClause.Aisc360F8Yielding, 65)]
    [InlineData(40.7, CheckClause.Aisc360F8Local, 64.963)]
    [InlineData(100, CheckClause.Aisc360F8Local, 56.09)]
    [InlineData(179, CheckClause.Aisc360F8Local, 53.402)]
    [InlineData(181, CheckClause.Aisc360F8Local, 52.873)]
    [InlineData(260, CheckClause.Aisc360F8Local, 36.808)]
    public void RoundTube(double wall, CheckClause clause, double stress)
    {
        Resistance found = Bending(Steel.Of(new SectionShape.RoundTube(wall * Slender.Wall, Slender.Wall), 10, 1, 1.3));

        Assert.Equal(clause, found.Clause);
        Assert.Equal(stress, found.Limit!.Value / (0.9 * Steel.KipInch), 0.001);
        Limits(found, CheckSymbol.CompactLimit, 40.6, CheckSymbol.NoncompactLimit, 179.8);
    }

    [Fact]
    public void RoundTubeOfThinnestWall_IsNotJudged() => Assert.Equal(
        NotJudgedReason.TooSlender,
        Bending(Steel.Of(new SectionShape.RoundTube(262 * Slender.Wall, Slender.Wall), 10, 1, 1.3)).Reason);

    /// <summary>G6 with kv = 1.2: Cv2 is 1 to 29.02, 29.02/λ to 36.14, then 1.51·1.2·580/λ² = 1050.96/λ².</summary>
    [Theory]
    [InlineData(29, 1)]
    [InlineData(32, 0.9069)]
    [InlineData(36, 0.8061)]
    [InlineData(37, 0.7677)]
    [InlineData(40, 0.6569)]
    public void FlangesInShear(double ratio, double coefficient)
    {
        Section wide = Steel.Plates(2 * ratio * Slender.Wall, Slender.Wall, Slender.Wall, 20 * Slender.Wall, false, true);
        Section channel = Slender.Channel(ratio - 1, 20) with { IsFlat = true };

        Assert.All([wide, channel], section => Assert.Equal(
            coefficient,
            Steel.Term(Steel.Find(StrengthRules.Aisc360Lrfd, American(section), CheckKind.Shear)!, CheckSymbol.ShearCoefficient),
            0.0001));
    }

    /// <summary>Table B4.1b of an outstand: 0.38·24.08 = 9.152 and 1.0·24.08 = 24.083.</summary>
    [Fact]
    public void FlangeOfAChannel()
    {
        Resistance found = Bending(Slender.Channel(5, 20));

        Assert.Equal(6, Steel.Term(found, CheckSymbol.FlangeSlenderness), 1e-9);
        Assert.Equal(9.152, Steel.Term(found, CheckSymbol.FlangeCompactLimit), 0.001);
        Assert.Equal(24.083, Steel.Term(found, CheckSymbol.FlangeNoncompactLimit), 0.001);
    }

    /// <summary>F6 gives the flanges of what lies flat the same limits; F2 takes no channel whose flanges are not compact.</summary>
    [Theory]
    [InlineData(9.1, false, CheckClause.Aisc360F2Yielding, null)]
    [InlineData(9.2, false, CheckClause.Aisc360Flexure, NotJudgedReason.TooSlender)]
    [InlineData(9.1, true, CheckClause.Aisc360F6Yielding, null)]
    [InlineData(9.2, true, CheckClause.Aisc360F6Flange, null)]
    public void FlangesThatAreCompactOrNot(double ratio, bool isFlat, CheckClause clause, NotJudgedReason? reason)
    {
        Resistance found = Bending(Slender.Channel(ratio - 1, 20) with { IsFlat = isFlat });

        Assert.Equal((clause, reason), (found.Clause, found.Reason));
    }

    private static void Limits(
        Resistance found, CheckSymbol first, double compact, CheckSymbol second, double noncompact)
    {
        Assert.Equal(compact, Steel.Term(found, first), 0.001);
        Assert.Equal(noncompact, Steel.Term(found, second), 0.001);
    }

    private static Resistance Bending(Section section) =>
        Steel.Find(StrengthRules.Aisc360Lrfd, American(section), CheckKind.Bending)!;

    private static Member American(Section section) => Steel.Braced(section, Steel.American(50));
}
