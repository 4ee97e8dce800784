using System.Collections.Immutable;
using FieldCheck.Reporting.Record;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.CommandLine;

/// <summary>What came of checking one file. Closed set: the cases are the nested records.</summary>
internal abstract record BeamCheck
{
    private BeamCheck()
    {
    }

    /// <summary>The file is not usable.</summary>
    /// <param name="Problems">All that is wrong with it, in order of line.</param>
    internal sealed record Unusable(ImmutableArray<FileProblem> Problems) : BeamCheck;

    /// <summary>The beam reads; whether it stands is for the calculation to say.</summary>
    /// <param name="Calculation">What came of it.</param>
    /// <param name="At">The places to read off.</param>
    /// <param name="Origin">The text it was read from.</param>
    internal sealed record Calculated(
        Calculation Calculation, ImmutableArray<AskedPlace> At, BeamFileText Origin) : BeamCheck;
}
