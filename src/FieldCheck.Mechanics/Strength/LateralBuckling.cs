using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>Which shapes may buckle sideways while they bend.</summary>
internal static class LateralBuckling
{
    /// <summary>
    /// True of what bends about its stronger axis and is not round: an I or a channel on edge, a bar or a tube deeper than
    /// wide.
    /// </summary>
    /// <param name="shape">The outline as it stands upright.</param>
    /// <param name="isFlat">True: bent about the weak axis.</param>
    internal static bool IsPossible(SectionShape shape, bool isFlat) => shape switch
    {
        SectionShape.I or SectionShape.Channel => !isFlat,
        SectionShape.Rectangle bar => BarSides.Of(bar, isFlat) is var sides && sides.Depth > sides.Width,
        SectionShape.RectangularTube tube => TubeSides.Of(tube, isFlat) is var sides && sides.Depth > sides.Width,
        _ => false,
    };
}
