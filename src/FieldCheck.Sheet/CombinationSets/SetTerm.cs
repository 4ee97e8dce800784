using System.Collections.Immutable;

namespace FieldCheck.Sheet.CombinationSets;

/// <summary>
/// What a factor of a set's row belongs to: a case, one of several ("snow or rain"), the leading variable case, the
/// others or some of the others; "psi0", "psi1" or "psi2" before it multiplies the factor by that value of the case.
/// </summary>
/// <param name="Psi">Which psi multiplies it: 0, 1 or 2; null: none.</param>
/// <param name="Cases">The case, or those of which one is taken; empty for the leading one and the others.</param>
/// <param name="Variable">Which variable cases it takes; none where it names its cases.</param>
internal sealed record SetTerm(int? Psi, ImmutableArray<string> Cases, VariableCases Variable)
{
    private const string Leading = "leading";
    private const string Others = "others";
    private const string SomeOthers = "some others";

    /// <summary>Reads a key of a row's factors.</summary>
    internal static SetTerm Of(string key)
    {
        string[] words = key.Split(' ', 2, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        int? psi = words is ["psi0" or "psi1" or "psi2", _] ? words[0][^1] - '0' : null;
        string what = psi is null ? key.Trim() : words[1];
        return what switch
        {
            Leading => new SetTerm(psi, [], VariableCases.Leading),
            Others => new SetTerm(psi, [], VariableCases.Others),
            SomeOthers => new SetTerm(psi, [], VariableCases.SomeOthers),
            _ => new SetTerm(psi, Either(what), VariableCases.None),
        };
    }

    /// <summary>The cases of "snow or rain".</summary>
    internal static ImmutableArray<string> Either(string text) =>
        [.. text.Split(" or ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
}
