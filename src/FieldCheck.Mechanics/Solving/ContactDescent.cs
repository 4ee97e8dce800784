namespace FieldCheck.Mechanics.Solving;

/// <summary>
/// Finds what touches by going down in energy from step to step, however many supports act one way: where switching several
/// at once goes round in circles.
/// </summary>
/// <remarks>
/// With soft springs at every support that does not touch, pushes that are zero or more and make the energy least are the
/// answer. Of the supports that the beam runs into, the one it runs into deepest touches next; where others would then pull,
/// the pushes go towards the new ones as far as all stay zero or more, and what comes to zero lifts
/// (docs/methods.md, "Supports that let go", [lawson-hanson-1995]).
/// </remarks>
internal sealed class ContactDescent(ContactState state)
{
    private double[] _push = [];

    /// <summary>Finds what touches; the state is left solved on it, with the soft springs.</summary>
    /// <returns>False: the arithmetic does not hold the figures, or rounding leaves no way down.</returns>
    internal bool Run()
    {
        Workspace.Grow(ref _push, state.Count);
        Array.Clear(_push);
        for (int i = 0; i < state.Count; i++)
        {
            state.Touching[i] = !state.IsOneWay(i);
        }

        for (int step = 0; step < 20 * state.Count + 50; step++)
        {
            if (!state.Solve(isEased: true))
            {
                return false;
            }

            if (state.FindWrong() == 0)
            {
                return true;
            }

            int next = Deepest();
            if (next < 0)
            {
                return false;
            }

            state.Touching[next] = true;
            if (!Settle(next))
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>The lifted support that the beam runs into deepest, or -1.</summary>
    private int Deepest()
    {
        int deepest = -1;
        for (int i = 0; i < state.Count; i++)
        {
            if (!state.Touching[i] && state.IsWrong(i) && (deepest < 0 || state.Clearance(i) < state.Clearance(deepest)))
            {
                deepest = i;
            }
        }

        return deepest;
    }

    /// <summary>Lifts what would pull now that one more touches, until nothing does.</summary>
    private bool Settle(int newest)
    {
        while (state.Solve(isEased: true))
        {
            state.FindWrong();
            int first = -1;
            double share = 1;
            for (int i = 0; i < state.Count; i++)
            {
                if (state.Touching[i] && state.IsWrong(i) && ShareOf(i) is double way && (first < 0 || way < share))
                {
                    (first, share) = (i, way);
                }
            }

            if (first == newest)
            {
                return false;
            }

            for (int i = 0; i < state.Count; i++)
            {
                _push[i] += state.Touching[i] && state.IsOneWay(i) ? share * (state.Push(i) - _push[i]) : 0;
            }

            if (first < 0)
            {
                return true;
            }

            state.Touching[first] = false;
            _push[first] = 0;
        }

        return false;
    }

    /// <summary>How far its push can go towards the new one, which pulls, until it is zero.</summary>
    private double ShareOf(int support) => _push[support] / (_push[support] - state.Push(support));
}
