using System.Diagnostics;

namespace FieldCheck.Mechanics.Model;

/// <summary>The outline of a cross-section as it stands upright; all figures of a section follow from it.</summary>
public abstract record SectionShape
{
    private SectionShape()
    {
    }

    /// <summary>Thickness of its thickest plate; of a bar, its lesser side or its diameter [m].</summary>
    public double Thickest => this switch
    {
        Rectangle bar => Math.Min(bar.Width, bar.Depth),
        Round bar => bar.Diameter,
        RoundTube tube => tube.Wall,
        RectangularTube tube => tube.Wall,
        I beam => Math.Max(beam.FlangeThickness, beam.WebThickness),
        Channel channel => Math.Max(channel.FlangeThickness, channel.WebThickness),
        _ => throw new UnreachableException(),
    };

    /// <summary>A solid rectangle, or several side by side.</summary>
    /// <param name="Width">Width of one ply [m]; greater than zero.</param>
    /// <param name="Depth">Depth [m]; greater than zero.</param>
    /// <param name="Plies">How many plies stand side by side; one or more.</param>
    public sealed record Rectangle(double Width, double Depth, int Plies = 1) : SectionShape;

    /// <summary>A solid round bar.</summary>
    /// <param name="Diameter">Its diameter [m]; greater than zero.</param>
    public sealed record Round(double Diameter) : SectionShape;

    /// <summary>A round tube.</summary>
    /// <param name="Diameter">Outer diameter [m]; greater than zero.</param>
    /// <param name="Wall">Thickness of its wall [m]; greater than zero, less than half the diameter.</param>
    public sealed record RoundTube(double Diameter, double Wall) : SectionShape;

    /// <summary>A rectangular tube with rounded corners.</summary>
    /// <param name="Width">Width over all [m]; greater than zero.</param>
    /// <param name="Depth">Depth over all [m]; greater than zero.</param>
    /// <param name="Wall">Thickness of its wall [m]; greater than zero.</param>
    /// <param name="OuterRadius">Outer radius of its corners [m]; zero or greater.</param>
    /// <param name="InnerRadius">Inner radius of its corners [m]; zero or greater.</param>
    public sealed record RectangularTube(double Width, double Depth, double Wall, double OuterRadius, double InnerRadius)
        : SectionShape;

    /// <summary>Two equal flanges and a web between them.</summary>
    /// <param name="FlangeWidth">Width of each flange [m]; greater than zero.</param>
    /// <param name="FlangeThickness">Thickness of each flange [m]; greater than zero.</param>
    /// <param name="WebThickness">Thickness of the web [m]; greater than zero.</param>
    /// <param name="Depth">Depth over all [m]; greater than the two flanges.</param>
    /// <param name="RootRadius">Radius of the fillets between web and flanges [m]; zero or greater.</param>
    /// <param name="IsRolled">True: rolled in one piece; false: welded or joined of plates.</param>
    public sealed record I(
        double FlangeWidth,
        double FlangeThickness,
        double WebThickness,
        double Depth,
        double RootRadius = 0,
        bool IsRolled = false) : SectionShape
    {
        /// <summary>From the outer face of a flange to where its fillet ends on the web [m], where a table gives it.</summary>
        public double? FilletDepth { get; init; }
    }

    /// <summary>A web with both flanges on one side of it.</summary>
    /// <param name="FlangeWidth">Width of each flange, web included [m]; greater than zero.</param>
    /// <param name="FlangeThickness">Mean thickness of each flange [m]; greater than zero.</param>
    /// <param name="WebThickness">Thickness of the web [m]; greater than zero.</param>
    /// <param name="Depth">Depth over all [m]; greater than the two flanges.</param>
    public sealed record Channel(double FlangeWidth, double FlangeThickness, double WebThickness, double Depth)
        : SectionShape
    {
        /// <summary>From the outer face of a flange to where its fillet ends on the web [m], where a table gives it.</summary>
        public double? FilletDepth { get; init; }

        /// <summary>By how much a flange grows thinner per length towards its edge [–]; zero: it is of even thickness.</summary>
        public double FlangeSlope { get; init; }
    }
}
