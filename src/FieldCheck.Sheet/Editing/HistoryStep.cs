namespace FieldCheck.Sheet.Editing;

/// <summary>What a beam became by one change.</summary>
/// <param name="Sheet">The beam after it.</param>
/// <param name="Name">What was done, as "load 3 size to 12 kN/m".</param>
/// <param name="Place">The cell that was changed or stood on; null where no cell was.</param>
/// <param name="Merges">True: another edit of the same cell just after is part of this step.</param>
public sealed record HistoryStep(FormSheet Sheet, string Name, FormPlace? Place, bool Merges);
