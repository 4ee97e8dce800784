using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Holds a beam against its strengths, its seats and its limits of deflection.</summary>
/// <remarks>How demands are found is told in docs/methods.md, "Checks: demands".</remarks>
public static class SectionChecks
{
    /// <summary>Every check that the beam asks for, in the order of kind, support, bay and span.</summary>
    /// <param name="problem">The beam with all that it is held against.</param>
    /// <param name="envelopes">Its envelopes, one for each basis; see <see cref="EnvelopeSearch.Find"/>.</param>
    /// <param name="solver">The solver to work with.</param>
    /// <returns>Empty where nothing is asked for. Spans of the same member have one check together.</returns>
    /// <exception cref="ArgumentException">There is not one member a span, or not one seat a support.</exception>
    public static ImmutableArray<SectionCheck> Find(
        StrengthProblem problem, ImmutableArray<Envelope> envelopes, BeamSolver solver)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(solver);
        return Find(problem, new BeamDemands(problem.Beam, envelopes, solver));
    }

    /// <summary>The same with demands that are known from another choice of strengths, seats and limits.</summary>
    internal static ImmutableArray<SectionCheck> Find(StrengthProblem problem, BeamDemands demands)
    {
        BeamModel model = problem.Beam.Model;
        Require.That(
            problem.Members.Length == model.Spans.Length, "There must be one member a span.", nameof(problem));
        Require.That(
            problem.Seats.Length == model.Supports.Length, "There must be one seat a support.", nameof(problem));
        ImmutableArray<MemberSpans> members = MemberSpans.Of(problem.Members);
        IStrengthRule? rule = StrengthRule.Of(problem.Rules);
        List<SectionCheck> checks = [];
        foreach (CombinationBasis basis in Enum.GetValues<CombinationBasis>())
        {
            BasisDemands own = demands.Of(basis);
            checks.AddRange(members.SelectMany(one => GivenStresses.Of(one, own)));
            if (rule is null)
            {
                checks.AddRange(LackingStresses.Of(members, own));
            }
            else if (rule.Basis == basis)
            {
                checks.AddRange(members.SelectMany(one => RuleChecks.Of(one, rule, own)));
            }

            SeatChecks seats = new(problem, own, rule, demands.Bays);
            checks.AddRange(Enumerable.Range(0, model.Supports.Length).SelectMany(seats.At));
        }

        if (problem.Limits is DeflectionLimits limits)
        {
            checks.AddRange(new DeflectionChecks(problem, limits, demands).Find());
        }

        return
        [
            .. checks
                .OrderBy(check => check.Kind)
                .ThenBy(check => check.Support)
                .ThenBy(check => check.LastBay is not null)
                .ThenBy(check => check.Bay)
                .ThenBy(check => check.Span ?? int.MaxValue),
        ];
    }
}
