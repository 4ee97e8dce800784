using System.Globalization;
using System.Text.RegularExpressions;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>Keeps the cells that a preset asks for with their rows while rows come, go and move.</summary>
internal static partial class AskedCells
{
    /// <summary>Writes the new row in every key path of one table; a path whose row is gone goes with it.</summary>
    /// <param name="ask">The key paths.</param>
    /// <param name="table">The table, as "load".</param>
    /// <param name="row">The new row, counted from 0, or null when it is gone.</param>
    internal static Rows<string> Renumber(Rows<string> ask, string table, Func<int, int?> row) =>
        [.. ask.Select(key => NewKey(key, table, row)).OfType<string>()];

    private static string? NewKey(string key, string table, Func<int, int?> row)
    {
        Match match = RowOfTable().Match(key);
        if (!match.Success || match.Groups["table"].Value != table
            || !int.TryParse(
                match.Groups["row"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out int number))
        {
            return key;
        }

        return row(number - 1) is int moved
            ? string.Create(CultureInfo.InvariantCulture, $"{table}[{moved + 1}]{key[match.Length..]}")
            : null;
    }

    [GeneratedRegex(@"^(?<table>[a-z_]+)\[(?<row>[0-9]+)\]", RegexOptions.CultureInvariant)]
    private static partial Regex RowOfTable();
}
