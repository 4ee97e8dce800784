using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Tests.Reading;

public sealed class ReadingTests
{
    [Fact]
    public void Then_Accepted_ReadsOn() => Assert.Equal(
        "3",
        Read.Accepted(new Reading<int>.Accepted(3).Then<string>(value => new Reading<string>.Accepted($"{value}"))));

    [Fact]
    public void Then_Refused_PassesThrough()
    {
        Reading<string> reading = new Reading<int>.Refused("no", 4).Then<string>(
            _ => throw new InvalidOperationException("not reached"));

        Assert.Equal(new Reading<string>.Refused("no", 4), reading);
    }

    [Fact]
    public void At_MovesARefusalOnly()
    {
        Assert.Equal(new Reading<int>.Refused("no", 7), new Reading<int>.Refused("no", 4).At(3));
        Assert.Equal(new Reading<int>.Accepted(1), new Reading<int>.Accepted(1).At(3));
    }
}
