using System.Collections.Immutable;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;

namespace FieldCheck.Reporting.Record;

/// <summary>What governs, as JSON; bays count from 1.</summary>
internal static class JsonSituations
{
    internal static JsonGoverns Of(BuiltBeam beam, Situation situation)
    {
        Combination combination = beam.Model.Combinations[situation.Combination];
        return Of(beam, situation, combination.Name, combination.Factors);
    }

    internal static JsonGoverns Of(
        BuiltBeam beam, Situation situation, string? combination, ImmutableArray<double> factors)
    {
        (string Name, LoadedBays Loaded)[] patterns =
        [
            .. from index in beam.PatternCases
               where factors[index] != 0
               let loaded = situation.Patterns.ElementAtOrDefault(index)
               where loaded is not null
               select (beam.Model.Cases[index].Name, loaded),
        ];
        ImmutableArray<string> overhangs = [.. patterns.SelectMany(one => Overhangs(one.Loaded)).Distinct()];
        bool areSeveral = patterns.Length > 1;
        return new(
            combination,
            patterns.Length == 0 ? null : [.. patterns.SelectMany(one => Bays(one.Loaded)).Distinct().Order()],
            overhangs.IsEmpty ? null : overhangs,
            areSeveral ? patterns.ToDictionary(one => one.Name, one => Bays(one.Loaded)) : null,
            areSeveral && !overhangs.IsEmpty
                ? patterns.Where(one => !Overhangs(one.Loaded).IsEmpty)
                    .ToDictionary(one => one.Name, one => Overhangs(one.Loaded))
                : null,
            situation.Rolling is null ? null : beam.Rolling[situation.Rolling.Rolling].Label,
            situation.Rolling is null ? null : JsonFigure.Of(situation.Rolling.Position),
            situation.Rolling?.IsReversed);
    }

    private static ImmutableArray<int> Bays(LoadedBays loaded) => [.. loaded.Bays.Select(bay => bay + 1)];

    private static ImmutableArray<string> Overhangs(LoadedBays loaded) =>
    [
        .. loaded.OnLeftOverhang ? new[] { "left" } : [],
        .. loaded.OnRightOverhang ? new[] { "right" } : [],
    ];
}
