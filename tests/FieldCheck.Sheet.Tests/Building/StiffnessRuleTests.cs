using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Building;

/// <summary>The contract's "Stiffness not known", case by case.</summary>
public sealed class StiffnessRuleTests
{
    private static readonly MaterialEntry Steel = new() { Name = "m", Modulus = "200 GPa" };
    private static readonly SectionEntry Heavy = new() { Name = "heavy", Inertia = "4000 cm4", Area = "40 cm2" };
    private static readonly SectionEntry Light = new() { Name = "light", Inertia = "1000 cm4", Area = "20 cm2" };

    [Fact]
    public void DeterminateBeam_NeedsNoStiffness()
    {
        BuiltBeam beam = Beams.Built(Beams.Simple);

        Assert.False(beam.Model.HasAbsoluteStiffness);
        Assert.False(beam.UniformStiffnessAssumed);
        Assert.False(beam.UniformAreaAssumed);
    }

    [Fact]
    public void DeterminateBeamOnASpringThatSettles_NeedsNoStiffness() => Assert.Empty(Beams.Problems(Beams.With(
        Beams.Pin with { Settlement = "5 mm" },
        new SupportEntry { Kind = "spring", Joint = "1", Stiffness = "1 kN/mm" })));

    [Fact]
    public void EverythingKnown_IsAbsolute()
    {
        BuiltBeam beam = Beams.Built(Spans("heavy", "light", Steel));

        Assert.True(beam.Model.HasAbsoluteStiffness);
        Assert.Equal([8e6, 2e6], beam.Model.Spans.Select(span => Math.Round(span.FlexuralRigidity, 3)));
        Assert.Equal([8e8, 4e8], beam.Model.Spans.Select(span => Math.Round(span.AxialRigidity, 3)));
        Assert.All(beam.Model.Spans, span => Assert.Null(span.ShearRigidity));
        Assert.False(beam.UniformStiffnessAssumed);
    }

    [Fact]
    public void NothingKnown_IsUniformAndSaysSo()
    {
        BuiltBeam beam = Beams.Built(Beams.TwoSpans);

        Assert.False(beam.Model.HasAbsoluteStiffness);
        Assert.True(beam.UniformStiffnessAssumed);
        Assert.Equal(beam.Model.Spans[0].FlexuralRigidity, beam.Model.Spans[1].FlexuralRigidity);
    }

    [Fact]
    public void ModulusAloneAlikeInAllSpans_IsNoStiffness() =>
        Assert.True(Beams.Built(Beams.TwoSpans with { Materials = [Steel] }).UniformStiffnessAssumed);

    [Fact]
    public void InertiasWithoutModuli_AreRatios()
    {
        BuiltBeam beam = Beams.Built(Spans("heavy", "light"));

        Assert.False(beam.Model.HasAbsoluteStiffness);
        Assert.False(beam.UniformStiffnessAssumed);
        Assert.Equal(4, beam.Model.Spans[0].FlexuralRigidity / beam.Model.Spans[1].FlexuralRigidity, 1e-12);
    }

    [Fact]
    public void OneInertiaMissing_IsTold() => Assert.Equal(
        [Needs(2, "section", "others have a stiffness, so all must")], Beams.Problems(Spans("heavy", null)));

    [Fact]
    public void OneModulusMissing_IsTold() => Assert.Equal(
        [Needs(2, "material", "others have a stiffness, so all must")],
        Beams.Problems(Spans("heavy", "light", Steel, Steel with { Name = "other" }) with
        {
            Spans =
            [
                new() { Length = "4 m", Section = "heavy", Material = "m" },
                new() { Length = "5 m", Section = "light" },
            ],
        }));

    [Fact]
    public void TwoModuliWithoutSections_AreTold() => Assert.Equal(
        [Needs(1, "section", "others have a stiffness, so all must")],
        Beams.Problems(Beams.TwoSpans with
        {
            Spans = [new() { Length = "4 m", Material = "m" }, new() { Length = "5 m", Material = "other" }],
            Materials = [Steel, new() { Name = "other", Modulus = "11 GPa" }],
        }));

    public static TheoryData<SupportEntry, string> MiddleSupports => new()
    {
        {
            new() { Kind = "spring", Joint = "1", Stiffness = "2 kN/mm" },
            "a spring stands here, and how much it yields against the beam counts"
        },
        {
            new() { Kind = "roller", Joint = "1", RotationalStiffness = "20 kNm/rad" },
            "a spring stands here, and how much it yields against the beam counts"
        },
        {
            new() { Kind = "roller", Joint = "1", Settlement = "-3 mm" },
            "a support moves, and what that does depends on the beam's stiffness"
        },
        {
            new() { Kind = "fixed", Joint = "1", Rotation = "1 mrad" },
            "a support moves, and what that does depends on the beam's stiffness"
        },
        {
            new() { Kind = "roller", Joint = "1", Surface = "10 deg" },
            "a sloped surface ties the beam's stiffness along and across together"
        },
    };

    [Theory]
    [MemberData(nameof(MiddleSupports))]
    public void NothingKnownWhereTheStiffnessItselfCounts_IsTold(SupportEntry middle, string why) => Assert.Equal(
        [Needs(1, "section", why)],
        Beams.Problems(Beams.TwoSpans with { Supports = Beams.TwoSpans.Supports.SetItem(1, middle) }));

    [Fact]
    public void RatiosBesideASpring_AreTold() => Assert.Equal(
        [Needs(1, "material", "a spring stands here, and how much it yields against the beam counts")],
        Beams.Problems(Spans("heavy", "light") with
        {
            Supports = Beams.TwoSpans.Supports.SetItem(
                1, new() { Kind = "spring", Joint = "1", Stiffness = "2 kN/mm" }),
        }));

    [Fact]
    public void RatiosOnASlopedSurface_Serve()
    {
        // Inertias and areas both stand in the ratio of one unknown modulus, so the reactions do not depend on it.
        BuiltBeam beam = Beams.Built(Spans("heavy", "light") with
        {
            Supports = Beams.TwoSpans.Supports.SetItem(1, new() { Kind = "roller", Joint = "1", Surface = "10 deg" }),
        });

        Assert.Equal(
            4000e-8 / 40e-4, beam.Model.Spans[0].FlexuralRigidity / beam.Model.Spans[0].AxialRigidity, 1e-12);
    }

    [Fact]
    public void AreaMissingOnASlopedSurface_IsTold() => Assert.Equal(
        [
            "section.s.area: span 1 needs the area of its section: a sloped surface ties the beam's stiffness along "
                + "and across together",
        ],
        Beams.Problems(Beams.TwoSpans with
        {
            Sections = [new() { Name = "s", Inertia = "4000 cm4" }],
            Materials = [Steel],
            Supports = Beams.TwoSpans.Supports.SetItem(1, new() { Kind = "roller", Joint = "1", Surface = "10 deg" }),
        }));

    [Fact]
    public void AreaMissingBetweenTwoPins_IsTakenAsUniformAndSaysSo()
    {
        BuiltBeam beam = Beams.Built(Beams.TwoSpans with
        {
            Sections = [new() { Name = "s", Inertia = "4000 cm4" }],
            Materials = [Steel],
            Supports = Beams.TwoSpans.Supports.SetItem(2, new() { Kind = "pin", Joint = "2" }),
        });

        Assert.True(beam.UniformAreaAssumed);
        Assert.True(beam.Model.HasAbsoluteStiffness);
        Assert.Equal(beam.Model.Spans[0].AxialRigidity, beam.Model.Spans[1].AxialRigidity);
    }

    [Fact]
    public void AreaMissingWhereNothingHangsOnIt_SaysNothing() => Assert.False(Beams.Built(Beams.TwoSpans with
    {
        Sections = [new() { Name = "s", Inertia = "4000 cm4" }],
        Materials = [Steel],
    }).UniformAreaAssumed);

    [Fact]
    public void AreaMissingOnADeterminateSlope_LeavesMovementsUnknown()
    {
        // The roller slides along its slope as the beam shortens, so deflections across depend on the area too.
        BuiltBeam beam = Beams.Built(Beams.With(Beams.Pin, Beams.Roller with { Surface = "10 deg" }) with
        {
            Sections = [new() { Name = "s", Inertia = "4000 cm4" }],
            Materials = [Steel],
        });

        Assert.False(beam.Model.HasAbsoluteStiffness);
    }

    [Fact]
    public void ShearDeformation_CountsShearAreaAndModulus()
    {
        BuiltBeam beam = Beams.Built(Beams.TwoSpans with
        {
            ShearDeformation = "true",
            Sections = [Heavy with { ShearArea = "12 cm2" }],
            Materials = [Steel with { ShearModulus = "80 GPa" }],
        });

        Assert.All(beam.Model.Spans, span => Assert.Equal(96e6, span.ShearRigidity!.Value, 1e-6));
    }

    [Fact]
    public void ShearDeformationWithoutItsFigures_IsToldOfEverySpan() => Assert.Equal(
        [
            "section.heavy.shear_area: span 1 needs its shear area: shear_deformation is true",
            "section.light.shear_area: span 2 needs its shear area: shear_deformation is true",
            "material.m.shear_modulus: span 1 needs its shear modulus: shear_deformation is true",
            "material.m.shear_modulus: span 2 needs its shear modulus: shear_deformation is true",
        ],
        Beams.Problems(Spans("heavy", "light", Steel) with { ShearDeformation = "true" }));

    [Fact]
    public void ShearDeformationWithoutAnything_NamesSpanAndKey() => Assert.Equal(
        [
            "span[1].section: span 1 needs its shear area: shear_deformation is true",
            "span[1].material: span 1 needs its shear modulus: shear_deformation is true",
        ],
        Beams.Problems(Beams.Simple with { ShearDeformation = "true" }));

    private static string Needs(int span, string key, string why) =>
        $"span[{span}].{key}: span {span} needs a {key}: statics alone does not solve this beam, and {why}";

    private static BeamDocument Spans(string? first, string? second, params MaterialEntry[] materials) =>
        Beams.TwoSpans with
        {
            Spans = [new() { Length = "4 m", Section = first }, new() { Length = "5 m", Section = second }],
            Sections = [Heavy, Light],
            Materials = [.. materials],
        };
}
