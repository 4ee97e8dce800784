using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Building;

/// <summary>What is uncertain in a beam as typed, and what comes of it; statics by hand.</summary>
public sealed class UncertainInputsTests
{
    private static readonly LoadIndex First = new(0, 0);

    [Fact]
    public void NothingTyped_NothingIsUncertain() => Assert.Empty(Beams.Built(Beams.Simple).Uncertain);

    [Theory]
    [InlineData("2 m ± 25 mm", 0.025, "25 mm")]
    [InlineData("A + 2 m +- 1 in", 0.0254, "1 in")]
    [InlineData("end - 4 m ± 2 %", 0.08, "2 %")]
    public void PlaceOfALoad_IsAPosition(string at, double half, string width) => Assert.Equal(
        [new UncertainInput("load[1].at", "at load 1", width, new InputSpread.LoadPosition(First, half))],
        Rounded(Of(new LoadEntry { Kind = "point", At = at, Force = "12 kN" })));

    [Theory]
    [InlineData("12 kN ± 10 %", 0.1)]
    [InlineData("12 kN ± 600 N", 0.05)]
    [InlineData("-12 kN ± 600 N", 0.05)]
    public void SizeOfALoad_IsAShare(string force, double share) => Assert.Equal(
        [("load[1].force", new InputSpread.LoadSize(First, share))],
        Spreads(new LoadEntry { Kind = "point", At = "2 m", Force = force }));

    [Fact]
    public void SpreadLoad_HasTwoPlacesAndASize_AndATotalIsKept() => Assert.Equal(
        [
            ("load[1].from", new InputSpread.LoadFrom(First, 0.01, KeepsTotal: true)),
            ("load[1].to", new InputSpread.LoadTo(First, 0.02, KeepsTotal: true)),
            ("load[1].total", new InputSpread.LoadSize(First, 0.25)),
        ],
        Spreads(new LoadEntry { Kind = "distributed", From = "1 m ± 1 cm", To = "4 m ± 2 cm", Total = "4 kN ± 1 kN" }));

    [Fact]
    public void PressureOnAWidth_MultipliesTwoShares() => Assert.Equal(
        [
            ("load[1].pressure", new InputSpread.LoadSize(First, 0.1)),
            ("load[1].width", new InputSpread.LoadSize(First, 0.05)),
        ],
        Spreads(new LoadEntry { Kind = "distributed", Pressure = "2 kPa ± 10 %", Width = "2 m ± 10 cm" }));

    [Fact]
    public void VaryingLoad_EachEndByItself_OrBothByTheDefault()
    {
        LoadEntry own = new() { Kind = "distributed", Intensity = "1 kN/m ± 100 N/m", IntensityEnd = "3 kN/m" };
        LoadEntry plain = new() { Kind = "distributed", Intensity = "1 kN/m", IntensityEnd = "3 kN/m" };

        Assert.Equal([("load[1].intensity", new InputSpread.StartIntensity(First, 100))], Spreads(own));
        Assert.Equal(
            [("load[1].intensity", new InputSpread.LoadSize(First, 0.1))],
            Spreads(plain, new ToleranceEntry { Load = "10 %" }));
        Assert.Equal(
            [
                ("load[1].intensity", new InputSpread.StartIntensity(First, 100)),
                ("load[1].intensity_end", new InputSpread.EndIntensity(First, 300)),
            ],
            Spreads(own, new ToleranceEntry { Load = "10 %" }));
    }

    [Fact]
    public void Defaults_ReachEveryMeasuredPlaceAndLength_AndNoOwnWeight()
    {
        BeamDocument document = Beams.TwoSpans with
        {
            Sections = [new() { Name = "stick", Inertia = "1000 cm4", Weight = "100 N/m" }],
            SelfWeight = new() { Case = "dead" },
            Supports = [Beams.Pin, new() { Kind = "roller", At = "4 m" }, new() { Kind = "roller", At = "end" }],
            Loads =
            [
                new() { Kind = "point", At = "mid 1", Force = "1 kN" },
                new() { Kind = "point", At = "B + 1 m", Force = "1 kN ± 1 %" },
            ],
            Tolerance = new() { Position = "1 in", Load = "10 %" },
        };

        Assert.Equal(
            ["span[1].length", "span[2].length", "support[2].at", "load[1].force", "load[2].force", "load[2].at"],
            Beams.Built(document).Uncertain.Select(input => input.Key));
    }

    [Fact]
    public void ForceAsDefault_SaysNothingOfAnIntensity()
    {
        BeamDocument document = Beams.Simple with
        {
            Loads = [.. Beams.Simple.Loads, new() { Kind = "distributed", Intensity = "1 kN/m" }],
            Tolerance = new() { Load = "300 N" },
        };

        UncertainInput only = Assert.Single(Beams.Built(document).Uncertain);

        Assert.Equal(new InputSpread.LoadSize(First, 0.025), only.Spread);
    }

    [Fact]
    public void WhatChangesTheBeam_IsNamed()
    {
        BeamDocument document = Beams.Simple with
        {
            Sections = [new() { Name = "stick", Width = "100 mm ± 1 mm", Depth = "200 mm" }],
            Materials = [new() { Name = "wood", Modulus = "10 GPa ± 20 %" }],
            Spans = [new() { To = "6 m ± 10 mm" }],
            Supports = [Beams.Pin, new() { Kind = "spring", At = "5 m ± 5 mm", Stiffness = "1000 kN/m ± 30 %", Settlement = "3 mm ± 1 mm" }],
        };

        Assert.Equal(
            [
                "at the far end of span 1", "at B", "of the stiffness of B", "in the settlement of B",
                "in the width of stick", "in the modulus of wood",
            ],
            Beams.Built(document).Uncertain.Select(input => input.Words));
    }

    /// <summary>The load hangs on B, and B on the tape: R_A = P(L - b)/L with L and b both longer.</summary>
    [Fact]
    public void AlteredBeam_MovesWhatIsTied()
    {
        BeamDocument document = Beams.Simple with
        {
            Spans = [new() { Length = "6 m ± 0.1 m" }],
            Loads = [new() { Kind = "point", At = "B - 2 m ± 0.05 m", Force = "12 kN" }],
        };
        BuiltBeam beam = Beams.Built(document);
        ToleranceBands bands = ToleranceBands.Find(
            AlteredBeam.Problem(document, SectionCatalogue.BuiltIn(), beam), new BeamSolver())!;

        Band left = bands.Reaction(0, 0).Vertical;

        Assert.Equal(12_000 * 2.05 / 5.9, left.High, 1e-6);
        Assert.Equal(12_000 * 1.95 / 6.1, left.Low, 1e-6);
        Assert.Equal(BandCertainty.Estimate, left.Certainty);
    }

    /// <summary>Two running readings: the first joint moves to and fro while the end stays.</summary>
    [Fact]
    public void TapeReading_MovesItsJointAlone()
    {
        BeamDocument document = Beams.TwoSpans with
        {
            Spans = [new() { To = "4 m ± 0.1 m" }, new() { To = "9 m" }],
            Supports = [Beams.Pin, Beams.Roller],
            Loads = [new() { Kind = "point", At = "end", Force = "1 kN" }],
        };
        BuiltBeam beam = Beams.Built(document);
        ToleranceBands bands = ToleranceBands.Find(
            AlteredBeam.Problem(document, SectionCatalogue.BuiltIn(), beam), new BeamSolver())!;

        Assert.Equal(9_000 / 3.9, bands.Reaction(0, 1).Vertical.High, 1e-6);
    }

    [Fact]
    public void SupportThatWouldLeaveTheBeam_StaysAtItsEnd()
    {
        BeamDocument document = Beams.Simple with
        {
            Supports = [new() { Kind = "pin", At = "0 m ± 0.1 m" }, Beams.Roller],
        };
        BuiltBeam beam = Beams.Built(document);
        ToleranceBands bands = ToleranceBands.Find(
            AlteredBeam.Problem(document, SectionCatalogue.BuiltIn(), beam), new BeamSolver())!;

        Assert.Equal(12_000 * 4 / 6.0, bands.Reaction(0, 0).Vertical.Low, 1e-6);
        Assert.Equal(12_000 * 4 / 5.9, bands.Reaction(0, 0).Vertical.High, 1e-6);
    }

    private static ImmutableArray<UncertainInput> Of(LoadEntry load) => Beams.Built(Beams.With(load)).Uncertain;

    private static IEnumerable<UncertainInput> Rounded(IEnumerable<UncertainInput> inputs) => inputs.Select(input =>
        input with { Spread = new InputSpread.LoadPosition(First, Math.Round(input.Spread.HalfWidth, 12)) });

    private static IEnumerable<(string, InputSpread)> Spreads(LoadEntry load, ToleranceEntry? tolerance = null) =>
        Beams.Built(Beams.With(load) with { Tolerance = tolerance }).Uncertain.Select(input => (input.Key, input.Spread));
}
