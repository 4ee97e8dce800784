using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Envelopes;

/// <summary>
/// Which supports let go and how far the beam then stands off them, from the reactions were all to hold: supports are
/// switched until each that touches acts in its sense and none that let go is run into.
/// </summary>
/// <remarks>
/// A support that lets go is one whose rest goes with the beam: R = R₀ + K·d is nothing there, K the reactions to a rest
/// raised by one. Its answer is the only one, since K belongs to a sound beam (docs/methods.md, "Envelopes").
/// </remarks>
internal sealed class LiftSteps
{
    /// <summary>What counts as nothing beside the greatest force [–].</summary>
    private const double Nothing = 1e-13;

    /// <summary>A pivot below this share of its own support's stiffness [–]: too near to tipping to tell.</summary>
    private const double LeastPivot = 1e-9;

    private readonly int[] _senses;
    private readonly double[,] _stiffness;
    private readonly double[,] _factor;
    private readonly bool[] _isOff;
    private readonly int[] _off;
    private readonly double[] _reactions;

    /// <summary>None lets go yet.</summary>
    /// <param name="actions">How the supports that act one way act.</param>
    /// <param name="stiffness">The reaction of each to the rest of each raised by one [N/m].</param>
    internal LiftSteps(ImmutableArray<SupportAction> actions, double[,] stiffness)
    {
        _senses = [.. actions.Select(action => action == SupportAction.PushesOnly ? 1 : -1)];
        _stiffness = stiffness;
        _factor = new double[actions.Length, actions.Length];
        _isOff = new bool[actions.Length];
        _off = new int[actions.Length];
        _reactions = new double[actions.Length];
        Lifts = new double[actions.Length];
    }

    /// <summary>How far up each rest has gone with the beam [m]; nothing where it touches.</summary>
    internal double[] Lifts { get; }

    internal bool IsOff(int support) => _isOff[support];

    /// <summary>Finds them, beginning with those that let go last time.</summary>
    /// <param name="held">The reactions were all supports to hold both ways [N].</param>
    /// <returns>False: it cannot be told in so few steps, or the beam may tip.</returns>
    internal bool Find(ReadOnlySpan<double> held)
    {
        for (int step = 0; step < 6 * _senses.Length + 10; step++)
        {
            if (!Solve(held))
            {
                Array.Clear(_isOff);
                return false;
            }

            if (Switch(lastOnly: step > 2 * _senses.Length) == 0)
            {
                return true;
            }
        }

        Array.Clear(_isOff);
        return false;
    }

    private int Switch(bool lastOnly)
    {
        double greatest = 0;
        foreach (double reaction in _reactions)
        {
            greatest = Math.Max(greatest, Math.Abs(reaction));
        }

        int wrong = 0;
        for (int i = _senses.Length - 1; i >= 0; i--)
        {
            double good = _isOff[i] ? Lifts[i] * _stiffness[i, i] : _reactions[i];
            if (_senses[i] * good < -Nothing * greatest && !(lastOnly && wrong > 0))
            {
                wrong++;
                _isOff[i] = !_isOff[i];
            }
        }

        return wrong;
    }

    /// <summary>Raises the rests of those that let go until they give nothing.</summary>
    private bool Solve(ReadOnlySpan<double> held)
    {
        int count = 0;
        for (int i = 0; i < _senses.Length; i++)
        {
            Lifts[i] = 0;
            if (_isOff[i])
            {
                _off[count++] = i;
            }
        }

        if (!Factor(count))
        {
            return false;
        }

        for (int i = 0; i < count; i++)
        {
            double value = -held[_off[i]];
            for (int j = 0; j < i; j++)
            {
                value -= _factor[i, j] * Lifts[_off[j]];
            }

            Lifts[_off[i]] = value / _factor[i, i];
        }

        for (int i = count - 1; i >= 0; i--)
        {
            double value = Lifts[_off[i]];
            for (int j = i + 1; j < count; j++)
            {
                value -= _factor[j, i] * Lifts[_off[j]];
            }

            Lifts[_off[i]] = value / _factor[i, i];
        }

        for (int i = 0; i < _senses.Length; i++)
        {
            _reactions[i] = held[i];
            for (int j = 0; j < count; j++)
            {
                _reactions[i] += _stiffness[i, _off[j]] * Lifts[_off[j]];
            }
        }

        return true;
    }

    /// <summary>L·Lᵀ of the rows and columns of those that let go.</summary>
    private bool Factor(int count)
    {
        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double value = _stiffness[_off[i], _off[j]];
                for (int k = 0; k < j; k++)
                {
                    value -= _factor[i, k] * _factor[j, k];
                }

                if (i == j && !(value > LeastPivot * _stiffness[_off[i], _off[i]]))
                {
                    return false;
                }

                _factor[i, j] = i == j ? Math.Sqrt(value) : value / _factor[j, j];
            }
        }

        return true;
    }
}
