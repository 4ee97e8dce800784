namespace FieldCheck.Sheet;

/// <summary>How grave a message is.</summary>
public enum Severity
{
    /// <summary>Good to know.</summary>
    Note,

    /// <summary>To be looked at before the figures are used.</summary>
    Caution,

    /// <summary>Something does not hold.</summary>
    Fault,
}
