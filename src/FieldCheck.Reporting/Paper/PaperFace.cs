namespace FieldCheck.Reporting.Paper;

/// <summary>A typeface of the record on paper.</summary>
internal enum PaperFace
{
    /// <summary>DejaVu Sans.</summary>
    Regular,

    /// <summary>DejaVu Sans Bold.</summary>
    Bold,

    /// <summary>DejaVu Sans Mono: every letter of one width.</summary>
    Mono,
}
