using FieldCheck.Mechanics.Model;

namespace FieldCheck.Sheet.Stated;

/// <summary>Why a stated figure is not judged.</summary>
internal static class StatedReasons
{
    internal const string BasisUnknown = "its basis is unknown; ask whether it is service or factored";

    internal const string BasisNotWritten =
        "its basis is not written, and there are service combinations and factored ones";

    internal const string CaseIsNotFactored = "its basis is factored, and a case alone carries no factors";

    internal const string BeamCanMove = "the beam can move";

    internal const string NoAnswer = "no answer could be found";

    internal static string BasisContradicts(CombinationBasis basis, string combination) =>
        $"its basis is {Word(Other(basis))}, and combination {combination} is {Word(basis)}";

    internal static string NoneOfBasis(CombinationBasis basis) => $"there is no {Word(basis)} combination";

    internal static string WhichOne(IEnumerable<string> combinations) =>
        $"say what it is for: combination {string.Join(" or ", combinations)}, a case, or extreme max or min";

    internal static string NoLoadsInCase(string name) => $"no load stands in case {name}";

    internal static string CaseOnlyRolls(string name) =>
        $"the loads of case {name} roll; say which end is stated: extreme max or min";

    internal static string CaseSlides(string name) => $"nothing holds the beam lengthways against case {name} alone";

    internal static string CaseDoesNotStand(string name) => $"under case {name} alone the beam does not stand";

    internal static string CaseLiftsOff(string name, string support) =>
        $"under case {name} alone {support} lets go, so that the case has no share of its own in a combination";

    internal static string CaseMoves(string name) =>
        $"case {name} alone cannot be told from the settlements where a support acts one way only";

    internal static string Word(CombinationBasis basis) =>
        basis == CombinationBasis.Factored ? "factored" : "service";

    private static CombinationBasis Other(CombinationBasis basis) =>
        basis == CombinationBasis.Factored ? CombinationBasis.Service : CombinationBasis.Factored;
}
