using FieldCheck.Mechanics.Checks;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Stated;
using FieldCheck.Sheet.Tests.Building;

namespace FieldCheck.Sheet.Tests.Stated;

/// <summary>A stated figure that the plus or minus of what was measured can explain is not called wrong.</summary>
public sealed class StatedBandTests
{
    /// <summary>6 m, 12 kN at 2 m: A 8 kN; by 10 % of the load and 100 mm of its place 7.02 to 9.02 kN.</summary>
    private static readonly BeamDocument Uncertain = Beams.Simple with
    {
        Loads = [new() { Kind = "point", At = "2 m ± 100 mm", Force = "12 kN ± 10 %" }],
    };

    [Theory]
    [InlineData("8.1 kN", ReactionVerdict.Agrees)]
    [InlineData("7.1 kN", ReactionVerdict.WithinBand)]
    [InlineData("9.0 kN", ReactionVerdict.WithinBand)]
    [InlineData("6.9 kN", ReactionVerdict.Low)]
    [InlineData("9.2 kN", ReactionVerdict.High)]
    public void Verdict_KnowsTheBand(string stated, ReactionVerdict verdict)
    {
        StatedFigure figure = Stated(Uncertain, new() { Support = "A", Vertical = stated });

        Assert.Equal(verdict, figure.Verdict);
        Assert.Equal(10_800 * 3.9 / 6, figure.Comparison!.Value.Band!.Value.Low, 1e-6);
        Assert.Equal(13_200 * 4.1 / 6, figure.Comparison!.Value.Band!.Value.High, 1e-6);
    }

    /// <summary>A 8 kN; 2 % of it is 160 N. What is typed behind a figure stands in place of half its last digit, 50 N.</summary>
    [Theory]
    [InlineData("8.4 kN", 50 + 160, ReactionVerdict.High)]
    [InlineData("8.4 kN ± 0.3 kN", 300 + 160, ReactionVerdict.Agrees)]
    [InlineData("8.4 kN +- 5 %", 420 + 160, ReactionVerdict.Agrees)]
    [InlineData("7.4 kN ± 300 N", 300 + 160, ReactionVerdict.Low)]
    [InlineData("8.4 kN ± 1 N", 50 + 160, ReactionVerdict.High)]
    public void PlusOrMinusOfTheFigureItself_Counts(string stated, double allowed, ReactionVerdict verdict)
    {
        StatedFigure figure = Stated(Beams.Simple, new() { Support = "A", Vertical = stated });

        Assert.Equal(allowed, figure.Comparison!.Value.Allowed, 1e-9);
        Assert.Equal(verdict, figure.Verdict);
    }

    [Fact]
    public void PlusOrMinusOfTheFigureItself_WidensTheBand()
    {
        StatedFigure figure = Stated(Uncertain, new() { Support = "A", Vertical = "9.3 kN ± 0.3 kN" });

        Assert.Equal(ReactionVerdict.WithinBand, figure.Verdict);
    }

    [Fact]
    public void CaseAlone_HasItsOwnBand()
    {
        BeamDocument document = Uncertain with
        {
            Loads = [.. Uncertain.Loads, new() { Kind = "point", At = "3 m", Force = "4 kN ± 25 %", Case = "dead" }],
        };

        StatedFigure figure = Stated(document, new() { Support = "A", Vertical = "2.4 kN", Case = "dead" });

        Assert.Equal(ReactionVerdict.WithinBand, figure.Verdict);
        Assert.Equal(1_500, figure.Comparison!.Value.Band!.Value.Low, 1e-6);
        Assert.Equal(2_500, figure.Comparison!.Value.Band!.Value.High, 1e-6);
    }

    [Fact]
    public void NothingUncertain_NoBand()
    {
        StatedFigure figure = Stated(Beams.Simple, new() { Support = "A", Vertical = "7.1 kN" });

        Assert.Equal(ReactionVerdict.Low, figure.Verdict);
        Assert.Null(figure.Comparison!.Value.Band);
        Assert.Null(CalculationTests.Run(Beams.Simple).Bands);
    }

    [Fact]
    public void WithinBand_DoesNotCountAgainstTheCheck()
    {
        BeamDocument document = Uncertain with
        {
            Stated = [new() { Support = "A", Vertical = "7.7 kN" }, new() { Support = "B", Vertical = "4.3 kN" }],
        };

        Calculation calculation = CalculationTests.Run(document);

        Assert.Equal(
            [ReactionVerdict.WithinBand, ReactionVerdict.WithinBand],
            calculation.Stated.Select(figure => figure.Verdict));
        Assert.Equal(CheckStatus.Holds, calculation.Status);
    }

    private static StatedFigure Stated(BeamDocument document, StatedEntry row) =>
        CalculationTests.Run(document with { Stated = [row] }).Stated.Single();
}
