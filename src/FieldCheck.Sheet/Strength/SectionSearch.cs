using System.Collections.Immutable;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;

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
        ImmutableArray<Candidate> passing =
        [
            .. shapes
                .AsParallel()
                .AsOrdered()
                .Select(shape => Try(With(document, replaced, shape), replaced, shape, catalogue, solvers.Value!))
                .OfType<Candidate>(),
        ];
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

    /// <summary>The section of the longest stretch of the beam.</summary>
    internal static string Replaced(BuiltBeam beam) => beam.Sticks
        .Select((stick, span) => (Name: stick.SectionName ?? Nameless, beam.Model.Spans[span].Length))
        .GroupBy(one => one.Name, one => one.Length)
        .MaxBy(lengths => lengths.Sum())!
        .Key;

    private static Candidate? Try(
        BeamDocument document, string replaced, CatalogueShape shape, SectionCatalogue catalogue, BeamSolver solver)
    {
        if (ModelBuilder.Build(document, catalogue) is not BuildOutcome.Built { Beam: BuiltBeam beam })
        {
            return null;
        }

        Judgement judged = Judgement.Of(StrengthRows.Of(beam, document), solver);
        return judged.Governing is { Verdict: CheckVerdict.Ok } governing
            ? new Candidate(
                shape,
                beam.Sticks.First(stick => (stick.SectionName ?? replaced) == replaced).WeightPerLength,
                governing,
                judged.NotJudged)
            {
                IsTooThick = YieldThickness.Counts(StrengthRows.Rules(document.Limits?.Rules))
                    && SticksOf(beam, replaced).Any(YieldThickness.IsOver),
            }
            : null;
    }
}
