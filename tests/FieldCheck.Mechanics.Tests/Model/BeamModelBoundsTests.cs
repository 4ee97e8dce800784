using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Model;

/// <summary>What a model still takes, just inside of what it refuses; and what it says when it refuses.</summary>
public sealed class BeamModelBoundsTests
{
    private static readonly LoadCase[] None = [];

    [Fact]
    public void Nodes_StandFromLeftToRight_NoneTwice()
    {
        BeamModel model = new(
            [new Span(6, 1, 1), new Span(4, 1, 1)], [Support.Pin(0), Support.Roller(6), Support.Roller(8)], [2], [], []);

        Assert.Equal([0, 2, 6, 8, 10], model.NodePositions().ToArray());
    }

    [Fact]
    public void VeryEnd_BelongsToTheBeam()
    {
        LoadCase loads = new("all", [new Load.Point(6, 1), new Load.Distributed(2, 6, 1, 1), new Load.Couple(6, 1)]);
        BeamModel model = Model([Support.Pin(0), Support.Roller(6)], [], [loads]);

        Assert.Equal(6, model.Supports[1].Position);
        Assert.Equal(3, model.Cases[0].Loads.Length);
    }

    [Theory]
    [InlineData(SupportAction.PushesOnly)]
    [InlineData(SupportAction.HoldsDownOnly)]
    public void RollerAndSpringAgainstTurning_MayActOneWay(SupportAction action)
    {
        Support roller = Support.Roller(6) with { Action = action, Rotation = new Restraint.Spring(5) };

        Assert.Equal(action, Model([Support.Pin(0), roller], [], None).Supports[1].Action);
    }

    [Fact]
    public void HingeAtALaterSupportThatResistsRotation_Throws() =>
        Assert.Throws<ArgumentException>(() => Model([Support.Pin(0), Support.Fixed(3)], [3], None));

    [Fact]
    public void HingeBehindTheLastSupport_IsAllowed() =>
        Assert.Equal([1, 4], Model([Support.Fixed(0), Support.Roller(3)], [1, 4], None).Hinges.ToArray());

    [Fact]
    public void SlopeOfASurface_StaysShortOfUpright()
    {
        Assert.Equal(-1.57, Support.Roller(0, -1.57).SurfaceSlope);
        Assert.Throws<ArgumentOutOfRangeException>(() => Support.Roller(0, -1.58));
        Assert.Throws<ArgumentOutOfRangeException>(() => Support.Roller(0, 1.58));
    }

    /// <summary>A surface at 30° that rises to the right pushes by half to the left.</summary>
    [Fact]
    public void PartNormalToASlope_LeansToTheLeft()
    {
        Support roller = Support.Roller(0, Math.PI / 6);

        Assert.Equal(-0.5, roller.NormalPart(right: 1, up: 0), 1e-15);
        Assert.Equal(Math.Sqrt(3) / 2, roller.NormalPart(right: 0, up: 1), 1e-15);
        Assert.Equal(2 * Math.Sqrt(3) - 1.5, roller.NormalPart(right: 3, up: 4), 1e-15);
        Assert.Equal(4, Support.Roller(0).NormalPart(right: 3, up: 4));
    }

    public static TheoryData<string, Func<BeamModel>> Refused() => new()
    {
        { "Every span must be long enough", () => new BeamModel([new Span(100, 1, 1), new Span(1e-15, 1, 1)], [], [], [], []) },
        { "Supports must stand on the beam in order", () => Model([Support.Pin(3), Support.Roller(3)], [], None) },
        { "On a sloped surface", () => Model([new Support(0, Restraint.Held, Restraint.Held, Restraint.Free, 0.2)], [], None) },
        { "Only a support that holds across", () => Model([Support.Guide(0) with { Action = SupportAction.PushesOnly }], [], None) },
        { "Hinges must stand inside the beam", () => Model([], [6], None) },
        { "A hinge cannot stand at a support", () => Model([Support.Fixed(3)], [3], None) },
        { "Loads must act on the beam", () => Model([], [], [new LoadCase("all", [new Load.Point(6.5, 1)])]) },
        { "A combination must have one factor", () => new BeamModel([new Span(6, 1, 1)], [], [], [], [new Combination("one", CombinationBasis.Service, [1])]) },
        { "Must be given", () => new BeamModel([new Span(6, 1, 1)], [], default, [], []) },
        { "Must be given", () => new BeamModel([new Span(6, 1, 1)], [], [], default, []) },
        { "Must be given", () => new BeamModel([new Span(6, 1, 1)], [], [], [new LoadCase("all", default)], []) },
        { "Must be given", () => new BeamModel([new Span(6, 1, 1)], [], [], [], default) },
        { "Must be given", () => new BeamModel([new Span(6, 1, 1)], [], [], [], [new Combination("one", CombinationBasis.Service, default)]) },
    };

    [Theory]
    [MemberData(nameof(Refused), DisableDiscoveryEnumeration = true)]
    public void Refusal_SaysTheRule(string rule, Func<BeamModel> build) =>
        Assert.StartsWith(rule, Assert.Throws<ArgumentException>(build).Message, StringComparison.Ordinal);

    private static BeamModel Model(Support[] supports, double[] hinges, LoadCase[] cases) =>
        new([new Span(6, 1, 1)], [.. supports], [.. hinges], [.. cases], []);
}
