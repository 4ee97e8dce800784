namespace FieldCheck.Sheet.Document;

/// <summary>A key of a table that holds named figures, as <c>factors = { dead = 1.2 }</c>.</summary>
/// <typeparam name="TRow">The row.</typeparam>
/// <param name="Key">The key in the file.</param>
/// <param name="Wanted">What each figure must be.</param>
/// <param name="Get">The figures that stand in a row.</param>
/// <param name="Set">The row with other figures in this place.</param>
public sealed record FiguresField<TRow>(
    string Key,
    Wanted Wanted,
    Func<TRow, Rows<NamedFigure>> Get,
    Func<TRow, Rows<NamedFigure>, TRow> Set);
