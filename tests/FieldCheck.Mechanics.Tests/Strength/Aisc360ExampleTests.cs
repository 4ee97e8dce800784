using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>Examples of the AISC Design Examples, versions 14 and 15; from memory. LRFD first, ASD second.</summary>
public sealed class Aisc360ExampleTests
{
    /// <summary>F.1: W18x50, Fy = 50 ksi, braced; and G.1: W24x62 in shear.</summary>
    [Fact]
    public void WideFlange_Yields()
    {
        Holds(Steel.Braced(WideFlange.Named("W18x50"), Steel.American(50)), CheckKind.Bending, 379, 252, 0.501);
        Holds(Steel.Braced(WideFlange.Named("W24x62"), Steel.American(50)), CheckKind.Shear, 306, 204, 0.501);
    }

    /// <summary>F.2: C15x33.9, Fy = 36 ksi: braced, and at fifth points of 25 ft; G.2: its shear.</summary>
    [Fact]
    public void Channel_YieldsAndBucklesSideways()
    {
        Member held = Steel.Unbraced(Channel(), Steel.American(36), 5 * Steel.Foot);

        Holds(held, CheckKind.Bending, 137, 91.2, 0.501);
        Holds(held, CheckKind.LateralStability, 130, 86.8, 0.501);
        Holds(held, CheckKind.Shear, 117, 77.6, 0.501);
    }

    /// <summary>F.3: W21x48, Fy = 50 ksi: its flange is not compact; G.6: its shear about the weak axis.</summary>
    [Fact]
    public void FlangeThatIsNotCompact_BucklesLocally()
    {
        Section section = WideFlange.Named("W21x48");

        Holds(Steel.Braced(section, Steel.American(50)), CheckKind.Bending, 398, 265, 0.501);
        Holds(
            Steel.Braced(section with { IsFlat = true }, Steel.American(50)), CheckKind.Shear, 189, 126, 0.501);
    }

    /// <summary>F.9: Pipe 8 x-strong, Fy = 35 ksi, Z = 31.0 in³.</summary>
    [Fact]
    public void Pipe_Yields()
    {
        SectionShape.RoundTube shape = new(8.625 * Steel.Inch, 0.465 * Steel.Inch);

        Holds(
            Steel.Braced(Steel.Of(shape, 11.9, 23.1, 31.0), Steel.American(35)), CheckKind.Bending, 81.4, 54.1, 0.0501);
    }

    /// <summary>G.5: HSS 16x0.375, Fy = 42 ksi, Ag = 17.2 in².</summary>
    [Fact]
    public void RoundTube_ShearsAtHalfItsArea()
    {
        SectionShape.RoundTube shape = new(16 * Steel.Inch, 0.349 * Steel.Inch);

        Holds(Steel.Braced(Steel.Of(shape, 17.2, 65, 85), Steel.American(42)), CheckKind.Shear, 195, 130, 0.501);
    }

    /// <summary>F.12: bar 3 in wide, 5 in deep, Fy = 36 ksi, held at 6 ft.</summary>
    [Fact]
    public void Bar_Yields()
    {
        Member held = Steel.Unbraced(Steel.Bar(3 * Steel.Inch, 5 * Steel.Inch), Steel.American(36), 6 * Steel.Foot);

        Holds(held, CheckKind.Bending, 50.8, 33.8, 0.2);
        Holds(held, CheckKind.LateralStability, 50.8, 33.8, 0.2);
    }

    /// <summary>F.13: round bar of 1 in, Fy = 36 ksi.</summary>
    [Fact]
    public void RoundBar_IsBoundAt160OfTheEdgeYield()
    {
        Section section = Section.Of(new SectionShape.Round(Steel.Inch), false);

        Holds(Steel.Braced(section, Steel.American(36)), CheckKind.Bending, 0.424, 0.282, 0.000501);
    }

    internal static Section Channel() => new()
    {
        Area = 10.0 * Steel.Inch * Steel.Inch,
        SectionModulus = 42.0 * Math.Pow(Steel.Inch, 3),
        PlasticModulus = 50.8 * Math.Pow(Steel.Inch, 3),
        LateralInertia = 8.07 * Math.Pow(Steel.Inch, 4),
        TorsionConstant = 1.01 * Math.Pow(Steel.Inch, 4),
        WarpingConstant = 358 * Math.Pow(Steel.Inch, 6),
        PeakShearArea = 15 * 0.4 * Steel.Inch * Steel.Inch,
        Shape = new SectionShape.Channel(3.40 * Steel.Inch, 0.65 * Steel.Inch, 0.40 * Steel.Inch, 15 * Steel.Inch)
        {
            FilletDepth = 1.44 * Steel.Inch,
        },
    };

    private static void Holds(Member member, CheckKind kind, double lrfd, double asd, double tolerance)
    {
        double unit = kind == CheckKind.Shear ? Steel.Kip : Steel.KipFoot;
        Assert.Equal(lrfd, Steel.Limit(StrengthRules.Aisc360Lrfd, member, kind) / unit, tolerance);
        Assert.Equal(asd, Steel.Limit(StrengthRules.Aisc360Asd, member, kind) / unit, tolerance);
    }
}
