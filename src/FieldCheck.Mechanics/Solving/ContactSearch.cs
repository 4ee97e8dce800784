using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Solving;

/// <summary>Finds which of the supports that act one way only touch, under the loads now on the beam.</summary>
/// <remarks>
/// Supports that are wrong are switched until none is: all at once as long as that leaves fewer and fewer
/// (docs/methods.md, "Supports that let go", [judice-pires-1994]), else by going down in energy, which must end.
/// </remarks>
internal sealed class ContactSearch(StiffnessMethod method, Kinematics kinematics)
{
    /// <summary>How often all may be switched without leaving fewer wrong ones than ever before.</summary>
    private const int Patience = 5;

    /// <summary>Up to so many one-way supports every set is tried where switching comes to nothing.</summary>
    private const int MostTried = 12;

    private readonly ContactState _state = new(method, kinematics);
    private ContactDescent? _descent;

    /// <summary>Which supports touch; those that act both ways always do.</summary>
    internal ReadOnlySpan<bool> Touching => _state.Touching;

    /// <summary>Finds what touches; the method is left solved on it.</summary>
    internal ContactVerdict Find(BeamModel model, bool wantsAlong)
    {
        _state.Begin(model, wantsAlong);
        ContactVerdict? verdict = Switch();
        if (verdict is null || (verdict == ContactVerdict.Tips && LetsGoOfMore(model)))
        {
            verdict = Settle(1) ?? Settle(-1) ?? TryEach() ?? LiftOnly(model);
        }

        return verdict.Value;
    }

    /// <summary>
    /// Whether a support that lifts takes more with it than its push: then more than one set may agree with itself, or
    /// none, and switching may miss it.
    /// </summary>
    private static bool LetsGoOfMore(BeamModel model)
    {
        bool isSloped = model.Supports.Any(support => support.SurfaceSlope != 0);
        return model.Supports.Any(support => support.Action != SupportAction.Both
            && (support.Rotation is not Restraint.None || (isSloped && support.Along is not Restraint.None)));
    }

    /// <summary>Switches supports until none is wrong.</summary>
    /// <returns>
    /// The verdict, or null: it went on for too long, or what touches could not hold the beam but no load moves it.
    /// </returns>
    private ContactVerdict? Switch()
    {
        int fewest = int.MaxValue;
        for (int patience = Patience; patience > 0;)
        {
            if (!_state.Solve())
            {
                return ContactVerdict.Fails;
            }

            int wrong = _state.FindWrong();
            if (wrong == 0)
            {
                return _state.IsHeld ? ContactVerdict.Stands : WithoutHold();
            }

            patience = wrong < fewest ? Patience : patience - 1;
            fewest = Math.Min(fewest, wrong);
            SwitchWrong();
        }

        _descent ??= new ContactDescent(_state);
        return !_descent.Run() ? null
            : !_state.IsHeld ? WithoutHold()
            : SolvesSoundly() ? ContactVerdict.Stands
            : null;
    }

    private ContactVerdict? WithoutHold() => _state.IsLetGo ? ContactVerdict.Tips : null;

    private void SwitchWrong()
    {
        for (int i = 0; i < _state.Count; i++)
        {
            _state.Touching[i] ^= _state.IsWrong(i);
        }
    }

    /// <summary>
    /// Where the beam could move but no load makes it, it rests on whatever it meets first: a gentle press finds out what.
    /// </summary>
    /// <param name="sense">1: pressed down; -1: up.</param>
    /// <returns>The verdict, or null: what it meets does not carry the beam without the press.</returns>
    private ContactVerdict? Settle(int sense)
    {
        _state.TouchAll();
        _state.Press(sense);
        ContactVerdict? pressed = Switch();
        _state.Press(0);
        return pressed == ContactVerdict.Stands && Switch() == ContactVerdict.Stands ? ContactVerdict.Stands : null;
    }

    /// <summary>Tries every set of lifted supports where they are few.</summary>
    private ContactVerdict? TryEach()
    {
        int oneWay = 0;
        for (int i = 0; i < _state.Count; i++)
        {
            oneWay += _state.IsOneWay(i) ? 1 : 0;
        }

        for (int set = 0; oneWay <= MostTried && set < 1 << oneWay; set++)
        {
            int bit = 0;
            for (int i = 0; i < _state.Count; i++)
            {
                _state.Touching[i] = !_state.IsOneWay(i) || ((set >> bit++) & 1) == 0;
            }

            if (SolvesSoundly())
            {
                return ContactVerdict.Stands;
            }
        }

        return null;
    }

    private bool SolvesSoundly() => _state.Solve() && _state.IsHeld && _state.FindWrong() == 0;

    /// <summary>No set agrees with itself: lifts what pulls, and lets nothing touch again, to tell why.</summary>
    private ContactVerdict LiftOnly(BeamModel model)
    {
        if (!LetsGoOfMore(model))
        {
            // Plain supports always have an answer; that none was found says nothing of the beam.
            return ContactVerdict.Contradicts;
        }

        _state.TouchAll();
        while (_state.Solve())
        {
            if (!_state.IsHeld)
            {
                return ContactVerdict.Tips;
            }

            _state.FindWrong();
            bool isLifting = false;
            for (int i = 0; i < _state.Count; i++)
            {
                bool pulls = _state.Touching[i] && _state.IsWrong(i);
                _state.Touching[i] &= !pulls;
                isLifting |= pulls;
            }

            if (!isLifting)
            {
                return ContactVerdict.Contradicts;
            }
        }

        return ContactVerdict.Fails;
    }
}
