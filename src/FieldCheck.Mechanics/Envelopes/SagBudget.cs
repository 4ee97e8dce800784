namespace FieldCheck.Mechanics.Envelopes;

/// <summary>How much may be spent on proving the greatest deflection of one beam, so that no beam is searched without end.</summary>
/// <param name="boxes">Boxes that may be looked at, in all searches together.</param>
internal sealed class SagBudget(int boxes)
{
    private int _left = boxes;

    /// <summary>Whether nothing is left: what is not proved by then stays an estimate.</summary>
    internal bool IsSpent => _left <= 0;

    /// <summary>Spends one box.</summary>
    internal void Spend() => _left--;
}
