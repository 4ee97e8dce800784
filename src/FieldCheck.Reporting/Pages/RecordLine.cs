namespace FieldCheck.Reporting.Pages;

/// <summary>A line that is kept as it stands.</summary>
/// <param name="Text">The line; may be empty.</param>
public sealed record RecordLine(string Text)
{
    /// <summary>The line that heads the table of which it is a row; null: it is a row of none.</summary>
    public string? Head { get; init; }

    /// <summary>True: it heads what follows.</summary>
    public bool IsHeading { get; init; }
}
