namespace FieldCheck.Reporting.Pages;

/// <summary>In what a record is written.</summary>
public enum RecordFormat
{
    /// <summary>Text of 80 columns.</summary>
    Text,

    /// <summary>Markdown.</summary>
    Markdown,

    /// <summary>One HTML file with its drawings.</summary>
    Html,

    /// <summary>PDF.</summary>
    Pdf,
}
