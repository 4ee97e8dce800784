using System.Collections.Immutable;

namespace FieldCheck.Mechanics.Checks;

/// <summary>Takes slips with what they give, keeps those that fit, and ranks them.</summary>
internal sealed class ExplanationList(ExplanationFit fit)
{
    /// <summary>Predictions that differ by no more than this part of what is allowed are the same.</summary>
    private const double Same = 1e-3;

    private readonly List<Explanation> _found = [];

    /// <summary>Takes a slip, the plainer of two that say the same first.</summary>
    /// <param name="slip">The slip.</param>
    /// <param name="cost">Its cost class.</param>
    /// <param name="predicted">What it gives [N or N·m]; null: nothing.</param>
    internal void Add(Slip slip, int cost, double[]? predicted)
    {
        if (predicted is null || fit.Worst(predicted) is not (<= 1 and double worst))
        {
            return;
        }

        if (!_found.Any(told => SaysTheSame(told, slip, predicted)))
        {
            _found.Add(new Explanation(slip, [.. predicted], worst, cost));
        }
    }

    /// <summary>What fits, ranked: fitted ones last, then by cost, then by residual.</summary>
    internal ImmutableArray<Explanation> Ranked()
    {
        Explanation[] ranked =
        [
            .. _found.OrderBy(one => one.IsFitted).ThenBy(one => one.Cost).ThenBy(one => one.WorstResidual),
        ];
        return [.. ranked.Select((one, index) => one with { TiedWith = Ties(ranked, index) })];
    }

    private ImmutableArray<int> Ties(Explanation[] ranked, int index) =>
    [
        .. Enumerable.Range(0, ranked.Length).Where(other => other != index
            && !ranked[index].IsFitted
            && !ranked[other].IsFitted
            && AreTied(ranked[index], ranked[other])),
    ];

    /// <summary>
    /// Whether the figures cannot tell two apart: they are the same, or one load is in another unit either way, be it by
    /// size, place or length, and differs by less than the rounding.
    /// </summary>
    private bool AreTied(Explanation one, Explanation other) =>
        AreSame(one.Predicted.AsSpan(), other.Predicted.AsSpan())
        || (InAnotherUnit(one.Slip) is { } load && load == InAnotherUnit(other.Slip));

    private static (int Load, bool IsTooGreat)? InAnotherUnit(Slip slip) => slip switch
    {
        Slip.LoadUnits size => (size.Load, size.IsTooGreat),
        Slip.PlaceUnits place => (place.Load, place.IsTooGreat),
        Slip.StretchUnits stretch => (stretch.Load, stretch.IsTooGreat),
        _ => null,
    };

    private bool AreSame(ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        for (int i = 0; i < one.Length; i++)
        {
            if (Math.Abs(one[i] - other[i]) > Same * fit.Allowed[i])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether a slip tells the same story as one that was told, so that one of them is enough.</summary>
    private bool SaysTheSame(Explanation told, Slip slip, double[] predicted) => (told.Slip, slip) switch
    {
        // So small that nobody sees it is as good as left out.
        (Slip.LoadLeftOut left, Slip.LoadUnits { IsTooGreat: false } small) => left.Load == small.Load,
        (Slip.LoadLeftOut left, Slip.StretchUnits { IsTooGreat: false } small) => left.Load == small.Load,
        (Slip.LoadLeftOut or Slip.Pattern, Slip.Pattern) => AreSame(told.Predicted.AsSpan(), predicted),
        (Slip own, Slip.Together both) when own == both.First => AreSame(told.Predicted.AsSpan(), predicted),
        _ => IsOfFactors(told.Slip) && IsOfFactors(slip) && AreSame(told.Predicted.AsSpan(), predicted),
    };

    private static bool IsOfFactors(Slip slip) => slip
        is Slip.OtherCombination or Slip.CommonFactor or Slip.OtherFactors or Slip.Together;
}
