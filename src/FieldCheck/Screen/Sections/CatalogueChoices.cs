using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Reporting;
using FieldCheck.Screen.Overlays;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Strength;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.Sections;

/// <summary>What a cell of the Section view can be chosen from, with figures and sources.</summary>
internal static class CatalogueChoices
{
    /// <summary>So many lines from the chosen one on, figures are seen; those of more need not be read.</summary>
    private const int Seen = 60;

    private const int NameWidth = 16;
    private const int FactorWidth = 19;
    private const int FigureWidth = 13;

    private static readonly ImmutableArray<(string Rules, string For)> Rules =
    [
        ("elastic allowable", "steel by a share of its yield stress, service combinations"),
        ("AISC 360-16 ASD", "steel, service combinations"),
        ("AISC 360-16 LRFD", "steel, factored combinations"),
        ("EN 1993-1-1", "steel, factored combinations"),
        ("NDS", "timber, service combinations"),
        ("EN 1995-1-1", "timber, factored combinations"),
    ];

    /// <summary>How many there are with the words typed.</summary>
    internal static int CountOf(ScreenState state, Overlay.CatalogueList list) => list switch
    {
        { Passing: WouldDo passing } => Passing(passing, list.Filter.Text).Length,
        { Catalogue: null } => 0,
        { Place.Column: FormColumn.Shape } => list.Catalogue.Search(list.Filter.Text).Length,
        { Place.Column: FormColumn.Grade } => Grades(list.Catalogue, list.Filter.Text).Length,
        _ => Of(state, list).Length,
    };

    /// <summary>All with the words typed, best first.</summary>
    internal static ImmutableArray<CatalogueChoice> Of(ScreenState state, Overlay.CatalogueList list)
    {
        DisplayUnits units = new(state.Document.Units);
        return list switch
        {
            { Passing: WouldDo passing } =>
                [.. Passing(passing, list.Filter.Text).Select(candidate => ThatDoes(state, list, candidate, units))],
            { Catalogue: null } => [],
            { Place.Column: FormColumn.Shape } => [.. list.Catalogue.Search(list.Filter.Text)
                .Select((name, index) => Shape(list, name, units, Math.Abs(index - list.Choice) <= Seen))],
            { Place.Column: FormColumn.Grade } => [.. Grades(list.Catalogue, list.Filter.Text)
                .Select((name, index) => Grade(list, name, units, Math.Abs(index - list.Choice) <= Seen))],
            { Place.Column: FormColumn.Factors } => Factors(state, list),
            _ => [.. Rules.Where(one => Has($"{one.Rules} {one.For}", list.Filter.Text)).Select(one => new CatalogueChoice(
                $"{one.Rules,-NameWidth} {one.For}", one.Rules, new Edit.TypeCell(list.Place, one.Rules)) { Facts = [one.Rules, one.For] })],
        };
    }

    private static ImmutableArray<Candidate> Passing(WouldDo found, string text) =>
        [.. found.Passing.Where(candidate => Has($"{candidate.Shape.Name} {candidate.Shape.Family}", text))];

    private static CatalogueChoice ThatDoes(
        ScreenState state, Overlay.CatalogueList list, Candidate candidate, DisplayUnits units)
    {
        string used = candidate.Governing is SectionCheck { Utilisation: double share } most ? CheckFigures.Used(share, most.Verdict) : "--";
        string governs = candidate.Governing is SectionCheck check && state.Settled.Beam is BuiltBeam beam
            ? PlainAscii.Of(new WhatIfWords(beam, state.Settled.Document).What(check))
            : "";
        string open = (candidate.NotJudged == 0 ? "" : $", {candidate.NotJudged} NOT JUDGED")
            + (candidate.IsTooThick ? ", too thick for this yield" : "");
        string weight = list.Passing!.IsByArea
            ? Say(candidate.Shape.Upright.Area, QuantityKind.Area, units)
            : Say(candidate.WeightPerLength, QuantityKind.ForcePerLength, units);
        CatalogueShape shape = candidate.Shape;
        return new CatalogueChoice(
            $"{shape.Name,-NameWidth}{weight,-FigureWidth} {used,-6}{governs}{open}   {FromMemory(shape.IsFromMemory, shape.Status)}{shape.Family}",
            shape.Name,
            new Edit.TakeShape(list.Place.Row, shape.Name))
        {
            About = [$"{shape.Name}, {shape.Family}: {used} used, by {governs}{open}.", .. Origin(shape.Source, shape.Status, shape.File)],
        };
    }

    // A word for not known finds the lowest grades; any other, what has it.
    private static ImmutableArray<CatalogueName> Grades(SectionCatalogue catalogue, string text)
    {
        ImmutableArray<CatalogueName> lowest = text.Trim().Length == 0 ? [] : catalogue.LowestGradesOf(text);
        return lowest.IsEmpty ? catalogue.SearchGrades(text) : lowest;
    }

    private static CatalogueChoice Shape(Overlay.CatalogueList list, CatalogueName name, DisplayUnits units, bool isSeen)
    {
        Edit put = new Edit.TakeShape(list.Place.Row, name.Name);
        if (!isSeen || list.Catalogue!.Shape(name.Name) is not CatalogueShape shape)
        {
            return new CatalogueChoice(name.Name, name.Name, put);
        }

        Section section = shape.Upright;
        string figures = string.Concat(
            Figure("I", section.Inertia, QuantityKind.Inertia, units),
            Figure("S", section.SectionModulus, QuantityKind.SectionModulus, units),
            Figure("A", section.Area, QuantityKind.Area, units));
        return new CatalogueChoice(
            $"{name.Name,-NameWidth}{figures}{FromMemory(shape.IsFromMemory, shape.Status)}{name.Family}", name.Name, put)
        {
            About =
            [
                $"{name.Name}, {name.Family}: {Part("depth", section.Depth, QuantityKind.Length, units)}"
                    + $"{Part("weight", section.WeightPerLength, QuantityKind.ForcePerLength, units)}"
                    + (shape.Flat is Section flat ? $"laid flat I {Say(flat.Inertia, QuantityKind.Inertia, units)}" : "cannot be laid flat"),
                .. Origin(shape.Source, shape.Status, shape.File),
            ],
        };
    }

    private static CatalogueChoice Grade(Overlay.CatalogueList list, CatalogueName name, DisplayUnits units, bool isSeen)
    {
        Edit put = new Edit.TypeCell(list.Place, name.Name);
        if (!isSeen || list.Catalogue!.Grade(name.Name) is not CatalogueGrade grade)
        {
            return new CatalogueChoice(name.Name, name.Name, put);
        }

        Material material = grade.Material;
        double? strength = material.Timber?.Bending ?? material.Yield;
        string figures = string.Concat(
            Figure("E", material.Modulus, QuantityKind.Pressure, units),
            Figure(material.Timber is null ? "yield" : "bending", strength, QuantityKind.Pressure, units));
        return new CatalogueChoice(
            $"{name.Name,-NameWidth}{figures}{FromMemory(grade.IsFromMemory, grade.Status)}{name.Family}", name.Name, put)
        {
            Facts =
            [
                name.Name,
                $"E {Say(material.Modulus, QuantityKind.Pressure, units)}",
                $"{(material.Timber is null ? "yield" : "bending")} {Say(strength, QuantityKind.Pressure, units)}",
                FromMemory(grade.IsFromMemory, grade.Status) + name.Family,
            ],
            About = [$"{name.Name}, {grade.Standard}.", .. Origin(grade.Source, grade.Status, grade.File)],
        };
    }

    // Those of the rules chosen; of other rules they would not be taken.
    private static ImmutableArray<CatalogueChoice> Factors(ScreenState state, Overlay.CatalogueList list)
    {
        FactorLibrary library = FactorLibrary.BuiltIn();
        string? rules = state.Document.Limits?.Rules;
        bool isTimber = library.All.Any(choice => choice.Standard == rules);
        string material = StickRows.Materials(state.Document)[list.Place.Row];
        return
        [
            .. library.Search(list.Filter.Text).Where(choice => !isTimber || choice.Standard == rules)
                .Select(choice => new CatalogueChoice(
                    $"{choice.Name} {choice.Text}".PadRight(FactorWidth) + FromMemory(choice.IsFromMemory, choice.Status) + choice.Words
                        + (isTimber ? "" : $"   {choice.Standard}"),
                    $"{choice.Name} {choice.Text}",
                    new Edit.TypeKey(choice.KeyIn(material), choice.Text))
                {
                    About = [$"{choice.Name} {choice.Text}: {choice.Words}, {choice.Standard}.", .. Origin(choice.Source, choice.Status, null)],
                }),
        ];
    }

    private static IEnumerable<string> Origin(string source, string status, string? file)
    {
        yield return $"Source: {source}";
        yield return $"Figures: {status}";
        if (file is not null)
        {
            yield return $"Your own, in {TextSafety.ForTerminal(file)}";
        }
    }

    private static string FromMemory(bool isSome, string status) => !isSome ? ""
        : status.StartsWith("from memory", StringComparison.Ordinal) ? "from memory; "
        : "partly from memory; ";

    private static bool Has(string text, string filter) => filter
        .Split(' ', StringSplitOptions.RemoveEmptyEntries)
        .All(word => text.Contains(word, StringComparison.OrdinalIgnoreCase));

    private static string Figure(string sign, double? value, QuantityKind kind, DisplayUnits units) =>
        $"{sign} {Say(value, kind, units)}".PadRight(FigureWidth) + " ";

    private static string Part(string word, double? value, QuantityKind kind, DisplayUnits units) =>
        value is null ? "" : $"{word} {Say(value, kind, units)}, ";

    private static string Say(double? value, QuantityKind kind, DisplayUnits units) => value is not double known ? "-"
        : kind == QuantityKind.Length ? units.Movement(known)
        : units.Say(known, kind);
}
