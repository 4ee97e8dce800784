using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Checks.Slips;

/// <summary>How correct figures fared over many beams, each written to 1 to 4 digits.</summary>
/// <param name="Drawn">Beams.</param>
/// <param name="Figures">Their figures.</param>
/// <param name="Wrong">Of the figures: low or high with a tolerance of nothing, beside rounding.</param>
/// <param name="Explained">Of the beams: the figures as a whole do not count as agreeing.</param>
internal sealed record CorrectTally(int Drawn, int Figures, int Wrong, int Explained)
{
    /// <summary>What was called wrong that is not.</summary>
    internal int Called => Wrong + Explained;

    /// <summary>Draws beams of 1 to 4 spans.</summary>
    /// <param name="beams">How many.</param>
    /// <param name="seed">What the draws begin with.</param>
    internal static CorrectTally Of(int beams, int seed)
    {
        Random random = new(seed);
        BeamSolver solver = new();
        ExplanationSearch search = new();
        CorrectTally tally = new(0, 0, 0, 0);
        for (int i = 0; i < beams; i++)
        {
            SlipBeam beam = SlipBeams.Draw(random, 1 + i % 4);
            double[] figures = beam.Figures(solver)!;
            StatedSet stated = beam.Stated(figures, digits: 1 + i / 4 % 4);
            double load = LoadSizes.Total(stated.Model, stated.Factors);
            tally = new CorrectTally(
                tally.Drawn + 1,
                tally.Figures + figures.Length,
                tally.Wrong + stated.Figures.Zip(figures).Count(pair => !Agrees(pair.First, pair.Second, load)),
                tally.Explained + (search.Explain(stated) is Diagnosis.Agrees ? 0 : 1));
        }

        return tally;
    }

    private static bool Agrees(ReactionFigure stated, double computed, double load) =>
        ReactionComparison.Of(stated.Value, computed, new ReactionAllowance(stated.HalfDigit, 0, 0, load)).Verdict
            is ReactionVerdict.Agrees;
}
