using CsCheck;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>A piece cut where parts of the loads begin or cease to add.</summary>
public sealed class PieceCutsTests
{
    /// <summary>1 always, x - 1/4 and 1/2 - x where they add: cut at 1/4 and 1/2.</summary>
    [Fact]
    public void StretchesEnd_WherePartsChangeTheirSign()
    {
        PieceCuts cuts = Cut([1, 0], ([-0.5, 2], 0.5), ([-1, 2], -0.5));

        Assert.Equal((3, 2), (cuts.Count, cuts.Coefficients));
        Assert.Equal([0, 0.25, 0.5], Enumerable.Range(0, 3).Select(cuts.StartOf));
        Assert.Equal([0.25, 0.5, 1], Enumerable.Range(0, 3).Select(cuts.EndOf));
        Assert.Equal([1.5, -1], cuts.On(0).ToArray());
        Assert.Equal([1.25, 0], cuts.On(1).ToArray());
        Assert.Equal([0.75, 1], cuts.On(2).ToArray());
    }

    /// <summary>Parts in proportion change together: one cut, and both count or not.</summary>
    [Fact]
    public void PartsInProportion_AreCutOnce()
    {
        PieceCuts cuts = Cut([0, 0], ([-1, 3], 1), ([-0.1, 0.3], 1), ([0.7, -2.1], 1));

        Assert.Equal(2, cuts.Count);
        Assert.Equal(1 / 3.0, cuts.EndOf(0), 1e-15);
        Assert.Equal([0.7, -2.1], cuts.On(0).ToArray());
        Assert.Equal([-1.1, 3.3], cuts.On(1).ToArray(), (one, other) => Math.Abs(one - other) < 1e-15);
    }

    /// <summary>Nothing that adds, nothing that changes, and memory kept from the piece before.</summary>
    [Fact]
    public void NextPiece_IsCutForItself()
    {
        PieceCuts cuts = Cut([1, 0, 2], ([-0.5, 1, 0], 1));
        Assert.Equal(2, cuts.Count);

        cuts.Begin([3, 1]);
        cuts.Add([-1, -1], 1);
        cuts.Add([2, 1], 1);
        cuts.Cut();

        Assert.Equal((1, 2), (cuts.Count, cuts.Coefficients));
        Assert.Equal((0, 1), (cuts.StartOf(0), cuts.EndOf(0)));
        Assert.Equal([5, 2], cuts.On(0).ToArray());
    }

    [Fact]
    public void Greatest_IsThatOfAllPartsThatAdd() => Gen.Select(
        Gen.Double[-5, 5].Array[4], Gen.Double[-5, 5].Array[4].Array[0, 6], Gen.Double[-2, 2], Gen.Double[0.001, 0.999]).Sample(
        (always, parts, factor, at) =>
        {
            PieceCuts cuts = Cut(always, [.. parts.Select(part => (part, factor))]);

            int stretch = Enumerable.Range(0, cuts.Count).Single(i => cuts.StartOf(i) <= at && at < cuts.EndOf(i));
            double greatest = Roots.Value(always, at) + parts.Sum(part => Math.Max(0, factor * Roots.Value(part, at)));
            Assert.Equal(greatest, Roots.Value(cuts.On(stretch), at), 1e-9);
            Assert.Equal((0, 1), (cuts.StartOf(0), cuts.EndOf(cuts.Count - 1)));
        });

    /// <summary>More parts than fit on the stack: each adds on its own side of its root.</summary>
    [Fact]
    public void ManyParts_AllCount()
    {
        PieceCuts cuts = Cut([0, 0], [.. Enumerable.Range(1, 300).Select(i => (new[] { -i / 301.0, 1 }, 1.0))]);

        Assert.Equal(301, cuts.Count);
        Assert.Equal(0, Roots.Value(cuts.On(0), 0));
        Assert.Equal(300 - 300 * 301 / 2 / 301.0, Roots.Value(cuts.On(300), 1), 1e-9);
    }

    private static PieceCuts Cut(double[] always, params (double[] Polynomial, double Factor)[] parts)
    {
        PieceCuts cuts = new();
        cuts.Begin(always);
        foreach ((double[] polynomial, double factor) in parts)
        {
            cuts.Add(polynomial, factor);
        }

        cuts.Cut();
        return cuts;
    }
}
