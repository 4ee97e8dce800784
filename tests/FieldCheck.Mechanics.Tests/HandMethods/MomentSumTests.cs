using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>Moments about the left support of a simple span: what passes through it, and which way the rest turns.</summary>
public sealed class MomentSumTests
{
    private const double L = 6;

    [Fact]
    public void ForceAtThePoint_IsSaidToPassThrough()
    {
        HandRemark.PassesThrough through = Assert.Single(Through(new Load.Point(0, 400), new Load.Point(2, 900)));

        Assert.Equal([0], through.Actors.Select(actor => Assert.IsType<HandActor.OfLoad>(actor).Index));
    }

    [Fact]
    public void NothingAtThePoint_IsNotSaidToPassThrough() =>
        Assert.Empty(Through(new Load.Point(2, 900), new Load.Couple(0, 60)));

    [Fact]
    public void ForcesAndUnknowns_TurnByTheirArmsInTheirSense()
    {
        HandLine[] lines = Lines(new Load.Point(2, 900), new Load.Point(3, -200));

        HandLine.Turns[] turns = [.. lines.OfType<HandLine.Turns>()];
        Assert.Equal([(null, HandSense.None), (L, HandSense.CounterClockwise)], turns
            .Select(turn => (turn.Arm?.Value, turn.Sense)).OrderBy(turn => turn.Value ?? 0));
        Assert.Equal(
            [(1800, HandSense.Clockwise), (600, HandSense.CounterClockwise)],
            lines.OfType<HandLine.Finds>()
                .Where(line => line.Sense is HandSense.Clockwise or HandSense.CounterClockwise)
                .Select(line => (line.Number.Value, line.Sense)));
    }

    private static HandRemark.PassesThrough[] Through(params Load[] loads) =>
        [.. Lines(loads).OfType<HandLine.Says>().Select(line => line.What).OfType<HandRemark.PassesThrough>()];

    /// <summary>The lines before the proof, which takes moments about the other end.</summary>
    private static HandLine[] Lines(params Load[] loads) =>
    [
        .. HandAgreement.Work(Beam(L, [Support.Pin(0), Support.Roller(L)], loads)).Lines
            .TakeWhile(line => line is not HandLine.Begins { Title: HandStep.Proof }),
    ];
}
