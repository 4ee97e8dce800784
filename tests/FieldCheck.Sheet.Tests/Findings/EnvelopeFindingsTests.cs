using System.Globalization;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Stated;
using FieldCheck.Sheet.Tests.Building;

namespace FieldCheck.Sheet.Tests.Findings;

/// <summary>
/// What is found over all that patterns and rolling loads let happen. One of two equal spans loaded gives 7/16, 10/16 and
/// -1/16 of wL (Hicks, Civil Engineering Formulas, Table 2.1); the rest is statics.
/// </summary>
public sealed class EnvelopeFindingsTests
{
    /// <summary>Twice 4 m, 2 kN/m of live load that may stand on either: wL is 8 kN.</summary>
    private static readonly BeamDocument TwoBays = Beams.TwoSpans with
    {
        Spans = [new() { Length = "4 m" }, new() { Length = "4 m" }],
        Patterns = [new() { Case = "live" }],
    };

    [Fact]
    public void ReactionsOfTwoBays_AreTheSumsOfTheirSigns()
    {
        Envelope envelope = Assert.Single(CalculationTests.Run(TwoBays).Envelopes);

        Assert.Equal(CombinationBasis.Service, envelope.Basis);
        Assert.Equal(7.0 / 16 * 8000, envelope.Reactions[0].Vertical.Max.Value, 1e-6);
        Assert.Equal(-1.0 / 16 * 8000, envelope.Reactions[0].Vertical.Min.Value, 1e-6);
        Assert.Equal(20.0 / 16 * 8000, envelope.Reactions[1].Vertical.Max.Value, 1e-6);
        Assert.Equal(0, envelope.Reactions[1].Vertical.Min.Value, 1e-6);
    }

    [Fact]
    public void SupportThatSomePatternPulls_IsAskedAfter()
    {
        Calculation calculation = CalculationTests.Run(TwoBays);

        Assert.Equal(
            [
                "A must hold 0.50 kN down with live on bay 2: is it tied?",
                "C must hold 0.50 kN down with live on bay 1: is it tied?",
            ],
            Texts(calculation, "uplift"));
        Assert.Equal(CheckStatus.DoesNotHold, calculation.Status);
    }

    /// <summary>
    /// Two supports lift off, and the pull that the linear sums would pick is not the greatest: the remark and the envelope
    /// say the same all the same.
    /// </summary>
    [Fact]
    public void PullWhereSupportsLetGo_IsThatOfTheEnvelope()
    {
        Calculation calculation = CalculationTests.Run(Lifting([6, 3, 5, 2]));

        double least = Assert.Single(calculation.Envelopes).Reactions[3].Vertical.Min.Value;
        Assert.InRange(least, -4800, -4700);
        string size = (-least / 1000).ToString("0.00", CultureInfo.InvariantCulture);
        Assert.Contains(Texts(calculation, "uplift"), text => text.StartsWith($"D must hold {size} kN down", StringComparison.Ordinal));
    }

    [Fact]
    public void PullOfALargeBeamWhereSupportsLetGo_IsSaidToBeAtLeastThat()
    {
        string[] texts = [.. Texts(CalculationTests.Run(Lifting([6, 3, 5, 2, 6, 3, 5, 2, 6, 3, 5, 2])), "uplift")];

        Assert.NotEmpty(texts);
        Assert.All(texts, text => Assert.Contains(" must hold at least ", text, StringComparison.Ordinal));
    }

    /// <summary>Without anything rolling all patterns of twelve bays are gone through, and the size is the envelope's.</summary>
    [Fact]
    public void PullOfALargeBeamInPatternsAlone_IsThatOfTheEnvelope()
    {
        BeamDocument document = Lifting([6, 3, 5, 2, 6, 3, 5, 2, 6, 3, 5, 2]) with { Rolling = [] };
        Calculation calculation = CalculationTests.Run(document);

        double least = Assert.Single(calculation.Envelopes).Reactions[^1].Vertical.Min.Value;
        string size = (-least / 1000).ToString("0.00", CultureInfo.InvariantCulture);
        Assert.Contains(
            Texts(calculation, "uplift"), text => text.Contains($" must hold {size} kN down", StringComparison.Ordinal));
    }

    /// <summary>Live load of 7 kN/m bay by bay and two axles; the supports between the first and the last two only push.</summary>
    private static BeamDocument Lifting(int[] lengths) => new()
    {
        Spans = [.. lengths.Select(length => new SpanEntry { Length = $"{length} m" })],
        Supports =
        [
            .. Enumerable.Range(0, lengths.Length + 1).Select(joint => new SupportEntry
            {
                Kind = joint == 0 ? "pin" : "roller",
                Joint = $"{joint}",
                Acts = joint > 0 && joint < lengths.Length - 1 ? "up" : null,
            }),
        ],
        Loads =
        [
            new() { Kind = "distributed", Intensity = "0.5 kN/m", Case = "dead" },
            .. lengths.Select((_, bay) => new LoadEntry
            {
                Kind = "distributed",
                From = $"joint {bay}",
                To = $"joint {bay + 1}",
                Intensity = (bay % 4) switch { 1 => "8 kN/m", 2 => "6 kN/m", _ => "7 kN/m" },
                Case = "live",
            }),
        ],
        Patterns = [new() { Case = "live" }],
        Rolling =
        [
            new()
            {
                Label = "t",
                Case = "live",
                Axles = [new() { Offset = "0 m", Force = "5 kN" }, new() { Offset = "1.5 m", Force = "8 kN" }],
            },
        ],
    };

    [Fact]
    public void TheWorstOfAllCombinationsAndPatterns_IsNamed() => Assert.Equal(
        [
            "A must hold 0.80 kN down under strength, live on bay 2: is it tied?",
            "C must hold 0.80 kN down under strength, live on bay 1: is it tied?",
        ],
        Texts(
            CalculationTests.Run(TwoBays with
            {
                Combinations =
                [
                    new() { Name = "service", Factors = [new("live", "1")] },
                    new() { Name = "strength", Basis = "factored", Factors = [new("live", "1.6")] },
                ],
            }),
            "uplift"));

    [Fact]
    public void SupportThatIsSaidToHold_IsANote() => Assert.Equal(
        ["A holds 0.50 kN down with live on bay 2, as written."],
        Texts(
            CalculationTests.Run(TwoBays with
            {
                Supports = TwoBays.Supports.SetItem(0, Beams.Pin with { Acts = "both" })
                    .SetItem(2, TwoBays.Supports[2] with { Acts = "both" }),
            }),
            "holds_down").Take(1));

    [Fact]
    public void SupportThatOnlyPushes_LiftsOffUnderSomePattern() => Assert.Equal(
        ["C lifts off with live on bay 1: it carries nothing there."],
        Texts(
            CalculationTests.Run(TwoBays with
            {
                Supports = TwoBays.Supports.SetItem(2, TwoBays.Supports[2] with { Acts = "up" }),
            }),
            "lifts_off"));

    /// <summary>4 m and an overhang of 2 m on a pin that only pushes: with the overhang alone loaded nothing holds it.</summary>
    [Fact]
    public void BeamThatTipsUnderSomePattern_IsAFault()
    {
        Calculation calculation = CalculationTests.Run(new BeamDocument
        {
            Spans = [new() { Length = "4 m" }, new() { Length = "2 m" }],
            Supports = [Beams.Pin with { Acts = "up" }, Beams.Roller],
            Loads = [new() { Kind = "distributed", Intensity = "3 kN/m" }],
            Patterns = [new() { Case = "live" }],
        });

        Assert.Equal(
            ["The beam tips, or has no answer, with live on the right overhang: the figures are without that."],
            Texts(calculation, "tips"));
        Assert.Equal(CheckStatus.CanMove, calculation.Status);
    }

    /// <summary>4 m and an overhang of 2 m; 3 kN at its tip pull A by 3 x 2 / 4 = 1.5 kN, times 1.2.</summary>
    /// <summary>Statics: beside the support one axle is on it, the other 2 m off, and the beam takes 10 + 5 kN.</summary>
    [Fact]
    public void PlaceOfAnAxleBesideASupport_GivesTheShearWhenItIsTyped()
    {
        BeamDocument truck = Beams.Simple with
        {
            Spans = [new() { Length = "4 m" }],
            Loads = [],
            Rolling = [new()
            {
                Axles = [new() { Offset = "0 m", Force = "10 kN" }, new() { Offset = "2 m", Force = "10 kN" }],
            }],
        };
        GovernedExtremes shear = CalculationTests.Run(truck).Envelopes[0].ExtremesOf(Curve.Shear);
        foreach (GovernedExtreme peak in new[] { shear.Max, shear.Min })
        {
            double first = peak.Situation.Rolling!.Position;
            double second = first + (peak.Situation.Rolling.IsReversed ? -2 : 2);
            BeamDocument standing = truck with
            {
                Rolling = [],
                Loads = [.. new[] { first, second }.Select(place => new LoadEntry
                {
                    Kind = "point",
                    At = string.Create(CultureInfo.InvariantCulture, $"{place:F12} m"),
                    Force = "10 kN",
                })],
            };
            Extremes typed = ((BeamOutcome.Stands)CalculationTests.Run(standing).Outcome!)
                .Combinations[0].Response.ExtremesOf(Curve.Shear);

            Assert.Equal(15e3, Math.Abs(peak.Value), 1e-6);
            Assert.Contains(new[] { typed.Max.Value, typed.Min.Value }, value => Math.Abs(value - peak.Value) < 1e-3);
        }
    }

    [Fact]
    public void RollingLoadOnTheOverhang_PullsTheFarSupport() => Assert.Equal(
        ["A must hold 1.80 kN down with Hoist at 6.00 m: is it tied?"],
        Texts(
            CalculationTests.Run(new BeamDocument
            {
                Spans = [new() { Length = "4 m" }, new() { Length = "2 m" }],
                Supports = [Beams.Pin, Beams.Roller],
                Rolling =
                [
                    new() { Label = "Hoist", Impact = "20 %", Axles = [new() { Offset = "0 m", Force = "3 kN" }] },
                ],
            }),
            "uplift"));

    [Theory]
    [InlineData("max", null, null, "3.5 kN", 3500, "live on bay 1")]
    [InlineData("min", null, null, "0.5 kN", -500, "live on bay 2")]
    [InlineData("max", "all loads", null, "3.5 kN", 3500, "live on bay 1")]
    [InlineData("max", null, "live", "3.5 kN", 3500, "live on bay 1")]
    [InlineData("min", null, "live", "0.5 kN", -500, "live on bay 2")]
    [InlineData(null, null, "live", "3 kN", 3000, "")]
    [InlineData(null, null, null, "3 kN", 3000, "")]
    public void StatedExtreme_IsHeldAgainstTheEnvelope(
        string? extreme, string? combination, string? name, string size, double computed, string governs)
    {
        BeamDocument document = TwoBays with
        {
            Stated =
            [
                new()
                {
                    Support = "A", Vertical = size, Extreme = extreme, Combination = combination, Case = name,
                },
            ],
        };

        Calculation calculation = CalculationTests.Run(document);
        StatedFigure figure = calculation.Stated.Single();

        Assert.Equal("", figure.Reason);
        Assert.Equal(computed, figure.Comparison!.Value.Computed, 1e-6);
        Assert.Equal(governs, figure.Against!.Governs is Situation situation
            ? string.Join(", ", FieldCheck.Sheet.Findings.SituationWords.Loads(calculation.Beam!, situation, figure.Against.Factors))
            : "");
    }

    [Fact]
    public void StatedMinimumOfTheWrongSense_IsToldWithWhatGoverns() => Assert.Equal(
        [
            "LOW (wrong way): 0.5 kN stated as the vertical reaction of A; computed 0.50 kN down with live on bay 2.",
        ],
        Texts(
            CalculationTests.Run(TwoBays with
            {
                Stated = [new() { Support = "A", Vertical = "0.5 kN", Extreme = "min" }],
            }),
            "stated_low"));

    [Fact]
    public void CaseThatOnlyRolls_IsStatedAsAnExtreme()
    {
        BeamDocument document = Beams.Simple with
        {
            Rolling = [new() { Case = "truck", Axles = [new() { Offset = "0 m", Force = "6 kN" }] }],
        };

        Assert.Equal(
            "the loads of case truck roll; say which end is stated: extreme max or min",
            One(new() { Support = "A", Vertical = "6 kN", Case = "truck" }).Reason);
        Assert.Equal(
            6000,
            One(new() { Support = "A", Vertical = "6 kN", Case = "truck", Extreme = "max" }).Comparison!.Value.Computed,
            1e-6);

        StatedFigure One(StatedEntry row) => CalculationTests.Run(document with { Stated = [row] }).Stated.Single();
    }

    private static string[] Texts(Calculation calculation, string code) =>
        [.. calculation.Messages.Where(message => message.Code == code).Select(message => message.Text)];
}
