using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Tests.Building;

/// <summary>The names are those of docs/beam-file.md, "Factors of timber".</summary>
public sealed class FactorRowsTests
{
    [Theory]
    [InlineData("duration", FactorKind.Duration)]
    [InlineData("C_D", FactorKind.Duration)]
    [InlineData("wet_service", FactorKind.WetService)]
    [InlineData("wet service", FactorKind.WetService)]
    [InlineData("CM", FactorKind.WetService)]
    [InlineData("temperature", FactorKind.Temperature)]
    [InlineData("C_t", FactorKind.Temperature)]
    [InlineData("size", FactorKind.Size)]
    [InlineData("C_F", FactorKind.Size)]
    [InlineData("flat_use", FactorKind.FlatUse)]
    [InlineData("C_fu", FactorKind.FlatUse)]
    [InlineData("incising", FactorKind.Incising)]
    [InlineData("Ci", FactorKind.Incising)]
    [InlineData("repetitive", FactorKind.Repetitive)]
    [InlineData("Cr", FactorKind.Repetitive)]
    [InlineData("modification", FactorKind.Modification)]
    [InlineData("kmod", FactorKind.Modification)]
    [InlineData("partial", FactorKind.PartialFactor)]
    [InlineData("gamma_M", FactorKind.PartialFactor)]
    [InlineData("depth", FactorKind.Depth)]
    [InlineData("kh", FactorKind.Depth)]
    [InlineData("system", FactorKind.System)]
    [InlineData("ksys", FactorKind.System)]
    [InlineData("cracks", FactorKind.Cracks)]
    [InlineData("kcr", FactorKind.Cracks)]
    [InlineData("cross_grain", FactorKind.CrossGrain)]
    [InlineData("kc,90", FactorKind.CrossGrain)]
    [InlineData("k_c90", FactorKind.CrossGrain)]
    [InlineData("beam_stability", null)]
    [InlineData("", null)]
    public void Name_LeadsToItsFactor(string name, FactorKind? kind) => Assert.Equal(kind, FactorNames.Find(name));

    [Fact]
    public void EveryFactorThatCanBeGiven_HasOneName()
    {
        FactorKind[] workedOut = [FactorKind.BeamStability, FactorKind.BearingArea, FactorKind.LateralStability];

        foreach (FactorKind kind in Enum.GetValues<FactorKind>())
        {
            Assert.Equal(workedOut.Contains(kind) ? null : kind, FactorNames.Of(kind) is string name ? FactorNames.Find(name) : null);
        }

        Assert.Equal(13, FactorNames.All.Distinct().Count());
    }

    [Fact]
    public void Factors_AreTakenIntoTheMaterial() => Assert.Equal<StrengthFactor>(
        [
            new(FactorKind.Duration, 1.25), new(FactorKind.WetService, 0), new(FactorKind.PartialFactor, 1.3),
        ],
        Beams.Built(Beams.With(Given(("duration", "1.25"), ("wet_service", "0"), ("gamma_M", "1.3"))))
            .Sticks.Single().Material!.Factors.ToArray());

    public static TheoryData<string, string, string> Wrong => new()
    {
        {
            "duraton", "1.25",
            "material.m.factors.duraton: no factor is called 'duraton': did you mean duration?; those of timber are "
                + "duration, wet_service, temperature, size, flat_use, incising, repetitive, modification, partial, depth, "
                + "system, cracks and cross_grain"
        },
        { "duration", "0", "material.m.factors.duration: '0' is not greater than zero" },
        { "kmod", "-0.8", "material.m.factors.kmod: '-0.8' is not greater than zero" },
        {
            "wet_service", "0.85",
            "material.m.factors.wet_service: wet_service is 1 where the timber gets wet in use, else 0"
        },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void WrongFactor_IsTold(string name, string text, string problem) =>
        Assert.Equal([problem], Beams.Problems(Beams.With(Given((name, text)))));

    [Fact]
    public void OneFactorUnderTwoNames_IsTold() => Assert.Equal(
        ["material.m.factors.C_D: 'C_D' and 'duration' are one factor: write it once"],
        Beams.Problems(Beams.With(Given(("duration", "1.25"), ("C_D", "1.25")))));

    private static MaterialEntry Given(params (string Name, string Text)[] factors) => new()
    {
        Name = "m",
        Grade = "C24",
        Factors = [.. factors.Select(factor => new NamedFigure(factor.Name, factor.Text))],
    };
}
