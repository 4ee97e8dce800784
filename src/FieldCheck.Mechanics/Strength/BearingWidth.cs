using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>The width by which a stick lies on a bearing.</summary>
internal static class BearingWidth
{
    /// <summary>The width [m]; null where the outline does not tell: round, on the edges of its flanges, or none given.</summary>
    internal static double? Of(Section section) => section.Shape switch
    {
        SectionShape.Rectangle one => section.IsFlat ? one.Depth : one.Width * one.Plies,
        SectionShape.RectangularTube one => section.IsFlat ? one.Depth : one.Width,
        SectionShape.I one when !section.IsFlat => one.FlangeWidth,
        SectionShape.Channel one when !section.IsFlat => one.FlangeWidth,
        _ => null,
    };
}
