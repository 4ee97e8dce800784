using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Checks;

/// <summary>Tries own weight, other factors, and both at once.</summary>
internal sealed class ExplanationFactors
{
    /// <summary>Factors in use on loads as a whole: common practice, no source.</summary>
    private static readonly double[] Common = [1.2, 1.25, 1.3, 1.35, 1.4, 1.5, 1.6, 1.7];

    /// <summary>Of permanent and variable loads: none, EN 1990 6.10, ASCE 7 strength.</summary>
    private static readonly (double Permanent, double Variable)[] Pairs = [(1, 1), (1.35, 1.5), (1.2, 1.6)];

    private readonly ExplanationBeam _beam;
    private readonly ExplanationList _found;
    private readonly ImmutableArray<Load> _weight;
    private readonly List<LoadChange> _changes = [];

    internal ExplanationFactors(ExplanationBeam beam, ExplanationList found)
    {
        (_beam, _found) = (beam, found);
        _weight = [.. Weight(beam.Stated)];
    }

    private enum OwnWeight
    {
        AsIs,
        LeftOut,
        PutIn,
    }

    internal void Try()
    {
        Try(OwnWeight.AsIs);
        if (_beam.Loads.Any(load => load is { IsOwnWeight: true, Factor: not 0 }))
        {
            Try(OwnWeight.LeftOut);
        }

        if (!_weight.IsEmpty)
        {
            Try(OwnWeight.PutIn);
        }
    }

    private static IEnumerable<Load> Weight(StatedSet stated)
    {
        for (int i = 0; i < stated.UncountedWeight.Length; i++)
        {
            double weight = stated.UncountedWeight[i];
            yield return new Load.Distributed(
                stated.Model.JointPositions[i], stated.Model.JointPositions[i + 1], weight, weight);
        }
    }

    private void Try(OwnWeight weight)
    {
        if (weight != OwnWeight.AsIs)
        {
            Take(null, weight, load => load.Factor, WeightFactor(_beam.Stated.Factors));
        }

        TryCombinations(weight);
        foreach (double factor in Common)
        {
            TryCommon(factor, isTakenOff: false, weight);
            TryCommon(factor, isTakenOff: true, weight);
        }

        foreach ((double permanent, double variable) in Pairs)
        {
            Take(
                new Slip.OtherFactors(permanent, variable),
                weight,
                load => load.Factor == 0 ? 0 : load.IsPermanent ? permanent : variable,
                permanent);
        }
    }

    private void TryCombinations(OwnWeight weight)
    {
        for (int i = 0; i < _beam.Model.Combinations.Length; i++)
        {
            ImmutableArray<double> factors = _beam.Model.Combinations[i].Factors;
            if (!factors.SequenceEqual(_beam.Stated.Factors))
            {
                Take(new Slip.OtherCombination(i), weight, load => factors[load.Case], WeightFactor(factors));
            }
        }
    }

    private void TryCommon(double factor, bool isTakenOff, OwnWeight weight)
    {
        double scale = isTakenOff ? 1 / factor : factor;
        double ofWeight = WeightFactor(_beam.Stated.Factors);
        Take(
            new Slip.CommonFactor(factor, isTakenOff, IsOnVariableOnly: false),
            weight,
            load => scale * load.Factor,
            scale * ofWeight);
        Take(
            new Slip.CommonFactor(factor, isTakenOff, IsOnVariableOnly: true),
            weight,
            load => (load.IsPermanent || load.IsOwnWeight ? 1 : scale) * load.Factor,
            ofWeight);
    }

    /// <summary>Own weight that is put in goes with the permanent loads.</summary>
    private double WeightFactor(ImmutableArray<double> factors) =>
        _beam.Stated.PermanentCases.IsEmpty ? 1 : factors[_beam.Stated.PermanentCases[0]];

    private void Take(Slip? factors, OwnWeight weight, Func<ExplanationLoad, double> factorOf, double ofWeight)
    {
        _changes.Clear();
        foreach (ExplanationLoad load in _beam.Loads)
        {
            double factor = weight == OwnWeight.LeftOut && load.IsOwnWeight ? 0 : factorOf(load);
            if (factor != load.Factor)
            {
                _changes.Add(new LoadChange(load.Load, factor - load.Factor, IsOwn: true));
            }
        }

        if (weight == OwnWeight.PutIn)
        {
            _changes.AddRange(_weight.Select(load => new LoadChange(load, ofWeight)));
        }

        double[]? predicted = _beam.With(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_changes));
        Slip? ofOwn = weight switch
        {
            OwnWeight.LeftOut => new Slip.OwnWeightLeftOut(),
            OwnWeight.PutIn => new Slip.OwnWeightPutIn(),
            _ => null,
        };
        Slip slip = (ofOwn, factors) switch
        {
            (Slip own, Slip other) => new Slip.Together(own, other),
            (Slip own, null) => own,
            _ => factors!,
        };
        _found.Add(slip, ofOwn is null ? 2 : factors is null ? 1 : 4, predicted);
    }
}
