using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Tests.Building;

namespace FieldCheck.Sheet.Tests;

public sealed class CalculationTests
{
    internal const double Kip = 4448.2216152605;

    /// <summary>The contract's own example: a bearer over a trench, with an overhang, a pallet and decking.</summary>
    internal static readonly BeamDocument Example = new()
    {
        Display = "us",
        Spans = [new() { Length = "14 ft 6 in", Unbraced = "braced" }, new() { Length = "3 ft", Unbraced = "3 ft" }],
        Supports =
        [
            new() { Joint = "0", Kind = "pin" },
            new() { Joint = "1", Kind = "roller", Acts = "up", Bearing = "3 1/2 in" },
        ],
        Loads =
        [
            new() { Label = "Pallet", Case = "live", Kind = "point", At = "A + 4 ft", Force = "1850 lbf" },
            new() { Label = "Decking", Case = "dead", Kind = "distributed", Pressure = "12 psf", Width = "5 ft" },
        ],
        SelfWeight = new() { Case = "dead" },
        Sections = [new() { Name = "bearer", Shape = "W10x30" }],
        Materials = [new() { Name = "steel", Grade = "A992" }],
        Combinations = [new() { Name = "service", Factors = [new("dead", "1.0"), new("live", "1.0")] }],
        Stated = [new() { Support = "A", Vertical = "2.0 kip", Combination = "service", Source = "Hire firm's sheet" }],
        Limits = new() { Deflection = "L/360", DeflectionOverhang = "L/180", Rules = "AISC 360-16 ASD" },
    };

    [Fact]
    public void Example_HasTheReactionsOfAHandCalculation()
    {
        // By hand, moments about A: 1850 lbf x 4 ft + (12 x 5 + 30) plf x 17.5 ft x 8.75 ft = 21 181.25 lbf-ft;
        // B = 21 181.25 / 14.5 = 1460.78 lbf, A = 1850 + 1575 - 1460.78 = 1964.22 lbf.
        Calculation calculation = Run(Example);

        Reaction[] reactions = [.. Answers(calculation).Single().Response.Reactions];
        Assert.Equal(1.964, reactions[0].Vertical / Kip, 0.0005);
        Assert.Equal(1.461, reactions[1].Vertical / Kip, 0.0005);
        Assert.Equal(21181.25 / 14.5 / 1000, reactions[1].Vertical / Kip, 1e-9);
        Assert.True(calculation.Beam!.Model.HasAbsoluteStiffness);
        Assert.Equal(0, calculation.Outcome!.Determinacy.Total);
    }

    [Fact]
    public void Example_HoldsButForABearingThatNobodyMeasured()
    {
        Calculation calculation = Run(Example);

        Assert.Equal(
            "NOT JUDGED: web over A: the length of the bearing is not given; it needs at least 0.810 in.",
            calculation.Messages.Single(message => message.Severity > Severity.Note).Text);
        Assert.Equal(CheckStatus.DoesNotHold, calculation.Status);

        // W10x30, Mp/1.67 = 50 ksi x 36.6 in3 / 1.67 = 1095.8 kip-in: of 1850 lbf at 4 of 14.5 ft and 90 plf over 17.5 ft
        // the greatest moment is 1964.22 x 4 - 90 x 8 = 7136.9 lbf-ft, under the pallet.
        SectionCheck bending = calculation.Checks.All[0].Figures;
        Assert.Equal(CheckKind.Bending, bending.Kind);
        Assert.Equal(7136.9e-3 * 12 / (50 * 36.6 / 1.67), bending.Utilisation!.Value, 1e-5);
        Assert.Equal(4 * 0.3048, bending.Position!.Value, 1e-9);
        Assert.Equal(CheckVerdict.NotJudged, calculation.Checks.Verdict);
    }

    [Fact]
    public void ExampleWithThatBearing_Holds()
    {
        Calculation calculation = Run(Example with
        {
            Supports = [Example.Supports[0] with { Bearing = "3 1/2 in" }, Example.Supports[1]],
        });

        Assert.Equal(CheckVerdict.Ok, calculation.Checks.Verdict);
        Assert.Equal("deflection of the overhang", calculation.Checks.Governing!.What);
        Assert.Equal(CheckStatus.Holds, calculation.Status);
    }

    [Fact]
    public void BeamThatAsksNothing_HasNoChecks()
    {
        Assert.Empty(Run(Beams.Simple).Checks.All);
        Assert.Empty(Run(Beams.Simple).Checks.NotChecked);
        Assert.Null(Run(Beams.Simple).Checks.Verdict);
    }

    [Fact]
    public void BeamThatDoesNotStand_IsNotJudged()
    {
        Calculation calculation =
            Run(Beams.Simple with { Supports = [Beams.Pin], Limits = new() { Deflection = "L/360" } });

        Assert.Empty(calculation.Checks.All);
        Assert.Contains("NOT JUDGED: deflection limit L/360 of each bay.", calculation.Messages.Select(message => message.Text));
    }

    [Fact]
    public void SoundBeamWithNothingAsked_Holds()
    {
        Calculation calculation = Run(Beams.Simple);

        // By hand: 12 kN at 2 of 6 m.
        Assert.Equal(8000, Answers(calculation).Single().Response.Reactions[0].Vertical, 1e-9);
        Assert.Equal("all loads", Answers(calculation).Single().Combination.Name);
        Assert.Equal(CheckStatus.Holds, calculation.Status);
        Assert.Empty(calculation.Problems);
        Assert.Empty(calculation.Messages);
    }

    [Fact]
    public void BeamWithProblems_IsNotUsable()
    {
        Calculation calculation = Run(Beams.With(new LoadEntry { Kind = "point", At = "2 m", Force = "12" }));

        Assert.Equal("load[1].force", calculation.Problems.Single().Key);
        Assert.Null(calculation.Beam);
        Assert.Null(calculation.Outcome);
        Assert.Empty(calculation.Messages);
        Assert.Equal(CheckStatus.NotUsable, calculation.Status);
    }

    [Fact]
    public void NoSupportAtAll_CanMove()
    {
        Calculation calculation = Run(Beams.Simple with { Supports = [] });

        Assert.IsType<BeamOutcome.CanMove>(calculation.Outcome);
        Assert.Equal(CheckStatus.CanMove, calculation.Status);
    }

    [Fact]
    public void BeamThatTips_CanMove()
    {
        Calculation calculation = Run(Beams.Simple with
        {
            Supports =
            [
                new() { Kind = "pin", At = "1 m", Acts = "up" }, new() { Kind = "roller", At = "2 m", Acts = "up" },
            ],
            Loads = [new() { Kind = "point", At = "end", Force = "1 kN" }],
        });

        Assert.IsType<BeamOutcome.Tips>(calculation.Outcome);
        Assert.Equal(CheckStatus.CanMove, calculation.Status);
    }

    [Fact]
    public void ForceAlongABeamOnRollers_CanMove() => Assert.Equal(CheckStatus.CanMove, Run(Beams.Simple with
    {
        Supports = [Beams.Pin with { Kind = "roller" }, Beams.Roller],
        Loads = [new() { Kind = "point", At = "2 m", Force = "1 kN", Angle = "10 deg" }],
    }).Status);

    [Fact]
    public void TwentySpansWithAHundredLoads_AreSolved()
    {
        BeamDocument document = new()
        {
            Spans = [.. Enumerable.Range(0, 20).Select(_ => new SpanEntry { Length = "3 m" })],
            Supports =
            [
                Beams.Pin, .. Enumerable.Range(1, 20).Select(joint => Beams.Roller with { Joint = $"{joint}" }),
            ],
            Loads =
            [
                .. Enumerable.Range(0, 100)
                    .Select(load => new LoadEntry { Kind = "point", At = $"{load} m * 60 / 100", Force = "1 kN" }),
            ],
        };

        Reaction[] reactions = [.. Answers(Run(document)).Single().Response.Reactions];
        Assert.Equal(100e3, reactions.Sum(reaction => reaction.Vertical), 1e-6);
    }

    internal static Calculation Run(BeamDocument document) =>
        Calculation.Run(document, SectionCatalogue.BuiltIn(), new BeamSolver());

    /// <summary>As the form asks, at every key.</summary>
    internal static Calculation Follow(BeamDocument document) =>
        Calculation.Run(document, SectionCatalogue.BuiltIn(), new BeamSolver(), isFollowed: true);

    private static ImmutableArray<CombinationResponse> Answers(Calculation calculation) =>
        Assert.IsType<BeamOutcome.Stands>(calculation.Outcome).Combinations;
}
