using FieldCheck.Mechanics.Model;

namespace FieldCheck.Sheet.Building;

/// <summary>A load of the model and what it is called.</summary>
/// <param name="Load">The load.</param>
/// <param name="Case">Name of its case.</param>
/// <param name="Label">Its label on the sheet; empty where none stands.</param>
/// <param name="Row">Its row on the sheet, counted from 0; null for own weight.</param>
public sealed record NamedLoad(Load Load, string Case, string Label, int? Row);
