using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;
using FieldCheck.Sheet.Tests.Building;

namespace FieldCheck.Sheet.Tests.Strength;

/// <summary>What a sheet holds its beam against, in SI.</summary>
public sealed class StrengthRowsTests
{
    [Fact]
    public void Spans_AreHeldSidewaysAsWritten() => Assert.Equal<LateralSupport?>(
        [new LateralSupport.Braced(), new LateralSupport.Unbraced(2), null],
        Problem(new BeamDocument
        {
            Spans =
            [
                new() { Length = "3 m", Unbraced = "braced" }, new() { Length = "3 m", Unbraced = "2 m" },
                new() { Length = "3 m" },
            ],
            Supports = [Beams.Pin, Beams.Roller],
            Loads = [new() { Kind = "point", At = "2 m", Force = "12 kN" }],
        }).Members.Select(member => member.Lateral));

    [Fact]
    public void Members_AreMadeOfTheSticksOfTheBeam()
    {
        Member member = Problem(CalculationTests.Example).Members[1];

        Assert.Equal(200e9, member.Material!.Modulus!.Value, 1e9);
        Assert.Equal(170 * Math.Pow(0.0254, 4), member.Section!.Inertia!.Value, 1e-12);
    }

    [Fact]
    public void Seats_StandInTheOrderOfTheModel_WithTheAreaOfTheirPad()
    {
        // The right support is typed first.
        StrengthProblem problem = Problem(Beams.Simple with
        {
            Supports =
            [
                Beams.Roller with { Bearing = "100 mm", BearingAllowable = "3 MPa" },
                Beams.Pin with { Pad = "0.5 m x 400 mm", AllowablePressure = "150 kPa" },
            ],
        });

        Assert.Equal(new Seat(null, null, 0.2, 150e3), problem.Seats[0]);
        Assert.Equal(new Seat(0.1, 3e6, null, null), problem.Seats[1]);
    }

    [Theory]
    [InlineData("elastic allowable", StrengthRules.ElasticAllowable)]
    [InlineData("AISC 360-16 ASD", StrengthRules.Aisc360Asd)]
    [InlineData("AISC 360-16 LRFD", StrengthRules.Aisc360Lrfd)]
    [InlineData("EN 1993-1-1", StrengthRules.En1993)]
    [InlineData("NDS", StrengthRules.Nds)]
    [InlineData("EN 1995-1-1", StrengthRules.En1995)]
    [InlineData(null, StrengthRules.None)]
    public void Rules_AreThoseWritten(string? written, StrengthRules rules) =>
        Assert.Equal(rules, Problem(Beams.Simple with { Limits = new() { Rules = written } }).Rules);

    [Fact]
    public void EveryWordForRules_MeansSomeOfItsOwn()
    {
        Wanted.OneOf words = Assert.IsType<Wanted.OneOf>(Fields.Limits.Single(field => field.Key == "rules").Wanted);

        Assert.Equal(
            Enum.GetValues<StrengthRules>(),
            words.Words.Select(StrengthRows.Rules).Prepend(StrengthRules.None).Order());
    }

    [Fact]
    public void Limits_AreRatiosAndLengths()
    {
        DeflectionLimits limits = Problem(Beams.Simple with
        {
            Limits = new()
            {
                Deflection = "L/360",
                DeflectionOverhang = "L/180",
                DeflectionFinal = "L/250",
                DeflectionFinalOverhang = "L/125",
                DeflectionAbsolute = "20 mm",
                DeflectionCases = [new("snow", "L/400"), new("live", "L/480")],
            },
        }).Limits!;

        Assert.Equal((360, 180, 0.02), (limits.BayRatio, limits.OverhangRatio, limits.Absolute));
        Assert.Equal((250, 125), (limits.FinalBayRatio, limits.FinalOverhangRatio));

        // No load stands under snow, so the model has no such case.
        Assert.Equal<CaseDeflectionLimit>([new CaseDeflectionLimit(0, 480)], limits.Cases);
    }

    [Fact]
    public void Lasting_IsTheDeadLoadAndTheOwnWeight_UnlessWritten()
    {
        BeamDocument document = Beams.Simple with
        {
            SelfWeight = new() { Case = "construction" },
            Sections = [new() { Name = "s", Shape = "IPE 200" }],
            Loads =
            [
                new() { Kind = "point", At = "1 m", Force = "1 kN", Case = "dead" },
                new() { Kind = "point", At = "1 m", Force = "1 kN", Case = "live" },
                new() { Kind = "point", At = "1 m", Force = "1 kN", Case = "snow" },
            ],
            Limits = new() { DeflectionFinal = "L/250", Lasting = [new("live", "0.3")] },
        };

        Assert.Equal<double>([1, 1, 0.3, 0], Problem(document).Limits!.Lasting);
        Assert.Equal<double>(
            [1, 0.5, 0.3, 0],
            Problem(document with
            {
                Limits = document.Limits with { Lasting = [new("live", "0.3"), new("dead", "0.5")] },
            }).Limits!.Lasting);
    }

    [Fact]
    public void NoLimitWritten_IsNone()
    {
        Assert.Null(Problem(Beams.Simple).Limits);
        Assert.Null(Problem(Beams.Simple with { Limits = new() { Rules = "NDS", Lasting = [new("live", "1")] } }).Limits);
    }

    private static StrengthProblem Problem(BeamDocument document) => StrengthRows.Of(Beams.Built(document), document);
}
