using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Findings;

namespace FieldCheck.Sheet.Strength;

/// <summary>Tries the catalogue in the place of a section, its weight and stiffness counted anew.</summary>
internal static class SectionSearch
{
    private const string Nameless = "beam";

    internal static WouldDo Find(
        BeamDocument document, SectionCatalogue catalogue, BuiltBeam beam, ImmutableArray<string> families)
    {
        string replaced = Replaced(beam);
        ImmutableArray<CatalogueShape> shapes =
        [
            .. catalogue.Search("")
                .Where(one => families.IsEmpty || families.Contains(one.Family))
                .Select(one => catalogue.Shape(one.Name)!),
        ];
        using ThreadLocal<BeamSolver> solvers = new(() => new BeamSolver());
        Judgement present = Judgement.Of(StrengthRows.Of(beam, document), solvers.Value!);
        HashSet<OpenCheck> open = [.. OpenChecks(present, beam)];
        ImmutableArray<Trial> trials =
        [
            .. shapes
                .AsParallel()
                .AsOrdered()
                .Select(shape => Try(With(document, replaced, shape), replaced, shape, catalogue, present, open, solvers.Value!)),
        ];
        ImmutableArray<Candidate> passing = [.. trials.Select(trial => trial.Passing).OfType<Candidate>()];
        bool isByArea = passing.Any(candidate => candidate.WeightPerLength is null);
        return new WouldDo(
            replaced,
            [.. shapes.Select(shape => shape.Family).Distinct()],
            shapes.Length,
            [
                .. passing
                    .OrderBy(candidate => (isByArea ? candidate.Shape.Upright.Area : candidate.WeightPerLength) ?? double.PositiveInfinity)
                    .ThenBy(candidate => candidate.Governing?.Utilisation),
            ])
        {
            IsByArea = isByArea,
            Open = trials.Count(trial => trial.IsOpen),
            Plies = document.Sections.FirstOrDefault(entry => entry.Name == replaced)?.Plies is { } plies && plies.Trim() != "1"
                ? plies.Trim()
                : null,
        };
    }

    /// <summary>The sheet with a shape of the catalogue in the place of one section, upright or flat as that was.</summary>
    internal static BeamDocument With(BeamDocument document, string replaced, CatalogueShape shape)
    {
        SectionEntry? old = document.Sections.FirstOrDefault(entry => entry.Name == replaced);
        SectionEntry put = new() { Name = replaced, Shape = shape.Name, Flat = old?.Flat };
        return document with
        {
            Sections = [.. document.Sections.Where(entry => entry != old), put],
        };
    }

    /// <summary>The sticks of one section.</summary>
    internal static IEnumerable<Stick> SticksOf(BuiltBeam beam, string section) =>
        beam.Sticks.Where(stick => (stick.SectionName ?? Nameless) == section);

    /// <summary>The shape of the catalogue that a section is; null: it is given otherwise.</summary>
    internal static CatalogueShape? ShapeOf(BeamDocument document, SectionCatalogue catalogue, string section) =>
        document.Sections.FirstOrDefault(entry => entry.Name == section)?.Shape is string name ? catalogue.Shape(name) : null;

    /// <summary>The section of the longest stretch of the beam.</summary>
    internal static string Replaced(BuiltBeam beam) => beam.Sticks
        .Select((stick, span) => (Name: stick.SectionName ?? Nameless, beam.Model.Spans[span].Length))
        .GroupBy(one => one.Name, one => one.Length)
        .MaxBy(lengths => lengths.Sum())!
        .Key;

    private static Trial Try(
        BeamDocument document,
        string replaced,
        CatalogueShape shape,
        SectionCatalogue catalogue,
        Judgement present,
        HashSet<OpenCheck> open,
        BeamSolver solver)
    {
        if (ModelBuilder.Build(document, catalogue) is not BuildOutcome.Built { Beam: BuiltBeam beam })
        {
            return default;
        }

        Judgement judged = Judgement.Of(StrengthRows.Of(beam, document), solver);
        if (!SectionCheck.IsWithin(judged.Utilisation) || (judged.Pulled is not null && present.Pulled is null))
        {
            return default;
        }

        // What the present section is judged by counts: less than that is no proof that another does.
        if (OpenChecks(judged, beam).Any(check => !open.Contains(check)) || IsOutsideItsGrade(beam, replaced, document, catalogue))
        {
            return new Trial(null, IsOpen: true);
        }

        return judged.Governing is not SectionCheck governing
            ? default
            : new Trial(
                new Candidate(
                    shape,
                    beam.Sticks.First(stick => (stick.SectionName ?? replaced) == replaced).WeightPerLength,
                    governing,
                    judged.NotJudged)
                {
                    IsTooThick = YieldThickness.Counts(StrengthRows.Rules(document.Limits?.Rules))
                        && SticksOf(beam, replaced).Any(YieldThickness.IsOver),
                },
                IsOpen: false);
    }

    private static bool IsOutsideItsGrade(BuiltBeam beam, string replaced, BeamDocument document, SectionCatalogue catalogue)
    {
        BuiltBeam own = beam with { Sticks = [.. SticksOf(beam, replaced)] };
        return GradeSizeFindings.Of(own, document, catalogue).Concat(YieldShapeFindings.Of(own, document, catalogue)).Any();
    }

    // Of a span it counts which section is there: the spans of one member are judged together, at any of them.
    private static IEnumerable<OpenCheck> OpenChecks(Judgement judged, BuiltBeam beam) => judged.All
        .Where(check => check.Verdict == CheckVerdict.NotJudged)
        .Select(check => new OpenCheck(
            check.Kind,
            check.Basis,
            check.Span is int span ? beam.Sticks[span].SectionName ?? Nameless : null,
            check.Bay,
            check.Support,
            check.Case));

    /// <summary>What a check that cannot be judged is of.</summary>
    private readonly record struct OpenCheck(
        CheckKind Kind, CombinationBasis Basis, string? Section, int? Bay, int? Support, int? Case);

    /// <summary>One shape tried: it would do, or no check is over and not all are judged, or it would not do.</summary>
    private readonly record struct Trial(Candidate? Passing, bool IsOpen);
}
