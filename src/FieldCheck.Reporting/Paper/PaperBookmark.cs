namespace FieldCheck.Reporting.Paper;

/// <summary>A heading that the list of contents beside the pages leads to.</summary>
/// <param name="Level">2 for a section, 3 for a part of one.</param>
/// <param name="Text">What it says.</param>
/// <param name="Y">How far down the page it stands [pt].</param>
internal sealed record PaperBookmark(int Level, string Text, double Y = 0);
