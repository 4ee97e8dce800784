using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using static FieldCheck.Mechanics.Tests.Strength.Timber;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>
/// Spans of floor joists that bending limits, International Residential Code 2015 and later, Table R502.3.1(2): Douglas
/// fir-larch No. 2, live 40 psf and dead 10 psf, C_D 1.0, C_r 1.15. From memory: confirm against the code.
/// </summary>
public sealed class NdsSpanTableTests
{
    [Theory]
    [InlineData(9.25, 12, 18, 0)]
    [InlineData(11.25, 12, 20, 11)]
    [InlineData(7.25, 16, 12, 9)]
    [InlineData(9.25, 16, 15, 7)]
    [InlineData(11.25, 16, 18, 1)]
    [InlineData(5.5, 24, 8, 3)]
    [InlineData(7.25, 24, 10, 5)]
    [InlineData(9.25, 24, 12, 9)]
    [InlineData(11.25, 24, 14, 9)]
    public void JoistLimitedByBending_SpansWhatTheTableSays(double depth, double spacing, double feet, double inches)
    {
        Member joist = new(
            Section.Of(new SectionShape.Rectangle(1.5 * Inch, depth * Inch)),
            Of(Fir, (FactorKind.Duration, 1.0), (FactorKind.Repetitive, 1.15)),
            new LateralSupport.Braced());

        Resistance bending = new Nds().Of(joist, Any).One(CheckKind.Bending);
        double load = 50 * Pound / (Foot * Foot) * spacing * Inch;
        double span = Math.Sqrt(8 * bending.Limit!.Value / bending.PerAction / load);

        Assert.Equal(12 * feet + inches, span / Inch, 0.6);
    }
}
