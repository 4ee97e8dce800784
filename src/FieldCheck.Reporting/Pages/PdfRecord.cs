namespace FieldCheck.Reporting.Pages;

/// <summary>Writes a record as PDF.</summary>
public static class PdfRecord
{
    /// <summary>Writes a record.</summary>
    /// <param name="record">The record.</param>
    public static byte[] Of(CheckRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        throw new NotImplementedException();
    }
}
