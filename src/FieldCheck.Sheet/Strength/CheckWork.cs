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
    public static ImmutableArray<string> Work(BeamCheck check, DisplayUnits display)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(display);
        SectionCheck figures = check.Figures;
        return
        [
            .. figures.Terms.Select(term => Term(term, display)),
            .. Product(check, display) is string product ? new[] { product } : [],
            .. check.Why is null ? new[] { Comparison(check, display) } : [$"not judged: {check.Why}"],
            .. figures.IsBound
                ? new[] { "the demand is put together from the worst of several situations: it may be somewhat too great" }
                : [],
            .. figures.Certainty == EnvelopeCertainty.Estimate
                ? new[] { "the demand is an estimate: another situation may give somewhat more" }
                : [],
        ];
    }

    private static string Term(CheckTerm term, DisplayUnits display)
    {
        SymbolWords words = SymbolWords.Of(term.Symbol);
        return $"{words.Symbol} = {CheckFigures.Say(display, term)}, {words.Words}";
    }

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
        string limit = figures.Limit is double value ? $" = {CheckFigures.Say(display, figures, value)}" : "";
        return $"{CheckFigures.Say(display, grade)}{factors}{limit}";
    }

    private static string Factor(StrengthFactor factor, ImmutableArray<FactorKind> given)
    {
        FactorWords words = FactorWords.Of(factor.Kind);
        string sign = factor.Kind == FactorKind.PartialFactor ? "/" : "x";
        string origin = given.Contains(factor.Kind) ? "given"
            : factor.Value == 1 ? "nothing given"
            : "by the rules";
        return $" {sign} {words.Symbol} {new DisplayUnits(UnitSystem.Si).Number(factor.Value, Reading.QuantityKind.Number)} "
            + $"({words.Words}, {origin})";
    }

    private static string Comparison(BeamCheck check, DisplayUnits display) =>
        $"{check.Have(display)} against {check.Allow(display)}: {check.Used} of it used";
}
