using System.Globalization;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;

namespace FieldCheck.Sheet.Strength;

/// <summary>Finds how long the first bay may become, by typing other lengths of its span as a person would.</summary>
internal static class FirstBay
{
    /// <summary>No length below this share of the one typed is tried [–].</summary>
    private const double Shortest = 0.02;

    /// <summary>So many shorter lengths are tried, and so many longer ones, where neither the one typed nor the shortest holds.</summary>
    private const int Tries = 49;

    internal static BayHeadroom Find(BeamDocument document, SectionCatalogue catalogue, BuiltBeam beam, BeamChecks checks)
    {
        BeamModel model = beam.Model;
        if (Bays.Of(model).Between is not [Bay first, ..])
        {
            return new BayHeadroom(null, "no bay stands between two supports");
        }

        int span = model.JointPositions.IndexOf(first.From);
        if (span < 0 || model.JointPositions[span + 1] != first.To)
        {
            return new BayHeadroom(null, "the first bay is not one span of the form");
        }

        double typed = model.Spans[span].Length;
        BeamSolver solver = new();
        BayLateral? lateral = BayLateral.Of(document.Spans[span], typed);
        Judgement now = Judge(document, catalogue, solver);
        return new BayHeadroom(
            HeadroomSearch.Of(
                length => length == typed
                    ? now
                    : Judge(Typed(document, span, length, lateral), catalogue, solver).WithNoMoreOpenThan(now.NotJudged),
                typed,
                typed * Shortest,
                Tries),
            null)
        {
            Lateral = checks.All.Any(check => check.Figures.Kind == CheckKind.LateralStability) ? lateral : null,
        };
    }

    private static BeamDocument Typed(BeamDocument document, int span, double length, BayLateral? lateral)
    {
        BeamDocument typed = Editor.Apply(
            new FormSheet(document),
            new Edit.TypeCell(
                new FormPlace(FormBlock.Spans, span, FormColumn.Length),
                length.ToString("R", CultureInfo.InvariantCulture) + " m")).Document;
        return lateral is null
            ? typed
            : typed with { Spans = typed.Spans.SetItem(span, lateral.Put(typed.Spans[span], length)) };
    }

    /// <summary>A length that loads or supports no longer stand on counts as one that does not hold.</summary>
    private static Judgement Judge(BeamDocument document, SectionCatalogue catalogue, BeamSolver solver) =>
        ModelBuilder.Build(document, catalogue) is BuildOutcome.Built built
            ? Judgement.Of(StrengthRows.Of(built.Beam, document), solver)
            : new Judgement(double.PositiveInfinity, null);
}
