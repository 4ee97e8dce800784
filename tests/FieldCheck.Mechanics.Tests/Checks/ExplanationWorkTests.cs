using FieldCheck.Mechanics.Checks;

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
}
