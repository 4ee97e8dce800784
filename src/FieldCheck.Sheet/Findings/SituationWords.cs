using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Findings;

/// <summary>What governs, in words: the combination, what stands on which bays, and where a rolling load stands.</summary>
/// <remarks>Names are those of the sheet, harmless to a terminal; they may hold more than ASCII.</remarks>
public static class SituationWords
{
    private const int LeastNeighbours = 3;
    private const int LeastOthers = 4;

    /// <summary>Nearer to an end of the beam than any tape tells: a figure would say nothing [m].</summary>
    private const double Nothing = 1e-3;

    /// <summary>What governs, as "strength, live on bays 1 and 3, hand truck with its first axle at 2.00 m".</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="situation">One of its situations.</param>
    /// <returns>Empty where there is one combination, without patterns and rolling loads.</returns>
    public static string Of(BuiltBeam beam, Situation situation)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ArgumentNullException.ThrowIfNull(situation);
        Combination combination = beam.Model.Combinations[situation.Combination];
        string[] name = beam.Model.Combinations.Length > 1 ? [combination.Name] : [];
        return TextSafety.ForTerminal(string.Join(", ", [.. name, .. Loads(beam, situation, combination.Factors)]));
    }

    /// <summary>The same within the envelope of one basis: the combination's name only where the basis has several.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="situation">One of its situations.</param>
    public static string Within(BuiltBeam beam, Situation situation)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ArgumentNullException.ThrowIfNull(situation);
        Combination combination = beam.Model.Combinations[situation.Combination];
        bool areSeveral = beam.Model.Combinations.Count(other => other.Basis == combination.Basis) > 1;
        return TextSafety.ForTerminal(string.Join(
            ", ", [.. areSeveral ? new[] { combination.Name } : [], .. Loads(beam, situation, combination.Factors)]));
    }

    /// <summary>The same to follow a sentence, as " under strength, live on bay 1" or " with live on bay 1".</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="situation">One of its situations.</param>
    public static string After(BuiltBeam beam, Situation situation)
    {
        ArgumentNullException.ThrowIfNull(beam);
        string words = Of(beam, situation);
        string joins = beam.Model.Combinations.Length > 1 ? "under" : "with";
        return words.Length == 0 ? "" : $" {joins} {words}";
    }

    /// <summary>What of the loads that may stand or not, or roll, is on the beam; item by item.</summary>
    /// <param name="beam">The beam.</param>
    /// <param name="situation">One of its situations.</param>
    /// <param name="factors">One factor for each case, in the order of the model [–]; cases without one are not told.</param>
    public static ImmutableArray<string> Loads(BuiltBeam beam, Situation situation, ImmutableArray<double> factors)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ArgumentNullException.ThrowIfNull(situation);
        return
        [
            .. from index in beam.PatternCases
               where factors[index] != 0
               let loaded = situation.Patterns.ElementAtOrDefault(index)
               where loaded is not null
               select Pattern(beam.Model.Cases[index].Name, loaded),
            .. situation.Rolling is RollingPlace place ? new[] { Rolling(beam, place) } : NothingRolls(beam, factors),
        ];
    }

    /// <summary>Where the loads of a case stand, as "bays 1, 3 and the right overhang"; empty for nowhere.</summary>
    /// <remarks>Of many only the ends are said: "2 to 5" of neighbours, "7 to 15 by twos" of every other one.</remarks>
    /// <param name="loaded">Where they stand.</param>
    public static string Places(LoadedBays loaded)
    {
        ArgumentNullException.ThrowIfNull(loaded);
        string[] bays = [.. Runs([.. loaded.Bays.Select(bay => bay + 1)])];
        string bay = loaded.Bays.Length == 1 ? "bay" : "bays";
        string[] all =
        [
            .. loaded.OnLeftOverhang ? new[] { "the left overhang" } : [],
            .. bays.Length > 0 ? [$"{bay} {bays[0]}", .. bays[1..]] : Array.Empty<string>(),
            .. loaded.OnRightOverhang ? new[] { "the right overhang" } : [],
        ];
        return all.Length > 1 ? $"{string.Join(", ", all[..^1])} and {all[^1]}" : string.Concat(all);
    }

    private static IEnumerable<string> Runs(int[] bays)
    {
        for (int first = 0; first < bays.Length;)
        {
            int neighbours = Length(bays, first, step: 1);
            int others = Length(bays, first, step: 2);
            (int length, string text) = neighbours >= LeastNeighbours ? (neighbours, $"{bays[first]} to {Last(neighbours)}")
                : others >= LeastOthers ? (others, $"{bays[first]} to {Last(others)} by twos")
                : (1, Last(1));
            yield return text;
            first += length;

            string Last(int length) => bays[first + length - 1].ToString(CultureInfo.InvariantCulture);
        }
    }

    /// <summary>How many bays follow one another so, from one of them on.</summary>
    private static int Length(int[] bays, int first, int step)
    {
        int last = first;
        while (last + 1 < bays.Length && bays[last + 1] == bays[last] + step)
        {
            last++;
        }

        return last - first + 1;
    }

    private static string Pattern(string name, LoadedBays loaded) =>
        Places(loaded) is { Length: > 0 } places ? $"{name} on {places}" : $"no {name}";

    private static string[] NothingRolls(BuiltBeam beam, ImmutableArray<double> factors) =>
        beam.Rolling.Where(rolling => factors[rolling.Case] != 0).ToList() switch
        {
            [] => [],
            [RollingLoad only] => [$"no {only.Label}"],
            _ => ["nothing rolling"],
        };

    private static string Rolling(BuiltBeam beam, RollingPlace place)
    {
        RollingLoad rolling = beam.Rolling[place.Rolling];
        bool isOne = rolling.Axles.Length == 1;
        string others = isOne ? "" : place.IsReversed ? ", others to its left" : ", others to its right";
        return $"{rolling.Label} {(isOne ? "" : "with its first axle ")}{Place(beam, place.Position)}{others}";
    }

    private static string Place(BuiltBeam beam, double position)
    {
        double length = beam.Model.Length;
        return position is < 0 and > -Nothing ? "just left of the beam"
            : position > length && position < length + Nothing ? "just right of the beam"
            : position is > 0 and < Nothing ? $"just right of {End(0, "left")}"
            : position < length && position > length - Nothing ? $"just left of {End(length, "right")}"
            : position < 0 ? $"{Say(-position)} left of the beam"
            : position > length ? $"{Say(position - length)} right of the beam"
            : $"at {Say(position)}";

        string End(double place, string side) =>
            beam.Supports.FirstOrDefault(support => support.Support.Position == place)?.Label ?? $"the {side} end";

        string Say(double distance) => beam.Display.Say(distance, QuantityKind.Length);
    }
}
