namespace FieldCheck.Sheet.Editing;

/// <summary>The blocks of the form, from the top; the last is shown in a view of its own.</summary>
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
}
