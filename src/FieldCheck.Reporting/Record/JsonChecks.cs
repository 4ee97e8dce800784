using System.Collections.Immutable;
using System.Text.Json;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Reporting.Record;

/// <summary>The checks of a beam as JSON; spans and bays count from 1.</summary>
internal static class JsonChecks
{
    internal static ImmutableArray<JsonSectionCheck> Of(Calculation calculation, BuiltBeam beam)
    {
        int bays = Bays.Of(beam.Model).Between.Length;
        return [.. calculation.Checks.All.Select(check => Of(check, beam, bays))];
    }

    private static JsonSectionCheck Of(BeamCheck check, BuiltBeam beam, int bays)
    {
        SectionCheck figures = check.Figures;
        int? first = figures.Bay;
        int? last = figures.LastBay ?? first;
        bool isOverhang = first < 0 || last >= bays;
        return new(
            Word(figures.Kind),
            figures.Span + 1,
            first < 0 || first >= bays ? null : first + 1,
            Number(figures.Position),
            figures.Situation is Situation situation ? beam.Model.Combinations[situation.Combination].Name : null,
            JsonAnswer.Word(figures.Basis),
            Number(figures.Demand),
            Number(figures.Limit),
            Unit(figures.Unit),
            Number(figures.Utilisation),
            figures.Verdict switch
            {
                CheckVerdict.Ok => "ok",
                CheckVerdict.Over => "over",
                _ => "not_judged",
            },
            check.Source,
            isOverhang ? (first < 0 ? "left" : "right") : null,
            figures.Support is int support ? beam.Supports[support].Label : null,
            figures.Case is int index ? beam.Model.Cases[index].Name : null,
            figures.Situation is Situation governs ? JsonSituations.Of(beam, governs) : null,
            check.Why ?? "",
            figures.IsBound ? "bound" : figures.Certainty == EnvelopeCertainty.Estimate ? "estimate" : "exact",
            [.. figures.Terms.Select(Of)],
            [.. figures.Factors.Select(factor => new JsonFactor(
                FactorWords.Of(factor.Kind).Symbol, FactorWords.Of(factor.Kind).Words, Number(factor.Value)))],
            figures.LastBay is null || last >= bays ? null : last + 1,
            Formula(figures.DemandBy),
            Formula(figures.LimitBy));
    }

    private static JsonTerm Of(CheckTerm term)
    {
        SymbolWords words = SymbolWords.Of(term.Symbol);
        return new(words.Symbol, words.Words, Number(term.Value), Unit(term.Unit), Formula(term.By));
    }

    private static string Formula(CheckFormula? by) => by is CheckFormula formula ? FormulaWords.Of(formula) : "";

    private static string Word<T>(T kind)
        where T : struct, Enum => JsonNamingPolicy.SnakeCaseLower.ConvertName(kind.ToString());

    private static string Unit(CheckUnit unit) => unit switch
    {
        CheckUnit.Stress => "Pa",
        CheckUnit.Force => "N",
        CheckUnit.Moment => "N*m",
        CheckUnit.Length => "m",
        CheckUnit.Inertia => "m4",
        CheckUnit.SectionModulus => "m3",
        CheckUnit.Area => "m2",
        _ => "1",
    };

    private static double? Number(double? value) => value is double number ? JsonFigure.Of(number) : null;
}
