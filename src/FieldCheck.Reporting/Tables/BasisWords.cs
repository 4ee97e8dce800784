using System.Diagnostics;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Reporting.Tables;

/// <summary>The basis of a combination in words.</summary>
internal static class BasisWords
{
    internal static string Of(CombinationBasis basis) => basis switch
    {
        CombinationBasis.Service => "service",
        CombinationBasis.Factored => "factored",
        _ => throw new UnreachableException(),
    };
}
