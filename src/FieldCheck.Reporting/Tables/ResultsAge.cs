namespace FieldCheck.Reporting.Tables;

/// <summary>Which beam the results on screen belong to.</summary>
public enum ResultsAge
{
    /// <summary>The beam as it stands in the form.</summary>
    UpToDate,

    /// <summary>The beam before the cell that is being typed.</summary>
    BeforeThisCell,
}
