namespace FieldCheck.Sheet.Editing;

/// <summary>The blocks of the form, from the top of each view that shows them.</summary>
public enum FormBlock
{
    /// <summary>The spans, left to right.</summary>
    Spans,

    /// <summary>The supports, in the order typed.</summary>
    Supports,

    /// <summary>Own weight, then the loads in the order typed.</summary>
    Loads,

    /// <summary>What is stated of the supports, from left to right.</summary>
    Stated,

    /// <summary>The cases that loads stand in, as <see cref="CaseRows"/> lists them.</summary>
    Cases,

    /// <summary>The combinations, in the order typed.</summary>
    Combinations,

    /// <summary>The rolling loads, in the order typed.</summary>
    Rolling,

    /// <summary>The named sections, in the order typed; one to be typed where there is none.</summary>
    Sections,

    /// <summary>The named materials, in the order typed; one to be typed where there is none.</summary>
    Materials,

    /// <summary>Rules and limits of the whole beam, one row.</summary>
    Limits,

    /// <summary>How each span is held sideways.</summary>
    Bracing,

    /// <summary>What the beam bears on at each support.</summary>
    Bearings,
}
