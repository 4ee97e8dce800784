namespace FieldCheck.Sheet.Editing;

/// <summary>The three blocks of the form, from the top.</summary>
public enum FormBlock
{
    /// <summary>The spans, left to right.</summary>
    Spans,

    /// <summary>The supports, in the order typed.</summary>
    Supports,

    /// <summary>Own weight, then the loads in the order typed.</summary>
    Loads,
}
