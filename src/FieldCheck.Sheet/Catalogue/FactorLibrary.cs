using System.Collections.Immutable;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Catalogue;

/// <summary>Factors of timber to choose from, each with its source.</summary>
/// <param name="All">All of them, by standard, in the order of its table.</param>
public sealed record FactorLibrary(ImmutableArray<FactorChoice> All)
{
    private static readonly Lazy<FactorLibrary> Shipped = new(() => new([.. FactorTables.Read()]));

    /// <summary>The factors that ship with the program; they are read once, when first asked for.</summary>
    public static FactorLibrary BuiltIn() => Shipped.Value;

    /// <summary>The factors that every word of a text fits, in the order of the tables.</summary>
    /// <param name="text">As typed; capitals do not count. Where nothing is typed, all fit.</param>
    public ImmutableArray<FactorChoice> Search(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string[] words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return [.. All.Where(choice => words.All(word => Fits(choice, word)))];
    }

    private static bool Fits(FactorChoice choice, string word) =>
        (choice.Kind is null ? IsSignOfCreep(word) : FactorNames.Find(word) == choice.Kind)
        || choice.Text == word
        || (word.Length == 1
            // A figure alone is a class, and no part of "EN 1995-1-1".
            ? choice.Words.Split(' ', ',').Contains(word)
            : new[] { choice.Words, choice.Name, choice.Standard }
                .Any(part => part.Contains(word, StringComparison.OrdinalIgnoreCase)));

    private static bool IsSignOfCreep(string word) =>
        word.Replace("_", "", StringComparison.Ordinal).Equals("kdef", StringComparison.OrdinalIgnoreCase);
}
