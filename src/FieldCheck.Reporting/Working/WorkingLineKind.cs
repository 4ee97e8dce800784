namespace FieldCheck.Reporting.Working;

/// <summary>What a line of the working is.</summary>
public enum WorkingLineKind
{
    /// <summary>The name of a step.</summary>
    Step,

    /// <summary>A sentence that explains.</summary>
    Words,

    /// <summary>Numbers worked out.</summary>
    Figures,

    /// <summary>What the working comes to.</summary>
    Result,
}
