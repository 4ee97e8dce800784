using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Stated;

namespace FieldCheck.Reporting.Record;

/// <summary>What would explain stated figures, as JSON: set by set, the likeliest first.</summary>
internal static class JsonExplanations
{
    internal static ImmutableArray<JsonExplanation> Of(Calculation calculation, BuiltBeam beam) =>
        [.. calculation.Explanations.SelectMany(set => Of(calculation, set, new BeamWords(beam)))];

    private static IEnumerable<JsonExplanation> Of(Calculation calculation, StatedExplanation set, BeamWords words)
    {
        ExplanationWords sentences = ExplanationLines.WordsOf(calculation, set, words);
        SlipWords slips = new(words);
        ImmutableArray<Explanation> told = set.Diagnosis.Explanations;
        return told.Select(one => new JsonExplanation(
            Kind(one.Slip),
            $"The stated figures {(one.IsFitted ? "could also be had by" : "are consistent with")} {sentences.Sentence(one)}",
            [.. one.Predicted],
            [.. one.TiedWith.Select(other => slips.Of(told[other].Slip))],
            one.IsFitted ? null : set.Diagnosis.FalseClaimRate,
            one.IsFitted,
            set.Rows,
            JsonFigure.Of(one.WorstResidual)));
    }

    private static string Kind(Slip slip) => slip switch
    {
        Slip.OwnWeightLeftOut => "self_weight_left_out",
        Slip.OwnWeightPutIn => "self_weight_put_in",
        Slip.OtherCombination => "other_combination",
        Slip.CommonFactor => "common_factor",
        Slip.OtherFactors => "other_factors",
        Slip.EndsSwapped => "ends_swapped",
        Slip.SenseLeftOut => "sense_left_out",
        Slip.FigureUnits => "figure_units",
        Slip.MomentUnits => "moment_units",
        Slip.LengthUnits => "length_units",
        Slip.LoadLeftOut => "load_left_out",
        Slip.LoadDoubled => "load_doubled",
        Slip.LoadFromOtherEnd => "load_from_other_end",
        Slip.LoadLumped => "load_lumped",
        Slip.LoadSpread => "load_spread",
        Slip.LoadUnits => "load_units",
        Slip.PlaceUnits => "place_units",
        Slip.StretchUnits => "stretch_units",
        Slip.TributaryWidth => "tributary_width",
        Slip.SimpleSpans => "simple_spans",
        Slip.HingeOverlooked => "hinge_overlooked",
        Slip.Pattern => "pattern",
        Slip.Together => "two_slips",
        Slip.SupportMoved => "support_moved",
        Slip.LoadMissing => "load_missing",
        _ => throw new UnreachableException(),
    };
}
