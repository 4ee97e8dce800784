namespace FieldCheck.Mechanics.Checks;

/// <summary>The small correction that brings the greatest of several residuals down as far as it goes.</summary>
/// <remarks>The greatest size of linear terms is convex, so each of two numbers in turn is found by halving.</remarks>
internal static class ExplanationNearest
{
    private const int Cuts = 30;

    /// <summary>The two numbers t and u with the least greatest |off + t of + u by| [–].</summary>
    /// <param name="off">The residuals.</param>
    /// <param name="of">Their change for one t.</param>
    /// <param name="by">Their change for one u; empty: there is no u.</param>
    /// <param name="most">Sizes that t and u stay within.</param>
    internal static (double T, double U) Find(
        double[] off, double[] of, double[] by, (double T, double U) most)
    {
        double t = Least(most.T, t => Greatest(off, of, by, t, BestOf(off, of, by, t, most.U)));
        return (t, BestOf(off, of, by, t, most.U));
    }

    private static double BestOf(double[] off, double[] of, double[] by, double t, double most) =>
        by.Length == 0 ? 0 : Least(most, u => Greatest(off, of, by, t, u));

    private static double Greatest(double[] off, double[] of, double[] by, double t, double u)
    {
        double greatest = 0;
        for (int i = 0; i < off.Length; i++)
        {
            double change = t * of[i] + (by.Length == 0 ? 0 : u * by[i]);
            greatest = Math.Max(greatest, Math.Abs(off[i] + change));
        }

        return greatest;
    }

    private static double Least(double most, Func<double, double> value)
    {
        double low = -most;
        double high = most;
        for (int i = 0; i < Cuts; i++)
        {
            double left = low + (high - low) / 3;
            double right = high - (high - low) / 3;
            (low, high) = value(left) <= value(right) ? (low, right) : (left, high);
        }

        return (low + high) / 2;
    }
}
