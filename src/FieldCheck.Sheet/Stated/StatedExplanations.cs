using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Stated;

/// <summary>Looks for what would explain stated figures; only where some figure is called low or high.</summary>
internal static class StatedExplanations
{
    private const string Permanent = "dead";

    /// <summary>One for each set of figures that are stated together: of one combination or case, by one source.</summary>
    internal static ImmutableArray<StatedExplanation> Of(
        ImmutableArray<StatedFigure> figures, BuiltBeam beam, BeamDocument document)
    {
        if (!figures.Any(IsWrong))
        {
            return [];
        }

        ExplanationSearch search = new();
        return
        [
            .. from set in Sets(figures)
               where set.Any(IsWrong)
               let stated = SetOf(set, beam, document)
               let diagnosis = search.Explain(stated) as Diagnosis.Differs
               where diagnosis is not null
               select new StatedExplanation(
                   set[0].Against!,
                   SourceOf(set, figures),
                   stated,
                   [.. set.Select(figure => figures.IndexOf(figure))],
                   diagnosis),
        ];
    }

    private static bool IsWrong(StatedFigure figure) => figure.Verdict is ReactionVerdict.Low or ReactionVerdict.High;

    /// <summary>An extreme over several combinations does not stand together with others.</summary>
    private static IEnumerable<StatedFigure[]> Sets(ImmutableArray<StatedFigure> figures) => figures
        .Where(figure => figure.Against is { Extreme: null })
        .GroupBy(figure => (figure.Against!.IsCase, figure.Against.Name))
        .SelectMany(group => IsOfOnce([.. group])
            ? [[.. group]]
            : group.GroupBy(figure => figure.Entry.Source).Select(one => one.ToArray()).Where(IsOfOnce));

    private static bool IsOfOnce(StatedFigure[] figures) =>
        figures.DistinctBy(figure => (figure.Support, figure.Component)).Count() == figures.Length;

    private static string? SourceOf(StatedFigure[] set, ImmutableArray<StatedFigure> figures)
    {
        int ofAnswer = figures.Count(figure => figure.Against is { Extreme: null } other && other.IsSameAs(set[0].Against!));
        return ofAnswer == set.Length ? null : set[0].Entry.Source;
    }

    private static StatedSet SetOf(StatedFigure[] figures, BuiltBeam beam, BeamDocument document)
    {
        StatedAgainst against = figures[0].Against!;
        BeamModel model = against.IsCase ? WithoutImposed(beam.Model) : beam.Model;
        NamedLoad[] loads = [.. model.Cases.SelectMany(one => beam.Loads.Where(load => load.Case == one.Name))];
        int[] ownWeight = [.. Enumerable.Range(0, loads.Length).Where(index => loads[index].Row is null)];
        return new StatedSet(model, against.Factors, [.. figures.Select(FigureOf)])
        {
            OwnWeight = [.. ownWeight],
            WithoutWidth =
            [
                .. Enumerable.Range(0, loads.Length)
                    .Where(index => loads[index] is { Row: int row, Load: Load.Distributed } && !HasWidth(document.Loads[row])),
            ],
            UncountedWeight = ownWeight.Length == 0 ? WeightOf(beam) : [],
            PermanentCases =
            [
                .. Enumerable.Range(0, model.Cases.Length).Where(index => model.Cases[index].Name == Permanent
                    || ownWeight.Any(load => loads[load].Case == model.Cases[index].Name)),
            ],
        };
    }

    /// <summary>Whether a spread load is a pressure on a width, or an intensity worked out from something times something.</summary>
    private static bool HasWidth(LoadEntry row) => row.Pressure is not null
        || new[] { row.Intensity, row.IntensityEnd }.Any(text => text is not null && text.AsSpan().IndexOfAny("*×·") >= 0);

    private static ReactionFigure FigureOf(StatedFigure figure) =>
        new(figure.Support, figure.Component.Part, figure.Stated, figure.HalfDigit);

    /// <summary>A case alone is answered without settlements.</summary>
    private static BeamModel WithoutImposed(BeamModel model) => model with
    {
        Supports = [.. model.Supports.Select(support => support with { Settlement = 0, ImposedRotation = 0 })],
    };

    /// <summary>Weight of each span that is known although it is not counted; none where one is not known.</summary>
    private static ImmutableArray<double> WeightOf(BuiltBeam beam)
    {
        double?[] weights = [.. beam.Sticks.Select(stick => stick.WeightPerLength)];
        return weights.All(weight => weight > 0) ? [.. weights.Select(weight => weight!.Value)] : [];
    }
}
