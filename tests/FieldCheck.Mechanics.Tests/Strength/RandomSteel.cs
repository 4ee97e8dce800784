using CsCheck;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Sections of all shapes and sizes [m], with yield stresses [N/mm²] and unbraced lengths [m].</summary>
internal static class RandomSteel
{
    internal static readonly Gen<SectionShape> AnyI =
        from width in Gen.Double[0.08, 0.4]
        from thickness in Gen.Double[0.006, 0.04]
        from web in Gen.Double[0.005, 0.025]
        from clear in Gen.Double[0.1, 0.8]
        from isRolled in Gen.Bool
        select (SectionShape)new SectionShape.I(width, thickness, web, clear + 2 * thickness, 0, isRolled);

    internal static readonly Gen<SectionShape> AnyChannel =
        from width in Gen.Double[0.05, 0.15]
        from thickness in Gen.Double[0.008, 0.03]
        from web in Gen.Double[0.005, 0.02]
        from clear in Gen.Double[0.1, 0.5]
        select (SectionShape)new SectionShape.Channel(width, thickness, web, clear + 2 * thickness);

    internal static readonly Gen<SectionShape> AnyTube =
        from width in Gen.Double[0.05, 0.3]
        from depth in Gen.Double[0.05, 0.5]
        from wall in Gen.Double[0.004, 0.02]
        select (SectionShape)new SectionShape.RectangularTube(width, depth, wall, 0, 0);

    private static readonly Gen<SectionShape> AnyBar =
        from width in Gen.Double[0.005, 0.1]
        from depth in Gen.Double[0.02, 0.3]
        select (SectionShape)new SectionShape.Rectangle(width, depth);

    private static readonly Gen<SectionShape> AnyRound =
        from diameter in Gen.Double[0.04, 0.6]
        from share in Gen.Double[0.004, 0.2]
        select (SectionShape)new SectionShape.RoundTube(diameter, share * diameter);

    internal static readonly Gen<Section> AnySection =
        from shape in Gen.OneOf(AnyI, AnyChannel, AnyTube, AnyBar, AnyRound)
        from isFlat in Gen.Bool
        select Section.Of(shape, isFlat);

    internal static readonly Gen<double> AnyYield = Gen.Double[200, 460];

    internal static readonly Gen<double> AnyLength = Gen.Double[0.1, 30];
}
