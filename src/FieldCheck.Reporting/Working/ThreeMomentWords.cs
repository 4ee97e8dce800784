using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Mechanics.HandMethods;

namespace FieldCheck.Reporting.Working;

/// <summary>The words of the three-moment working.</summary>
internal static class ThreeMomentWords
{
    internal static string NameOf(HandName name, WorkingNames names) => throw new UnreachableException();

    internal static string Step(HandStep step, WorkingWords words) => throw new UnreachableException();

    internal static ImmutableArray<string> Remark(HandRemark remark, WorkingWords words) => throw new UnreachableException();
}
