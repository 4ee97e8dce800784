using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Tests.Tables;

public sealed class ReactionTableTests
{
    [Fact]
    public void ABuiltInEnd_GivesForceAndMoment_WithTheirSenses() => Rows(
        Bench.Beam([2], [Support.Fixed(0)], [new Load.Point(2, 3000, 500)]),
        "  A  at 0.00 m   3.00 kN up   0.50 kN left   6.00 kNm ccw");

    [Fact]
    public void AGuide_ThatTakesNothingAcross_SaysWhatItTakes() => Rows(
        Bench.Beam([2], [Support.Roller(0), Support.Guide(2)], [new Load.Point(1, 3000)]),
        "  A  at 0.00 m   3.00 kN up",
        "  B  at 2.00 m   3.00 kNm ccw");

    [Fact]
    public void ARollerOnASlope_SaysWhatItPushesSquareToIt() => Rows(
        Bench.Beam([2], [Support.Pin(0), Support.Roller(2, Math.Atan(0.75))], [new Load.Point(1, 8000)]),
        "  A  at 0.00 m   4.00 kN up   3.00 kN right",
        "  B  at 2.00 m   4.00 kN up   3.00 kN left   (5.00 kN square to its surface)");

    [Fact]
    public void ASupportThatOnlyPushes_LiftsOff_AndSaysLIFTS() => Rows(
        Bench.Beam(
            [2, 2, 2],
            [Support.Pin(0), Support.Roller(4), Support.Roller(6) with { Action = SupportAction.PushesOnly }],
            [new Load.Point(2, 10000)]),
        "  A  at 0.00 m   5.00 kN up",
        "  B  at 4.00 m   5.00 kN up",
        "  C  at 6.00 m   lifted off   LIFTS");

    [Fact]
    public void LoadsThatTogetherPushUp_AreBalancedWithTheirSenses()
    {
        BuiltBeam beam = Bench.Beam([4], [Support.Pin(0), Support.Roller(4)], [new Load.Point(2, -2000)]);
        EquilibriumProof proof = Bench.Answer(beam).Response.Proof;

        Assert.Equal(
            "sum of reactions 2.00 kN down = loads 2.00 kN up: closes", ProofLines.Of(new BeamWords(beam), proof)[0]);
    }

    [Fact]
    public void ABalanceThatDoesNotClose_ForbidsTheFigures()
    {
        BuiltBeam beam = Bench.Trench();
        EquilibriumProof proof = Bench.Answer(beam).Response.Proof with { Residual = 1e-3 };

        Assert.All(
            ProofLines.Of(new BeamWords(beam), proof),
            line => Assert.EndsWith(": DOES NOT CLOSE: do not use these figures", line, StringComparison.Ordinal));
    }

    [Fact]
    public void ForcesLengthways_HaveTheirOwnBalance()
    {
        BuiltBeam beam = Bench.Beam([2], [Support.Fixed(0)], [new Load.Point(2, 3000, 500)]);

        Assert.Equal(
            "sum lengthways: reactions 0.50 kN left = loads 0.50 kN right: closes",
            ProofLines.Of(new BeamWords(beam), Bench.Answer(beam).Response.Proof)[1]);
    }

    private static void Rows(BuiltBeam beam, params string[] expected)
    {
        ImmutableArray<string> rows = ReactionTable.Lines(beam, Bench.Answer(beam).Response, 80);
        Assert.Equal<string>(expected, [.. rows]);
    }
}
