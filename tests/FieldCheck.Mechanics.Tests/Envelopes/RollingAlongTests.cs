using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>Forces along that a rolling load makes by a sloped roller, beside forces along that turn midway.</summary>
public sealed class RollingAlongTests
{
    /// <summary>
    /// 6 m, forces along from 3 to -3 kN/m: P(x) = 3x - x²/2, 4.5 kN midway and nothing at the end. An axle of 12 kN over the roller,
    /// whose surface rises by a quarter to the right, has it push 3 kN to the left all along: N = -3 - 4.5 midway. Where it
    /// falls, N = 3 at the ends with the axle, and -4.5 midway without.
    /// </summary>
    [Theory]
    [InlineData(0.25, -7.5, 0)]
    [InlineData(-0.25, -4.5, 3)]
    public void ForceAlong_PeaksWhereTheStandingForceTurns(double rise, double least, double most)
    {
        BeamModel model = new(
            [new Span(6, 1, 1)],
            [Support.Pin(0), Support.Roller(6, Math.Atan(rise))],
            [],
            [new LoadCase("dead", [new Load.Distributed(0, 6, 3, -3, ActsAlong: true)])],
            [new Combination("all", CombinationBasis.Service, [1])]);
        Envelope envelope = Assert.Single(
            EnvelopeSearch.Find(new EnvelopeProblem(model, [], [new RollingLoad("cart", 0, [new Axle(0, 12)])]), new BeamSolver()));

        GovernedExtremes along = envelope.ExtremesOf(Curve.Axial);

        Assert.Equal(least, along.Min.Value, 1e-9);
        Assert.Equal(3, along.Min.Position, 1e-9);
        Assert.Equal(most, along.Max.Value, 1e-9);
        Assert.Equal(rise > 0 ? 6 : null, along.Min.Situation.Rolling?.Position);
    }
}
