namespace FieldCheck.Sheet.CombinationSets;

/// <summary>Which of the variable cases a factor of a set's row belongs to.</summary>
internal enum VariableCases
{
    /// <summary>None as such: the row names its cases.</summary>
    None,

    /// <summary>Each in turn.</summary>
    Leading,

    /// <summary>All that neither lead nor are named in the row.</summary>
    Others,

    /// <summary>Of these every choice in turn, from all of them to none: those left out relieve.</summary>
    SomeOthers,
}
