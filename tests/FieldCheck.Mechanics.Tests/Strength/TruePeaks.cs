using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Mechanics.Tests.Envelopes;
using FieldCheck.Mechanics.Tests.Laws;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>
/// What checks come to in every situation, one solved after the other and looked at place by place: slow, but it knows
/// nothing of envelopes, nor of where anything peaks.
/// </summary>
internal sealed class TruePeaks
{
    private readonly StrengthProblem _problem;
    private readonly BeamSolver _solver;
    private readonly Dictionary<CombinationBasis, List<(BeamResponse Instant, BeamResponse? Lasting)>> _answers = [];
    private readonly Dictionary<int, List<(BeamResponse Instant, BeamResponse? Lasting)>> _alone = [];
    private readonly Scale _scale;

    /// <param name="problem">The beam.</param>
    /// <param name="solver">The solver to work with.</param>
    /// <param name="steps">Places of each rolling load.</param>
    internal TruePeaks(StrengthProblem problem, BeamSolver solver, int steps = 0)
    {
        _problem = problem;
        _solver = solver;
        EnvelopeProblem beam = problem.Beam;
        foreach (CombinationBasis basis in Enum.GetValues<CombinationBasis>())
        {
            _answers.Add(basis, [.. EveryPattern.Of(beam, basis).SelectMany(model => Rolled(model, beam, steps)).SelectMany(Solve)]);
        }

        foreach (CaseDeflectionLimit limit in problem.Limits?.Cases ?? [])
        {
            BeamModel held = StaysDown(limit.Case) ? BothWays(beam.Model) : beam.Model;
            EnvelopeProblem alone = new(Alone(held, limit.Case), beam.PatternCases, beam.Rolling);
            _alone.Add(
                limit.Case,
                [
                    .. EveryPattern.Of(alone, CombinationBasis.Service)
                        .SelectMany(model => Rolled(model, alone, steps))
                        .SelectMany(Solve),
                ]);
        }

        BeamResponse[] all = [.. _answers.Values.Concat(_alone.Values).SelectMany(list => list).Select(one => one.Instant)];
        _scale = all.Length > 0 ? new Scale(beam.Model, all) : null!;
    }

    /// <summary>How large such a demand is on the beam: what rounding is measured by.</summary>
    internal double SizeOf(SectionCheck check) => check.Kind switch
    {
        CheckKind.Bending or CheckKind.BendingAndAxial => _scale.Moment / Narrow.SectionModulus!.Value + _scale.Force / Narrow.Area!.Value,
        CheckKind.Shear => _scale.Force / Narrow.PeakShearArea!.Value,
        CheckKind.Bearing => _scale.Force / (0.05 * 0.1),
        CheckKind.PadPressure => _scale.Force / 0.09,
        _ => 2 * _scale.Deflection,
    };

    /// <summary>As the laws of rolling loads have it: deflections are sought by steps, and V beside an axle is a limit.</summary>
    internal double NearOf(SectionCheck check)
    {
        ImmutableArray<double> nodes = _problem.Beam.Model.NodePositions();
        double shortest = nodes.Skip(1).Zip(nodes, (right, left) => right - left).Min();
        return _problem.Beam.Rolling.IsEmpty ? 1e-9
            : check.Unit == CheckUnit.Length ? 1e-3
            : 1e-9 + 6 * 3e-9 * _problem.Beam.Model.Length / shortest;
    }

    /// <summary>The greatest at many places of every answer; zero where there is none.</summary>
    internal double Greatest(SectionCheck check)
    {
        double greatest = 0;
        foreach ((BeamResponse instant, BeamResponse? lasting) in check.Case is int alone ? _alone[alone] : _answers[check.Basis])
        {
            greatest = Math.Max(greatest, Probes.Dense(_problem.Beam.Model, instant, inEach: 3)
                .Max(place => At(check, instant, lasting, place)));
        }

        return greatest;
    }

    /// <summary>What the situation that governs gives where it is said to.</summary>
    internal double InItsPlace(SectionCheck check)
    {
        EnvelopeProblem lasting = new(Lasting(_problem.Beam.Model), _problem.Beam.PatternCases, _problem.Beam.Rolling);
        return At(
            check,
            EnvelopeSearch.Respond(_problem.Beam, check.Situation!, _solver)!,
            EnvelopeSearch.Respond(lasting, check.Situation!, _solver),
            check.Position!.Value);
    }

    private static Section Narrow => Checked.Plank;

    private static IEnumerable<BeamModel> Rolled(BeamModel model, EnvelopeProblem problem, int steps) =>
        steps == 0 ? [model] : EveryPlace.Steps(problem, steps).Select(place => EveryPlace.With(model, problem, place)).Prepend(model);

    private static BeamModel Alone(BeamModel model, int loadCase) => Still(model) with
    {
        Combinations =
        [
            new Combination(
                "alone", CombinationBasis.Service, [.. model.Cases.Select((_, i) => i == loadCase ? 1.0 : 0)]),
        ],
    };

    /// <summary>Whether in no situation in which a case counts a support that acts one way would have to act the other.</summary>
    private bool StaysDown(int loadCase)
    {
        EnvelopeProblem beam = _problem.Beam;
        if (beam.Model.Supports.Any(one => one.Action != SupportAction.Both && one.Settlement != 0))
        {
            return false;
        }

        BeamModel counted = BothWays(beam.Model) with
        {
            Combinations = [.. beam.Model.Combinations.Where(one => one.Basis == CombinationBasis.Service && one.Factors[loadCase] != 0)],
        };
        return !counted.Combinations.IsEmpty
            && EveryPattern.Of(new EnvelopeProblem(counted, beam.PatternCases, []), CombinationBasis.Service).All(KeepsItsSides);
    }

    private bool KeepsItsSides(BeamModel situation) => situation.Combinations.All(combination =>
        Answer(situation with { Combinations = [combination] }) is BeamResponse response
        && _problem.Beam.Model.Supports.Zip(response.Reactions).All(both => both.First.Action switch
        {
            SupportAction.PushesOnly => both.Second.Vertical >= -1e-6,
            SupportAction.HoldsDownOnly => both.Second.Vertical <= 1e-6,
            _ => true,
        }));

    private static BeamModel BothWays(BeamModel model) =>
        model with { Supports = [.. model.Supports.Select(one => one with { Action = SupportAction.Both })] };

    private BeamModel Lasting(BeamModel model) => Still(model) with
    {
        Combinations =
        [
            .. model.Combinations.Select(one => one with
            {
                Factors = [.. one.Factors.Zip(_problem.Limits!.Lasting, (factor, share) => factor * share)],
            }),
        ],
    };

    /// <summary>Without movements imposed on it; a gap below a support that acts one way stays.</summary>
    private static BeamModel Still(BeamModel model) => model with
    {
        Supports =
        [
            .. model.Supports.Select(one => one.Action == SupportAction.Both
                ? one with { Settlement = 0, ImposedRotation = 0 }
                : one with { ImposedRotation = 0 }),
        ],
    };

    private IEnumerable<(BeamResponse Instant, BeamResponse? Lasting)> Solve(BeamModel model) =>
        from combination in model.Combinations
        let one = model with { Combinations = [combination] }
        let instant = Answer(one)
        where instant is not null
        select (instant, _problem.Limits is null ? null : Answer(Lasting(one)));

    private BeamResponse? Answer(BeamModel model) =>
        _solver.Solve(model) is BeamOutcome.Stands stands ? stands.Combinations[0].Response : null;

    private double At(SectionCheck check, BeamResponse instant, BeamResponse? lasting, double place) => check.Kind switch
    {
        CheckKind.Bending => OnMember(check, instant, place, (state, section) => Math.Abs(state.Moment) / section.SectionModulus!.Value),
        CheckKind.BendingAndAxial => OnMember(
            check,
            instant,
            place,
            (state, section) => Math.Abs(state.Moment) / section.SectionModulus!.Value + Math.Abs(state.Axial) / section.Area!.Value),
        CheckKind.Shear => OnMember(check, instant, place, (state, section) => Math.Abs(state.Shear) / section.PeakShearArea!.Value),
        CheckKind.Bearing => Push(instant, check)
            / BearingWidth.Of(_problem.Members[check.Span!.Value].Section!)!.Value / 0.1,
        CheckKind.PadPressure => Push(instant, check) / 0.09,
        CheckKind.AbsoluteDeflection => Math.Abs(instant.At(place).Left.Deflection),
        CheckKind.FinalDeflection or CheckKind.FinalOverhangDeflection =>
            Math.Abs(FromChord(check, instant, place) + CreepOf(check) * (lasting is null ? 0 : FromChord(check, lasting, place))),
        _ => Math.Abs(FromChord(check, instant, place)),
    };

    /// <summary>A sloped surface is pushed square to it.</summary>
    private static double Push(BeamResponse answer, SectionCheck check) =>
        answer.Reactions[check.Support!.Value].Normal ?? answer.Reactions[check.Support!.Value].Vertical;

    /// <summary>At a joint the side that is of the member.</summary>
    private double OnMember(SectionCheck check, BeamResponse answer, double place, Func<SectionState, Section, double> figure)
    {
        Member member = _problem.Members[check.Span!.Value];
        ImmutableArray<double> joints = _problem.Beam.Model.JointPositions;
        double greatest = 0;
        (SectionState left, SectionState right) = answer.At(place);
        for (int span = 0; span < _problem.Members.Length; span++)
        {
            if (_problem.Members[span] == member && place >= joints[span] && place <= joints[span + 1])
            {
                greatest = Math.Max(greatest, place > joints[span] ? figure(left, member.Section!) : 0);
                greatest = Math.Max(greatest, place < joints[span + 1] ? figure(right, member.Section!) : 0);
            }
        }

        return greatest;
    }

    private double FromChord(SectionCheck check, BeamResponse answer, double place)
    {
        Bays bays = Bays.Of(_problem.Beam.Model);
        int bay = check.Bay!.Value;
        int last = check.LastBay ?? bay;
        Bay own = new(Of(bay).From, Of(last).To);
        if (place < own.From || place > own.To)
        {
            return 0;
        }

        double left = answer.At(own.From).Right.Deflection;
        double right = answer.At(own.To).Left.Deflection;
        double level = bay < 0 ? right
            : last == bays.Between.Length ? left
            : left + (right - left) * (place - own.From) / (own.To - own.From);
        return answer.At(place).Left.Deflection - level;

        Bay Of(int index) =>
            index < 0 ? bays.LeftOverhang ?? new Bay(0, 0)
            : index < bays.Between.Length ? bays.Between[index]
            : bays.RightOverhang ?? new Bay(_problem.Beam.Model.Length, _problem.Beam.Model.Length);
    }

    private static double CreepOf(SectionCheck check) => check.Term(CheckSymbol.CreepFactor);
}
