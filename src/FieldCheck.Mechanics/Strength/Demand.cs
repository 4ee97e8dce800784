using FieldCheck.Mechanics.Envelopes;

namespace FieldCheck.Mechanics.Strength;

/// <summary>The greatest of something over all situations of one basis, and what makes it so.</summary>
/// <param name="Value">The size of it, never negative, in its own SI unit.</param>
/// <param name="Position">Where it stands [m from the left end].</param>
/// <param name="Situation">A situation that gives it.</param>
internal sealed record Demand(double Value, double Position, Situation Situation)
{
    /// <summary>Two sizes that differ by this share of them are one, and the leftmost place counts.</summary>
    private const double Closeness = 1e-12;

    /// <summary>The span that it was looked for in; null: in none alone.</summary>
    internal int? Span { get; init; }

    internal EnvelopeCertainty Certainty { get; init; }

    /// <summary>True: put together from the worst of several situations.</summary>
    internal bool IsBound { get; init; }

    /// <summary>An extreme value, as far as it has the sense: 1 the greatest, -1 the least.</summary>
    internal static Demand Of(GovernedExtreme extreme, int sense) =>
        new(Math.Max(0, sense * extreme.Value), extreme.Position, extreme.Situation);

    /// <summary>The greater of two; of equal ones that further left.</summary>
    internal static Demand Greater(Demand? one, Demand other)
    {
        if (one is null)
        {
            return other;
        }

        double near = Closeness * Math.Max(one.Value, other.Value);
        bool isOther = other.Value > one.Value + near
            || (other.Value >= one.Value - near && other.Position < one.Position);
        return isOther ? other : one;
    }

    /// <summary>A check judged by it.</summary>
    /// <param name="check">The check without figures.</param>
    /// <param name="limit">Its limit.</param>
    /// <param name="perValue">What its own demand is for each unit of this.</param>
    internal SectionCheck Judge(SectionCheck check, double limit, double perValue = 1) =>
        Place(check) with { Demand = Value * perValue, Limit = limit };

    /// <summary>A check with the place and the situation of it, not judged yet.</summary>
    internal SectionCheck Place(SectionCheck check) => check with
    {
        Span = check.Span ?? Span,
        Position = Position,
        Situation = Situation,
        Certainty = Certainty,
        IsBound = IsBound,
    };
}
