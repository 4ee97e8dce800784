using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>
/// Rows of the tables that the form shows no block of: begun by typing in them, gone when nothing stands in them.
/// </summary>
internal static class RowsBegun
{
    /// <summary>The beam with the row that a key path names, where it is the one after the last.</summary>
    internal static BeamDocument For(BeamDocument document, Rows<KeyStep> steps) => steps switch
    {
        [KeyStep.Into { Key: "rolling" }, KeyStep.At rolling, KeyStep.Into { Key: "axles" }, KeyStep.At axle, ..] =>
            WithAxle(WithRolling(document, rolling.Row), rolling.Row, axle.Row),
        [KeyStep.Into { Key: "rolling" }, KeyStep.At rolling, ..] => WithRolling(document, rolling.Row),
        [KeyStep.Into { Key: "hinge" }, KeyStep.At row, ..] =>
            document with { Hinges = With(document.Hinges, row.Row, new HingeEntry()) },
        [KeyStep.Into { Key: "combination" }, KeyStep.At row, ..] =>
            document with { Combinations = With(document.Combinations, row.Row, new CombinationEntry()) },
        [KeyStep.Into { Key: "pattern" }, KeyStep.At row, ..] =>
            document with { Patterns = With(document.Patterns, row.Row, new PatternEntry()) },
        _ => document,
    };

    /// <summary>The beam without rows in which nothing stands.</summary>
    internal static BeamDocument Trimmed(BeamDocument document) => document with
    {
        Hinges = Standing(document.Hinges, new HingeEntry()),
        Combinations = Standing(document.Combinations, new CombinationEntry()),
        Patterns = Standing(document.Patterns, new PatternEntry()),
        Rolling = Standing(
            [.. document.Rolling.Select(row => row with { Axles = Standing(row.Axles, new AxleEntry()) })],
            new RollingEntry()),
    };

    private static BeamDocument WithRolling(BeamDocument document, int row) =>
        document with { Rolling = With(document.Rolling, row, new RollingEntry()) };

    private static BeamDocument WithAxle(BeamDocument document, int row, int axle)
    {
        if (row > document.Rolling.Count)
        {
            return document;
        }

        RollingEntry rolling = document.Rolling[row - 1];
        rolling = rolling with { Axles = With(rolling.Axles, axle, new AxleEntry()) };
        return document with { Rolling = document.Rolling.SetItem(row - 1, rolling) };
    }

    private static Rows<T> With<T>(Rows<T> rows, int row, T blank) => row == rows.Count + 1 ? rows.Add(blank) : rows;

    private static Rows<T> Standing<T>(Rows<T> rows, T blank)
        where T : IEquatable<T> =>
        rows.Any(row => row.Equals(blank)) ? [.. rows.Where(row => !row.Equals(blank))] : rows;
}
