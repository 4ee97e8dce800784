using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Model;

/// <summary>What a model refuses: each is a bug of whoever builds it.</summary>
public sealed class BeamModelTests
{
    private static readonly Support Pin = Support.Pin(0);
    private static readonly Support Roller = Support.Roller(6);

    [Fact]
    public void Joints_AddUpTheSpans()
    {
        BeamModel model = new([new Span(6, 1, 1), new Span(4.5, 1, 1)], [], [], [], []);

        Assert.Equal([0, 6, 10.5], model.JointPositions.ToArray());
        Assert.Equal(10.5, model.Length);
    }

    [Fact]
    public void NoSpans_Throws() => Assert.Throws<ArgumentException>(() => new BeamModel([], [], [], [], []));

    [Fact]
    public void SpanTooShortToMoveItsFarJoint_Throws() =>
        Assert.Throws<ArgumentException>(
            () => new BeamModel([new Span(100, 1, 1), new Span(1e-15, 1, 1)], [], [], [], []));

    public static TheoryData<Support[]> BadSupports() => new()
    {
        { [Support.Pin(6), Support.Roller(0)] },
        { [Support.Pin(3), Support.Roller(3)] },
        { [Support.Pin(6.000001)] },
        { [Pin with { Action = SupportAction.PushesOnly, Rotation = Restraint.Held }] },
        { [Support.Guide(0) with { Action = SupportAction.PushesOnly }] },
        { [Support.Fixed(0) with { Action = SupportAction.HoldsDownOnly }] },
        { [new Support(0, Restraint.Held, Restraint.Held, Restraint.Free, 0.2)] },
        { [new Support(0, Restraint.Free, Restraint.Free, Restraint.Held, 0.2)] },
    };

    [Theory]
    [MemberData(nameof(BadSupports))]
    public void SupportsOutOfOrderOffTheBeamOrContradictory_Throw(Support[] supports) =>
        Assert.Throws<ArgumentException>(() => Model(supports: supports));

    [Theory]
    [InlineData(0.0)]
    [InlineData(6.0)]
    [InlineData(7.0)]
    [InlineData(4.0, 2.0)]
    [InlineData(2.0, 2.0)]
    public void HingesOutOfOrderOrNotInside_Throw(params double[] hinges) =>
        Assert.Throws<ArgumentException>(() => Model(hinges: hinges));

    [Fact]
    public void HingeAtASupportThatResistsRotation_Throws()
    {
        Assert.Throws<ArgumentException>(() => Model([Support.Fixed(3)], [3]));
        Assert.Throws<ArgumentException>(() => Model([Support.Guide(3)], [3]));
        Assert.Throws<ArgumentException>(
            () => Model([new Support(3, Restraint.Held, Restraint.Held, new Restraint.Spring(5))], [3]));
    }

    [Fact]
    public void HingeAtAPin_IsAllowed() => Assert.Equal(3, Model([Support.Pin(3)], [3]).Hinges[0]);

    public static TheoryData<Load> LoadsOffTheBeam() => new()
    {
        { new Load.Point(6.5, 1) },
        { new Load.Couple(7, 1) },
        { new Load.Distributed(2, 6.1, 1, 1) },
    };

    [Theory]
    [MemberData(nameof(LoadsOffTheBeam))]
    public void LoadOffTheBeam_Throws(Load load) =>
        Assert.Throws<ArgumentException>(() => Model(cases: [new LoadCase("all", [load])]));

    [Theory]
    [InlineData]
    [InlineData(1.0, 1.0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void CombinationWithoutOneFiniteFactorACase_Throws(params double[] factors) =>
        Assert.ThrowsAny<ArgumentException>(() => Model(
            cases: [new LoadCase("all", [])],
            combinations: [new Combination("one", CombinationBasis.Service, [.. factors])]));

    [Fact]
    public void ListThatWasNeverGiven_Throws() =>
        Assert.Throws<ArgumentException>(() => new BeamModel([new Span(6, 1, 1)], default, [], [], []));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void SpanSizes_MustBePositiveAndFinite(double bad)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Span(bad, 1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Span(1, bad, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Span(1, 1, bad));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Span(1, 1, 1, bad));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Restraint.Spring(bad));
    }

    [Fact]
    public void PlacesSlopesAndLoads_MustBeInRange()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Support.Pin(-0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Support.Roller(0, Math.PI / 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Load.Point(-1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Load.Point(1, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Load.Couple(1, double.NegativeInfinity));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Load.Distributed(2, 2, 1, 1));
    }

    private static BeamModel Model(
        Support[]? supports = null,
        double[]? hinges = null,
        LoadCase[]? cases = null,
        Combination[]? combinations = null) => new(
        [new Span(6, 1, 1)],
        [.. supports ?? [Pin, Roller]],
        [.. hinges ?? []],
        [.. cases ?? []],
        [.. combinations ?? []]);
}
