namespace FieldCheck.Reporting.Paper;

/// <summary>The page: A4, with a block of text that also fits Letter, so that printing on either cuts nothing [pt].</summary>
internal static class PaperSheet
{
    internal const double Width = 595;

    internal const double Height = 842;

    internal const double BlockWidth = Width - 2 * SideMargin;

    /// <summary>Letter is 792 pt high.</summary>
    internal const double BlockHeight = 792 - 2 * 46;

    internal const double Left = SideMargin;

    internal const double Top = (Height - BlockHeight) / 2;

    /// <summary>Room for the title above and the file and page below what a page holds.</summary>
    internal const double FrameHeight = 22;

    internal const double BodyTop = Top + FrameHeight;

    internal const double BodyHeight = BlockHeight - 2 * FrameHeight;

    private const double SideMargin = 42;
}
