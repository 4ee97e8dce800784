using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>Envelopes of patterns and combinations on beams of every kind, against every pattern one by one.</summary>
public sealed class PatternLawTests
{
    private const double Near = 1e-9;

    private static readonly BeamSolver Solver = new();

    /// <summary>Beams of every kind; one or both cases in patterns; three combinations of two bases.</summary>
    private static readonly Gen<EnvelopeProblem> Problems =
        from model in RandomBeam.Stable
        from kind in Gen.Int[0, 2]
        from factors in Gen.Int[-8, 8].Select(n => n / 4.0).Array[4]
        let problem = new EnvelopeProblem(
            model with
            {
                Combinations =
                [
                    new Combination("plain", CombinationBasis.Service, [1, 1]),
                    new Combination("other", CombinationBasis.Service, [factors[0], factors[1]]),
                    new Combination("factored", CombinationBasis.Factored, [factors[2], factors[3]]),
                ],
            },
            kind switch { 0 => [0], 1 => [1], _ => [0, 1] },
            [])
        where problem.Model.Supports.Any(one => one.Across is not Restraint.None) && EveryPattern.CountOf(problem) <= 7
        select problem;

    [Fact]
    public void Envelope_IsTheBestOfEveryPattern() => Holds(problem =>
    {
        foreach (Envelope envelope in EnvelopeSearch.Find(problem, Solver))
        {
            BeamResponse[] answers = [.. EveryPattern.Of(problem, envelope.Basis).SelectMany(AnswersTo)];
            foreach (Figure figure in Figure.All(problem.Model))
            {
                double most = answers.Max(figure.GreatestOf);
                double least = answers.Min(figure.LeastOf);
                double size = SizeOf(figure, problem.Model, answers);
                Law.Equal(most, figure.Greatest(envelope).Value, Near * size, $"greatest {figure.Name}");
                Law.Equal(least, figure.Least(envelope).Value, Near * size, $"least {figure.Name}");
            }
        }
    });

    [Fact]
    public void WhatGoverns_GivesTheValue() => Holds(problem =>
    {
        foreach (Envelope envelope in EnvelopeSearch.Find(problem, Solver))
        {
            foreach (Figure figure in Figure.All(problem.Model))
            {
                (double value, Situation situation) = figure.Greatest(envelope);
                BeamResponse answer = EnvelopeSearch.Respond(problem, situation, Solver)!;
                double size = SizeOf(figure, problem.Model, [answer, .. AnswersTo(problem.Model)]);
                Law.Equal(figure.GreatestOf(answer), value, Near * size, $"greatest {figure.Name}");

                (value, situation) = figure.Least(envelope);
                answer = EnvelopeSearch.Respond(problem, situation, Solver)!;
                size = SizeOf(figure, problem.Model, [answer, .. AnswersTo(problem.Model)]);
                Law.Equal(figure.LeastOf(answer), value, Near * size, $"least {figure.Name}");
            }
        }
    });

    [Fact]
    public void Peak_StandsWhereItIsSaidTo() => Holds(problem =>
    {
        foreach (Envelope envelope in EnvelopeSearch.Find(problem, Solver))
        {
            foreach (Curve curve in Envelope.Curves)
            {
                GovernedExtreme peak = envelope.ExtremesOf(curve).Max;
                BeamResponse answer = EnvelopeSearch.Respond(problem, peak.Situation, Solver)!;
                (SectionState left, SectionState right) = answer.At(peak.Position);
                double there = Math.Max(
                    peak.Position > 0 ? Answer.Of(curve, left) : double.NegativeInfinity,
                    peak.Position < problem.Model.Length ? Answer.Of(curve, right) : double.NegativeInfinity);
                Law.Equal(peak.Value, there, Near * SizeOf(Figure.Along(curve), problem.Model, [answer, .. AnswersTo(problem.Model)]), $"{curve}");
            }
        }
    });

    [Fact]
    public void Band_HoldsEveryPatternAtEveryPlaceAndIsReached() => Holds(problem =>
    {
        Envelope envelope = EnvelopeSearch.Find(problem, Solver)[0];
        BeamResponse[] answers = [.. EveryPattern.Of(problem, envelope.Basis).SelectMany(AnswersTo)];
        double[] places = Probes.Dense(problem.Model, answers[^1], inEach: 2);
        foreach (Curve curve in Envelope.Curves)
        {
            ImmutableArray<EnvelopeBand> band = envelope.BandAt(curve, places);
            double size = new Scale(problem.Model, answers).Of(curve);
            for (int i = 1; i + 1 < places.Length; i++)
            {
                double[] there = [.. answers.Select(one => one.At(places[i]))
                    .SelectMany(both => new[] { Answer.Of(curve, both.Left), Answer.Of(curve, both.Right) })];
                Law.Equal(there.Max(), band[i].Max, Near * size, $"greatest {curve} at {places[i]}");
                Law.Equal(there.Min(), band[i].Min, Near * size, $"least {curve} at {places[i]}");
            }
        }
    });

    [Fact]
    public void WhatGovernsAtAPlace_GivesTheEdgeOfTheBandThere() => Holds(problem =>
    {
        foreach (Envelope envelope in EnvelopeSearch.Find(problem, Solver))
        {
            foreach (Curve curve in Envelope.Curves)
            {
                for (double place = 0.19 * problem.Model.Length; place < problem.Model.Length; place += 0.31 * problem.Model.Length)
                {
                    GovernedRange range = envelope.GovernedAt(curve, place);
                    EnvelopeBand band = envelope.BandAt(curve, [place])[0];
                    BeamResponse most = EnvelopeSearch.Respond(problem, range.Max.Situation, Solver)!;
                    BeamResponse least = EnvelopeSearch.Respond(problem, range.Min.Situation, Solver)!;
                    double size = Near * SizeOf(Figure.Along(curve), problem.Model, [most, least, .. AnswersTo(problem.Model)]);
                    Law.Equal(band.Max, range.Max.Value, size, $"greatest {curve} at {place}");
                    Law.Equal(band.Min, range.Min.Value, size, $"least {curve} at {place}");
                    Law.Equal(band.Max, Both(most, curve, place).Max(), size, $"answer to the greatest {curve} at {place}");
                    Law.Equal(band.Min, Both(least, curve, place).Min(), size, $"answer to the least {curve} at {place}");
                }
            }
        }
    });

    private static double[] Both(BeamResponse response, Curve curve, double place) =>
        [Answer.Of(curve, response.At(place).Left), Answer.Of(curve, response.At(place).Right)];

    [Fact]
    public void AddingACombination_OnlyWidensTheEnvelope() => Holds(problem =>
    {
        BeamModel fewer = problem.Model with { Combinations = problem.Model.Combinations.RemoveAt(1) };
        Envelope narrow = EnvelopeSearch.Find(new EnvelopeProblem(fewer, problem.PatternCases, []), Solver)[0];
        Envelope wide = EnvelopeSearch.Find(problem, Solver)[0];
        foreach (Figure figure in Figure.All(problem.Model))
        {
            double size = Near * (Math.Abs(figure.Greatest(wide).Value) + Math.Abs(figure.Least(wide).Value));
            Assert.True(figure.Greatest(wide).Value >= figure.Greatest(narrow).Value - size, figure.Name);
            Assert.True(figure.Least(wide).Value <= figure.Least(narrow).Value + size, figure.Name);
        }
    });

    private static void Holds(Action<EnvelopeProblem> law) => Problems.Sample(
        law, iter: Math.Max(1, Law.Draws / 3), threads: 1, print: problem => BeamText.Of(problem.Model));

    private static BeamResponse[] AnswersTo(BeamModel model) =>
        [.. ((BeamOutcome.Stands)Solver.Solve(model)).Combinations.Select(one => one.Response)];

    private static double SizeOf(Figure figure, BeamModel model, BeamResponse[] answers) =>
        figure.SizeOn(new Scale(model, answers));
}
