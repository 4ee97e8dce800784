using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Checks.Slips;

/// <summary>How a kind of slip fared over many beams.</summary>
/// <param name="Drawn">Beams whose figures the slip changed visibly.</param>
/// <param name="Told">Of those: the true slip is among the explanations.</param>
/// <param name="First">Of those: no explanation is ranked before it, ties apart.</param>
/// <param name="Alone">Of those: no other is told, ties and fitted ones apart.</param>
/// <param name="Tied">Of those: others give the same figures.</param>
internal sealed record SlipTally(int Drawn, int Told, int First, int Alone, int Tied)
{
    /// <summary>Draws beams of 1 to 4 spans and makes the slip on each.</summary>
    /// <param name="kind">The slip.</param>
    /// <param name="beams">How many.</param>
    /// <param name="digits">To how many digits the figures are written.</param>
    /// <param name="seed">What the draws begin with.</param>
    internal static SlipTally Of(SlipKind kind, int beams, int digits, int seed)
    {
        Random random = new(seed);
        BeamSolver solver = new();
        ExplanationSearch search = new();
        SlipTally tally = new(0, 0, 0, 0, 0);
        while (tally.Drawn < beams)
        {
            int spans = Math.Max(kind.LeastSpans, 1 + tally.Drawn % 4);
            if (kind.Draw(random, SlipBeams.Draw(random, spans)) is { } draw
                && Mistaken(draw, solver) is { } figures
                && search.Explain(draw.Beam.Stated(figures, digits)) is Diagnosis.Differs differs)
            {
                tally = tally.With(draw, figures, differs.Explanations);
            }
        }

        return tally;
    }

    private static double[]? Mistaken(SlipDraw draw, BeamSolver solver) =>
        draw.Beam.Figures(solver) is null || (draw.Mistaken ?? draw.Beam).Figures(solver) is not { } figures
            ? null
            : draw.Figures(figures);

    private SlipTally With(SlipDraw draw, double[] figures, ImmutableArray<Explanation> told)
    {
        int at = IndexOf(draw, figures, told);
        if (at < 0)
        {
            return this with { Drawn = Drawn + 1 };
        }

        bool IsRival(int other) => other != at && !told[other].IsFitted && !told[at].TiedWith.Contains(other);
        int[] rivals = [.. Enumerable.Range(0, told.Length).Where(IsRival)];
        return new SlipTally(
            Drawn + 1,
            Told + 1,
            First + (rivals.Any(rival => rival < at) ? 0 : 1),
            Alone + (rivals.Length == 0 ? 1 : 0),
            Tied + (told[at].TiedWith.IsEmpty ? 0 : 1));
    }

    private static int IndexOf(SlipDraw draw, double[] figures, ImmutableArray<Explanation> told)
    {
        for (int i = 0; i < told.Length; i++)
        {
            if (told[i].Slip == draw.AsGoodAs
                || (draw.Is(told[i].Slip) && (told[i].IsFitted || IsNear(told[i].Predicted, figures))))
            {
                return i;
            }
        }

        return -1;
    }

    private static bool IsNear(ImmutableArray<double> predicted, double[] figures)
    {
        double size = figures.Max(Math.Abs);
        return predicted.Zip(figures).All(pair => Math.Abs(pair.First - pair.Second) <= 1e-6 * size);
    }
}
