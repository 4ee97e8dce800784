namespace FieldCheck.Reporting.Pages;

/// <summary>How a record is wanted, and what it cannot know from the beam.</summary>
/// <param name="File">Name of the beam's file, without its folder; empty when there is none.</param>
/// <param name="Digest">SHA-256 of that file, 64 hexadecimal digits.</param>
/// <param name="Version">The program's version.</param>
public sealed record RecordRequest(string File, string Digest, string Version)
{
    /// <summary>The date of the check, as given; null: that of the file, if it has one.</summary>
    public string? Date { get; init; }

    /// <summary>True: of the working only the equations and results.</summary>
    public bool IsWorkingShort { get; init; }

    /// <summary>True: names stand in plain ASCII outside the input, for lines of text; false: in the letters that were typed.</summary>
    public bool IsPlain { get; init; }

    /// <summary>Columns of a line of the text, the sketches and the working; 60 or more.</summary>
    public int Width { get; init; } = 80;
}
