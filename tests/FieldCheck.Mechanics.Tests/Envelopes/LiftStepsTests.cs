using CsCheck;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>
/// Which supports let go, from made-up stiffnesses K = A·Aᵀ: R = R₀ + K·d, where a support that touches has no lift and acts in
/// its sense, and one that let go has no reaction and stands off. K is sound, so one answer only fits (checked by that alone).
/// </summary>
public sealed class LiftStepsTests
{
    private static readonly Gen<double[]> Loads = Gen.Int[-9, 9].Select(n => (double)n).Array[4];

    private static readonly double[,] Pair = { { 4, 1 }, { 1, 2 } };

    /// <summary>R₀ = 3 and -2 N: the second goes up by 2/2 m, which gives the first 3 + 1·1 N.</summary>
    [Fact]
    public void PulledSupport_LetsGo()
    {
        LiftSteps steps = new([SupportAction.PushesOnly, SupportAction.PushesOnly], Pair);

        Assert.True(steps.Find([3, -2]));
        Assert.Equal((false, true), (steps.IsOff(0), steps.IsOff(1)));
        Assert.Equal([0, 1], steps.Lifts, (one, other) => Math.Abs(one - other) < 1e-15);
        Assert.True(steps.Find([3, 2]));
        Assert.Equal((false, false), (steps.IsOff(0), steps.IsOff(1)));
        Assert.Equal([0, 0], steps.Lifts);
    }

    /// <summary>R₀ = -1 and 3 N on supports that hold down: the second comes down by 3/2 m, so that the first gives -1 - 3/2 N.</summary>
    [Fact]
    public void PushedSupport_ThatHoldsDownLetsGo()
    {
        LiftSteps steps = new([SupportAction.HoldsDownOnly, SupportAction.HoldsDownOnly], Pair);

        Assert.True(steps.Find([-1, 3]));
        Assert.Equal((false, true), (steps.IsOff(0), steps.IsOff(1)));
        Assert.Equal([0, -1.5], steps.Lifts, (one, other) => Math.Abs(one - other) < 1e-15);
    }

    /// <summary>Both are pulled: 4d₁ + d₂ = 5 and d₁ + 2d₂ = 3 give one each.</summary>
    [Fact]
    public void BothLetGo()
    {
        LiftSteps steps = new([SupportAction.PushesOnly, SupportAction.PushesOnly], Pair);

        Assert.True(steps.Find([-5, -3]));
        Assert.Equal([1, 1], steps.Lifts, (one, other) => Math.Abs(one - other) < 1e-15);
    }

    /// <summary>What is nothing beside the greatest lets no support go, whatever the size of forces.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(1e8)]
    [InlineData(1e-8)]
    public void NothingIsBesideTheGreatest(double size)
    {
        LiftSteps steps = new([SupportAction.PushesOnly, SupportAction.PushesOnly], Pair);

        foreach (double held in new[] { 0, 1e-15, -1e-15, -0.9e-13 })
        {
            Assert.True(steps.Find([size, held * size]));
            Assert.Equal((false, false), (steps.IsOff(0), steps.IsOff(1)));
        }

        Assert.True(steps.Find([size, -1.1e-13 * size]));
        Assert.Equal((false, true), (steps.IsOff(0), steps.IsOff(1)));
        Assert.True(steps.Find([size, -size]));
        Assert.Equal((false, true), (steps.IsOff(0), steps.IsOff(1)));
    }

    /// <summary>Where nothing acts, none lets go.</summary>
    [Fact]
    public void NoLoad_LiftsNothing()
    {
        LiftSteps steps = new([SupportAction.PushesOnly, SupportAction.HoldsDownOnly], Pair);

        Assert.True(steps.Find([0, 0]));
        Assert.Equal((false, false), (steps.IsOff(0), steps.IsOff(1)));
    }

    /// <summary>A rest that is run into counts by the force that this takes, beside the greatest, however stiff the beam is.</summary>
    [Theory]
    [InlineData(1e-3)]
    [InlineData(1e3)]
    public void SupportThatIsOff_TouchesOnceItIsRunInto(double stiffness)
    {
        LiftSteps steps = new(
            [SupportAction.PushesOnly, SupportAction.PushesOnly], new double[,] { { stiffness, 0 }, { 0, stiffness } });

        Assert.True(steps.Find([1, -1]));
        Assert.True(steps.Find([1, 0.9e-13]));
        Assert.True(steps.IsOff(1));
        Assert.True(steps.Find([1, 1.1e-13]));
        Assert.False(steps.IsOff(1));
    }

    /// <summary>
    /// Two rests that the beam tips about when both let go: K of 1, 1, 1 and 1 + ε has the pivot ε. Below 1e-9 of the
    /// stiffness it cannot be told, and the next load begins with all that touch.
    /// </summary>
    [Theory]
    [InlineData(1e-8, 1, true)]
    [InlineData(1e-10, 1, false)]
    [InlineData(0, 1, false)]
    [InlineData(1e-8, 1e6, true)]
    [InlineData(1e-10, 1e6, false)]
    [InlineData(1e-8, 1e-6, true)]
    [InlineData(1e-10, 1e-6, false)]
    public void BeamThatMayTip_IsNotTold(double pivot, double stiffness, bool isTold)
    {
        double[,] tipping = { { stiffness, stiffness }, { stiffness, stiffness * (1 + pivot) } };
        LiftSteps steps = new([SupportAction.PushesOnly, SupportAction.PushesOnly], tipping);

        Assert.Equal(isTold, steps.Find([-1, -1 - (pivot / 2)]));
        Assert.Equal((isTold, isTold), (steps.IsOff(0), steps.IsOff(1)));
        Assert.True(steps.Find([1, 1]));
        Assert.Equal((false, false), (steps.IsOff(0), steps.IsOff(1)));
    }

    /// <summary>Supports switched all at once go round and round here (found by trial): one at a time then leads to the answer.</summary>
    [Theory]
    [InlineData(2, 5, -2, 17, -3, 3, -3, -2, 5)]
    [InlineData(11, 10, -8, 10, -9, 10, 1, 3, -4)]
    [InlineData(19, 21, -13, 27, -9, 17, -3, -1, 4)]
    public void SupportsThatLetGoInTurns_AreSettled(
        double k00, double k01, double k02, double k11, double k12, double k22, double r0, double r1, double r2)
    {
        double[,] stiffness = { { k00, k01, k02 }, { k01, k11, k12 }, { k02, k12, k22 } };
        LiftSteps steps = new(
            [SupportAction.PushesOnly, SupportAction.PushesOnly, SupportAction.PushesOnly], stiffness);

        Settled(steps, stiffness, [1, 1, 1], [r0, r1, r2]);
    }

    /// <summary>One load after another, each begun where the last one ended.</summary>
    [Fact]
    public void EveryAnswer_Fits() => Gen.Select(Gen.Int[-3, 3].Array[16], Gen.Bool.Array[4], Loads.Array[12]).Sample(
        (numbers, pushes, loads) =>
        {
            double[,] stiffness = new double[4, 4];
            for (int i = 0; i < 4; i++)
            {
                for (int j = 0; j < 4; j++)
                {
                    stiffness[i, j] = i == j ? 1 : 0;
                    for (int k = 0; k < 4; k++)
                    {
                        stiffness[i, j] += numbers[4 * i + k] * numbers[4 * j + k];
                    }
                }
            }

            LiftSteps steps = new(
                [.. pushes.Select(one => one ? SupportAction.PushesOnly : SupportAction.HoldsDownOnly)], stiffness);
            foreach (double[] held in loads)
            {
                Settled(steps, stiffness, [.. pushes.Select(one => one ? 1 : -1)], held);
            }
        });

    private static void Settled(LiftSteps steps, double[,] stiffness, int[] senses, double[] held)
    {
        Assert.True(steps.Find(held));
        double size = 0;
        for (int i = 0; i < held.Length; i++)
        {
            for (int j = 0; j < held.Length; j++)
            {
                size = Math.Max(size, Math.Abs(stiffness[i, j] * steps.Lifts[j]));
            }
        }

        double rounding = 1e-11 * Math.Max(1, size);
        for (int i = 0; i < held.Length; i++)
        {
            double reaction = held[i];
            for (int j = 0; j < held.Length; j++)
            {
                reaction += stiffness[i, j] * steps.Lifts[j];
            }

            Assert.True(senses[i] * steps.Lifts[i] >= -rounding);
            Assert.True(senses[i] * reaction >= -rounding);
            Assert.True(steps.IsOff(i) ? Math.Abs(reaction) <= rounding : steps.Lifts[i] == 0);
        }
    }
}
