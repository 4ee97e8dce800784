using System.Collections.Immutable;
using FieldCheck.Sheet;

namespace FieldCheck.Reporting.Working;

/// <summary>The working by hand as text.</summary>
public static class WorkingText
{
    /// <summary>The working of one combination; of a beam that cannot be worked, why.</summary>
    /// <param name="calculation">The beam and what follows from it.</param>
    /// <param name="combination">Which combination, counted from 0.</param>
    /// <param name="request">How it is wanted.</param>
    public static ImmutableArray<WorkingLine> Lines(Calculation calculation, int combination, WorkingRequest request)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        ArgumentNullException.ThrowIfNull(request);
        return [new WorkingLine($"Working by hand, combination {combination + 1}", WorkingLineKind.Step)];
    }
}
