using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Tables;

namespace FieldCheck.Reporting.Tests.Tables;

public sealed class DeterminacyWordsTests
{
    private const string Statics = "Statics alone gives the reactions: as many unknowns as equations.";

    [Fact]
    public void PinAndRoller_StaticsAlone() => Says(Statics, Support.Pin(0), Support.Roller(4));

    [Fact]
    public void TwoRollersUnderLoadsAcross_StaticsAlone() => Says(Statics, Support.Roller(0), Support.Roller(4));

    [Fact]
    public void ThreeRollers_AreCountedAcrossOnly() => Says(
        "Held by 1 hold more than statics needs: the reactions depend on stiffness too.",
        Support.Roller(0),
        Support.Roller(2),
        Support.Roller(4));

    [Fact]
    public void TwoBuiltInEnds_AreCountedBothWays() => Says(
        "Held by 3 holds more than statics needs (1 lengthways, 2 across): the reactions depend on stiffness too.",
        Support.Fixed(0),
        Support.Fixed(4));

    [Fact]
    public void OnePin_CanMove() => Says(
        "Held by less than statics needs, or in the wrong places: it can move.", Support.Pin(0));

    private static void Says(string words, params Support[] supports) => Assert.Equal(
        words,
        DeterminacyWords.Of(new BeamSolver().Solve(Bench.Beam([4], supports, [new Load.Point(1, 1000)]).Model)));
}
