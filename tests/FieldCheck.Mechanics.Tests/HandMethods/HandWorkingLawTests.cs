using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>Two methods that share only the model come to the same reactions, whatever the beam.</summary>
public sealed class HandWorkingLawTests
{
    /// <summary>Twenty thousand, fewer where fewer draws are asked for.</summary>
    private static readonly int Beams = Math.Min(20_000, 67 * Law.Draws);

    private static readonly Gen<double> Share = Gen.Double[0, 1];

    /// <summary>A third of any kind, a third continuous with settlements and changing sections, a third hinged.</summary>
    private static readonly Gen<BeamModel> Mixed =
        Gen.OneOf(RandomBeam.Stable, HandBeams.Continuous, HandBeams.Hinged);

    [Fact]
    public void TwentyThousandBeams_ReactionsShearAndMomentAreTheSolvers()
    {
        int whole = 0;
        int determinate = 0;
        Mixed.Sample(
            model =>
            {
                HandWorking working = HandAgreement.Work(model);
                if (working.Reach == HandReach.Whole)
                {
                    Interlocked.Increment(ref whole);
                    Interlocked.Add(ref determinate, BeamSolver.DeterminacyOf(model).Total <= 0 ? 1 : 0);
                    BeamResponse response = Answer.To(model);
                    HandAgreement.Holds(model, working, response);
                    HandAgreement.Closes(model, working, response);
                }
            },
            iter: Beams,
            print: BeamText.Of);
        Assert.True(whole > 0.9 * Beams, $"Only {whole} of {Beams} were worked to the end.");
        Assert.True(determinate > 0.04 * Beams, $"Only {determinate} of {Beams} were solved by statics alone.");
    }

    /// <summary>A drawn beam: its load changes sense exactly under a point load, but for rounding.</summary>
    [Fact]
    public void LoadThatChangesItsSenseAtAMark_IsCountedOnce()
    {
        BeamModel model = new(
            [new Span(7.3125, 7443803.013251681, 744380301.3251681)],
            [Support.Fixed(0), Support.Roller(4.75), Support.Fixed(7.3125)],
            [0.25, 7.125],
            [
                new LoadCase(
                    "all",
                    [
                        new Load.Point(0.25, 10250),
                        new Load.Distributed(2.8125, 7.3125, -718.75, 718.75),
                        new Load.Point(5.0625, 10125),
                    ]),
            ],
            [new Combination("all", CombinationBasis.Service, [1.5])]);

        HandAgreement.Closes(model, HandAgreement.Work(model), Answer.To(model));
    }

    [Fact]
    public void MomentsAboutAnyPoint_ReactionsAreTheSame() => Law.Holds(RandomBeam.Stable, Share, (model, share) =>
    {
        HandWorking working = HandAgreement.Work(model, share * model.Length);
        if (working.Reach == HandReach.Whole)
        {
            HandAgreement.Holds(model, working, Answer.To(model));
        }
    });

    [Fact]
    public void SupportsThatActOneWay_WhatIsLeftTouchingGivesTheSolversReactions()
    {
        int met = 0;
        int lifted = 0;
        int same = 0;
        Law.Holds(RandomBeam.OneWayPlain, model =>
        {
            if (new BeamSolver().Solve(model) is not BeamOutcome.Stands stands)
            {
                return;
            }

            BeamResponse response = stands.Combinations[0].Response;
            ImmutableArray<bool> gone = [.. response.Reactions.Select(reaction => reaction.IsLiftedOff)];
            HandWorking tried = HandAgreement.Work(model);
            bool isSame = tried.Reactions.Select(reaction => reaction.HasLetGo).SequenceEqual(gone);
            Interlocked.Increment(ref met);
            Interlocked.Add(ref lifted, gone.Contains(true) ? 1 : 0);
            Interlocked.Add(ref same, isSame && gone.Contains(true) ? 1 : 0);
            HandWorking working = isSame ? tried : HandWorking.Of(model, model.Combinations[0].Factors, lifted: gone);
            if (working.Reach == HandReach.Whole)
            {
                HandAgreement.Holds(model, working, response);
            }
        });
        if (Law.Draws >= 300) // Of fewer draws the shares are a matter of chance.
        {
            Assert.True(lifted > met / 10, $"Only {lifted} of {met} lifted anything.");
            Assert.True(same > lifted / 2, $"Trying came to the answer's supports only {same} times of {lifted}.");
        }
    }
}
