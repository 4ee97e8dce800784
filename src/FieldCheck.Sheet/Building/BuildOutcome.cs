using System.Collections.Immutable;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Building;

/// <summary>What came of building a model from a beam as typed. Closed set: the cases are the nested records.</summary>
public abstract record BuildOutcome
{
    private BuildOutcome()
    {
    }

    /// <summary>Every cell reads and nothing is missing.</summary>
    /// <param name="Beam">The beam in SI.</param>
    public sealed record Built(BuiltBeam Beam) : BuildOutcome;

    /// <summary>Something does not read, is missing or contradicts.</summary>
    /// <param name="Problems">All of it, in the order of the file's tables; at least one.</param>
    public sealed record Refused(ImmutableArray<Problem> Problems) : BuildOutcome;
}
