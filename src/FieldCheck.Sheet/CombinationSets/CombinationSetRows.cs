using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.CombinationSets;

/// <summary>What a set of combinations comes to for one beam.</summary>
/// <param name="Rows">Its rows, in the order of the set; empty where it has none for the beam's cases.</param>
/// <param name="LeftOut">Cases with loads that stand in none of the rows.</param>
/// <param name="Sources">Where the rows and the values in them come from, each once, with whether they were read there.</param>
public sealed record CombinationSetRows(
    ImmutableArray<CombinationSetRow> Rows, ImmutableArray<string> LeftOut, ImmutableArray<string> Sources)
{
    /// <summary>The combinations of a beam with these after them; one that stands already is not added again.</summary>
    /// <param name="standing">The combinations as they stand.</param>
    /// <remarks>A name that another one has gets a number.</remarks>
    public Rows<CombinationEntry> AddedTo(Rows<CombinationEntry> standing)
    {
        ArgumentNullException.ThrowIfNull(standing);
        HashSet<string> keys = [.. standing.Select(SetExpansion.KeyOf)];
        HashSet<string> names = [.. standing.Select(row => row.Name).OfType<string>()];
        return Rows.Where(row => keys.Add(SetExpansion.KeyOf(row.Entry)))
            .Aggregate(standing, (rows, row) => rows.Add(row.Entry with { Name = Free(row.Entry.Name!, names) }));
    }

    private static string Free(string name, HashSet<string> taken)
    {
        string free = name;
        for (int number = 2; !taken.Add(free); number++)
        {
            free = string.Create(CultureInfo.InvariantCulture, $"{name} ({number})");
        }

        return free;
    }
}
