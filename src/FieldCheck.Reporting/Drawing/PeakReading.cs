using System.Collections.Immutable;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Reporting.Drawing;

/// <summary>Reads off a curve what is to be told of it: peaks, level stretches, sides of jumps, zeros.</summary>
internal sealed class PeakReading
{
    // Two values nearer to each other than this share of the largest are one value.
    private const double Same = 1e-9;

    private readonly PlotCurve _curve;
    private readonly double _tolerance;

    internal PeakReading(PlotCurve curve)
    {
        _curve = curve;
        Largest = curve.Peaks.Select(peak => Math.Abs(peak.Value)).DefaultIfEmpty().Max();
        _tolerance = Math.Max(Same * Largest, curve.Negligible);
        Peaks =
        [
            .. curve.Peaks.Where(peak => Math.Abs(peak.Value) > curve.Negligible).Select(Read).Distinct(),
        ];
    }

    /// <summary>The largest size that the curve reaches, in SI.</summary>
    internal double Largest { get; }

    /// <summary>All peaks that are more than rounding, left to right, each level stretch once.</summary>
    internal ImmutableArray<PlotPeak> Peaks { get; }

    /// <summary>Places inside the beam where the curve passes through zero without a jump [m].</summary>
    internal ImmutableArray<double> Zeros() => [.. _curve.Zeros.Where(zero => !IsJump(_curve.At(zero)))];

    /// <summary>Stretches between two breaks on which the curve stays level, peaks or not.</summary>
    internal ImmutableArray<PlotPeak> Steps() =>
    [
        .. _curve.Breaks
            .Select(place => Read(new Extreme(_curve.At(place).Right, place)))
            .Where(step => step.IsStretch && Math.Abs(step.Value) > _curve.Negligible)
            .Distinct(),
    ];

    /// <summary>A peak with its side, or the level stretch that it stands on.</summary>
    internal PlotPeak Read(Extreme peak)
    {
        double from = ReachLeft(peak);
        double to = ReachRight(peak);
        return from < to
            ? new PlotPeak(_curve.At((from + to) / 2).Left, from, to, PeakSide.At)
            : new PlotPeak(peak.Value, peak.Position, peak.Position, SideOf(peak));
    }

    private double ReachRight(Extreme peak)
    {
        double reached = peak.Position;
        while (IsSame(_curve.At(reached).Right, peak.Value) && NextBreak(reached) is double next)
        {
            if (!IsSame(_curve.At((reached + next) / 2).Left, peak.Value)
                || !IsSame(_curve.At(next).Left, peak.Value))
            {
                break;
            }

            reached = next;
        }

        return reached;
    }

    private double ReachLeft(Extreme peak)
    {
        double reached = peak.Position;
        while (IsSame(_curve.At(reached).Left, peak.Value) && LastBreak(reached) is double last)
        {
            if (!IsSame(_curve.At((reached + last) / 2).Left, peak.Value)
                || !IsSame(_curve.At(last).Right, peak.Value))
            {
                break;
            }

            reached = last;
        }

        return reached;
    }

    private double? NextBreak(double place)
    {
        int found = _curve.Breaks.BinarySearch(place);
        int next = found >= 0 ? found + 1 : ~found;
        return next < _curve.Breaks.Length ? _curve.Breaks[next] : null;
    }

    private double? LastBreak(double place)
    {
        int found = _curve.Breaks.BinarySearch(place);
        int last = (found >= 0 ? found : ~found) - 1;
        return last >= 0 ? _curve.Breaks[last] : null;
    }

    private PeakSide SideOf(Extreme peak)
    {
        (double left, double right) = _curve.At(peak.Position);
        bool isInside = peak.Position > 0 && peak.Position < _curve.Length;
        if (!isInside || !IsJump((left, right)))
        {
            return PeakSide.At;
        }

        return IsSame(left, peak.Value) ? PeakSide.LeftOf : PeakSide.RightOf;
    }

    private bool IsJump((double Left, double Right) at) => !IsSame(at.Left, at.Right);

    private bool IsSame(double one, double other) => Math.Abs(one - other) <= _tolerance;
}
