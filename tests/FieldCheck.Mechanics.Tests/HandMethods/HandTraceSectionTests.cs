using FieldCheck.Mechanics.HandMethods;
using FieldCheck.Mechanics.Model;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// Shear and moment from mark to mark. Shears were worked apart by adding what acts, moments as those of the forces on one side;
/// places of zero shear from the area of load that the shear before them takes.
/// </summary>
public sealed class HandTraceSectionTests
{
    private static readonly Support[] Simple = [Support.Pin(0), Support.Roller(6)];

    /// <summary>The shear is nothing at 6 over root 3, the moment there w L² over 9 root 3.</summary>
    [Fact]
    public void RisingTriangle_FromTheLeftEnd() => Assert.Equal(
        """
        # AlongTheBeam
        - Jumps SupportPlace0[0] HasForces
        ShearRight0 = ShearLeft0 + V0 = 600 N
        - Stretch SupportPlace0[0] SupportPlace1[6] Varying IsFirst
        StretchStart1 = 0 N/m
        ShearLeft1 = ShearRight0 - (((StretchStart1 + IntensityEnd0[600]) * SupportPlace1[6]) / 2) = -1200 N
        SectionMomentLeft1 = SectionMomentLeft0 + ShearRight0 * SupportPlace1[6] - (((2 * StretchStart1 + IntensityEnd0[600]) * SupportPlace1[6]^2) / 6) = 0 Nm
        - ZeroShear Varying SupportPlace0[0]
        IntensitySlope0 = (IntensityEnd0[600] - StretchStart1) / SupportPlace1[6] = 100 N1m-2
        ZeroShearRoot0 = sqrt(StretchStart1^2 + 2 * IntensitySlope0 * ShearRight0) = 346.41 N/m
        ZeroShearDistance0 = (2 * ShearRight0) / (StretchStart1 + ZeroShearRoot0) = 3.4641 m
        PeakMoment0 = SectionMomentLeft0 + ShearRight0 * ZeroShearDistance0 - ((StretchStart1 * ZeroShearDistance0^2) / 2) - ((IntensitySlope0 * ZeroShearDistance0^3) / 6) = 1385.64 Nm
        - Jumps SupportPlace1[6] HasForces
        ShearRight2 = ShearLeft1 + V1 = 0 N
        - EndsWithNothing
        ShearRight2 closes ShearRight2 = 0 N of 1200
        SectionMomentLeft1 closes SectionMomentLeft1 = 0 Nm of 1385.64
        | 0: V 0|600 M 0
        | 3.4641: V 0 M 1385.64 peak
        | 6: V -1200|0 M 0
        """,
        Trace(new Load.Distributed(0, 6, 0, 600)));

    [Fact]
    public void FallingTriangle_OnAStretchInside() => Assert.Equal(
        """
        # AlongTheBeam
        - Jumps SupportPlace0[0] HasForces
        ShearRight0 = ShearLeft0 + V0 = 450 N
        - Stretch SupportPlace0[0] 2 Nothing IsFirst
        SectionMomentLeft1 = SectionMomentLeft0 + ShearRight0 * 2 = 900 Nm
        - Stretch 2 5 Varying IsFirst
        StretchLength2 = 5 - 2 = 3 m
        StretchEnd2 = 0 N/m
        ShearLeft2 = ShearRight0 - (((Intensity0[600] + StretchEnd2) * StretchLength2) / 2) = -450 N
        SectionMomentLeft2 = SectionMomentLeft1 + ShearRight0 * StretchLength2 - (((2 * Intensity0[600] + StretchEnd2) * StretchLength2^2) / 6) = 450 Nm
        - ZeroShear Varying 2
        IntensitySlope1 = (StretchEnd2 - Intensity0[600]) / StretchLength2 = -200 N1m-2
        ZeroShearRoot1 = sqrt(Intensity0[600]^2 + 2 * IntensitySlope1 * ShearRight0) = 424.264 N/m
        ZeroShearDistance1 = (2 * ShearRight0) / (Intensity0[600] + ZeroShearRoot1) = 0.87868 m
        ZeroShear1 = 2 + ZeroShearDistance1 = 2.87868 m
        PeakMoment1 = SectionMomentLeft1 + ShearRight0 * ZeroShearDistance1 - ((Intensity0[600] * ZeroShearDistance1^2) / 2) - ((IntensitySlope1 * ZeroShearDistance1^3) / 6) = 1086.4 Nm
        - Stretch 5 SupportPlace1[6] Nothing
        StretchLength4 = SupportPlace1[6] - 5 = 1 m
        SectionMomentLeft4 = SectionMomentLeft2 + ShearLeft2 * StretchLength4 = 0 Nm
        - Jumps SupportPlace1[6] HasForces
        ShearRight4 = ShearLeft2 + V1 = 0 N
        - EndsWithNothing
        ShearRight4 closes ShearRight4 = 0 N of 450
        SectionMomentLeft4 closes SectionMomentLeft4 = 0 Nm of 1086.4
        | 0: V 0|450 M 0
        | 2: V 450 M 900
        | 2.87868: V 0 M 1086.4 peak
        | 5: V -450 M 450
        | 6: V -450|0 M 0
        """,
        Trace(new Load.Distributed(2, 5, 600, 0)));

    [Fact]
    public void Uniform_OnAStretchInside() => Assert.Equal(
        """
        # AlongTheBeam
        - Jumps SupportPlace0[0] HasForces
        ShearRight0 = ShearLeft0 + V0 = 500 N
        - Stretch SupportPlace0[0] 2 Nothing IsFirst
        SectionMomentLeft1 = SectionMomentLeft0 + ShearRight0 * 2 = 1000 Nm
        - Stretch 2 5 Uniform IsFirst
        StretchLength2 = 5 - 2 = 3 m
        ShearLeft2 = ShearRight0 - (Intensity0[400] * StretchLength2) = -700 N
        SectionMomentLeft2 = SectionMomentLeft1 + ((ShearRight0 + ShearLeft2) * StretchLength2) / 2 = 700 Nm
        - ZeroShear Uniform 2
        ZeroShearDistance1 = ShearRight0 / Intensity0[400] = 1.25 m
        ZeroShear1 = 2 + ZeroShearDistance1 = 3.25 m
        PeakMoment1 = SectionMomentLeft1 + (ShearRight0 * ZeroShearDistance1) / 2 = 1312.5 Nm
        - Stretch 5 SupportPlace1[6] Nothing
        StretchLength4 = SupportPlace1[6] - 5 = 1 m
        SectionMomentLeft4 = SectionMomentLeft2 + ShearLeft2 * StretchLength4 = 0 Nm
        - Jumps SupportPlace1[6] HasForces
        ShearRight4 = ShearLeft2 + V1 = 0 N
        - EndsWithNothing
        ShearRight4 closes ShearRight4 = 0 N of 700
        SectionMomentLeft4 closes SectionMomentLeft4 = 0 Nm of 1312.5
        | 0: V 0|500 M 0
        | 2: V 500 M 1000
        | 3.25: V 0 M 1312.5 peak
        | 5: V -700 M 700
        | 6: V -700|0 M 0
        """,
        Trace(Uniform(2, 5, 400)));

    /// <summary>Lifts: the shear is negative before the place where it is nothing.</summary>
    [Fact]
    public void Lifting_TheMomentHogs() => Assert.Equal(
        """
        # AlongTheBeam
        - Jumps SupportPlace0[0] HasForces
        ShearRight0 = ShearLeft0 + V0 = -600 N
        - Stretch SupportPlace0[0] SupportPlace1[6] Varying IsFirst
        StretchStart1 = 0 N/m
        StretchEnd1 = -IntensityEnd0[600] = -600 N/m
        ShearLeft1 = ShearRight0 - (((StretchStart1 + StretchEnd1) * SupportPlace1[6]) / 2) = 1200 N
        SectionMomentLeft1 = SectionMomentLeft0 + ShearRight0 * SupportPlace1[6] - (((2 * StretchStart1 + StretchEnd1) * SupportPlace1[6]^2) / 6) = 0 Nm
        - ZeroShear Varying SupportPlace0[0]
        IntensitySlope0 = (StretchEnd1 - StretchStart1) / SupportPlace1[6] = -100 N1m-2
        ZeroShearRoot0 = sqrt(StretchStart1^2 + 2 * IntensitySlope0 * ShearRight0) = 346.41 N/m
        ZeroShearDistance0 = (2 * ShearRight0) / (StretchStart1 - ZeroShearRoot0) = 3.4641 m
        PeakMoment0 = SectionMomentLeft0 + ShearRight0 * ZeroShearDistance0 - ((StretchStart1 * ZeroShearDistance0^2) / 2) - ((IntensitySlope0 * ZeroShearDistance0^3) / 6) = -1385.64 Nm
        - Jumps SupportPlace1[6] HasForces
        ShearRight2 = ShearLeft1 + V1 = 0 N
        - EndsWithNothing
        ShearRight2 closes ShearRight2 = 0 N of 1200
        SectionMomentLeft1 closes SectionMomentLeft1 = 0 Nm of 1385.64
        | 0: V 0|-600 M 0
        | 3.4641: V 0 M -1385.64 peak
        | 6: V 1200|0 M 0
        """,
        Trace(new Load.Distributed(0, 6, 0, -600)));

    /// <summary>The load is nothing at 2: the stretch is told in two.</summary>
    [Fact]
    public void LoadThatChangesItsSense_IsToldInTwo() => Assert.Equal(
        """
        # AlongTheBeam
        - Jumps SupportPlace0[0] HasForces
        ShearRight0 = ShearLeft0 + V0 = 150 N
        - Stretch SupportPlace0[0] 1 Nothing IsFirst
        SectionMomentLeft1 = SectionMomentLeft0 + ShearRight0 * 1 = 150 Nm
        - LoadTurns
        StretchStart2 = -(|Intensity0[-300]|) = -300 N/m
        StretchLength2 = 4 - 1 = 3 m
        LoadTurnPlace2 = 1 + (StretchLength2 * StretchStart2) / (StretchStart2 - IntensityEnd0[600]) = 2 m
        - Stretch 1 LoadTurnPlace2 Varying IsFirst
        StretchLength2 = LoadTurnPlace2 - 1 = 1 m
        StretchEnd2 = 0 N/m
        ShearLeft2 = ShearRight0 - (((StretchStart2 + StretchEnd2) * StretchLength2) / 2) = 300 N
        SectionMomentLeft2 = SectionMomentLeft1 + ShearRight0 * StretchLength2 - (((2 * StretchStart2 + StretchEnd2) * StretchLength2^2) / 6) = 400 Nm
        - Stretch LoadTurnPlace2 4 Varying
        StretchLength2 = 4 - LoadTurnPlace2 = 2 m
        StretchStart2 = 0 N/m
        ShearLeft3 = ShearLeft2 - (((StretchStart2 + IntensityEnd0[600]) * StretchLength2) / 2) = -300 N
        SectionMomentLeft3 = SectionMomentLeft2 + ShearLeft2 * StretchLength2 - (((2 * StretchStart2 + IntensityEnd0[600]) * StretchLength2^2) / 6) = 600 Nm
        - ZeroShear Varying LoadTurnPlace2
        IntensitySlope2 = (IntensityEnd0[600] - StretchStart2) / StretchLength2 = 300 N1m-2
        ZeroShearRoot2 = sqrt(StretchStart2^2 + 2 * IntensitySlope2 * ShearLeft2) = 424.264 N/m
        ZeroShearDistance2 = (2 * ShearLeft2) / (StretchStart2 + ZeroShearRoot2) = 1.41421 m
        ZeroShear2 = LoadTurnPlace2 + ZeroShearDistance2 = 3.41421 m
        PeakMoment2 = SectionMomentLeft2 + ShearLeft2 * ZeroShearDistance2 - ((StretchStart2 * ZeroShearDistance2^2) / 2) - ((IntensitySlope2 * ZeroShearDistance2^3) / 6) = 682.843 Nm
        - Stretch 4 SupportPlace1[6] Nothing
        StretchLength5 = SupportPlace1[6] - 4 = 2 m
        SectionMomentLeft5 = SectionMomentLeft3 + ShearLeft3 * StretchLength5 = 0 Nm
        - Jumps SupportPlace1[6] HasForces
        ShearRight5 = ShearLeft3 + V1 = 0 N
        - EndsWithNothing
        ShearRight5 closes ShearRight5 = 0 N of 300
        SectionMomentLeft5 closes SectionMomentLeft5 = 0 Nm of 682.843
        | 0: V 0|150 M 0
        | 1: V 150 M 150
        | 2: V 300 M 400
        | 3.41421: V 0 M 682.843 peak
        | 4: V -300 M 600
        | 6: V -300|0 M 0
        """,
        Trace(new Load.Distributed(1, 4, -300, 600)));

    /// <summary>Two triangles against each other are even together; under both of them nothing else is written.</summary>
    [Fact]
    public void LoadsOverOneAnother_AreAddedUp() => Assert.Equal(
        """
        # AlongTheBeam
        - Jumps SupportPlace0[0] HasForces
        ShearRight0 = ShearLeft0 + V0 = 900 N
        - Stretch SupportPlace0[0] 2 Uniform IsFirst
        ShearLeft1 = ShearRight0 - (Intensity0[300] * 2) = 300 N
        SectionMomentLeft1 = SectionMomentLeft0 + ((ShearRight0 + ShearLeft1) * 2) / 2 = 1200 Nm
        - Stretch 2 4 Uniform
        StretchLength2 = 4 - 2 = 2 m
        StretchEven2 = (Intensity0[300] * (SupportPlace1[6] - 2)) / SupportPlace1[6] + (IntensityEnd1[300] * 2) / SupportPlace1[6] + Intensity2[100] = 400 N/m
        ShearLeft2 = ShearLeft1 - (StretchEven2 * StretchLength2) = -500 N
        SectionMomentLeft2 = SectionMomentLeft1 + ((ShearLeft1 + ShearLeft2) * StretchLength2) / 2 = 1000 Nm
        - ZeroShear Uniform 2
        ZeroShearDistance1 = ShearLeft1 / StretchEven2 = 0.75 m
        ZeroShear1 = 2 + ZeroShearDistance1 = 2.75 m
        PeakMoment1 = SectionMomentLeft1 + (ShearLeft1 * ZeroShearDistance1) / 2 = 1312.5 Nm
        - Stretch 4 SupportPlace1[6] Uniform
        StretchLength4 = SupportPlace1[6] - 4 = 2 m
        StretchEven4 = (Intensity0[300] * (SupportPlace1[6] - 4)) / SupportPlace1[6] + (IntensityEnd1[300] * 4) / SupportPlace1[6] - Intensity3[300] = 0 N/m
        ShearLeft4 = ShearLeft2 - (StretchEven4 * StretchLength4) = -500 N
        SectionMomentLeft4 = SectionMomentLeft2 + ((ShearLeft2 + ShearLeft4) * StretchLength4) / 2 = 0 Nm
        - Jumps SupportPlace1[6] HasForces
        ShearRight4 = ShearLeft4 + V1 = 0 N
        - EndsWithNothing
        ShearRight4 closes ShearRight4 = 0 N of 900
        SectionMomentLeft4 closes SectionMomentLeft4 = 0 Nm of 1312.5
        | 0: V 0|900 M 0
        | 2: V 300 M 1200
        | 2.75: V 0 M 1312.5 peak
        | 4: V -500 M 1000
        | 6: V -500|0 M 0
        """,
        Trace(new Load.Distributed(0, 6, 300, 0), new Load.Distributed(0, 6, 0, 300), Uniform(2, 4, 100), Uniform(4, 6, -300)));

    /// <summary>At the free end rounding leaves the shear just below nothing, which is no change of its sign.</summary>
    [Fact]
    public void ShearOfRounding_IsNoPeak() => Assert.DoesNotContain(
        HandAgreement.Work(Beam(3, [Support.Fixed(0)], [Uniform(0, 3, 0.1), Uniform(0, 3, 0.3)]))
            .Lines.OfType<HandLine.Marks>().Single().All,
        mark => mark.IsPeak);

    private static string Trace(params Load[] loads) =>
        HandTrace.Of(HandAgreement.Work(Beam(6, Simple, loads)), "AlongTheBeam");
}
