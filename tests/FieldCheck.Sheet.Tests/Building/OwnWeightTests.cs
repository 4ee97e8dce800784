using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Building;

public sealed class OwnWeightTests
{
    [Fact]
    public void OwnWeight_StandsFirstOneASpan()
    {
        BuiltBeam beam = Beams.Built(Document(new() { Name = "s", Inertia = "1 cm4", Weight = "12 kg/m" }));

        Assert.Equal<NamedLoad>(
            [
                new NamedLoad(new Load.Distributed(0, 4, 12 * 9.80665, 12 * 9.80665), "dead", "own weight", null),
                new NamedLoad(new Load.Distributed(4, 9, 12 * 9.80665, 12 * 9.80665), "dead", "own weight", null),
                new NamedLoad(new Load.Distributed(0, 9, 2000, 2000), "live", "", 0),
            ],
            beam.Loads);
        Assert.Equal(["dead", "live"], beam.Model.Cases.Select(loads => loads.Name));
    }

    [Fact]
    public void WeightOfTheSection_ComesBeforeAreaTimesDensity()
    {
        SectionEntry weighed = new() { Name = "s", Inertia = "1 cm4", Area = "10 cm2", Weight = "12 kg/m" };
        MaterialEntry steel = new() { Name = "m", Grade = "S235" };

        Assert.Equal(12 * 9.80665, WeightOf(weighed, steel), 1e-9);

        // 10 cm2 of steel at 7850 kg/m3 weigh 7.85 kg/m.
        Assert.Equal(7.85 * 9.80665, WeightOf(weighed with { Weight = null }, steel), 1e-9);
    }

    [Fact]
    public void SpanWithoutSection_IsTold() => Assert.Equal(
        [
            "span[1].section: own weight counts, and that of span 1 is not known: it needs a section",
            "span[2].section: own weight counts, and that of span 2 is not known: it needs a section",
        ],
        Beams.Problems(Beams.TwoSpans with { SelfWeight = new() { Case = "dead" } }));

    [Fact]
    public void SectionWithoutWeightOrArea_IsTold() => Assert.Equal(
        ["section.s.weight: own weight counts, and that of span 1 is not known: it needs the weight of its section"],
        Beams.Problems(Beams.Simple with
        {
            SelfWeight = new() { Case = "dead" },
            Sections = [new() { Name = "s", Inertia = "1 cm4" }],
        }));

    [Fact]
    public void MaterialWithoutDensity_IsTold()
    {
        BeamDocument document = Beams.Simple with
        {
            SelfWeight = new() { Case = "dead" },
            Sections = [new() { Name = "joist", Shape = "2x10" }],
        };

        const string Why = "own weight counts, and that of span 1 is not known: it needs the density of its material";
        Assert.Equal(["span[1].material: " + Why], Beams.Problems(document));
        Assert.Equal(
            ["material.m.density: " + Why],
            Beams.Problems(document with { Materials = [new() { Name = "m", Modulus = "11 GPa" }] }));
    }

    [Fact]
    public void OwnWeightWithoutCase_IsTold() => Assert.Equal(
        ["self_weight.case: own weight needs the case it belongs to, as \"dead\""],
        Beams.Problems(
            Document(new() { Name = "s", Inertia = "1 cm4", Weight = "12 kg/m" }) with { SelfWeight = new() }));

    private static BeamDocument Document(SectionEntry section) =>
        Beams.TwoSpans with { SelfWeight = new() { Case = "dead" }, Sections = [section] };

    private static double WeightOf(SectionEntry section, MaterialEntry material)
    {
        BuiltBeam beam = Beams.Built(Document(section) with { Materials = [material] });
        return ((Load.Distributed)beam.Loads[0].Load).StartIntensity;
    }
}
