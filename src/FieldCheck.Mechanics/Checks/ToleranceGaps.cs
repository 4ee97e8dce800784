using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Checks;

/// <summary>What becomes of a beam with its inputs off by so much.</summary>
/// <param name="problem">The beam and what is uncertain.</param>
/// <param name="solver">The solver to use.</param>
internal sealed class ToleranceGaps(ToleranceProblem problem, BeamSolver solver)
{
    /// <summary>The beam as altered, loads and movements included.</summary>
    /// <param name="offsets">How far each input is off, in its own unit.</param>
    /// <returns>The beam; null where none is left.</returns>
    internal BeamModel? Altered(ImmutableArray<double> offsets) =>
        IsTyped(offsets) ? problem.Model
        : OfBeam(offsets) is BeamModel model ? LoadAlterations.Apply(model, problem.Inputs, offsets)
        : null;

    /// <summary>The beam with only what changes the beam itself off; null where none is left.</summary>
    /// <param name="offsets">How far each input is off, in its own unit.</param>
    internal BeamModel? OfBeam(ImmutableArray<double> offsets) =>
        problem.Altered is null || IsTyped(offsets) ? problem.Model : problem.Altered(offsets);

    /// <summary>The gravest gap of some corners without an answer, with as few inputs off as give it.</summary>
    /// <param name="corners">How far each input is off at each, in its own unit.</param>
    /// <returns>The gap; null where there is no such corner.</returns>
    internal ToleranceGap? Gravest(List<ImmutableArray<double>> corners)
    {
        ToleranceGap[] found = [.. corners.Select(offsets => At(offsets) ?? new ToleranceGap(offsets, null))];
        ToleranceGap? gap = found.FirstOrDefault(one => one.Outcome is BeamOutcome.Tips or BeamOutcome.CanMove)
            ?? found.FirstOrDefault(one => one.Outcome is not null)
            ?? found.FirstOrDefault();
        for (int input = 0; gap is not null && input < gap.Offsets.Length; input++)
        {
            if (gap.Offsets[input] != 0
                && At(gap.Offsets.SetItem(input, 0)) is ToleranceGap smaller
                && smaller.Outcome?.GetType() == gap.Outcome?.GetType())
            {
                gap = smaller;
            }
        }

        return gap;
    }

    /// <summary>
    /// Corners at which a support that acts one way only is likeliest to let go, were all to hold both ways: for each
    /// combination and each such support every input at the end that lowers its reaction by itself.
    /// </summary>
    /// <param name="halves">Half width of every input, in its own unit; zero for those that stay.</param>
    internal ImmutableArray<ImmutableArray<double>> TowardLettingGo(ImmutableArray<double> halves)
    {
        ImmutableArray<double> none = [.. halves.Select(_ => 0.0)];
        int[] oneWay =
        [
            .. Enumerable.Range(0, problem.Model.Supports.Length)
                .Where(index => problem.Model.Supports[index].Action != SupportAction.Both),
        ];
        (double[] Low, double[] High)[] effects =
        [
            .. halves.Select((half, input) => half == 0
                ? ([], [])
                : (Held(none.SetItem(input, -half), oneWay), Held(none.SetItem(input, half), oneWay))),
        ];
        int figures = oneWay.Length * problem.Model.Combinations.Length;
        return
        [
            .. Enumerable.Range(0, figures)
                .Select(figure => (ImmutableArray<double>)
                [
                    .. halves.Select((half, input) => effects[input] is not ({ Length: > 0 } low, { Length: > 0 } high) ? 0
                        : low[figure] < high[figure] ? -half
                        : low[figure] > high[figure] ? half
                        : 0),
                ])
                .DistinctBy(offsets => string.Join(' ', offsets.Select(Math.Sign))),
        ];
    }

    /// <summary>How hard each one-way support would be pressed its own way [N]; empty where there is no answer.</summary>
    private double[] Held(ImmutableArray<double> offsets, int[] oneWay)
    {
        if (Altered(offsets) is not BeamModel model
            || solver.Solve(BothWays(model)) is not BeamOutcome.Stands stands)
        {
            return [];
        }

        return
        [
            .. from answer in stands.Combinations
               from support in oneWay
               let reaction = answer.Response.Reactions[support]
               let push = reaction.Normal ?? reaction.Vertical
               select model.Supports[support].Action == SupportAction.HoldsDownOnly ? -push : push,
        ];
    }

    private static BeamModel BothWays(BeamModel model) => model with
    {
        Supports = [.. model.Supports.Select(support => support with { Action = SupportAction.Both })],
    };

    private ToleranceGap? At(ImmutableArray<double> offsets) =>
        Altered(offsets) is not BeamModel model ? new ToleranceGap(offsets, null)
        : solver.Solve(model) is BeamOutcome outcome and not BeamOutcome.Stands ? new ToleranceGap(offsets, outcome)
        : null;

    private static bool IsTyped(ImmutableArray<double> offsets) => offsets.All(offset => offset == 0);
}
