using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

public sealed partial class RollingTests
{
    /// <summary>
    /// Two axles, 50 kN and 30 kN behind it at 2.5 m, on 12 m: worked by hand from the rule that the mid-span halves the
    /// distance between the resultant and the heavier axle, 203.958 kN·m (as in Published/08, ceboard-50-30).
    /// </summary>
    [Fact]
    public void TwoAxlesOnASimpleSpan_MidspanHalvesResultantAndAxle()
    {
        GovernedExtreme peak = Of(Simple(12), Rolling(new Axle(0, 50), new Axle(2.5, 30))).ExtremesOf(Curve.Moment).Max;

        double offset = 30 * 2.5 / 80 / 2;
        double greatest = 80 * (6 - offset) * (6 - offset) / 12;
        Assert.Equal(greatest, peak.Value, 1e-11);
        Assert.Equal(6 - offset, peak.Position, 1e-9);
        Assert.Equal(203.96, peak.Value, 0.005);
    }

    /// <summary>P·l/4 at mid-span; R up to P at a support; V up to P beside it.</summary>
    [Fact]
    public void OneAxleOnASimpleSpan()
    {
        Envelope envelope = Of(Simple(8), Rolling(new Axle(0, 10)));

        Assert.Equal(20, envelope.ExtremesOf(Curve.Moment).Max.Value, 1e-12);
        Assert.Equal(4, envelope.ExtremesOf(Curve.Moment).Max.Position, 1e-12);
        Assert.Equal(0, envelope.ExtremesOf(Curve.Moment).Min.Value);
        Assert.Equal(10, envelope.Reactions[0].Vertical.Max.Value, 1e-12);
        Assert.Equal(0, envelope.Reactions[0].Vertical.Min.Value);
        Assert.Null(envelope.Reactions[0].Vertical.Min.Situation.Rolling);
        Assert.Equal(new RollingPlace(0, 0, false), envelope.Reactions[0].Vertical.Max.Situation.Rolling);
        Assert.Equal(10, envelope.ExtremesOf(Curve.Shear).Max.Value, 1e-11);
        Assert.Equal(0, envelope.ExtremesOf(Curve.Shear).Max.Position, 1e-11);
        Assert.Equal(-10, envelope.ExtremesOf(Curve.Shear).Min.Value, 1e-11);

        // P·l³/48EI.
        Assert.Equal(10 * 512 / 48.0, envelope.ExtremesOf(Curve.Deflection).Max.Value, 1e-9);
        Assert.Equal(EnvelopeCertainty.Exact, envelope.CertaintyOf(Curve.Deflection));
        Assert.Equal(EnvelopeCertainty.Exact, envelope.CertaintyOf(Curve.Moment));
    }

    /// <summary>
    /// One force on two equal spans: the greatest moment is 0.2074·P·l under it at 0.4323 l, the least -0.0962·P·l at the
    /// middle support with the force at l/√3, from M = P·x(l-x)(4l² - x(l+x))/4l³ and -P·x(l²-x²)/4l² (AISC Manual Table
    /// 3-23, two equal spans, concentrated load at any point).
    /// </summary>
    [Fact]
    public void OneAxleOnTwoSpans()
    {
        Envelope envelope = Of(Spans(1, 1), Rolling(new Axle(0, 1)));
        GovernedExtremes moment = envelope.ExtremesOf(Curve.Moment);

        Assert.Equal(-Math.Sqrt(3) / 18, moment.Min.Value, 1e-13);
        Assert.Equal(1, moment.Min.Position, 1e-12);
        Assert.Equal(1 / Math.Sqrt(3), moment.Min.Situation.Rolling!.Position, 1e-7);
        Assert.Equal(0.2074, moment.Max.Value, 5e-5);
        Assert.Equal(0.4323, moment.Max.Position, 1e-4);
        Assert.Equal(-Math.Sqrt(3) / 18, envelope.Reactions[2].Vertical.Min.Value, 1e-13);
    }

    /// <summary>
    /// A standing load and two axles on a simple span: under the left axle 10x(10-x) + 0.3x(18-2x), which turns at
    /// 105.4/21.2.
    /// </summary>
    [Fact]
    public void StandingLoadAndTwoAxles_GreatestUnderOne()
    {
        BeamModel model = Simple(10) with { Cases = [new LoadCase("all", [new Load.Distributed(0, 10, 20, 20)])] };

        GovernedExtreme peak = Of(model, Rolling(new Axle(0, 3), new Axle(2, 3))).ExtremesOf(Curve.Moment).Max;

        Assert.Equal(105.4 * 105.4 / 42.4, peak.Value, 1e-10);
        Assert.Equal(105.4 / 21.2, peak.Position, 1e-6);
    }

    /// <summary>
    /// A load w on the first of three spans 1 and a force P up that is worst on the second: no axle near the section. By
    /// the three-moment equation M at the second support is -w/15 + P(4b(1-b²) - a(1-a²))/15, a and b from the supports of
    /// the second span, worst at 15b² - 6b - 2 = 0; then M = w·x²/2 at x = 1/2 + M₁/w.
    /// </summary>
    [Theory]
    [InlineData(20, 20)]
    [InlineData(0, 40)]
    public void StandingLoadAndAForceUpElsewhere_GreatestAwayFromTheAxle(double start, double end)
    {
        const double Force = 3;
        BeamModel model = Spans(1, 1, 1) with
        {
            Cases = [new LoadCase("all", [new Load.Distributed(0, 1, start, end)])],
        };
        double b = (6 + Math.Sqrt(156)) / 30;
        double a = 1 - b;
        double lift = Force * ((4 * b * (1 - (b * b))) - (a * (1 - (a * a)))) / 15;

        GovernedExtreme peak = Of(model, Rolling(new Axle(0, -Force))).ExtremesOf(Curve.Moment).Max;

        // Uniform: K = w/4; a triangle rising to q at the support: K = 2q/15.
        double first = (start == end ? -start / 15 : -8 * end / 225) + lift;
        double x = start == end ? 0.5 + (first / start) : Math.Sqrt(((end / 6) + first) * 2 / end);
        double greatest = start == end
            ? (start * x * (1 - x) / 2) + (first * x)
            : (end * (x - (x * x * x)) / 6) + (first * x);
        Assert.Equal(greatest, peak.Value, 1e-12);
        Assert.Equal(x, peak.Position, 1e-7);
        Assert.Equal(1 + a, peak.Situation.Rolling!.Position, 1e-6);
    }

    [Fact]
    public void HeadingsBothCount()
    {
        // A light axle in front of a heavy one, on a cantilever held at the left: worst with the heavy one at the tip.
        BeamModel model = Spans(4) with { Supports = [Support.Fixed(0)] };

        Governed moment = Of(model, Rolling(new Axle(0, 1), new Axle(3, 5))).Reactions[0].Moment.Max;
        Governed other = Of(model, Rolling(new Axle(0, 5), new Axle(3, 1))).Reactions[0].Moment.Max;

        Assert.Equal((5 * 4) + (1 * 1), moment.Value, 1e-12);
        Assert.Equal(new RollingPlace(0, 1, false), moment.Situation.Rolling);
        Assert.Equal((5 * 4) + (1 * 1), other.Value, 1e-12);
        Assert.Equal(new RollingPlace(0, 4, true), other.Situation.Rolling);
    }

    [Fact]
    public void AxlesFartherApartThanTheBeam_ComeOneByOne()
    {
        GovernedExtreme peak = Of(Simple(4), Rolling(new Axle(0, 2), new Axle(5, 7))).ExtremesOf(Curve.Moment).Max;

        Assert.Equal(7, peak.Value, 1e-12);
    }

    /// <summary>Both are on the beam for a moment only, when they stand at its ends.</summary>
    [Fact]
    public void AxlesJustAsFarApartAsTheBeamIsLong_CountTogether()
    {
        BeamModel model = Spans(1, 2, 1) with { Supports = [Support.Pin(1), Support.Roller(3)] };

        Governed left = Of(model, Rolling(new Axle(0, 2), new Axle(4, 2))).Reactions[0].Vertical.Max;
        GovernedExtreme hogging = Of(model, Rolling(new Axle(0, 2), new Axle(4, 2))).ExtremesOf(Curve.Moment).Min;
        BeamResponse answer = EnvelopeSearch.Respond(
            Problem(model, Rolling(new Axle(0, 2), new Axle(4, 2))), hogging.Situation, new BeamSolver())!;

        Assert.Equal(3, left.Value, 1e-12);
        Assert.Equal(-2, hogging.Value, 1e-12);
        Assert.Equal(-2, answer.ExtremesOf(Curve.Moment).Min.Value, 1e-12);
    }

    [Fact]
    public void AnAxleJustOffAFreeEnd_IsNamedJustOff()
    {
        // The front axle on the overhang lifts A; A is worst when it has just rolled off the tip.
        BeamModel model = Spans(4, 2) with { Supports = [Support.Pin(0), Support.Roller(4)] };
        EnvelopeProblem problem = Problem(model, Rolling(new Axle(0, 10), new Axle(5, 40)));

        Governed right = Assert.Single(EnvelopeSearch.Find(problem, new BeamSolver())).Reactions[0].Vertical.Max;
        BeamResponse answer = EnvelopeSearch.Respond(problem, right.Situation, new BeamSolver())!;

        Assert.Equal(right.Value, answer.Reactions[0].Vertical, 1e-9);
    }

    /// <summary>
    /// Between a hinge and a fixed end V does not change with the place, so that rounding puts its turn anywhere, on the end
    /// itself too: the place named still is the one just beside the section, where V holds.
    /// </summary>
    [Fact]
    public void AnAxleBetweenAHingeAndAFixedEnd_IsNamedOnTheSideWhereShearHolds()
    {
        Assert.All(
            Enumerable.Range(1, 60),
            step =>
            {
                double last = 1 + step / 16.0;
                double end = 2.1875 + last;
                BeamModel model = new(
                    [
                        new Span(1.25, 100, 1),
                        new Span(0.9375, 8.984479491527358, 1, 4.985106244585526),
                        new Span(last, 0.8196828917220315, 1),
                    ],
                    [
                        new Support(0, Restraint.Held, Restraint.Held, Restraint.Held),
                        Support.Roller(1.25),
                        new Support(end, Restraint.Held, Restraint.Held, Restraint.Held),
                    ],
                    [end - 0.6 * last],
                    [new LoadCase("all", [])],
                    [new Combination("all", CombinationBasis.Service, [1])]);
                EnvelopeProblem problem = Problem(model, Rolling(new Axle(0, 20000)));

                GovernedExtreme least =
                    EnvelopeSearch.Find(problem, new BeamSolver())[0].ExtremesOf(Curve.Shear, end - last, end).Min;
                BeamResponse answer = EnvelopeSearch.Respond(problem, least.Situation, new BeamSolver())!;

                Assert.Equal(-20000, least.Value, 1e-6);
                Assert.Equal(-20000, answer.At(end).Left.Shear, 1e-2);
            });
    }

    [Fact]
    public void UnsortedAndWeightlessAxles_ChangeNothing()
    {
        Envelope plain = Of(Spans(3, 4), Rolling(new Axle(0, 5), new Axle(1, 2), new Axle(2.5, 8)));
        Envelope mixed = Of(
            Spans(3, 4),
            Rolling(new Axle(2.5, 8), new Axle(0.5, 0), new Axle(0, 5), new Axle(1, 1), new Axle(1, 1), new Axle(9, 0)));

        foreach (Figure figure in Figure.All(Spans(3, 4)))
        {
            Assert.Equal(figure.Greatest(plain).Value, figure.Greatest(mixed).Value, 1e-12);
            Assert.Equal(figure.Least(plain).Value, figure.Least(mixed).Value, 1e-12);
        }
    }

    [Fact]
    public void ImpactAndFactor_CountOnTheForcesOnly()
    {
        BeamModel model = Simple(4) with
        {
            Cases = [new LoadCase("live", [new Load.Point(2, 3)])],
            Combinations = [new Combination("all", CombinationBasis.Factored, [1.5])],
        };

        GovernedExtreme peak =
            Of(model, new RollingLoad("cart", 0, [new Axle(0, 4)], Impact: 0.25)).ExtremesOf(Curve.Moment).Max;

        Assert.Equal(1.5 * (3 + (1.25 * 4)), peak.Value, 1e-12);
    }

    [Fact]
    public void SeveralRollingLoads_ComeOneAtATime()
    {
        EnvelopeProblem problem = new(
            Simple(4), [], [Rolling(new Axle(0, 4)), Rolling(new Axle(0, 3), new Axle(0.5, 3))]);

        GovernedExtreme peak = Assert.Single(EnvelopeSearch.Find(problem, new BeamSolver())).ExtremesOf(Curve.Moment).Max;

        Assert.Equal(1, peak.Situation.Rolling!.Rolling);
        Assert.Equal(6 * 1.875 * 1.875 / 4, peak.Value, 1e-12);
    }

    [Fact]
    public void AForceUp_GivesWhatAForceDownGivesTurnedOver()
    {
        Envelope down = Of(Spans(3, 4), Rolling(new Axle(0, 5), new Axle(1, 2)));
        Envelope up = Of(Spans(3, 4), Rolling(new Axle(0, -5), new Axle(1, -2)));

        foreach (Figure figure in Figure.All(Spans(3, 4)))
        {
            Assert.Equal(figure.Greatest(down).Value, -figure.Least(up).Value, 1e-10);
        }
    }

    [Fact]
    public void Mirrored_TheEnvelopeIsTheMirrorImage()
    {
        RollingLoad rolling = Rolling(new Axle(0, 4), new Axle(1.5, 9));
        BeamModel model = Spans(3, 5, 2) with
        {
            Supports = [Support.Pin(0), Support.Roller(3), Support.Roller(8)],
            Cases = [new LoadCase("all", [new Load.Distributed(1, 4, 1, 3)])],
        };
        BeamModel mirrored = Spans(2, 5, 3) with
        {
            Supports = [Support.Roller(2), Support.Roller(7), Support.Pin(10)],
            Cases = [new LoadCase("all", [new Load.Distributed(6, 9, 3, 1)])],
        };

        Envelope one = Of(model, rolling);
        Envelope other = Of(mirrored, rolling);

        for (int i = 0; i < 3; i++)
        {
            Assert.Equal(one.Reactions[i].Vertical.Max.Value, other.Reactions[2 - i].Vertical.Max.Value, 1e-11);
            Assert.Equal(one.Reactions[i].Vertical.Min.Value, other.Reactions[2 - i].Vertical.Min.Value, 1e-11);
        }

        Assert.Equal(one.ExtremesOf(Curve.Moment).Max.Value, other.ExtremesOf(Curve.Moment).Max.Value, 1e-11);
        Assert.Equal(one.ExtremesOf(Curve.Moment).Min.Value, other.ExtremesOf(Curve.Moment).Min.Value, 1e-11);
        Assert.Equal(one.ExtremesOf(Curve.Shear).Max.Value, -other.ExtremesOf(Curve.Shear).Min.Value, 1e-11);
    }

    [Fact]
    public void OneFactorisation_ServesRollingLoadsToo()
    {
        BeamSolver solver = new();

        Envelope envelope = EnvelopeSearch.Find(
            Problem(Spans(3, 4, 3), Rolling(new Axle(0, 5), new Axle(1, 2))), solver)[0];
        envelope.ExtremesOf(Curve.Moment);
        envelope.ExtremesOf(Curve.Deflection);

        Assert.Equal(1, solver.Factorisations);
    }

    [Fact]
    public void RollingLoadWithoutAxles_IsRefused() => Assert.Throws<ArgumentException>(() => Rolling());

    private static Envelope Of(BeamModel model, RollingLoad rolling) =>
        Assert.Single(EnvelopeSearch.Find(Problem(model, rolling), new BeamSolver()));

    private static EnvelopeProblem Problem(BeamModel model, RollingLoad rolling) => new(model, [], [rolling]);

    private static RollingLoad Rolling(params ImmutableArray<Axle> axles) => new("train", 0, axles);

    private static BeamModel Simple(double length) => Spans(length);

    private static BeamModel Spans(params double[] lengths)
    {
        double[] ends = [.. Enumerable.Range(1, lengths.Length).Select(k => lengths.Take(k).Sum())];
        return new BeamModel(
            [.. lengths.Select(length => new Span(length, 1, 1))],
            [Support.Pin(0), .. ends.Select(end => Support.Roller(end))],
            [],
            [new LoadCase("all", [])],
            [new Combination("all", CombinationBasis.Service, [1])]);
    }
}
