using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Checks;

/// <summary>
/// Finds which slip would explain stated reactions that differ from the computed ones. It keeps its working memory
/// from one search to the next; one instance a thread.
/// </summary>
/// <remarks>
/// Every slip of a fixed catalogue is worked out and held against the figures; it is told where every figure is within
/// what it was rounded by. Method, catalogue and what it cannot know: docs/methods.md.
/// </remarks>
public sealed class ExplanationSearch
{
    private readonly BeamSolver _solver = new();
    private readonly StiffnessMethod _method = new();

    /// <summary>Looks for explanations.</summary>
    /// <param name="stated">The figures, their combination and the beam.</param>
    /// <exception cref="ArgumentException">There is no figure, or an index or a count does not suit the model.</exception>
    public Diagnosis Explain(StatedSet stated)
    {
        ArgumentNullException.ThrowIfNull(stated);
        Check(stated);
        if (ExplanationBeam.Of(stated, _solver, _method) is not { } beam)
        {
            return new Diagnosis.NotComputed();
        }

        if (beam.Fit.Worst(beam.Computed) <= 1)
        {
            return new Diagnosis.Agrees();
        }

        ImmutableArray<Explanation> told = ExplanationsOf(beam);
        return new Diagnosis.Differs(told, DifferenceOf(beam))
        {
            FalseClaimRate = told.Any(one => !one.IsFitted)
                ? FalseClaims.Rate(stated.Figures.Length, DigitsOf(stated))
                : null,
            IsEverySlipTried = beam.IsAllSolved,
        };
    }

    private static ImmutableArray<Explanation> ExplanationsOf(ExplanationBeam beam)
    {
        ExplanationList found = new(beam.Fit);
        new ExplanationFactors(beam, found).Try();
        ExplanationUnits.Try(beam, found);
        ExplanationModels.Try(beam, found);
        ExplanationOneLoad.Try(beam, found);
        ExplanationLoadUnits.Try(beam, found);
        ExplanationBays.Try(beam, found);
        ExplanationFitted.Try(beam, found);
        return found.Ranked();
    }

    private static StatedDifference DifferenceOf(ExplanationBeam beam)
    {
        ImmutableArray<ReactionFigure> figures = beam.Stated.Figures;
        ImmutableArray<double> each = [.. figures.Select((figure, index) => figure.Value - beam.Computed[index])];
        double vertical = 0;
        double turning = 0;
        for (int i = 0; i < each.Length; i++)
        {
            double position = beam.Model.Supports[figures[i].Support].Position;
            vertical += figures[i].Part == ReactionPart.Vertical ? each[i] : 0;
            turning += figures[i].Part switch
            {
                ReactionPart.Vertical => each[i] * position,
                ReactionPart.Moment => each[i],
                _ => 0,
            };
        }

        bool isSplitOnly = beam.Fit.HasEveryVertical && beam.Fit.CouldFit(0);
        bool isWhole = beam.Fit.HasEveryVertical
            && beam.Fit.HasEvery(ReactionPart.Moment, support => support.Rotation is not Restraint.None);
        return new StatedDifference(
            each,
            beam.Fit.HasEveryVertical ? vertical : null,
            isWhole && !isSplitOnly ? turning / vertical : null,
            isSplitOnly);
    }

    /// <summary>To how many digits the greatest figure is written.</summary>
    private static int DigitsOf(StatedSet stated)
    {
        ReactionFigure greatest = stated.Figures.MaxBy(figure => Math.Abs(figure.Value))!;
        double units = Math.Abs(greatest.Value) / (2 * greatest.HalfDigit);
        return units is >= 1 and < 1e9 ? 1 + (int)Math.Log10(units + 0.5) : units < 1 ? 1 : 9;
    }

    private static void Check(StatedSet stated)
    {
        BeamModel model = stated.Model;
        Require.NotEmpty(stated.Figures);
        Require.That(
            stated.Factors.Length == model.Cases.Length, "There must be one factor for each case.", nameof(stated));
        Require.That(
            stated.Figures.All(figure => figure.Support >= 0 && figure.Support < model.Supports.Length),
            "Every figure must be of a support of the model.",
            nameof(stated));
        Require.That(
            stated.UncountedWeight.IsEmpty || stated.UncountedWeight.Length == model.Spans.Length,
            "There must be one weight for each span, or none.",
            nameof(stated));
        Require.That(
            stated.PermanentCases.All(one => one >= 0 && one < model.Cases.Length),
            "Permanent cases must be cases of the model.",
            nameof(stated));
    }
}
