using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks;

public sealed class ExplanationWorkTests
{
    [Fact]
    public void Work_IsTakenToTheLast_ThenNoneIsLeft()
    {
        ExplanationWork work = new();

        Assert.True(work.Take(60_000));
        Assert.True(work.Take(40_000));
        Assert.False(work.IsSpent);
        Assert.False(work.Take(1));
        Assert.True(work.IsSpent);
    }

    // What is left would do for a smaller solve; but then it would show who asked first.
    [Fact]
    public void Work_ThatOnceWasTooMuch_IsSpent()
    {
        ExplanationWork work = new();

        Assert.False(work.Take(100_001));
        Assert.False(work.Take(1));
        Assert.False(work.Take(100_001));
        Assert.True(work.IsSpent);
    }

    // One stretch, and 30,000 loads in each of two cases: twice that is more than 100,000.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void OtherBeam_TakesAsMuchAsItHasLoads(bool isKnownToStand)
    {
        (ExplanationBeam beam, BeamModel other) = Laden(30_000);

        Assert.NotNull(Asked());
        Assert.True(beam.IsAllSolved);
        Assert.Null(Asked());
        Assert.False(beam.IsAllSolved);

        double[]? Asked() => isKnownToStand ? beam.OnIfItStands(other) : beam.On(other);
    }

    private static (ExplanationBeam Beam, BeamModel Other) Laden(int each)
    {
        BeamModel model = Said.Simple(6, Said.Point(2, 12));
        model = model with { Cases = [.. model.Cases, new LoadCase("more", [])], Combinations = [] };
        LoadCase many = new("many", [.. Enumerable.Repeat(Said.Point(0, 1e-3), each)]);
        return (Rough.Beam(Rough.Set(model, 1000, ReactionPart.Vertical)), model with { Cases = [many, many] });
    }
}
