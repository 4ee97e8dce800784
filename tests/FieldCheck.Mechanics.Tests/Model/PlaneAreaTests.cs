using System.Collections.Immutable;
using CsCheck;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Model;

public sealed class PlaneAreaTests
{
    private static readonly Gen<ImmutableArray<(double Breadth, double Height)>> Stack = Gen
        .Select(Gen.Double[0.01, 1], Gen.Double[0.01, 1])
        .Array[1, 6]
        .Select(ImmutableArray.Create);

    private static readonly Gen<ImmutableArray<AreaPart>> Rounded = Stack.Select(stack => Laid(stack)
        .AddRange(
            new AreaPart.HalfDisc(stack[0].Height, -0.9 * stack[0].Height, IsUpper: true),
            new AreaPart.HalfDisc(stack[0].Height, -0.9 * stack[0].Height, IsUpper: false)));

    // By hand: a stem 2 x 9 and a flange 10 x 3 have 48; the stem's 18 and 6 of the flange, 0.6 high, are half of it.
    [Fact]
    public void T_HalvesItsAreaInTheFlange()
    {
        PlaneArea area = new(new AreaPart.Strip(2, 0, 9), new AreaPart.Strip(10, 9, 12));

        double axis = 9.6;
        double expected = 18 * (axis - 4.5) + 6 * 0.3 + 24 * (12 - axis) / 2;

        Assert.Equal(24, area.AreaAbove(axis), 1e-12);
        Assert.Equal(expected, area.PlasticModulus, 1e-10);
    }

    // By hand: an I of flanges 6 x 1 and web 0.5, depth 10, laid flat: I = 36.0833; just beside the web t = 2 and
    // Q = 2 x 2.75 x 1.625 = 8.9375, in the middle t = 10 and Q = 9 + 0.25: so the edge of the web governs.
    [Fact]
    public void FlatI_ShearsMostBesideItsWeb()
    {
        Section section = Section.Of(new SectionShape.I(6, 1, 0.5, 10), flat: true);

        Assert.Equal((36 + 1.0 / 12) * 2 / 8.9375, section.PeakShearArea!.Value, 1e-10);
    }

    // By hand: I = 265.3333, Q in the middle = 6 x 4.5 + 0.5 x 4 x 2 = 31, t = 0.5.
    [Fact]
    public void UprightI_ShearsMostInTheMiddle()
    {
        Section section = Section.Of(new SectionShape.I(6, 1, 0.5, 10));

        Assert.Equal((244 + 64.0 / 3) * 0.5 / 31, section.PeakShearArea!.Value, 1e-10);
    }

    [Fact]
    public void UpsideDown_AllIsTheSame() => Rounded.Sample(parts =>
    {
        PlaneArea area = new(parts);
        PlaneArea turned = new([.. parts.Select(UpsideDown)]);

        Assert.Equal(area.Area, turned.Area, 1e-12);
        Assert.Equal(area.Centroid, -turned.Centroid, 1e-12);
        Near(area.SecondMoment, turned.SecondMoment);
        Near(area.SectionModulus, turned.SectionModulus);
        Near(area.PlasticModulus, turned.PlasticModulus);
        Near(PeakShear.AreaOf(area), PeakShear.AreaOf(turned));
    });

    [Fact]
    public void LevelOfReference_DoesNotMatter() => Gen.Select(Stack, Gen.Double[-5, 5]).Sample((stack, shift) =>
    {
        PlaneArea area = new(Laid(stack));
        PlaneArea shifted = new(Laid(stack, shift));

        Near(area.SecondMoment, shifted.SecondMoment);
        Near(area.PlasticModulus, shifted.PlasticModulus);
        Near(PeakShear.AreaOf(area), PeakShear.AreaOf(shifted));
    });

    [Fact]
    public void PlateCutInTwo_IsTheSamePlate() => Gen.Select(Stack, Gen.Double[0.1, 0.9]).Sample((stack, share) =>
    {
        (double breadth, double height) = stack[0];
        PlaneArea whole = new(Laid(stack));
        PlaneArea cut = new(Laid([(breadth, height * share), (breadth, height * (1 - share)), .. stack[1..]]));

        Near(whole.SecondMoment, cut.SecondMoment);
        Near(whole.PlasticModulus, cut.PlasticModulus);
        Near(PeakShear.AreaOf(whole), PeakShear.AreaOf(cut));
    });

    private static ImmutableArray<AreaPart> Laid(
        ImmutableArray<(double Breadth, double Height)> stack, double level = 0)
    {
        ImmutableArray<AreaPart>.Builder parts = ImmutableArray.CreateBuilder<AreaPart>();
        foreach ((double breadth, double height) in stack)
        {
            parts.Add(new AreaPart.Strip(breadth, level, level + height));
            level += height;
        }

        return parts.ToImmutable();
    }

    private static AreaPart UpsideDown(AreaPart part) => part switch
    {
        AreaPart.Strip strip => new AreaPart.Strip(strip.Breadth, -strip.To, -strip.From, strip.Sign),
        AreaPart.HalfDisc disc => disc with { Centre = -disc.Centre, IsUpper = !disc.IsUpper },
        _ => throw new ArgumentException("Unknown part.", nameof(part)),
    };

    private static void Near(double expected, double actual) => Assert.InRange(actual / expected, 1 - 1e-8, 1 + 1e-8);
}
