using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Tests.Tables;

public sealed class MotionWordsTests
{
    [Fact]
    public void NoSupport_IsSaidFirst() => Says([4], [], [], "it has no support: add two, or one that is fixed");

    [Fact]
    public void OnePin_TurnsAboutIt() => Says(
        [4], [Support.Pin(1)], [], "the whole beam turns about A: add a support, or make A fixed");

    [Fact]
    public void TwoGuides_MoveUpAndDown() => Says(
        [4],
        [Support.Guide(0), Support.Guide(4)],
        [],
        "the whole beam moves up or down: add a support that holds it up");

    [Fact]
    public void AHingeTooMany_NamesThePartsThatTurn() => Says(
        [8],
        [Support.Pin(0), Support.Roller(8)],
        [4],
        "the part from A to the hinge at 4.00 m turns about A and the part from the hinge at 4.00 m to B turns about "
            + "B: add a support under it, or take a hinge out");

    [Fact]
    public void AForceLengthwaysOnRollers_NamesWhichCouldBePins()
    {
        BuiltBeam beam = Bench.Beam(
            [4], [Support.Roller(0), Support.Roller(4)], [new Load.Point(2, 0, 1000)]);

        Assert.Equal(["nothing holds it lengthways: make A or B a pin"], Words(beam));
    }

    [Fact]
    public void AnOverhangThatLiftsItsBackSupport_Tips()
    {
        BuiltBeam beam = Bench.Beam(
            [6],
            [Support.Pin(0) with { Action = SupportAction.PushesOnly }, Support.Roller(4)],
            [new Load.Point(6, 10000)]);

        Assert.Equal(
            [
                "it tips under all loads: A lets go, and the whole beam turns about B: make A hold both ways, or move "
                    + "a support or the load",
            ],
            Words(beam));
        Assert.Equal("CAN MOVE", MotionWords.Verdict(new BeamSolver().Solve(beam.Model)));
    }

    [Fact]
    public void ABeamThatStands_HasNoMotion() => Assert.Empty(Words(Bench.Trench()));

    private static void Says(double[] spans, Support[] supports, double[] hinges, string words) =>
        Assert.Equal([words], Words(Bench.Beam(spans, supports, [new Load.Point(spans[0] / 3, 1000)], hinges)));

    private static string[] Words(BuiltBeam beam) =>
        [.. MotionWords.Of(beam, new BeamSolver().Solve(beam.Model))];
}
