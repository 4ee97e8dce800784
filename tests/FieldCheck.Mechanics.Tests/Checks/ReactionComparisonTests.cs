using System.Globalization;
using CsCheck;
using FieldCheck.Mechanics.Checks;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>The verdict on a stated figure, by the formula of docs/conventions.md, worked by hand.</summary>
public sealed class ReactionComparisonTests
{
    private static readonly Gen<double> Reaction =
        Gen.Select(Gen.Double[-6, 6], Gen.Bool, (power, isDown) => (isDown ? -1 : 1) * Math.Pow(10, power));

    private static readonly Gen<ReactionAllowance> Allowance = Gen.Select(
        Gen.Double[0, 50], Gen.Double[0, 0.2], Gen.Double[0, 100], Gen.Double[0, 1e5],
        (half, share, size, whole) => new ReactionAllowance(half, share, size, whole));

    /// <summary>Half a digit of 50 N and 2 % of 9900 N are 248 N; 0.1 % of 26.4 kN is less.</summary>
    [Theory]
    [InlineData(10148, ReactionVerdict.Agrees)]
    [InlineData(10149, ReactionVerdict.High)]
    [InlineData(9652, ReactionVerdict.Agrees)]
    [InlineData(9651, ReactionVerdict.Low)]
    public void Push_IsHeldToHalfADigitAndItsShare(double stated, ReactionVerdict verdict)
    {
        ReactionComparison compared = ReactionComparison.Of(stated, 9900, new(50, 0.02, 0, 26400));

        Assert.Equal(248, compared.Allowed, 1e-9);
        Assert.Equal(verdict, compared.Verdict);
    }

    /// <summary>The same beam turned over: what holds down is judged by how much it holds down.</summary>
    [Theory]
    [InlineData(-2000, ReactionVerdict.Low)]
    [InlineData(-4901, ReactionVerdict.Low)]
    [InlineData(-4902, ReactionVerdict.Agrees)]
    [InlineData(-5098, ReactionVerdict.Agrees)]
    [InlineData(-5099, ReactionVerdict.High)]
    [InlineData(0, ReactionVerdict.Low)]
    public void HoldDown_IsJudgedInItsOwnSense(double stated, ReactionVerdict verdict) =>
        Assert.Equal(verdict, ReactionComparison.Of(stated, -5000, new(0, 0.0196, 0, 0)).Verdict);

    [Theory]
    [InlineData(2000, -5000, true)]
    [InlineData(5000, -5000, true)]
    [InlineData(-5000, 5000, true)]
    [InlineData(90, -5000, false)] // as good as nothing, not the other way
    [InlineData(-2000, -5000, false)]
    public void OppositeSense_IsLowAndTheWrongWay(double stated, double computed, bool isWrongWay)
    {
        ReactionComparison compared = ReactionComparison.Of(stated, computed, new(0, 0.02, 0, 0));

        Assert.Equal(ReactionVerdict.Low, compared.Verdict);
        Assert.Equal(isWrongWay, compared.IsWrongWay);
    }

    /// <summary>What is just as much as may be off is as good as nothing: neither is the other way.</summary>
    [Theory]
    [InlineData(-100, 5000)]
    [InlineData(-5000, 100)]
    public void JustAsMuchAsIsAllowed_IsAsGoodAsNothing(double stated, double computed) =>
        Assert.False(ReactionComparison.Of(stated, computed, new(100, 0, 0, 0)).IsWrongWay);

    /// <summary>A computed 15 N that may be 15 N off is nothing: 20 N the other way are less than 15 and 15.</summary>
    [Fact]
    public void ComputedFigureJustAsMuchAsIsAllowed_HasNoSense() => Assert.Equal(
        ReactionVerdict.Agrees, ReactionComparison.Of(-20, 15, new(15, 0, 0, 0)).Verdict);

    /// <summary>0.1 % of 20 kN is 20 N: a computed 15 N is nothing, and the stated figure says which way it acts.</summary>
    [Theory]
    [InlineData(15, 35, ReactionVerdict.Agrees)]
    [InlineData(15, 36, ReactionVerdict.High)]
    [InlineData(15, -5, ReactionVerdict.Agrees)]
    [InlineData(15, -35, ReactionVerdict.Agrees)]
    [InlineData(15, -36, ReactionVerdict.High)]
    [InlineData(-15, 36, ReactionVerdict.High)]
    [InlineData(0, 20, ReactionVerdict.Agrees)]
    [InlineData(0, -21, ReactionVerdict.High)]
    [InlineData(0, 0, ReactionVerdict.Agrees)]
    [InlineData(20, 0, ReactionVerdict.Agrees)]
    [InlineData(21, 0, ReactionVerdict.Low)]
    public void ComputedAboutNothing_TakesTheSenseOfTheStated(double computed, double stated, ReactionVerdict verdict)
    {
        ReactionComparison compared = ReactionComparison.Of(stated, computed, new(0, 0.02, 0, 20000));

        Assert.Equal(20, compared.Allowed, 1e-12);
        Assert.Equal(verdict, compared.Verdict);
        Assert.False(compared.IsWrongWay);
    }

    [Theory]
    [InlineData(0, 0.02, 0, 0, 200)] // 2 % of 10 kN
    [InlineData(50, 0.02, 0, 0, 250)] // and half a digit
    [InlineData(0, 0.02, 0, 500000, 500)] // 0.1 % of 500 kN is more
    [InlineData(0, 0.02, 0, 100000, 200)] // of 100 kN less
    [InlineData(5, 0, 300, 0, 305)] // a force in place of a share
    [InlineData(5, 0, 300, 400000, 405)]
    [InlineData(0, 0, 0, 0, 0)]
    public void AllowedDifference_IsHalfADigitAndTheLargestOfTheRest(
        double half, double share, double size, double whole, double allowed)
    {
        Assert.Equal(allowed, new ReactionAllowance(half, share, size, whole).For(10000), 1e-9);
        Assert.Equal(allowed, new ReactionAllowance(half, share, size, whole).For(-10000), 1e-9);
    }

    [Fact]
    public void Difference_IsStatedLessComputed()
    {
        ReactionComparison compared = ReactionComparison.Of(14600, 16500, new(50, 0.02, 0, 26400));

        Assert.Equal(-1900, compared.Difference, 1e-9);
        Assert.Equal(-1900.0 / 16500, compared.Ratio!.Value, 1e-12);
        Assert.Null(ReactionComparison.Of(1, 0, default).Ratio);
        Assert.Equal(1.5, ReactionComparison.Of(-5000, -2000, default).Ratio!.Value, 1e-12);
    }

    /// <summary>Only what would be wrong is looked for in the band; half a digit beyond its edge is inside.</summary>
    [Theory]
    [InlineData(9000, ReactionVerdict.WithinBand)]
    [InlineData(8950, ReactionVerdict.WithinBand)]
    [InlineData(8949, ReactionVerdict.Low)]
    [InlineData(9700, ReactionVerdict.Agrees)]
    [InlineData(11050, ReactionVerdict.WithinBand)]
    [InlineData(11051, ReactionVerdict.High)]
    public void Band_SavesAFigureInsideIt(double stated, ReactionVerdict verdict)
    {
        Band band = new(9000, 11000, BandCertainty.Exact);

        ReactionComparison compared = ReactionComparison.Of(stated, 9900, new(50, 0.02, 0, 0), band);

        Assert.Equal(verdict, compared.Verdict);
        Assert.Equal(band, compared.Band);
    }

    [Theory]
    [InlineData(-1, 0, 0, 0)]
    [InlineData(0, -1, 0, 0)]
    [InlineData(0, 0, double.NaN, 0)]
    [InlineData(0, 0, 0, double.PositiveInfinity)]
    public void Allowance_IsNeverNegativeNorEndless(double half, double share, double size, double whole) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new ReactionAllowance(half, share, size, whole));

    [Fact]
    public void Reactions_AreFinite()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ReactionComparison.Of(double.NaN, 1, default));
        Assert.Throws<ArgumentOutOfRangeException>(() => ReactionComparison.Of(1, double.NaN, default));
    }

    [Fact]
    public void ComputedFigureRoundedToAnyDigits_Agrees() => Gen.Select(Reaction, Gen.Int[1, 12], Allowance).Sample(
        (computed, digits, allowance) =>
        {
            string written = computed.ToString($"E{digits - 1}", CultureInfo.InvariantCulture);
            double stated = double.Parse(written, CultureInfo.InvariantCulture);
            int power = int.Parse(written[(written.IndexOf('E') + 1)..], CultureInfo.InvariantCulture);
            double half = Math.Pow(10, power - digits + 1) / 2 * (1 + 1e-9);

            return ReactionComparison.Of(stated, computed, new(half, 0, 0, 0)).Verdict == ReactionVerdict.Agrees
                && ReactionComparison.Of(
                    stated, computed, new(half, allowance.Share, allowance.Size, allowance.Whole)).Verdict
                    == ReactionVerdict.Agrees;
        });

    /// <summary>Whole powers of two, so that nothing is rounded.</summary>
    [Fact]
    public void OtherUnits_ChangeNoVerdict() => Gen.Select(Reaction, Reaction, Allowance, Gen.Int[-20, 20]).Sample(
        (stated, computed, allowance, power) =>
        {
            double scale = Math.Pow(2, power);
            ReactionAllowance scaled = new(
                allowance.AsWritten * scale, allowance.Share, allowance.Size * scale, allowance.Whole * scale);
            ReactionComparison one = ReactionComparison.Of(stated, computed, allowance);
            ReactionComparison other = ReactionComparison.Of(stated * scale, computed * scale, scaled);

            return one.Verdict == other.Verdict && one.IsWrongWay == other.IsWrongWay
                && one.Allowed * scale == other.Allowed;
        });

    /// <summary>Turned over, or seen from the other side of the wall, the same figures get the same verdict.</summary>
    [Fact]
    public void Mirrored_GetsTheSameVerdict() => Gen.Select(Reaction, Reaction, Allowance).Sample(
        (stated, computed, allowance) =>
            ReactionComparison.Of(stated, computed, allowance).Verdict
            == ReactionComparison.Of(-stated, -computed, allowance).Verdict);

    /// <summary>A support that was built for what is stated is never overloaded beyond t unless the word is LOW.</summary>
    [Fact]
    public void MoreThanStatedBeyondTheAllowed_IsLow_AndNothingElseIs() =>
        Gen.Select(Reaction, Reaction, Allowance).Sample((stated, computed, allowance) =>
        {
            ReactionComparison compared = ReactionComparison.Of(stated, computed, allowance);
            double allowed = compared.Allowed;
            bool isOverloaded = Math.Abs(computed) > allowed
                && Math.Sign(computed) * (computed - stated) > allowed * (1 + 1e-12);
            bool isNearlyEqual = Math.Abs(Math.Abs(computed - stated) - allowed) <= 1e-9 * Math.Abs(computed - stated);

            return isNearlyEqual || (compared.Verdict == ReactionVerdict.Low) == isOverloaded;
        });
}
