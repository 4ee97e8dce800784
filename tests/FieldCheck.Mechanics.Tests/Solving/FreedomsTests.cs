using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>What is numbered, how far apart, and that nothing stays of the beam before.</summary>
public sealed class FreedomsTests
{
    private readonly BeamGrid _grid = new();
    private readonly Freedoms _freedoms = new();

    [Fact]
    public void ForceAlong_BetweenTwoPins_IsSharedByTheStiffnessOfTheTwoParts()
    {
        BeamResponse response = Solve(9, [Support.Pin(0), Support.Pin(9)], [new Load.Point(3, 0, 3000)]);

        Equal(-2000, response.Reactions[0].Horizontal);
        Equal(-1000, response.Reactions[1].Horizontal);
    }

    [Fact]
    public void Along_IsNumberedFirst_OnlyWhereSomethingActsAndSomethingHolds()
    {
        Support[] pinned = [Support.Pin(0), Support.Roller(6), Support.Pin(9)];
        Support[] loose = [Support.Roller(0), Support.Roller(6), Support.Roller(9)];

        Lay(pinned, wantsAlong: true);
        Assert.True(_freedoms.HasAlong);
        Assert.Equal((0, 4), (_freedoms.Number(1, Freedoms.Along), _freedoms.Count));
        Lay(pinned, wantsAlong: false);
        Assert.False(_freedoms.HasAlong);
        Assert.Equal((Freedoms.Held, 3), (_freedoms.Number(1, Freedoms.Along), _freedoms.Count));
        Lay(loose, wantsAlong: true);
        Assert.False(_freedoms.HasAlong);
    }

    [Theory]
    [InlineData(0, false, 3)]
    [InlineData(0, true, 3)]
    [InlineData(0.2, false, 5)]
    public void HalfBandwidth_IsThatOfOneElement(double slope, bool wantsAlong, int expected)
    {
        // Free ends and springs hold no number back: 2 or 3 of each of two nodes.
        Support first = new(3, Restraint.Free, new Restraint.Spring(1e5), Restraint.Free, slope);
        Lay([first, Support.Spring(6, 1e5), Support.Pin(7)], wantsAlong);

        Assert.Equal(expected, _freedoms.HalfBandwidth);
    }

    [Fact]
    public void SecondBeam_KeepsNothingOfTheFirst()
    {
        Lay([Support.Fixed(0) with { Settlement = 0.01, ImposedRotation = 0.02 }, Support.Roller(9, 0.3) with { Settlement = 0.03 }], true);
        Assert.Equal(-0.01, _freedoms.Imposed(0, Freedoms.Across));
        Assert.Equal(0.02, _freedoms.Imposed(0, Freedoms.TurnRight));
        Assert.Equal(-0.03, _freedoms.Imposed(1, Freedoms.Across));
        Assert.True(_freedoms.Direction(1).IsSloped);

        Lay([Support.Pin(0), Support.Roller(9)], true);

        for (int node = 0; node < 2; node++)
        {
            for (int place = 0; place < Freedoms.PerNode; place++)
            {
                Assert.Equal(0, _freedoms.Imposed(node, place));
            }

            Assert.False(_freedoms.Direction(node).IsSloped);
        }

        Assert.False(_freedoms.IsCoupled);
    }

    private void Lay(Support[] supports, bool wantsAlong)
    {
        BeamModel model = Beam(9, supports, []);
        _grid.Lay(model);
        _freedoms.Lay(_grid, model, [.. supports.Select(_ => true)], false, wantsAlong);
    }
}
