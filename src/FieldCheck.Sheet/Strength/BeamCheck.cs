using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Sheet.Strength;

/// <summary>One thing that the beam is held against, with the words for it.</summary>
/// <param name="Figures">Demand, limit and verdict.</param>
/// <param name="What">What it is about, as "bending" or "sag of the overhang".</param>
/// <param name="Where">Where the demand stands, as "x = 4 ft 2 in, span 1".</param>
/// <param name="Governs">The combination and what else governs, or the case; empty where nothing does.</param>
/// <param name="Source">The clause or source of the limit.</param>
/// <param name="Why">Why it is not judged and what would mend that; null where it is judged.</param>
public sealed record BeamCheck(
    SectionCheck Figures, string What, string Where, string Governs, string Source, string? Why);
