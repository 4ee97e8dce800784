using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Checks;

/// <summary>
/// Bands of one beam under one loading where answers add up: the sum over the loads of the worst that each can do by
/// itself, whatever the others are.
/// </summary>
internal sealed class SuperposedBands
{
    private readonly SuperposedAnswers _answers;
    private readonly Loading _loading;
    private readonly ImmutableArray<LoadBox> _boxes;
    private readonly ImmutableArray<InputSpread> _inputs;
    private readonly double _scale;

    /// <param name="answers">The answers.</param>
    /// <param name="loading">What acts.</param>
    /// <param name="only">Index of the one input to look at; null: all together.</param>
    internal SuperposedBands(SuperposedAnswers answers, Loading loading, int? only = null)
    {
        _answers = answers;
        _loading = loading;
        _inputs = only is int one ? [answers.Inputs[one]] : answers.Inputs;
        Factors = loading.IsCase
            ? [.. answers.Model.Cases.Select((_, i) => i == loading.Index ? 1.0 : 0.0)]
            : answers.Model.Combinations[loading.Index].Factors;
        Nominal = loading.IsCase
            ? answers.Nominal.Cases[loading.Index]!
            : answers.Nominal.Combinations[loading.Index].Response;
        _boxes = only is null ? answers.Boxes : LoadBox.Of(answers.Model, _inputs);
        _scale = _inputs.OfType<InputSpread.AllLoads>().Sum(input => input.HalfWidth);
    }

    internal BeamModel Model => _answers.Model;

    /// <summary>What may stand where, for whoever bounds what happens between two places.</summary>
    internal ImmutableArray<LoadBox> Boxes => _boxes;

    internal ImmutableArray<double> Factors { get; }

    /// <summary>The factor on all loads is at most this [–].</summary>
    internal double GreatestScale => 1 + _scale;

    internal BeamResponse Nominal { get; }

    internal BandCertainty Certainty => _boxes.Any(box => box.IsCut) ? BandCertainty.Estimate : BandCertainty.Exact;

    /// <summary>The influence line of a figure, where a load may move.</summary>
    internal InfluenceLine Line(Target target) => _answers.Table!.Line(target);

    /// <summary>The band of a figure.</summary>
    internal Band Of(Target target)
    {
        double nominal = target.In(Nominal);
        double low = nominal;
        double high = nominal;
        BandCertainty certainty = Certainty;
        InfluenceLine? line = null;
        foreach (LoadBox box in _boxes)
        {
            double factor = Factors[box.Index.Case];
            if (factor != 0)
            {
                Band change = Change(box, target, ref line);
                certainty = change.AtBest(certainty).Certainty;
                Add(factor, (change.Low, change.High));
            }
        }

        if (_scale > 0)
        {
            // Movements of supports are no loads: the scale error leaves them alone.
            double moved = !_loading.IsCase && _answers.Nominal.ImposedMovements is BeamResponse imposed
                ? target.In(imposed)
                : 0;
            low = moved + Math.Min((1 - _scale) * (low - moved), (1 + _scale) * (low - moved));
            high = moved + Math.Max((1 - _scale) * (high - moved), (1 + _scale) * (high - moved));
        }

        foreach (InputSpread input in _inputs)
        {
            if (!_loading.IsCase && input is (InputSpread.Settlement or InputSpread.ImposedRotation))
            {
                double change = input.HalfWidth * target.In(_answers.Of(input));
                Add(1, (-Math.Abs(change), Math.Abs(change)));
            }
        }

        return new Band(low, high, certainty);

        void Add(double factor, (double Low, double High) change)
        {
            low += factor > 0 ? factor * change.Low : factor * change.High;
            high += factor > 0 ? factor * change.High : factor * change.Low;
        }
    }

    /// <summary>How far one load may change a figure from what it does as typed.</summary>
    private Band Change(LoadBox box, Target target, ref InfluenceLine? line)
    {
        LoadAnswers answers = _answers.Of(box.Index);
        double typed = answers.Of(target, LoadAnswers.SizeOf(box.Load));
        (double low, double high) = (typed, typed);
        if (!box.Moves)
        {
            foreach ((double Start, double End) size in box.Sizes)
            {
                double value = answers.Of(target, size);
                (low, high) = (Math.Min(low, value), Math.Max(high, value));
            }

            return new Band(low - typed, high - typed, BandCertainty.Exact);
        }

        line ??= Line(target);
        Band range = Range(box, line);
        return new Band(Math.Min(low, range.Low) - typed, Math.Max(high, range.High) - typed, range.Certainty);
    }

    private static Band Range(LoadBox box, InfluenceLine line)
    {
        if (box.Load is Load.Distributed spread)
        {
            return SpreadLoadRange.Of(box, line, spread.ActsAlong);
        }

        (double low, double high) = line.RangeOf(box.Load, box.From.Low, box.From.High);
        double[] corners = [.. box.Sizes.SelectMany(size => new[] { size.Start * low, size.Start * high })];
        return new Band(corners.Min(), corners.Max(), BandCertainty.Exact);
    }
}
