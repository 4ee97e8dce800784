using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Checks.Slips;

/// <summary>How often errors that have nothing to do with any slip are claimed by one.</summary>
/// <param name="Drawn">Beams whose figures, each off by 3 to 20 %, differ as written.</param>
/// <param name="Claimed">Of those: some explanation is told, fitted ones apart.</param>
/// <param name="Single">Of those: exactly one.</param>
internal sealed record ErrorTally(int Drawn, int Claimed, int Single)
{
    /// <summary>The share that is claimed.</summary>
    internal double Rate => (double)Claimed / Drawn;

    /// <summary>Draws beams and puts errors on every figure.</summary>
    /// <param name="figures">
    /// How many figures are stated: 1, the left one of a single span; else the verticals of one span fewer.
    /// </param>
    /// <param name="beams">How many beams.</param>
    /// <param name="digits">To how many digits the figures are written.</param>
    /// <param name="seed">What the draws begin with.</param>
    internal static ErrorTally Of(int figures, int beams, int digits, int seed)
    {
        Random random = new(seed);
        BeamSolver solver = new();
        ExplanationSearch search = new();
        ErrorTally tally = new(0, 0, 0);
        while (tally.Drawn < beams)
        {
            SlipBeam beam = SlipBeams.Draw(random, Math.Max(1, figures - 1));
            double[] wrong = [.. beam.Figures(solver)!.Take(figures).Select(figure => figure * Error(random))];
            if (search.Explain(beam.Stated(wrong, digits)) is Diagnosis.Differs differs)
            {
                int told = differs.Explanations.Count(explanation => !explanation.IsFitted);
                tally = new ErrorTally(
                    tally.Drawn + 1, tally.Claimed + (told > 0 ? 1 : 0), tally.Single + (told == 1 ? 1 : 0));
            }
        }

        return tally;
    }

    private static double Error(Random random)
    {
        double size = 0.03 + 0.17 * random.NextDouble();
        return random.Next(2) == 0 ? 1 + size : 1 - size;
    }
}
