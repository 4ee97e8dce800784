namespace FieldCheck.Reporting.Drawing;

/// <summary>On which side of a place a peak stands.</summary>
internal enum PeakSide
{
    /// <summary>At the place: the curve does not jump there.</summary>
    At,

    /// <summary>Just left of it, before a jump.</summary>
    LeftOf,

    /// <summary>Just right of it, after a jump.</summary>
    RightOf,
}
