using CsCheck;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>
/// A section's state from that at the start of its element: V and M by statics, the deflection of a cantilever of EI = 4e5 N·m²
/// and GA = 2e5 N under an end force, an end moment, a turn and a rise.
/// </summary>
public sealed class SectionRelationTests
{
    private const double Bend = 4e5;
    private const double Shear = 2e5;
    private static readonly SectionRelation Soft = new(new Span(5, Bend, 1e9, Shear));
    private static readonly SectionRelation Stiff = new(new Span(5, Bend, 1e9));

    /// <summary>At 3 m: N, V, M alone, and -(V·d³/6EI - V·d/GA + M·d²/2EI + turn·d + rise), positive down.</summary>
    [Fact]
    public void StateCarriesOn()
    {
        Assert.Equal([2, 0, 0, 0, 0], Weights(Soft, Curve.Axial));
        Assert.Equal([0, 2, 0, 0, 0], Weights(Soft, Curve.Shear));
        Assert.Equal([0, 6, 2, 0, 0], Weights(Soft, Curve.Moment));
        Near([0, -2 * (27 / (6 * Bend) - 3 / Shear), -2 * 9 / (2 * Bend), -6, -2], Weights(Soft, Curve.Deflection));
        Near([0, -2 * 27 / (6 * Bend), -2 * 9 / (2 * Bend), -6, -2], Weights(Stiff, Curve.Deflection));
    }

    /// <summary>An axle of F at v left of the section: -F from V, -F·v from M, F·v³/6EI - F·v/GA down, v = left - length·u.</summary>
    [Fact]
    public void AxleAddsByItsDistance() => Gen.Select(Gen.Double[0.1, 5], Gen.Double[0.1, 3], Gen.Double[0, 1], Gen.Bool).Sample(
        (left, length, share, isSoft) =>
        {
            double v = left - length * share;
            SectionRelation relation = isSoft ? Soft : Stiff;

            Assert.Equal(1, At(Curve.Axial), 1e-12);
            Assert.Equal(1 - 7, At(Curve.Shear), 1e-12);
            Assert.Equal(1 - 7 * v, At(Curve.Moment), 1e-9);
            Assert.Equal(
                1 + 7 * (v * v * v / (6 * Bend) - (isSoft ? v / Shear : 0)), At(Curve.Deflection), 1e-12);

            double At(Curve curve)
            {
                double[] to = [1, 0, 0, 0];
                relation.AddAxle(to, curve, 7, left, length);
                return Roots.Value(to, share);
            }
        });

    /// <summary>Over a step of 2 m: M l²/8EI, and a kink of F/GA in the middle, F·l/4GA.</summary>
    [Fact]
    public void RiseAboveTheChord_IsThatOfMomentAndKink()
    {
        Assert.Equal(300 * 4 / (8 * Bend), Stiff.Between(2, 300, 50), 1e-15);
        Assert.Equal(300 * 4 / (8 * Bend) + 50 * 2 / (4 * Shear), Soft.Between(2, 300, 50), 1e-15);
    }

    /// <summary>A cubic in s = start + step·u, added times a factor.</summary>
    [Fact]
    public void ShiftedCubic_HasTheSameValues() => Gen.Select(
        Gen.Double[-3, 3].Array[4], Gen.Double[-2, 2], Gen.Double[-1, 1], Gen.Double[0.1, 2], Gen.Double[0, 1]).Sample(
        (cubic, factor, start, step, u) =>
        {
            double[] to = [1, 2, 3, 4];
            double before = Roots.Value(to, u);

            TrainRow.AddShifted(to, cubic, factor, start, step);

            Assert.Equal(before + factor * Roots.Value(cubic, start + step * u), Roots.Value(to, u), 1e-10);
        });

    private static double[] Weights(SectionRelation relation, Curve curve)
    {
        double[] weights = [9, 9, 9, 9, 9];
        relation.Weigh(curve, 3, 2, weights);
        return weights;
    }

    private static void Near(double[] expected, double[] actual) =>
        Assert.Equal(expected, actual, (one, other) => Math.Abs(one - other) <= 1e-15 * Math.Max(1, Math.Abs(one)));
}
