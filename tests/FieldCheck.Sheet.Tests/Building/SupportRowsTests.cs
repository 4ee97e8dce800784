using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Building;

public sealed class SupportRowsTests
{
    private static readonly Restraint Held = Restraint.Held;
    private static readonly Restraint Free = Restraint.Free;

    public static TheoryData<string, Restraint, Restraint, Restraint> Kinds => new()
    {
        { "pin", Held, Held, Free },
        { "roller", Free, Held, Free },
        { "fixed", Held, Held, Held },
        { "guide", Held, Free, Held },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Kind_HoldsWhatItsNameSays(string kind, Restraint along, Restraint across, Restraint rotation) =>
        Assert.Equal(new Support(0, along, across, rotation), Only(new() { Kind = kind, Joint = "0" }));

    [Fact]
    public void Spring_YieldsAcrossByItsStiffness() => Assert.Equal(
        Support.Spring(0, 2e6), Only(new() { Kind = "spring", Joint = "0", Stiffness = "2 kN/mm" }));

    [Fact]
    public void RotationalStiffness_StandsBesideWhatThePinHolds() => Assert.Equal(
        new Restraint.Spring(30e3),
        Only(new() { Kind = "pin", Joint = "0", RotationalStiffness = "30 kNm/rad" }).Rotation);

    [Fact]
    public void MovementsAndSlope_AreRead()
    {
        Support roller = Only(new() { Kind = "roller", Joint = "0", Surface = "30 deg", Settlement = "1/4 in" });
        Support built = Only(new() { Kind = "fixed", Joint = "0", Rotation = "-2 mrad" });

        Assert.Equal(Math.PI / 6, roller.SurfaceSlope, 1e-15);
        Assert.Equal(0.00635, roller.Settlement, 1e-15);
        Assert.Equal(-0.002, built.ImposedRotation, 1e-15);
    }

    [Theory]
    [InlineData(null, SupportAction.Both, false)]
    [InlineData("both", SupportAction.Both, true)]
    [InlineData("up", SupportAction.PushesOnly, true)]
    [InlineData("down", SupportAction.HoldsDownOnly, true)]
    public void Acts_IsReadAndRemembered(string? acts, SupportAction action, bool isWritten)
    {
        NamedSupport named = Beams.Built(Beams.With(Beams.Pin, Beams.Roller with { Acts = acts })).Supports[1];

        Assert.Equal(action, named.Support.Action);
        Assert.Equal(isWritten, named.ActsAsWritten);
    }

    [Fact]
    public void Supports_StandFromLeftToRightWhateverTheirRows()
    {
        BuiltBeam beam = Beams.Built(Beams.With(Beams.Roller, new() { Kind = "pin", At = "1 m" }));

        Assert.Equal([1, 6], beam.Model.Supports.Select(support => support.Position));
        Assert.Equal([1, 0], beam.Supports.Select(named => named.Row));
        Assert.Equal([null, 1], beam.Supports.Select(named => named.Joint));
        Assert.Equal(["pin", "roller"], beam.Supports.Select(named => named.Kind));
    }

    [Theory]
    [InlineData("at", "19 ft 8.220472440944882 in")]
    [InlineData("at", "6000 mm")]
    [InlineData("at", "end")]
    [InlineData("at", "mid 1 + 3 m")]
    [InlineData("joint", "1")]
    public void SupportAtAJointHoweverGiven_HasItsNumberExactly(string key, string place)
    {
        SupportEntry roller = new() { Kind = "roller" };
        BuiltBeam beam = Beams.Built(Beams.With(
            Beams.Pin, key == "at" ? roller with { At = place } : roller with { Joint = place }));

        Assert.Equal(6.0, beam.Model.Supports[1].Position);
        Assert.Equal(1, beam.Supports[1].Joint);
    }

    [Fact]
    public void NoSupport_ReadsAndIsAMechanismForTheSolver() =>
        Assert.Empty(Beams.Model(Beams.Simple with { Supports = [] }).Supports);

    [Theory]
    [InlineData("acts", "on", "support[2].acts: expected both, up or down, found 'on'")]
    [InlineData("surface", "5 deg", "")]
    [InlineData("surface", "90 deg", "support[2].surface: a surface slopes by less than 90 deg either way")]
    [InlineData("surface", "-91 deg", "support[2].surface: a surface slopes by less than 90 deg either way")]
    [InlineData("stiffness", "2 kN/mm", "support[2].stiffness: stiffness belongs to a support of kind spring")]
    [InlineData("rotation", "1 mrad", "support[2].rotation: rotation belongs to a support of kind fixed or guide")]
    [InlineData("rotational_stiffness", "0 kNm/rad",
        "support[2].rotational_stiffness: '0 kNm/rad' is not greater than zero")]
    [InlineData("bearing", "0 in", "support[2].bearing: '0 in' is not greater than zero")]
    [InlineData("bearing_allowable", "-1 psi", "support[2].bearing_allowable: '-1 psi' is not greater than zero")]
    [InlineData("allowable_pressure", "0 psf", "support[2].allowable_pressure: '0 psf' is not greater than zero")]
    public void RollerWithKey_IsTold(string key, string text, string problem) =>
        Assert.Equal(problem.Length == 0 ? [] : [problem], Beams.Problems(With("roller", key, text)));

    [Theory]
    [InlineData("pin", "surface", "5 deg", "support[2].surface: surface belongs to a support of kind roller")]
    [InlineData("fixed", "rotational_stiffness", "5 kNm/rad",
        "support[2].rotational_stiffness: rotational_stiffness belongs to a support of kind pin, roller or spring")]
    [InlineData("fixed", "acts", "up",
        "support[2].acts: a support that holds rotation acts both ways: leave acts out, or write \"both\"")]
    [InlineData("guide", "acts", "down",
        "support[2].acts: a support that holds rotation acts both ways: leave acts out, or write \"both\"")]
    [InlineData("fixed", "acts", "both", "")]
    [InlineData("guide", "settlement", "3 mm",
        "support[2].settlement: a guide is free up and down: its settlement would change nothing")]
    [InlineData("spring", "acts", "up", "support[2].stiffness: a spring needs its stiffness, as \"2 kN/mm\"")]
    public void KeyOfAnotherKind_IsTold(string kind, string key, string text, string problem) =>
        Assert.Equal(problem.Length == 0 ? [] : [problem], Beams.Problems(Known(With(kind, key, text))));

    [Fact]
    public void SupportWithoutKind_IsTold() => Assert.Equal(
        ["support[1].kind: a support needs its kind: pin, roller, fixed, guide or spring"],
        Beams.Problems(Beams.With(Beams.Pin with { Kind = null })));

    [Fact]
    public void MisspeltKind_IsOfferedTheNearest() => Assert.Equal(
        ["support[1].kind: expected pin, roller, fixed, guide or spring, found 'rolller': did you mean roller?"],
        Beams.Problems(Beams.With(Beams.Pin with { Kind = "rolller" })));

    private static Support Only(SupportEntry entry) =>
        Beams.Model(Known(Beams.With(entry))).Supports.Single();

    /// <summary>With a stiffness, so that movements and springs may stand.</summary>
    private static BeamDocument Known(BeamDocument document) => document with
    {
        Sections = [new() { Name = "s", Inertia = "100 cm4", Area = "10 cm2" }],
        Materials = [new() { Name = "m", Modulus = "210 GPa" }],
    };

    private static BeamDocument With(string kind, string key, string text) =>
        DocumentCells.Set(Beams.With(Beams.Pin, Beams.Roller with { Kind = kind }), $"support[2].{key}", text)!;
}
