namespace FieldCheck.Reporting.Pages;

/// <summary>Writes a record as HTML.</summary>
public static class HtmlRecord
{
    /// <summary>Writes a record.</summary>
    /// <param name="record">The record.</param>
    public static string Of(CheckRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        throw new NotImplementedException();
    }
}
