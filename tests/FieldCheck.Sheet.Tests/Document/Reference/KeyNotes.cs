namespace FieldCheck.Sheet.Tests.Document.Reference;

/// <summary>A note for every key of the beam file; the schema and the reference show them.</summary>
internal static class KeyNotes
{
    internal static readonly KeyNote[] All =
        [.. TopNotes.All, .. BeamNotes.All, .. LoadNotes.All, .. StickNotes.All, .. CaseNotes.All, .. JudgedNotes.All];

    /// <summary>What the tables themselves are.</summary>
    internal static readonly Dictionary<string, string> Tables = new()
    {
        ["record"] = "Free text for the record of the check.",
        ["span"] = "Spans from left to right, one or more.",
        ["support"] = "Supports, in any order.",
        ["hinge"] = "Internal hinges: the bending moment is nothing there.",
        ["load"] = "Loads. Which keys a load takes goes by its kind.",
        ["self_weight"] = "The weight of the sections counts; every span's weight must be known then.",
        ["section"] = "Cross-sections by name: from the catalogue, by their sizes, or by their figures; one of these forms each.",
        ["material"] = "Materials by name: a grade of the catalogue, or stiffness and strengths.",
        ["combination"] = "Combinations of cases. Without any there is one, \"all loads\", service, every factor 1.",
        ["pattern"] = "Cases whose loads may stand or not stand bay by bay, one row a case.",
        ["rolling"] = "Loads that move together over the beam, both ways.",
        ["stated"] = "Reactions that a supplier or a drawing states, to be judged.",
        ["tolerance"] = "Plus or minus of what has none of its own.",
        ["limits"] = "What the beam is held against.",
        ["rename"] = "Names typed for cases while other cases have them.",
        ["rolling[].axles"] = "The axles of a rolling load.",
        ["combination[].factors"] = "The factor of each case; one that is not named counts 0.",
        ["material.*.factors"] = "Factors of timber, by name or by the sign of the standard.",
        ["limits.deflection_cases"] = "Deflection under one case alone.",
        ["limits.lasting"] = "The share of each case that lasts.",
        ["ask"] = "Cells that a preset asks for.",
    };
}
