using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Findings;

/// <summary>What must be said of the checks of a beam: what is over, what is not judged, and what hangs on what.</summary>
internal static class StrengthFindings
{
    /// <summary>From this share of a limit on what it hangs on is measured again; common practice, no source [–].</summary>
    private const double Close = 0.95;

    internal static IEnumerable<Message> Of(
        BuiltBeam beam,
        BeamDocument document,
        BeamChecks checks,
        Lazy<ImmutableArray<Envelope>> envelopes,
        SectionCatalogue catalogue) => checks.All.IsEmpty
        ? []
        :
        [
            .. checks.All.Select(check => Over(beam, check)).OfType<Message>(),
            .. checks.All.Where(check => check.Why is not null).GroupBy(check => check.Why!).Select(NotJudged),
            .. OneFactor(checks),
            .. checks.All.Any(check => check.Figures.Kind is CheckKind.Bending or CheckKind.BendingAndAxial)
                ? BracedFindings.Of(beam, document, envelopes.Value)
                : [],
            .. YieldFindings.Of(beam, document, catalogue),
            .. YieldShapeFindings.Of(beam, document, catalogue),
            .. StressFindings.Of(beam),
            .. GradeSizeFindings.Of(beam, document, catalogue),
            .. LastingFindings.WithoutLimit(beam, checks),
            .. FactorFindings.Beyond(beam, document),
            .. LastingFindings.Of(beam, document, checks),
            .. checks.All.Select(MeasureAgain).OfType<Message>(),
            .. FromMemory(document, catalogue),
        ];

    private static Message? Over(BuiltBeam beam, BeamCheck check) => check.Figures.Verdict != CheckVerdict.Over
        ? null
        : new Message(
            Severity.Fault,
            MessageCodes.Over,
            $"OVER: {check.What}: {check.Have(beam.Display)}{Place(check)}, {check.Used} of the "
                + $"{check.Allow(beam.Display)} it may have{Under(check)}.");

    /// <summary>All that is not judged for one reason.</summary>
    private static Message NotJudged(IGrouping<string, BeamCheck> checks) => new(
        Severity.Caution,
        MessageCodes.NotJudged,
        $"NOT JUDGED: {string.Join(", ", checks.Select(check => check.What).Distinct())}: {checks.Key}.");

    private static Message? MeasureAgain(BeamCheck check) =>
        check.Figures is { Verdict: CheckVerdict.Ok, Utilisation: > Close }
            ? Note(
                MessageCodes.MeasureAgain,
                $"{Sentence(check.What)} uses {check.Used} of its limit: measure again what it hangs on.")
            : null;

    /// <summary>The factor for how long loads last is one for all combinations, though each has its own.</summary>
    private static IEnumerable<Message> OneFactor(BeamChecks checks) => checks.All
        .SelectMany(check => check.Figures.Factors)
        .Select(factor => factor.Kind)
        .Where(kind => kind is FactorKind.Duration or FactorKind.Modification)
        .Distinct()
        .Select(kind => new Message(
            Severity.Caution,
            MessageCodes.OneDurationFactor,
            $"One {FactorWords.Of(kind).Symbol} stands for all combinations. It is that of the shortest action in a "
                + "combination: check combinations of longer actions, and dead load alone, with theirs."));

    private static IEnumerable<Message> FromMemory(BeamDocument document, SectionCatalogue catalogue) =>
        document.Sections.Select(section => section.Shape).OfType<string>()
            .Select(name => catalogue.Shape(name)).OfType<CatalogueShape>().Select(shape => (shape.Name, shape.Status))
            .Concat(document.Materials.Select(material => material.Grade).OfType<string>()
                .Select(name => catalogue.Grade(name)).OfType<CatalogueGrade>().Select(grade => (grade.Name, grade.Status)))
            .Where(row => row.Status.Contains("memory", StringComparison.OrdinalIgnoreCase))
            .Distinct()
            .Select(row => Note(MessageCodes.FromMemory, $"Figures of {row.Name} in the catalogue: {row.Status}."));

    private static string Place(BeamCheck check) => check.Where.Length == 0 ? "" : $" at {check.Where}";

    private static string Under(BeamCheck check) =>
        check.Governs.Length == 0 || check.Figures.Case is not null ? "" : $", under {check.Governs}";

    private static string Sentence(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static Message Note(string code, string text) => new(Severity.Note, code, text);
}
