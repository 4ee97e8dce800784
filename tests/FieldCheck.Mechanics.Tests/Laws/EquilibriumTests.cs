using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Laws;

/// <summary>Newton: what acts on the beam, and on any part of it, is in balance.</summary>
public sealed class EquilibriumTests
{
    // Reactions are exact to their last digit; summing some dozen of them in doubles costs a few more.
    private const double Rounding = 1e-14;

    [Fact]
    public void LoadsAndReactions_BalanceAboutAnyPoint() => Law.Holds(
        RandomBeam.Stable,
        Gen.Double[-100, 100],
        (model, about) =>
        {
            BeamResponse response = Answer.To(model);
            Scale scale = new(model, response);

            (double right, double up, double moment) = Statics.Resultant(model, response.Reactions, about);

            Law.Equal(0, right, Rounding * scale.Force, "Along");
            Law.Equal(0, up, Rounding * scale.Force, "Across");
            Law.Equal(0, moment, Rounding * (scale.Moment + (scale.Force * Math.Abs(about))), $"About {about}");
        });

    [Fact]
    public void EitherSideOfAnyCut_ForcesAreThoseOfThePartToTheLeft() => Law.Holds(
        RandomBeam.Stable,
        Gen.Double[0, 1],
        (model, share) =>
        {
            BeamResponse response = Answer.To(model);
            Scale scale = new(model, response);
            IEnumerable<double> inside = Probes.Of(model, response).Where(x => x > 0 && x < model.Length);
            foreach (double x in inside.Append(share * model.Length))
            {
                (SectionState left, SectionState right) = response.At(x);
                Agrees(Statics.AtCut(model, response.Reactions, x, Side.Left), left, scale, $"left of {x}");
                Agrees(Statics.AtCut(model, response.Reactions, x, Side.Right), right, scale, $"right of {x}");
            }
        });

    [Fact]
    public void BeyondTheEnds_NothingActs() => Law.Holds(RandomBeam.Stable, model =>
    {
        BeamResponse response = Answer.To(model);

        SectionState before = response.At(0).Left;
        SectionState after = response.At(model.Length).Right;

        Assert.Equal((0.0, 0.0, 0.0), (before.Axial, before.Shear, before.Moment));
        Assert.Equal((0.0, 0.0, 0.0), (after.Axial, after.Shear, after.Moment));
    });

    [Fact]
    public void EndForces_AreThoseOfWhatStandsAtTheEnd() => Law.Holds(RandomBeam.Stable, model =>
    {
        BeamResponse response = Answer.To(model);
        Scale scale = new(model, response);

        Agrees(Statics.AtCut(model, response.Reactions, 0, Side.Right), response.At(0).Right, scale, "at the left end");
        Agrees(
            Statics.AtCut(model, response.Reactions, model.Length, Side.Left),
            response.At(model.Length).Left,
            scale,
            "at the right end");
    });

    [Fact]
    public void Proof_SaysWhatOwnSumsSay() => Law.Holds(RandomBeam.Stable, model =>
    {
        BeamResponse response = Answer.To(model);
        Scale scale = new(model, response);
        ImmutableArray<Reaction> none = [.. response.Reactions.Select(_ => new Reaction(0, 0, 0, null, false))];

        (double right, double up, double moment) = Statics.Resultant(model, none, about: 0);
        EquilibriumProof proof = response.Proof;

        Law.Equal(right, proof.LoadRight, Rounding * scale.Force, "Loads along");
        Law.Equal(-up, proof.LoadDown, Rounding * scale.Force, "Loads down");
        Law.Equal(moment, proof.LoadMoment, Rounding * scale.Moment, "Moment of the loads");
        Law.Equal(-right, proof.ReactionRight, Rounding * scale.Force, "Reactions along");
        Law.Equal(-up, proof.ReactionUp, Rounding * scale.Force, "Reactions up");
        Law.Equal(-moment, proof.ReactionMoment, Rounding * scale.Moment, "Moment of the reactions");
        Assert.InRange(proof.Residual, 0, Rounding);
    });

    private static void Agrees(
        (double Axial, double Shear, double Moment) expected, SectionState actual, Scale scale, string where)
    {
        Law.Equal(expected.Axial, actual.Axial, Rounding * scale.Force, "N " + where);
        Law.Equal(expected.Shear, actual.Shear, Rounding * scale.Force, "V " + where);
        Law.Equal(expected.Moment, actual.Moment, Rounding * scale.Moment, "M " + where);
    }
}
