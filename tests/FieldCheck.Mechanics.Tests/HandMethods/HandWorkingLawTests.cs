using CsCheck;
using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>Two methods that share only the model come to the same reactions, whatever the beam.</summary>
public sealed class HandWorkingLawTests
{
    private static readonly Gen<double> Share = Gen.Double[0, 1];

    [Fact]
    public void AnyBeamThatStands_ReactionsShearAndMomentAreTheSolvers()
    {
        int whole = 0;
        Law.Holds(RandomBeam.Stable, model =>
        {
            HandWorking working = HandAgreement.Work(model);
            if (working.Reach == HandReach.Whole)
            {
                Interlocked.Increment(ref whole);
                BeamResponse response = Answer.To(model);
                HandAgreement.Holds(model, working, response);
                HandAgreement.Closes(model, working, response);
            }
        });
        Assert.True(whole > Law.Draws / 8, $"Only {whole} of {Law.Draws} were worked to the end.");
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
}
