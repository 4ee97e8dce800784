using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>What envelopes say to what they are not made for, and factors that are not one.</summary>
public sealed class EnvelopeRefusalsTests
{
    [Fact]
    public void WhatIsNotThere_IsRefused()
    {
        EnvelopeProblem problem = new(Model(1), [], []);
        Envelope envelope = EnvelopeSearch.Find(problem, new BeamSolver())[0];
        Situation situation = envelope.Reactions[0].Vertical.Max.Situation;

        Says("A stretch must run from node to node.", () => envelope.ExtremesOf(Curve.Moment, 0, 3));
        Says("Must lie on the beam.", () => envelope.GovernedAt(Curve.Moment, -0.1));
        Says("Must lie on the beam.", () => envelope.GovernedAt(Curve.Moment, 4.1));
        Says("Must lie on the beam.", () => envelope.GovernedAt(Curve.Moment, double.NaN));
        Says("It has no envelope.", () => envelope.GovernedAt(Curve.Slope, 1));
        Assert.Throws<ArgumentNullException>("problem", () => EnvelopeSearch.Find(null!, new BeamSolver()));
        Assert.Throws<ArgumentNullException>("solver", () => EnvelopeSearch.Find(problem, null!));
        Assert.Throws<ArgumentNullException>("problem", () => EnvelopeSearch.Respond(null!, situation, new BeamSolver()));
        Assert.Throws<ArgumentNullException>("situation", () => EnvelopeSearch.Respond(problem, null!, new BeamSolver()));
        Assert.Throws<ArgumentNullException>("solver", () => EnvelopeSearch.Respond(problem, situation, null!));
        Assert.Throws<ArgumentNullException>("model", () => Bays.Of(null!));
        Assert.Throws<ArgumentException>("PatternCases", () => new EnvelopeProblem(Model(1), default, []));
        Assert.Throws<ArgumentException>("Rolling", () => new EnvelopeProblem(Model(1), [], default));

        static void Says(string what, Func<object> asked) =>
            Assert.StartsWith(what, Assert.Throws<ArgumentOutOfRangeException>(asked).Message, StringComparison.Ordinal);
    }

    /// <summary>An axle of 5 N on 4 m: P up to the support, P·l/4 and P·l³/48EI, EI = 1, times the factor; up where it is negative.</summary>
    [Theory]
    [InlineData(3)]
    [InlineData(0.25)]
    [InlineData(-2)]
    public void Factor_MultipliesWhatRolls(double factor)
    {
        Envelope envelope = Assert.Single(EnvelopeSearch.Find(
            new EnvelopeProblem(Model(factor), [], [new RollingLoad("axle", 0, [new Axle(0, 5)])]), new BeamSolver()));

        double down = Math.Max(0, 5 * factor);
        double up = Math.Min(0, 5 * factor);
        Assert.Equal((down, up), (envelope.Reactions[0].Vertical.Max.Value, envelope.Reactions[0].Vertical.Min.Value));
        Assert.Equal(down, envelope.ExtremesOf(Curve.Moment).Max.Value, 1e-12);
        Assert.Equal(up, envelope.ExtremesOf(Curve.Moment).Min.Value, 1e-12);
        Assert.Equal(down * 64 / 48, envelope.ExtremesOf(Curve.Deflection).Max.Value, 1e-9);
        Assert.Equal(up * 64 / 48, envelope.ExtremesOf(Curve.Deflection).Min.Value, 1e-9);
        Assert.Equal(down, envelope.GovernedAt(Curve.Moment, 2).Max.Value, 1e-12);
        Assert.Equal(up * 0.75, envelope.GovernedAt(Curve.Moment, 1).Min.Value, 1e-12);
        Assert.Equal(factor < 0 ? null : new RollingPlace(0, 2, false), envelope.GovernedAt(Curve.Moment, 2).Max.Situation.Rolling);
        Assert.Equal(EnvelopeCertainty.Exact, envelope.CertaintyOf(Curve.Deflection));
    }

    /// <summary>A load that stands always, behind a hinge: what it does begins there, and is that of one answer.</summary>
    [Fact]
    public void LoadBehindAHinge_CountsWhereItIs()
    {
        BeamModel model = LiftedBeams.Hinged().Model with
        {
            Supports = [Support.Pin(0), Support.Roller(6), Support.Roller(9), Support.Roller(11)],
            Cases = [new LoadCase("all", [new Load.Distributed(7, 11, 3, 2)]), new LoadCase("left", [new Load.Point(2, 4)])],
            Combinations = [new Combination("all", CombinationBasis.Service, [1, 2])],
        };
        BeamResponse answer = Answer.To(model);

        Envelope envelope = Assert.Single(EnvelopeSearch.Find(new EnvelopeProblem(model, [], []), new BeamSolver()));

        foreach (Figure figure in Figure.All(model))
        {
            Assert.Equal(figure.GreatestOf(answer), figure.Greatest(envelope).Value, 1e-12);
            Assert.Equal(figure.LeastOf(answer), figure.Least(envelope).Value, 1e-12);
        }

        foreach (double place in new[] { 2, 6, 8.5, 9 })
        {
            (SectionState left, SectionState right) = answer.At(place);
            Assert.Equal(Math.Max(left.Shear, right.Shear), envelope.GovernedAt(Curve.Shear, place).Max.Value, 1e-12);
            Assert.Equal(Math.Min(left.Shear, right.Shear), envelope.GovernedAt(Curve.Shear, place).Min.Value, 1e-12);
        }
    }

    private static BeamModel Model(double factor) => new(
        [new Span(4, 1, 1)],
        [Support.Pin(0), Support.Roller(4)],
        [],
        [new LoadCase("all", [])],
        [new Combination("all", CombinationBasis.Service, [factor])]);
}
