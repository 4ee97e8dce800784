using FieldCheck.Mechanics.Model;
using FieldCheck.Reporting.Tables;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Reporting.Tests.Tables;

public sealed class PlaceTableTests
{
    [Fact]
    public void AtAJump_BothSidesAreGiven() => At(
        Bench.Trench(), 2.70, "shear -13.58 kN left, +2.93 kN right", "moment -1.21 kNm", "deflection 0.0 mm");

    [Fact]
    public void BetweenJumps_OneValueIsGiven() => At(
        Bench.Trench(), 1.25, "shear +1.79 kN", "moment +6.67 kNm", "deflection 6.0 mm down");

    [Fact]
    public void AtAnEnd_OnlyTheSideThatIsBeamCounts() => At(
        Bench.Beam([2], [Support.Fixed(0)], [new Load.Point(2, 3000)], [], UnitSystem.Si, hasStiffness: false),
        0,
        "shear +3.00 kN",
        "moment -6.00 kNm");

    [Fact]
    public void AForceLengthways_IsGivenWhereItActs() => At(
        Bench.Beam([2], [Support.Fixed(0)], [new Load.Point(1, 0, 700)], [], UnitSystem.Si, hasStiffness: false),
        1,
        "axial force +0.70 kN left, 0.00 kN right",
        "shear 0.00 kN",
        "moment 0.00 kNm");

    private static void At(BuiltBeam beam, double place, params string[] expected) =>
        Assert.Equal<string>(expected, [.. PlaceTable.Items(beam, Bench.Answer(beam).Response, place)]);
}
