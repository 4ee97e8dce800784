using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Strength;

/// <summary>The deflection with what lasting loads add in time, for one creep factor.</summary>
internal sealed class FinalDeflection
{
    private readonly BeamDemands _beam;
    private readonly BasisDemands _instant;
    private readonly double _creep;
    private readonly bool _addsUp;
    private readonly BasisDemands _other;

    /// <summary>Where every support acts both ways, factor·(1 + creep·lasting) of each case gives it at once.</summary>
    internal FinalDeflection(BeamDemands beam, ImmutableArray<double> lasting, double creep)
    {
        _beam = beam;
        _instant = beam.Of(CombinationBasis.Service);
        _creep = creep;
        _addsUp = beam.Problem.Model.Supports.All(one => one.Action == SupportAction.Both);
        _other = beam.Of(CombinationBasis.Service, _addsUp
            ? With(beam.Problem, beam.Problem.Model, i => 1 + creep * LastingOf(lasting, i))
            : With(beam.Problem, BeamDemands.Still(beam.Problem.Model), i => LastingOf(lasting, i)));
    }

    /// <summary>The greatest of a stretch, with its two parts where they are of one situation; null: without an answer.</summary>
    internal (Demand Demand, ImmutableArray<CheckTerm> Parts)? Of(DeflectionStretch stretch)
    {
        if (_other.Obstacle is not null || !_other.Envelope.WithoutAnswer.IsEmpty)
        {
            return null;
        }

        if (_addsUp)
        {
            Demand whole = StretchDemand.Of(stretch, _other);
            return (whole, PartsOf(whole, stretch));
        }

        return _instant.Varies || _instant.Answers.Length != _other.Answers.Length ? Bound(stretch) : Sum(stretch);
    }

    private CheckTerm Creep => new(CheckSymbol.CreepFactor, _creep, CheckUnit.Number);

    private static double LastingOf(ImmutableArray<double> lasting, int loadCase) =>
        lasting.IsDefaultOrEmpty ? 0 : lasting[loadCase];

    private static EnvelopeProblem With(EnvelopeProblem problem, BeamModel model, Func<int, double> times)
    {
        BeamModel combined = model with
        {
            Combinations =
            [
                .. model.Combinations.Select(one => one.Basis == CombinationBasis.Service
                    ? one with { Factors = [.. one.Factors.Select((factor, i) => factor * times(i))] }
                    : one),
            ],
        };
        return new EnvelopeProblem(combined, problem.PatternCases, problem.Rolling);
    }

    private ImmutableArray<CheckTerm> PartsOf(Demand whole, DeflectionStretch stretch)
    {
        if (EnvelopeSearch.Respond(_beam.Problem, whole.Situation, _beam.Solver) is not BeamResponse instant
            || EnvelopeSearch.Respond(_other.Problem, whole.Situation, _beam.Solver) is not BeamResponse final)
        {
            return [Creep];
        }

        double sense = Math.Sign(ChordDeflection.At(stretch, final, whole.Position));
        double atOnce = sense * ChordDeflection.At(stretch, instant, whole.Position);
        return Terms(atOnce, whole.Value - atOnce);
    }

    /// <summary>Supports that let go: the lasting loads are solved for by themselves, combination by combination.</summary>
    private (Demand, ImmutableArray<CheckTerm>) Sum(DeflectionStretch stretch)
    {
        Demand? greatest = null;
        (double AtOnce, double InTime) parts = default;
        foreach (((Situation situation, BeamResponse instant), (_, BeamResponse lasting)) in _instant.Answers.Zip(_other.Answers))
        {
            Peak peak = ChordDeflection.Greatest(stretch, (instant, 1), (lasting, _creep));
            Demand own = new(peak.Value, peak.Position, situation);
            if (ReferenceEquals(Demand.Greater(greatest, own), own))
            {
                greatest = own;
                double atOnce = ChordDeflection.At(stretch, instant, own.Position);
                double inTime = _creep * ChordDeflection.At(stretch, lasting, own.Position);
                double sense = Math.Sign(atOnce + inTime);
                parts = (sense * atOnce, sense * inTime);
            }
        }

        Demand found = greatest! with { Certainty = _instant.Envelope.CertaintyOf(Curve.Deflection) };
        return (found, Terms(parts.AtOnce, parts.InTime));
    }

    private (Demand, ImmutableArray<CheckTerm>) Bound(DeflectionStretch stretch)
    {
        Demand instant = StretchDemand.Of(stretch, _instant);
        Demand lasting = StretchDemand.Of(stretch, _other);
        Demand sum = instant with
        {
            Value = instant.Value + _creep * lasting.Value,
            Certainty = (EnvelopeCertainty)Math.Max((int)instant.Certainty, (int)lasting.Certainty),
            IsBound = true,
        };
        return (sum, Terms(instant.Value, _creep * lasting.Value));
    }

    private ImmutableArray<CheckTerm> Terms(double atOnce, double inTime) =>
    [
        new CheckTerm(CheckSymbol.InstantDeflection, atOnce, CheckUnit.Length),
        Creep,
        new CheckTerm(CheckSymbol.CreepDeflection, inTime, CheckUnit.Length),
    ];
}
