using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Strength;

/// <summary>The web of an I or a channel, and where its fillets end.</summary>
internal static class WebPlate
{
    /// <summary>From the outer face of the flange to the end of the fillet [m]; without a table, as little as is sure.</summary>
    internal static double FilletDepth(SectionShape.I shape) =>
        shape.FilletDepth ?? shape.FlangeThickness + shape.RootRadius;

    internal static double FilletDepth(SectionShape.Channel shape) => shape.FilletDepth ?? shape.FlangeThickness;

    /// <summary>Height clear of flanges and fillets, over thickness.</summary>
    internal static double SlendernessOf(SectionShape.I shape) =>
        (shape.Depth - 2 * FilletDepth(shape)) / shape.WebThickness;

    internal static double SlendernessOf(SectionShape.Channel shape) =>
        (shape.Depth - 2 * FilletDepth(shape)) / shape.WebThickness;
}
