using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>Envelopes with rolling loads on beams of every kind, against loads set down anywhere.</summary>
public sealed class RollingLawTests
{
    private const double Near = 1e-9;

    /// <summary>Where proving a deflection would take too long it is named an estimate; none is known to be off by more.</summary>
    private const double NearEstimate = 1e-3;

    /// <summary>An axle stands this share of the beam beside a section where V jumps.</summary>
    private const double Aside = 3e-9;

    /// <summary>
    /// How steep the influence of a force on V is at most, over the shortest stretch between two nodes: 3 at a fixed end, more
    /// beside a stretch that turns stiffly.
    /// </summary>
    private const double Steepness = 6;

    private static readonly BeamSolver Solver = new();

    private static readonly Gen<RollingLoad> Rolling =
        from offsets in Gen.Int[0, 100].Array[1, 4]
        from forces in Gen.Int[-2, 8].Array[offsets.Length]
        from loadCase in Gen.Int[1, 2]
        from impact in Gen.Int[0, 2]
        select new RollingLoad(
            "train",
            loadCase,
            [.. offsets.Select((offset, i) => new Axle(i == 0 ? 0 : offset * RandomBeam.Grid, 2500.0 * forces[i]))],
            impact / 4.0);

    /// <summary>Beams of every kind, one case in patterns, a case for rolling loads only, two bases.</summary>
    private static readonly Gen<EnvelopeProblem> Problems =
        from model in RandomBeam.Stable
        from rolling in Rolling.Array[1, 2]
        from hasPattern in Gen.Bool
        from hasStanding in Gen.Bool
        from factors in Gen.Int[-4, 8].Select(n => n / 4.0).Array[6]
        let cases = model.Cases.Add(new LoadCase("traffic", []))
        let problem = new EnvelopeProblem(
            model with
            {
                Cases = hasStanding ? cases : [.. cases.Select(one => one with { Loads = [] })],
                Combinations =
                [
                    new Combination("plain", CombinationBasis.Service, [1, 1, 1]),
                    new Combination("other", CombinationBasis.Service, [.. factors[..3]]),
                    new Combination("factored", CombinationBasis.Factored, [.. factors[3..]]),
                ],
            },
            hasPattern ? [0] : [],
            [.. rolling])
        where problem.Model.Supports.Any(one => one.Across is not Restraint.None) && EveryPattern.CountOf(problem) <= 2
        select problem;

    [Fact]
    public void NoPlace_IsWorse() => Problems.Sample(
        problem =>
        {
            foreach (Envelope envelope in EnvelopeSearch.Find(problem, Solver))
            {
                BeamModel[] patterns = [.. EveryPattern.Of(problem, envelope.Basis)];
                BeamResponse[] answers =
                [
                    .. patterns.Concat(
                            from place in EveryPlace.Steps(problem, 30)
                            from pattern in patterns
                            select EveryPlace.With(pattern, problem, place))
                        .SelectMany(AnswersTo),
                ];
                Scale scale = new(problem.Model, answers);
                foreach (Figure figure in Figure.All(problem.Model))
                {
                    bool isEstimate = figure.Name.StartsWith(nameof(Curve.Deflection), StringComparison.Ordinal)
                        && envelope.CertaintyOf(Curve.Deflection) == EnvelopeCertainty.Estimate;
                    double near = figure.SizeOn(scale) * (isEstimate ? NearEstimate : NearOf(figure, problem.Model));
                    double most = answers.Max(figure.GreatestOf);
                    double least = answers.Min(figure.LeastOf);
                    Assert.True(
                        most <= figure.Greatest(envelope).Value + near,
                        $"{figure.Name}: {most:R} was found, {figure.Greatest(envelope).Value:R} said to be the greatest");
                    Assert.True(
                        least >= figure.Least(envelope).Value - near,
                        $"{figure.Name}: {least:R} was found, {figure.Least(envelope).Value:R} said to be the least");
                }
            }
        },
        iter: Math.Max(1, Law.Draws / 6),
        threads: 1,
        print: Print);

    [Fact]
    public void WhatGoverns_GivesTheValueInItsPlace() => Problems.Sample(
        problem =>
        {
            foreach (Envelope envelope in EnvelopeSearch.Find(problem, Solver))
            {
                foreach (Figure figure in Figure.All(problem.Model))
                {
                    double size = Math.Abs(figure.Greatest(envelope).Value) + Math.Abs(figure.Least(envelope).Value);
                    Gives(problem, figure, figure.Greatest(envelope), figure.GreatestOf, size, "greatest");
                    Gives(problem, figure, figure.Least(envelope), figure.LeastOf, size, "least");
                }

                foreach (Curve curve in Envelope.Curves)
                {
                    GovernedExtreme peak = envelope.ExtremesOf(curve).Max;
                    BeamResponse answer = EnvelopeSearch.Respond(problem, peak.Situation, Solver)!;

                    // Just beside an axle the peak may be a limit, which the very place does not show.
                    double beside = 1e-10 * problem.Model.Length;
                    double band = envelope
                        .BandAt(
                            curve,
                            [
                                peak.Position,
                                Math.Max(0, peak.Position - beside),
                                Math.Min(problem.Model.Length, peak.Position + beside),
                            ])
                        .Max(one => one.Max);
                    double size = Near
                        * (new Scale(problem.Model, answer).Of(curve) + Math.Abs(envelope.ExtremesOf(curve).Min.Value));
                    bool isEstimate = envelope.CertaintyOf(curve) == EnvelopeCertainty.Estimate;
                    Assert.True(!isEstimate || curve == Curve.Deflection, $"{curve} is no estimate");
                    Law.Equal(
                        peak.Value, band, 10 * size + (isEstimate ? NearEstimate * Math.Abs(band) : 0), $"{curve} in the band");
                }
            }
        },
        iter: Math.Max(1, Law.Draws / 3),
        threads: 1,
        print: Print);

    [Fact]
    public void WhatGovernsAtAPlace_GivesTheEdgeOfTheBandThere() => Problems.Sample(
        problem =>
        {
            foreach (Envelope envelope in EnvelopeSearch.Find(problem, Solver))
            {
                double place = 0.43 * problem.Model.Length;
                GovernedRange range = envelope.GovernedAt(Curve.Moment, place);
                EnvelopeBand band = envelope.BandAt(Curve.Moment, [place])[0];
                foreach ((Governed governed, double edge) in new[] { (range.Max, band.Max), (range.Min, band.Min) })
                {
                    BeamResponse answer = EnvelopeSearch.Respond(problem, governed.Situation, Solver)!;
                    double size = Near * new Scale(problem.Model, [answer, .. AnswersTo(problem.Model)]).Of(Curve.Moment);
                    double[] there =
                        [Answer.Of(Curve.Moment, answer.At(place).Left), Answer.Of(Curve.Moment, answer.At(place).Right)];
                    Law.Equal(edge, governed.Value, size, "value");
                    Assert.Contains(there, value => Math.Abs(value - edge) <= size);
                }
            }
        },
        iter: Math.Max(1, Law.Draws / 3),
        threads: 1,
        print: Print);

    private static void Gives(
        EnvelopeProblem problem,
        Figure figure,
        (double Value, Situation Situation) governed,
        Func<BeamResponse, double> value,
        double size,
        string name)
    {
        BeamResponse answer = EnvelopeSearch.Respond(problem, governed.Situation, Solver)!;
        size += figure.SizeOn(new Scale(problem.Model, [answer, .. AnswersTo(problem.Model)]));
        Law.Equal(
            value(answer),
            governed.Value,
            NearOf(figure, problem.Model) * size,
            $"{name} {figure.Name}, {governed.Situation.Rolling}");
    }

    private static double NearOf(Figure figure, BeamModel model) => figure.Name.Split(' ')[0] switch
    {
        nameof(Curve.Shear) => Near + Steepness * Aside * model.Length / ShortestStretch(model),
        _ => Near,
    };

    private static double ShortestStretch(BeamModel model)
    {
        ImmutableArray<double> nodes = model.NodePositions();
        return nodes.Skip(1).Zip(nodes, (right, left) => right - left).Min();
    }

    private static BeamResponse[] AnswersTo(BeamModel model) =>
        [.. ((BeamOutcome.Stands)Solver.Solve(model)).Combinations.Select(one => one.Response)];

    private static string Print(EnvelopeProblem problem) => string.Create(
        CultureInfo.InvariantCulture,
        $"pattern {problem.PatternCases.Length}\n{string.Join("\n", problem.Rolling.Select(Print))}\n{BeamText.Of(problem.Model)}");

    private static string Print(RollingLoad load) => string.Create(
        CultureInfo.InvariantCulture,
        $"case {load.Case} impact {load.Impact} axles {string.Join("; ", load.Axles.Select(axle => $"{axle.Offset} {axle.Down}"))}");
}
