using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Reporting.Tables;

/// <summary>What statics alone can say of a beam.</summary>
internal static class DeterminacyWords
{
    internal static string Of(BeamOutcome outcome)
    {
        Determinacy held = outcome.Determinacy;
        return outcome switch
        {
            BeamOutcome.CanMove => "Held by less than statics needs, or in the wrong places: it can move.",
            BeamOutcome.Stands { IsHeldAlong: false } => Across(held.Across),
            _ when held.IsCoupled => Across(held.Total),
            _ when held is { Along: 0, Across: 0 } => Across(0),
            _ => Beyond(held.Total, $"{held.Along} lengthways, {held.Across} across"),
        };
    }

    private static string Across(int beyond) => beyond == 0
        ? "Statics alone gives the reactions: as many unknowns as equations."
        : Beyond(beyond, "");

    private static string Beyond(int count, string where)
    {
        string times = count == 1 ? "1 hold" : $"{count} holds";
        string apart = where.Length == 0 ? "" : $" ({where})";
        return $"Held by {times} more than statics needs{apart}: the reactions depend on stiffness too.";
    }
}
