namespace FieldCheck.Mechanics.Checks;

/// <summary>How much may still be solved: a search that someone waits for at each key must come to an end.</summary>
internal sealed class ExplanationWork
{
    /// <summary>
    /// Loads and stretches between supports solved for, over all solves: some 50 ms. A beam of 50 spans and 500 loads needs a
    /// fifth of it while no support lifts off.
    /// </summary>
    private const int Most = 100_000;

    private int _left = Most;

    /// <summary>True: something was not solved for want of it.</summary>
    internal bool IsSpent { get; private set; }

    /// <summary>Takes one solve of so many loads and stretches; false: there is not so much left.</summary>
    internal bool Take(int size)
    {
        IsSpent |= size > _left;
        _left -= IsSpent ? 0 : size;
        return !IsSpent;
    }
}
