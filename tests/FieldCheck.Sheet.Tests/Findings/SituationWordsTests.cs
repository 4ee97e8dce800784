using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Findings;
using FieldCheck.Sheet.Tests.Building;

namespace FieldCheck.Sheet.Tests.Findings;

public sealed class SituationWordsTests
{
    private static readonly RollingEntry Truck = new()
    {
        Label = "Hand truck",
        Axles = [new() { Offset = "0 m", Force = "2 kN" }, new() { Offset = "1.2 m", Force = "3 kN" }],
    };

    private static readonly RollingEntry Hoist = new() { Axles = [new() { Offset = "0 m", Force = "2 kN" }] };

    [Theory]
    [InlineData("", "")]
    [InlineData("1", "bay 1")]
    [InlineData("1 3", "bays 1 and 3")]
    [InlineData("1 2", "bays 1 and 2")]
    [InlineData("2 3 4 5", "bays 2 to 5")]
    [InlineData("1 3 5", "bays 1, 3 and 5")]
    [InlineData("1 3 5 7", "bays 1 to 7 by twos")]
    [InlineData("1 3 5 7 9", "bays 1 to 9 by twos")]
    [InlineData("1 3 5 7 8 10", "bays 1 to 7 by twos, 8 and 10")]
    [InlineData("2 3 4 6 8 10 12", "bays 2 to 4 and 6 to 12 by twos")]
    public void Bays_AreCountedFromOne(string bays, string words) => Assert.Equal(words, Places(bays, false, false));

    [Theory]
    [InlineData("1 3", false, true, "bays 1, 3 and the right overhang")]
    [InlineData("2", true, true, "the left overhang, bay 2 and the right overhang")]
    [InlineData("", true, false, "the left overhang")]
    public void Overhangs_AreSaidAtTheirEnd(string bays, bool left, bool right, string words) =>
        Assert.Equal(words, Places(bays, left, right));

    [Theory]
    [InlineData(2.0, false, "Hand truck with its first axle at 2.00 m, others to its right")]
    [InlineData(2.0, true, "Hand truck with its first axle at 2.00 m, others to its left")]
    [InlineData(-0.5, false, "Hand truck with its first axle 0.50 m left of the beam, others to its right")]
    [InlineData(6.25, true, "Hand truck with its first axle 0.25 m right of the beam, others to its left")]
    [InlineData(-1e-6, false, "Hand truck with its first axle just left of the beam, others to its right")]
    [InlineData(5e-6, false, "Hand truck with its first axle just right of A, others to its right")]
    [InlineData(0, false, "Hand truck with its first axle at 0.00 m, others to its right")]
    [InlineData(6 - 1e-6, true, "Hand truck with its first axle just left of B, others to its left")]
    [InlineData(6 + 1e-9, true, "Hand truck with its first axle just right of the beam, others to its left")]
    [InlineData(-0.004, false, "Hand truck with its first axle 0.004 m left of the beam, others to its right")]
    public void RollingLoad_IsToldByItsFirstAxle(double position, bool isReversed, string words) =>
        Assert.Equal(words, Of(Beam(1), new Situation(0, [], new RollingPlace(0, position, isReversed))));

    [Fact]
    public void OneAxle_IsToldByItsPlace() =>
        Assert.Equal("rolling load 2 at 3.00 m", Of(Beam(1), new Situation(0, [], new RollingPlace(1, 3, false))));

    [Fact]
    public void OneRollingLoadThatIsNotThere_IsSaidSo() => Assert.Equal(
        "no Hand truck",
        Of(Beams.Built(Beams.Simple with { Rolling = [Truck] }), new Situation(0, [null], null)));

    [Fact]
    public void OfSeveralCombinations_TheNameComesFirst()
    {
        Situation situation = new(1, [new LoadedBays([], false, false)], null);

        Assert.Equal("two, no live, nothing rolling", Of(Beam(2), situation));
        Assert.Equal(" under two, no live, nothing rolling", SituationWords.After(Beam(2), situation));
        Assert.Equal("no live, nothing rolling", SituationWords.Within(Beam(2), situation));
        Assert.Equal(
            " with no live, nothing rolling", SituationWords.After(Beam(1), situation with { Combination = 0 }));
    }

    [Fact]
    public void PatternOfACaseThatDoesNotCount_IsNotTold()
    {
        BuiltBeam beam = Beams.Built(Beams.Simple with
        {
            Patterns = [new() { Case = "live" }],
            Combinations = [new() { Name = "bare", Factors = [new("dead", "1")] }],
        });

        Assert.Equal("", Of(beam, new Situation(0, [new LoadedBays([0], false, false)], null)));
    }

    private static BuiltBeam Beam(int combinations) => Beams.Built(Beams.Simple with
    {
        Patterns = [new() { Case = "live" }],
        Rolling = [Truck, Hoist],
        Combinations =
        [
            .. new CombinationEntry[]
            {
                new() { Name = "one", Factors = [new("live", "1")] },
                new() { Name = "two", Basis = "factored", Factors = [new("live", "1.6")] },
            }.Take(combinations),
        ],
    });

    private static string Of(BuiltBeam beam, Situation situation) => SituationWords.Of(beam, situation);

    private static string Places(string bays, bool left, bool right) => SituationWords.Places(new LoadedBays(
        [
            .. bays.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Select(bay => int.Parse(bay, System.Globalization.CultureInfo.InvariantCulture) - 1),
        ],
        left,
        right));
}
