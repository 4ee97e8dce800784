using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>How near a prediction must come to stated figures: what they were rounded by.</summary>
/// <remarks>
/// Allowed is half the last digit, or a small share of the greatest figure where that is more: a supplier who takes
/// 9.81 for 9.80665, or rounds on the way, shows in the fourth digit. The tolerance of a verdict is another number,
/// and far too wide here (docs/methods.md).
/// </remarks>
internal sealed class ExplanationFit
{
    /// <summary>Share of the greatest figure that is always allowed: half the last of four digits.</summary>
    internal const double LeastShare = 0.0005;

    /// <summary>Edges of rounding and of the arithmetic.</summary>
    private const double Noise = 1e-6;

    private readonly StatedSet _stated;
    private readonly double[] _allowed;
    private readonly double _total;
    private readonly double _totalAllowed;

    internal ExplanationFit(StatedSet stated, double[] computed)
    {
        _stated = stated;
        _allowed = new double[computed.Length];
        for (int i = 0; i < computed.Length; i++)
        {
            ReactionFigure figure = stated.Figures[i];
            double least = LeastShare * Greatest(stated, computed, figure.Part == ReactionPart.Moment);
            _allowed[i] = Math.Max(figure.HalfDigit, least) * (1 + Noise);
            if (figure.Part == ReactionPart.Vertical)
            {
                _total += figure.Value - computed[i];
                _totalAllowed += _allowed[i];
            }
        }

        HasEveryVertical = HasEvery(ReactionPart.Vertical, support => support.Across is not Restraint.None);
    }

    /// <summary>True: every support that holds across has its vertical stated, so that their sum is the load.</summary>
    internal bool HasEveryVertical { get; }

    /// <summary>What is allowed for each figure [N or N·m].</summary>
    internal ReadOnlySpan<double> Allowed => _allowed;

    /// <summary>What is stated in all, less what is computed [N].</summary>
    internal double TotalDifference => _total;

    /// <summary>False: with so much more load down [N], the verticals could not add up to what is stated.</summary>
    internal bool CouldFit(double moreDown) => !HasEveryVertical || Math.Abs(_total - moreDown) <= _totalAllowed;

    /// <summary>Whether a prediction of one figure fits.</summary>
    /// <param name="index">Which figure.</param>
    /// <param name="predicted">What it would be [N or N·m].</param>
    internal bool Fits(int index, double predicted) =>
        Math.Abs(_stated.Figures[index].Value - predicted) <= _allowed[index];

    /// <summary>The greatest difference over what is allowed [–]; at most 1: it fits.</summary>
    internal double Worst(ReadOnlySpan<double> predicted)
    {
        double worst = 0;
        for (int i = 0; i < _allowed.Length; i++)
        {
            double off = Math.Abs(_stated.Figures[i].Value - predicted[i]);
            worst = Math.Max(worst, off == 0 ? 0 : off / _allowed[i]);
        }

        return worst;
    }

    /// <summary>Whether a part is stated for every support that gives it.</summary>
    internal bool HasEvery(ReactionPart part, Func<Support, bool> isGivenBy)
    {
        for (int i = 0; i < _stated.Model.Supports.Length; i++)
        {
            bool isStated = false;
            foreach (ReactionFigure figure in _stated.Figures)
            {
                isStated |= figure.Part == part && figure.Support == i;
            }

            if (!isStated && isGivenBy(_stated.Model.Supports[i]))
            {
                return false;
            }
        }

        return true;
    }

    private static double Greatest(StatedSet stated, double[] computed, bool ofMoments)
    {
        double greatest = 0;
        double greatestComputed = 0;
        for (int i = 0; i < computed.Length; i++)
        {
            if (stated.Figures[i].Part == ReactionPart.Moment == ofMoments)
            {
                greatest = Math.Max(greatest, Math.Abs(stated.Figures[i].Value));
                greatestComputed = Math.Max(greatestComputed, Math.Abs(computed[i]));
            }
        }

        return greatest > 0 ? greatest : greatestComputed;
    }
}
