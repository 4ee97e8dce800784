using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// Looks for a deflection greater than the greatest known, in one element and under one train: boxes of sections and
/// places whose bounds could raise it are halved until none can, or a point that does is found.
/// </summary>
internal sealed class SagProof(TrainElement element, SagBudget budget)
{
    // As many as leave of both sides of a box no more than the last bit of a number from 0 to 1. What is not settled by then
    // halving does not settle, and each is a call within a call: without a bound they outgrow the stack before the budget ends.
    private const int MostHalvings = 2 * 53;

    private readonly SagSurface _surface = element.Sag();

    /// <summary>Looks over one stretch of the element.</summary>
    /// <param name="standing">Standing loads, a polynomial in the share of the stretch.</param>
    /// <param name="from">Where the stretch begins, as a share of the element [–].</param>
    /// <param name="width">Its length, as a share of the element [–].</param>
    /// <param name="scale">What the train's deflection is multiplied by.</param>
    /// <param name="leader">The greatest known.</param>
    internal SagFinding Search(
        ReadOnlySpan<double> standing, double from, double width, double scale, in Leader<Worst> leader)
    {
        if (budget.IsSpent)
        {
            return SagFinding.Unsettled;
        }

        double most = Bernstein.Most(standing, 1);
        (int first, int end) = element.IntervalsOf(Curve.Deflection);
        for (int i = first; i < end; i++)
        {
            if (_surface.HasAxle(i) || leader.CouldRaise(most + Math.Abs(scale) * _surface.SizeOn(i)))
            {
                _surface.Enter(i);
                SagFinding found = Search(standing, scale, new SagBox(from, width, 0, 1), MostHalvings, leader);
                if (found.Kind != SagFindingKind.Nothing)
                {
                    return found;
                }
            }
        }

        return SagFinding.Nothing;
    }

    private SagFinding Search(
        ReadOnlySpan<double> standing, double scale, in SagBox box, int halvings, in Leader<Worst> leader)
    {
        SagBound bound = _surface.Bound(standing, scale, box);
        if (!leader.CouldRaise(bound.Most))
        {
            return SagFinding.Nothing;
        }

        if (leader.CouldRaise(bound.Middle))
        {
            return new SagFinding(SagFindingKind.Greater, box.From, box.From + box.Width);
        }

        budget.Spend();
        if (budget.IsSpent || halvings == 0)
        {
            return SagFinding.Unsettled;
        }

        bool isOfSections = bound.AlongSections >= bound.AlongPlaces;
        Span<double> own = stackalloc double[standing.Length];
        for (int half = 0; half < 2; half++)
        {
            standing.CopyTo(own);
            if (isOfSections)
            {
                SagSurface.Narrow(own, own.Length, 1, half * 0.5, 0.5);
            }

            SagFinding found = Search(own, scale, box.Half(isOfSections, half), halvings - 1, leader);
            if (found.Kind != SagFindingKind.Nothing)
            {
                return found;
            }
        }

        return SagFinding.Nothing;
    }
}
