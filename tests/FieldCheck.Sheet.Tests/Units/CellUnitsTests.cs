using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Sheet.Tests.Units;

public sealed class CellUnitsTests
{
    [Theory]
    [InlineData(QuantityKind.Length, "m", "ft")]
    [InlineData(QuantityKind.Force, "kN", "lbf")]
    [InlineData(QuantityKind.ForcePerLength, "kN/m", "lbf/ft")]
    [InlineData(QuantityKind.Pressure, "kN/m2", "psf")]
    [InlineData(QuantityKind.Moment, "kNm", "lbf-ft")]
    [InlineData(QuantityKind.Stiffness, "kN/m", "lbf/in")]
    [InlineData(QuantityKind.RotationalStiffness, "kNm/rad", "kip-ft/rad")]
    [InlineData(QuantityKind.Area, "cm2", "in2")]
    [InlineData(QuantityKind.SectionModulus, "cm3", "in3")]
    [InlineData(QuantityKind.Inertia, "cm4", "in4")]
    [InlineData(QuantityKind.UnitWeight, "kg/m3", "pcf")]
    [InlineData(QuantityKind.Angle, "deg", "deg")]
    [InlineData(QuantityKind.Share, "%", "%")]
    [InlineData(QuantityKind.Number, "", "")]
    public void Cell_ShowsItsUnitAndReadsInIt(QuantityKind kind, string si, string us)
    {
        Assert.Equal(si, CellUnits.Of(kind, UnitSystem.Si));
        Assert.Equal(us, CellUnits.Of(kind, UnitSystem.Us));
        Assert.True(Read.Value(CellShorthand.Expand("2", kind, UnitSystem.Si), kind) > 0);
        Assert.True(Read.Value(CellShorthand.Expand("2", kind, UnitSystem.Us), kind) > 0);
    }

    [Fact]
    public void ShortLengthsAndStresses_HaveUnitsOfTheirOwn()
    {
        Assert.Equal(("mm", "in"), (CellUnits.ShortLength(UnitSystem.Si), CellUnits.ShortLength(UnitSystem.Us)));
        Assert.Equal(("MPa", "psi"), (CellUnits.Stress(UnitSystem.Si), CellUnits.Stress(UnitSystem.Us)));
    }
}
