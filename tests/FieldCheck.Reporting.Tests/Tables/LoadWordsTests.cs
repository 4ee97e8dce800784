using FieldCheck.Mechanics.Model;
using FieldCheck.Reporting.Tables;

namespace FieldCheck.Reporting.Tests.Tables;

public sealed class LoadWordsTests
{
    private static readonly LoadWords Words = new(new BeamWords(Bench.Trench()));

    public static TheoryData<Load, string> Sizes => new()
    {
        { new Load.Point(1, 1500), "1.50 kN" },
        { new Load.Point(1, -1500), "1.50 kN up" },
        { new Load.Point(1, 0, -400), "0.40 kN left" },
        { new Load.Point(1, 1500, 400), "1.50 kN and 0.40 kN right" },
        { new Load.Couple(1, 5000), "5.00 kNm ccw" },
        { new Load.Couple(1, -5000), "5.00 kNm cw" },
        { new Load.Distributed(0, 1, 3000, 3000), "3.00 kN/m" },
        { new Load.Distributed(0, 1, -3000, -3000), "3.00 kN/m up" },
        { new Load.Distributed(0, 1, 3000, 6000), "3.00 to 6.00 kN/m" },
        { new Load.Distributed(0, 1, 0, -6000), "0.00 to 6.00 kN/m up" },
        { new Load.Distributed(0, 1, -6000, 0), "6.00 to 0.00 kN/m up" },
        { new Load.Distributed(0, 1, 3000, -6000), "3.00 kN/m to 6.00 kN/m up" },
        { new Load.Distributed(0, 1, 3000, 3000, ActsAlong: true), "3.00 kN/m right" },
    };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void ALoad_IsSaidWithItsSense(Load load, string expected) => Assert.Equal(expected, Words.Size(load));

    [Fact]
    public void AFactor_CountsInTheSize() => Assert.Equal("2.25 kN", Words.Size(new Load.Point(1, 1500), 1.5));

    [Fact]
    public void APlace_IsNamedByItsSupportOrEnd() => Assert.Equal(
        "from A (0.30 m) to the right end (3.60 m)", Words.Place(new Load.Distributed(0.30, 3.60, 1, 1)));
}
