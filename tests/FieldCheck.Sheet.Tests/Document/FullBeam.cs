using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Tests.Document;

/// <summary>A beam with something in every cell that there is, and something else in each.</summary>
/// <remarks>It is no sound beam: some of its keys exclude each other.</remarks>
internal static class FullBeam
{
    internal static BeamDocument Document { get; } = new()
    {
        Title = "Loading bay bearer",
        Notes = "First line.\nSecond line, with a \"quote\" and a \\.",
        Display = "us",
        ShearDeformation = "true",
        Ask = ["span[1].length", "load[1].force"],
        Renames = [new("live", "snow")],
        Record = new()
        {
            Job = "J-17",
            Location = "North yard",
            PreparedBy = "R. Mason",
            PreparedFor = "Yard office",
            CheckedBy = "L. Stone",
            Date = "2031-03-04",
            Category = "2",
        },
        Spans =
        [
            new() { Length = "12'-6 1/2\"", To = "4 m", Section = "bearer", Material = "timber", Unbraced = "braced" },
        ],
        Supports =
        [
            new()
            {
                Kind = "spring",
                Joint = "0",
                At = "1 m",
                Label = "A",
                Acts = "up",
                Surface = "5 deg",
                Stiffness = "2 kN/mm",
                RotationalStiffness = "30 kNm/rad",
                Settlement = "3 mm",
                Rotation = "1 mrad",
                Bearing = "3 1/2 in",
                BearingAllowable = "565 psi",
                Pad = "24 in x 24 in",
                AllowablePressure = "1500 psf",
            },
        ],
        Hinges = [new() { Joint = "1", At = "2 m" }],
        Loads =
        [
            new()
            {
                Kind = "point",
                Label = "Pallet, east",
                Case = "live",
                At = "A + 4 ft",
                Force = "1850 lbf ± 5 %",
                Angle = "10 deg",
                From = "1 ft",
                To = "end - 6 in",
                Intensity = "2 kN/m",
                IntensityEnd = "3 kN/m",
                Pressure = "12 psf",
                PressureEnd = "14 psf",
                Width = "5 ft",
                Total = "9 kN",
                Axial = "true",
                Moment = "3 kN·m",
                Side = "left",
            },
        ],
        SelfWeight = new() { Case = "dead" },
        Sections =
        [
            new()
            {
                Name = "bearer",
                Shape = "W10x30",
                Width = "1 1/2 in",
                Depth = "9 1/4 in",
                Plies = "2",
                Diameter = "4 in",
                Wall = "1/4 in",
                FlangeWidth = "100 mm",
                FlangeThickness = "9 mm",
                WebThickness = "6 mm",
                Inertia = "170 in4",
                Area = "8.84 in2",
                SectionModulus = "32.4 in3",
                ShearArea = "3.1 in2",
                Weight = "30 plf",
                Flat = "false",
            },
        ],
        Materials =
        [
            new()
            {
                Name = "timber",
                Grade = "C24",
                Modulus = "11 GPa",
                ShearModulus = "690 MPa",
                Density = "420 kg/m3",
                AllowableBending = "9 MPa",
                AllowableShear = "1.1 MPa",
                AllowableBearing = "2.4 MPa",
                DesignBending = "14.8 MPa",
                DesignShear = "2.5 MPa",
                DesignBearing = "1.7 MPa",
                Yield = "36 ksi",
                Creep = "0.6",
                Factors = [new("duration", "1.25"), new("wet service", "0.85")],
            },
        ],
        Combinations =
        [
            new() { Name = "service", Basis = "factored", Factors = [new("dead", "1.2"), new("live", "1.6")] },
        ],
        Patterns = [new() { Case = "snow" }],
        Rolling =
        [
            new()
            {
                Label = "Hand truck",
                Case = "construction",
                Impact = "30 %",
                Axles = [new() { Offset = "0 m", Force = "4 kN" }, new() { Offset = "1.8 m", Force = "6 kN" }],
            },
        ],
        Stated =
        [
            new()
            {
                Support = "B",
                Vertical = "2.0 kip",
                Horizontal = "0.1 kip",
                Moment = "1 kip-ft",
                Combination = "service",
                Case = "wind",
                Extreme = "max",
                Basis = "unknown",
                Tolerance = "2 %",
                Source = "Hire firm's sheet, rev B",
            },
        ],
        Tolerance = new() { Position = "1 in", Load = "10 %" },
        Limits = new()
        {
            Deflection = "L/360",
            DeflectionOverhang = "L/180",
            DeflectionAbsolute = "20 mm",
            Rules = "NDS",
            DeflectionFinal = "L/250",
            DeflectionFinalOverhang = "L/125",
            DeflectionCases = [new("live", "L/480")],
            Lasting = [new("dead", "1"), new("live", "0.3")],
        },
    };
}
