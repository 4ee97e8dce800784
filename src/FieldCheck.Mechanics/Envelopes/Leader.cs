namespace FieldCheck.Mechanics.Envelopes;

/// <summary>The greatest value so far and where it stands; of values that tie, the leftmost place.</summary>
internal struct Leader<TSituation>
{
    /// <summary>What counts as equal, relative to the greatest size; as for a curve of one combination.</summary>
    internal const double Closeness = 1e-12;

    /// <summary>To what share of the greatest size a greatest value is proved where it is not worked out.</summary>
    private const double Proved = 1e-10;

    private double _tie;
    private readonly double _near;

    /// <param name="size">The size of what is compared, in its own unit.</param>
    /// <param name="length">Length of the beam [m].</param>
    internal Leader(double size, double length)
    {
        _tie = Closeness * size;
        _near = 1e-9 * length;
        Value = double.NegativeInfinity;
        Position = double.PositiveInfinity;
        Situation = default!;
    }

    internal double Value { get; private set; }

    internal double Position { get; private set; }

    internal TSituation Situation { get; private set; }

    /// <summary>What a value must reach to count at all.</summary>
    internal readonly double Floor => Value - _tie;

    /// <summary>Takes note of how large what is compared can be.</summary>
    internal void Widen(double size) => _tie = Math.Max(_tie, Closeness * size);

    /// <summary>Whether a value could take the lead.</summary>
    internal readonly bool CouldBeat(double value) => value >= Floor;

    /// <summary>Whether a value is more than is known by more than what is proved to.</summary>
    internal readonly bool CouldRaise(double value) => value > Value + Proved / Closeness * _tie;

    internal void Take(double value, double position, TSituation situation)
    {
        if (value > Value + _tie || (value >= Value - _tie && position < Position - _near))
        {
            Position = position;
            Situation = situation;
        }

        Value = Math.Max(Value, value);
    }
}
