using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Strength;

/// <summary>The working of one check in a few lines, for whoever follows it. Plain ASCII but for names of the sheet.</summary>
public static class CheckWork
{
    /// <summary>
    /// The numbers on the way to demand and limit, the factors on a strength of timber, and how one comes from the other.
    /// </summary>
    /// <param name="check">The check.</param>
    /// <param name="display">The units that results are shown in.</param>
    /// <returns>The lines, in the order of the work.</returns>
    public static ImmutableArray<string> Work(BeamCheck check, DisplayUnits display)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(display);
        SectionCheck figures = check.Figures;
        return
        [
            .. figures.Terms.Where(term => !IsAside(term)).Select(term => Term(term, display)),
            .. Product(check, display) is string product ? new[] { product } : [],
            .. check.Why is null ? Steps(check, display) : [],
            .. check.Why is null ? new[] { Comparison(check, display) } : [$"not judged: {check.Why}"],
            .. figures.Terms.Where(IsAside).Select(term => Term(term, display)),
            .. figures.IsBound
                ? new[] { "the demand is put together from the worst of several situations: it may be somewhat too great" }
                : [],
            .. figures.Certainty == EnvelopeCertainty.Estimate
                ? new[] { "the demand is an estimate: another situation may give somewhat more" }
                : [],
        ];
    }

    /// <summary>Whether a number is told besides, and leads to no verdict.</summary>
    private static bool IsAside(CheckTerm term) => term.Symbol == CheckSymbol.NeededBearingLength;

    private static string Term(CheckTerm term, DisplayUnits display)
    {
        SymbolWords words = SymbolWords.Of(term.Symbol);
        return $"{words.Symbol} = {By(term.By)}{CheckFigures.Say(display, term)}, {words.Words}";
    }

    /// <summary>The formula before what comes of it; nothing where there is none.</summary>
    private static string By(CheckFormula? formula) => formula is CheckFormula by ? $"{FormulaWords.Of(by)} = " : "";

    /// <summary>How demand and limit come from the numbers before, where they are not given and not found along the beam.</summary>
    private static IEnumerable<string> Steps(BeamCheck check, DisplayUnits display) =>
    [
        .. check.Figures.DemandBy is CheckFormula demand ? [$"have = {By(demand)}{check.Have(display)}"] : Array.Empty<string>(),
        .. check.Figures.LimitBy is CheckFormula limit ? [$"allowed = {By(limit)}{check.Allow(display)}"] : Array.Empty<string>(),
    ];

    /// <summary>The strength of the grade times its factors; null where there is none.</summary>
    private static string? Product(BeamCheck check, DisplayUnits display)
    {
        SectionCheck figures = check.Figures;
        CheckTerm? grade = figures.Terms.FirstOrDefault(term => term.Symbol == CheckSymbol.GradeStrength);
        if (grade is null || figures.Factors.IsEmpty)
        {
            return null;
        }

        string factors = string.Concat(figures.Factors.Select(factor => Factor(factor, check.FactorsGiven)));
        double? strength = figures.Terms.FirstOrDefault(term => term.Symbol == CheckSymbol.TensionStrength)?.Value
            ?? (figures.Unit == CheckUnit.Stress ? figures.Limit : null);
        string product = strength is double value ? $" = {display.Say(value, Reading.QuantityKind.Pressure)}" : "";
        return $"{CheckFigures.Say(display, grade)}{factors}{product}";
    }

    private static string Factor(StrengthFactor factor, ImmutableArray<FactorKind> given)
    {
        FactorWords words = FactorWords.Of(factor.Kind);
        string sign = factor.Kind == FactorKind.PartialFactor ? "/" : "x";
        string origin = given.Contains(factor.Kind) ? "given"
            : factor.Value == 1 && !IsWorkedOut(factor.Kind) ? "nothing given"
            : "by the rules";
        return $" {sign} {words.Symbol} {DisplayUnits.Factor(factor.Value)} "
            + $"({words.Words}, {origin})";
    }

    /// <summary>Whether the rules have it by sizes and lengths, so that a factor of 1 is their answer.</summary>
    private static bool IsWorkedOut(FactorKind kind) => kind is FactorKind.BeamStability or FactorKind.LateralStability
        or FactorKind.BearingArea or FactorKind.Size or FactorKind.Depth or FactorKind.FlatUse;

    private static string Comparison(BeamCheck check, DisplayUnits display) =>
        $"{check.Have(display)} against {check.Allow(display)}: {check.Used} of it used";
}
