using FieldCheck.Mechanics.Model;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Building;

public sealed class LoadRowsTests
{
    private static readonly LoadEntry Point = new() { Kind = "point", At = "2 m", Force = "10 kN" };
    private static readonly LoadEntry Spread = new() { Kind = "distributed", Intensity = "3 kN/m" };
    private static readonly LoadEntry Couple = new() { Kind = "couple", At = "2 m", Moment = "5 kN*m" };

    [Fact]
    public void PointLoad_PushesDown() =>
        Assert.Equal(new Load.Point(2, 10e3), Beams.LoadOf(Point));

    [Theory]
    [InlineData("30 deg", 8660.254037844387, 5000)]
    [InlineData("-30 deg", 8660.254037844387, -5000)]
    [InlineData("90 deg", 0, 10000)]
    [InlineData("180 deg", -10000, 0)]
    public void LeaningPointLoad_PushesTowardTheRightEnd(string angle, double down, double right)
    {
        // Fx = F sin a, Fy = -F cos a: the contract's own signs.
        var load = (Load.Point)Beams.LoadOf(Point with { Angle = angle });

        Assert.Equal(down, load.Down, 1e-9);
        Assert.Equal(right, load.Right, 1e-9);
    }

    [Fact]
    public void LoadLeaningByAHalfTurn_HasNoPartAlong() =>
        Assert.Equal(0.0, ((Load.Point)Beams.LoadOf(Point with { Angle = "180 deg" })).Right);

    [Fact]
    public void DistributedLoad_CoversTheBeamByDefault() =>
        Assert.Equal(new Load.Distributed(0, 6, 3e3, 3e3), Beams.LoadOf(Spread));

    [Fact]
    public void VaryingIntensity_RunsFromLeftToRight() => Assert.Equal(
        new Load.Distributed(1, 5, 3e3, 6e3),
        Beams.LoadOf(Spread with { From = "1 m", To = "end - 1 m", IntensityEnd = "6 kN/m" }));

    [Fact]
    public void AxialIntensity_RunsAlongTheBeam() => Assert.Equal(
        new Load.Distributed(0, 6, 3e3, 3e3, true), Beams.LoadOf(Spread with { Axial = "true" }));

    [Fact]
    public void PressureOnAWidth_IsTheirProduct()
    {
        var load = (Load.Distributed)Beams.LoadOf(
            new() { Kind = "distributed", Pressure = "50 psf", PressureEnd = "25 psf", Width = "4 ft" });

        // 200 and 100 plf at 14.593902937206362 N/m each (1 lbf = 4.4482216152605 N, 1 ft = 0.3048 m, exact).
        Assert.Equal(200 * 14.593902937206362, load.StartIntensity, 1e-8);
        Assert.Equal(100 * 14.593902937206362, load.EndIntensity, 1e-8);
    }

    [Fact]
    public void Total_IsSpreadEvenly() => Assert.Equal(
        new Load.Distributed(1, 5, 3e3, 3e3),
        Beams.LoadOf(new() { Kind = "distributed", From = "1 m", To = "5 m", Total = "12 kN" }));

    [Fact]
    public void Couple_TurnsCounterClockwise() =>
        Assert.Equal(new Load.Couple(2, 5e3), Beams.LoadOf(Couple));

    [Fact]
    public void CoupleAtAHinge_TurnsTheSideWritten()
    {
        BeamDocument document = Beams.TwoSpans with
        {
            Hinges = [new() { At = "2 m" }],
            Loads = [Couple with { Side = "right", At = "A + 200 cm" }],
        };

        Assert.Equal(new Load.Couple(2, 5e3, Side.Right), Beams.Model(document).Cases.Single().Loads.Single());
    }

    [Fact]
    public void CoupleAtAHingeWithoutSide_IsTold() => Assert.Equal(
        ["load[1].side: the couple stands at a hinge: side = \"left\" or \"right\" says which part it turns"],
        Beams.Problems(Beams.TwoSpans with { Hinges = [new() { At = "2 m" }], Loads = [Couple] }));

    [Fact]
    public void CaseAndLabel_AreKept()
    {
        BeamDocument document = Beams.With(Point with { Case = "storage", Label = "Pallet" }, Spread);

        Assert.Equal(["storage", "live"], Beams.Built(document).Loads.Select(load => load.Case));
        Assert.Equal(["Pallet", ""], Beams.Built(document).Loads.Select(load => load.Label));
        Assert.Equal([0, 1], Beams.Built(document).Loads.Select(load => load.Row));
    }

    public static TheoryData<LoadEntry, string[]> WrongLoads => new()
    {
        { new() { At = "1 m" }, ["load[1].kind: a load needs its kind: point, distributed or couple"] },
        {
            new() { Kind = "pointt" },
            ["load[1].kind: expected point, distributed or couple, found 'pointt': did you mean point?"]
        },
        {
            new() { Kind = "point" },
            [
                "load[1].force: a point load needs its force, as \"12 kN\"",
                "load[1].at: needs at = its place, as \"4 ft\"",
            ]
        },
        { new() { Kind = "couple", At = "1 m" }, ["load[1].moment: a couple needs its moment, as \"5 kN*m\""] },
        {
            Point with { Moment = "1 kNm", From = "1 m" },
            [
                "load[1].from: a point load takes no from; it takes kind, label, case, at, force and angle",
                "load[1].moment: a point load takes no moment; it takes kind, label, case, at, force and angle",
            ]
        },
        {
            Couple with { Angle = "5 deg" },
            ["load[1].angle: a couple takes no angle; it takes kind, label, case, at, moment and side"]
        },
        {
            Spread with { At = "1 m" },
            [
                "load[1].at: a distributed load takes no at; it takes kind, label, case, from, to, intensity, "
                    + "intensity_end, pressure, pressure_end, width, total and axial",
            ]
        },
        {
            new() { Kind = "distributed" },
            ["load[1].intensity: a distributed load needs its intensity, a pressure and width, or a total"]
        },
        {
            Spread with { Total = "3 kN" },
            ["load[1].total: a distributed load is given one way: intensity and total both stand"]
        },
        {
            Spread with { Pressure = "1 kPa", Width = "2 m" },
            ["load[1].intensity: a distributed load is given one way: pressure and width and intensity both stand"]
        },
        {
            new() { Kind = "distributed", Pressure = "1 kPa" },
            ["load[1].width: a pressure needs the width it acts on, as \"4 ft\""]
        },
        {
            new() { Kind = "distributed", Width = "2 m" },
            ["load[1].pressure: a width needs the pressure that acts on it, as \"50 psf\""]
        },
        {
            new() { Kind = "distributed", Pressure = "1 kPa", Width = "0 m" },
            ["load[1].width: '0 m' is not greater than zero"]
        },
        {
            new() { Kind = "distributed", Total = "1 kN", IntensityEnd = "1 kN/m" },
            ["load[1].intensity_end: intensity_end goes with intensity"]
        },
        { Spread with { PressureEnd = "1 kPa" }, ["load[1].pressure_end: pressure_end goes with pressure and width"] },
        {
            new() { Kind = "distributed", Pressure = "1 kPa", Width = "2 m", Axial = "true" },
            ["load[1].axial: a pressure acts across the beam: give an axial load by intensity or total"]
        },
        { Spread with { Axial = "yes" }, ["load[1].axial: expected true or false"] },
        {
            Spread with { From = "5 m", To = "2 m" },
            ["load[1].from: the load's left end is not left of its right end"]
        },
        { Spread with { From = "end" }, ["load[1].from: the load's left end is not left of its right end"] },
        { Spread with { To = "0 ft" }, ["load[1].to: the load's left end is not left of its right end"] },
        { Point with { Case = " " }, ["load[1].case: a name cannot be empty"] },
    };

    [Theory]
    [MemberData(nameof(WrongLoads))]
    public void WrongLoad_IsToldAllAtOnce(LoadEntry load, string[] problems) =>
        Assert.Equal(problems, Beams.Problems(Beams.With(load)));
}
