using System.Diagnostics;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Response;

/// <summary>Sums loads as entered and reactions as found; it knows nothing of how the reactions were found.</summary>
internal struct Equilibrium
{
    private Total _loadDown;
    private Total _loadRight;
    private Total _loadTurn;
    private Total _reactionUp;
    private Total _reactionRight;
    private Total _reactionTurn;

    /// <summary>Adds the loads of a case times its factor.</summary>
    internal void Add(LoadCase loadCase, double factor)
    {
        foreach (Load load in loadCase.Loads)
        {
            Add(load, factor);
        }
    }

    /// <summary>Adds what one support does to the beam.</summary>
    /// <param name="position">Where it stands [m].</param>
    /// <param name="reaction">What it does.</param>
    internal void Add(double position, Reaction reaction)
    {
        _reactionUp.Add(reaction.Vertical);
        _reactionRight.Add(reaction.Horizontal);
        _reactionTurn.Add(position * reaction.Vertical);
        _reactionTurn.Add(reaction.Moment);
    }

    /// <summary>Strikes the balance.</summary>
    internal readonly EquilibriumProof Prove()
    {
        double forces = Ratio(
            Math.Abs(_loadDown.Sum - _reactionUp.Sum) + Math.Abs(_loadRight.Sum + _reactionRight.Sum),
            _loadDown.OfSizes + _loadRight.OfSizes + _reactionUp.OfSizes + _reactionRight.OfSizes);
        double moments = Ratio(
            Math.Abs(_loadTurn.Sum + _reactionTurn.Sum), _loadTurn.OfSizes + _reactionTurn.OfSizes);
        return new EquilibriumProof(
            _loadDown.Sum,
            _reactionUp.Sum,
            _loadRight.Sum,
            _reactionRight.Sum,
            _loadTurn.Sum,
            _reactionTurn.Sum,
            Math.Max(forces, moments));
    }

    private static double Ratio(double rest, double sizes) => sizes == 0 ? 0 : rest / sizes;

    private void Add(Load load, double factor)
    {
        switch (load)
        {
            case Load.Point point:
                AddDown(factor * point.Down, factor * point.Down * point.Position);
                _loadRight.Add(factor * point.Right);
                break;
            case Load.Couple couple:
                _loadTurn.Add(factor * couple.Moment);
                break;
            case Load.Distributed distributed:
                Add(distributed, factor);
                break;
            default:
                throw new UnreachableException();
        }
    }

    private void Add(Load.Distributed load, double factor)
    {
        double length = load.To - load.From;
        double total = factor * (load.StartIntensity + load.EndIntensity) / 2 * length;
        if (load.ActsAlong)
        {
            _loadRight.Add(total);
            return;
        }

        double aboutItsStart = factor * (load.StartIntensity + 2 * load.EndIntensity) / 6 * length * length;
        AddDown(total, load.From * total + aboutItsStart);
    }

    private void AddDown(double force, double moment)
    {
        _loadDown.Add(force);
        _loadTurn.Add(-moment);
    }

    /// <summary>A sum that carries its rounding along (Neumaier), and the sum of the sizes of its terms.</summary>
    private struct Total
    {
        private double _sum;
        private double _rest;

        internal readonly double Sum => _sum + _rest;

        internal double OfSizes { get; private set; }

        internal void Add(double term)
        {
            double next = _sum + term;
            _rest += Math.Abs(_sum) >= Math.Abs(term) ? _sum - next + term : term - next + _sum;
            _sum = next;
            OfSizes += Math.Abs(term);
        }
    }
}
