using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Building;

/// <summary>
/// One row of a table with every cell read by what its key asks for. A cell that does not read is told on making the
/// row, whether or not anything uses it, and counts as unknown from then on.
/// </summary>
internal sealed class Row
{
    private readonly ImmutableArray<Cell> _cells;
    private readonly ProblemList _problems;

    private Row(string path, ImmutableArray<Cell> cells, ProblemList problems)
    {
        Path = path;
        _cells = cells;
        _problems = problems;
    }

    /// <summary>Key path of the row, as "load[2]"; empty for the top of the file.</summary>
    internal string Path { get; }

    /// <summary>The keys that stand in the row.</summary>
    internal IEnumerable<string> KeysGiven => _cells.Where(cell => cell.Text is not null).Select(cell => cell.Key);

    internal static Row Of<T>(
        ImmutableArray<Field<T>> fields, T entry, string path, ProblemList problems, CellOffsets? offsets = null)
    {
        ImmutableArray<Cell>.Builder cells = ImmutableArray.CreateBuilder<Cell>(fields.Length);
        foreach (Field<T> field in fields)
        {
            string? text = field.Get(entry);
            double? number = text is null ? null : Read(text, field.Wanted, Join(path, field.Key), problems);
            double offset = text is null ? 0 : offsets?.Of(Join(path, field.Key)) ?? 0;
            cells.Add(new Cell(field.Key, text, number + offset, offset));
        }

        return new Row(path, cells.MoveToImmutable(), problems);
    }

    /// <summary>The number that a text holds, if any; a text that does not read is told.</summary>
    internal static double? Read(string text, Wanted wanted, string key, ProblemList problems)
    {
        switch (CellReading.Read(text, wanted))
        {
            case Reading<double?>.Accepted accepted:
                return accepted.Value;
            case Reading<double?>.Refused refused:
                problems.Add(key, refused.Text, refused.Offset);
                return null;
            default:
                throw new UnreachableException();
        }
    }

    /// <summary>The number that a text holds; null where none stands, or it does not read, which is told elsewhere.</summary>
    internal static double? Number(string? text, Wanted wanted) =>
        text is not null && CellReading.Read(text, wanted) is Reading<double?>.Accepted accepted ? accepted.Value : null;

    internal bool Has(string key) => Text(key) is not null;

    internal string? Text(string key) => CellOf(key).Text;

    /// <summary>The cell as a number in SI; null where nothing stands or what stands does not read.</summary>
    internal double? Value(string key) => CellOf(key).Number;

    /// <summary>How far the cell is taken as off from what stands in it, in SI; a place is off by so much too.</summary>
    internal double Offset(string key) => CellOf(key).Offset;

    internal bool IsTrue(string key) => Text(key) == "true";

    /// <summary>The number of a cell that must stand.</summary>
    internal double? Needed(string key, string why)
    {
        if (!Has(key))
        {
            Refuse(key, why);
        }

        return Value(key);
    }

    /// <summary>The number of a cell that must stand, greater than zero.</summary>
    internal double? NeededPositive(string key, string why)
    {
        Needed(key, why);
        return Positive(key);
    }

    /// <summary>The number, which must be greater than zero where it stands.</summary>
    internal double? Positive(string key) => Within(key, Value(key) is null or > 0, ProblemText.NotPositive);

    /// <summary>The number, which must be zero or greater where it stands.</summary>
    internal double? NotNegative(string key) => Within(key, Value(key) is null or >= 0, ProblemText.Negative);

    internal void Refuse(string key, string text) => _problems.Add(Join(Path, key), text);

    /// <summary>Refuses every key that stands in the row and is not among those it takes.</summary>
    internal void TakesOnly(string[] keys, string what)
    {
        foreach (Cell cell in _cells)
        {
            if (cell.Text is not null && !keys.Contains(cell.Key))
            {
                Refuse(cell.Key, ProblemText.TakesNo(what, cell.Key, keys));
            }
        }
    }

    private static string Join(string path, string key) =>
        path.Length == 0 ? key : key.Length == 0 ? path : $"{path}.{key}";

    private double? Within(string key, bool holds, Func<string, string> why)
    {
        if (holds)
        {
            return Value(key);
        }

        Refuse(key, why(Text(key)!));
        return null;
    }

    private Cell CellOf(string key)
    {
        foreach (Cell cell in _cells)
        {
            if (cell.Key == key)
            {
                return cell;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(key), key, "The table has no such key.");
    }

    private readonly record struct Cell(string Key, string? Text, double? Number, double Offset);
}
