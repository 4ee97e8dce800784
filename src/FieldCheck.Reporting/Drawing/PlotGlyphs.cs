namespace FieldCheck.Reporting.Drawing;

/// <summary>What a diagram is drawn with.</summary>
public enum PlotGlyphs
{
    /// <summary>Plain ASCII: three heights in each cell.</summary>
    Ascii,

    /// <summary>Half blocks: two heights in each cell, always filled.</summary>
    HalfBlocks,
}
