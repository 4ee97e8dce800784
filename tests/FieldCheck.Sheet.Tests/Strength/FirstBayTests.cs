using System.Globalization;
using FieldCheck.Mechanics.Solving;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Tests.Strength;

/// <summary>
/// How long a bay may become that is held sideways at places. By hand for a W14x30 of 50 ksi under 1 kip/ft, from AISC 360-16
/// F2-1 to F2-6, Cb 1, Ω 1.67 and the properties of the AISC shapes database: w L²/8 = Mn(Lb)/Ω at 19.51 ft where Lb is L,
/// at 27.71 ft where it is 10 ft, at 30.73 ft where it is 4 ft.
/// </summary>
public sealed class FirstBayTests
{
    private const double Foot = 0.3048;

    [Theory]
    [InlineData("10 ft", 19.51)]
    [InlineData("9.999 ft", 19.51)]
    [InlineData("4 ft", 30.73)]
    [InlineData("20 ft", 19.11)]
    public void DistanceBetweenLateralSupports_IsThatOfTheBayThatHolds(string unbraced, double most)
    {
        BayHeadroom found = Ask(Beam("10 ft", unbraced));

        Assert.Equal(most, found.Length!.Most!.Value / Foot, 0.02);
    }

    [Fact]
    public void BayThatShrinks_IsHeldAtItsEnds()
    {
        // Of 40 ft with supports 30 ft apart only those at the ends are left of one of 19.51 ft.
        BayHeadroom found = Ask(Beam("40 ft", "30 ft"));

        Assert.Equal(19.51, found.Length!.Most!.Value / Foot, 0.02);
    }

    [Theory]
    [InlineData("10 ft")]
    [InlineData("4 ft")]
    public void LengthFound_TypedInWithItsLateralSupports_IsUsedUpJustSo(string unbraced)
    {
        BayHeadroom found = Ask(Beam("10 ft", unbraced));
        string length = found.Length!.Most!.Value.ToString("R", CultureInfo.InvariantCulture) + " m";

        Calculation typed = Run(Beam(length, unbraced == "10 ft" ? length : unbraced));

        Assert.Equal(1, typed.Checks.Governing!.Figures.Utilisation!.Value, 1e-8);
    }

    [Theory]
    [InlineData("10 ft", "held sideways at its ends only")]
    [InlineData("4 ft", "with 4.00 ft between lateral supports, as typed")]
    [InlineData("braced", "under these loads; then")]
    public void Sentence_SaysHowTheBayIsHeld(string unbraced, string words)
    {
        BeamDocument beam = Beam("10 ft", unbraced);
        Calculation calculation = Run(beam);

        Assert.Contains(
            words, new WhatIfWords(calculation.Beam!, beam).FirstBay(calculation.WhatIf!.LongestFirstBay), StringComparison.Ordinal);
    }

    /// <summary>NDS 3.3.3.7: RB = √(le d)/b may be 50 at most; 38 x 286 mm has le = 2500 b²/d = 12.62 m there.</summary>
    [Fact]
    public void LengthWhereACheckIsNoLongerJudged_IsTheEnd()
    {
        BeamDocument joist = new()
        {
            Spans = [new() { Length = "4 m", Unbraced = "4 m" }],
            Supports = [new() { Kind = "pin", Joint = "0" }, new() { Kind = "roller", Joint = "1" }],
            Loads = [new() { Kind = "distributed", Intensity = "10 N/m" }],
            Sections = [new() { Name = "joist", Width = "38 mm", Depth = "286 mm" }],
            Materials = [new() { Name = "fir", Grade = "DF-L No.2", Factors = [new("duration", "1.0")] }],
            Limits = new() { Rules = "NDS" },
        };

        BayHeadroom found = Ask(joist);

        // 1.84 lu = 2500 b²/d.
        Assert.Equal(HeadroomEnd.NotJudged, found.Length!.End);
        Assert.Equal(2500 * 0.038 * 0.038 / 0.286 / 1.84, found.Length.Most!.Value, 1e-3);
        Calculation calculation = Run(joist);
        Assert.EndsWith(
            "lateral stability can no longer be judged.", new WhatIfWords(calculation.Beam!, joist).FirstBay(found), StringComparison.Ordinal);
    }

    /// <summary>
    /// 400 lb at the tip of an overhang of 4 ft: P·a²·(L + a)/3EI of I = 3.5·7.25³/12 in⁴ and 1600 ksi is a/180 where L is 8.86 ft; of a
    /// bay as short as the shortest tried, 0.24 ft, shear P·a/L is over instead: 1.5·V/A = 180 psi where L is 0.525 ft.
    /// </summary>
    [Fact]
    public void BayThatBothLongerAndShorterIsOver_IsFoundBetween()
    {
        BeamDocument over = Overhang("12 ft", "4 ft", "0.4 kip", null) with
        {
            Display = "us",
            Sections = [new() { Name = "s", Shape = "4x8" }],
            Materials = [new() { Name = "m", Grade = "DF-L No.2", Factors = [new("duration", "1.0")] }],
            Limits = new() { Rules = "NDS", DeflectionOverhang = "L/180" },
        };
        double inertia = 3.5 * 7.25 * 7.25 * 7.25 / 12;
        double most = (48.0 / 180 * 3 * 1.6e6 * inertia / (400 * 48 * 48) - 48) / 12;
        double least = 1.5 * 400 * 48 / (180 * 3.5 * 7.25) / 12;

        Calculation calculation = Run(over);
        Headroom found = calculation.WhatIf!.LongestFirstBay.Length!;

        Assert.Equal(most, found.Most!.Value / Foot, 1e-3);
        Assert.Equal(least, found.Least!.Value / Foot, 1e-3);
        Assert.StartsWith(
            "The first bay may be 8.8", new WhatIfWords(calculation.Beam!, over).FirstBay(calculation.WhatIf.LongestFirstBay), StringComparison.Ordinal);
        Assert.Contains(
            " ft and no shorter than 0.52", new WhatIfWords(calculation.Beam!, over).FirstBay(calculation.WhatIf.LongestFirstBay), StringComparison.Ordinal);
    }

    /// <summary>
    /// 1 kN/m all along and 1.5 kN at the tip of 2 m pull A of a bay shorter than L² = a² + 2Pa/w = 10 m²; longer ones bend by
    /// R²/2w with R = (L² − 10)/2L kN, as far as 5.333 kN·m.
    /// </summary>
    [Fact]
    public void BayOfWhichASupportIsPulled_IsFoundLonger()
    {
        BeamDocument pulled = Overhang("3 m", "2 m", "1.5 kN", "1 kN/m");
        double reaction = Math.Sqrt(2 * 10 * 0.08 * 0.04 / 6 * 1e3);

        Headroom found = Ask(pulled).Length!;

        Assert.Equal(reaction + Math.Sqrt(reaction * reaction + 10), found.Most!.Value, 1e-6);
        Assert.Equal(Math.Sqrt(10), found.Least!.Value, 1e-6);
    }

    private static BeamDocument Overhang(string bay, string overhang, string force, string? spread) => new()
    {
        Spans = [new() { Length = bay, Unbraced = "braced" }, new() { Length = overhang, Unbraced = "braced" }],
        Supports =
        [
            new() { Kind = "pin", Joint = "0", Acts = spread is null ? "both" : null, Bearing = "3.5 in" },
            new() { Kind = "roller", Joint = "1", Bearing = "3.5 in" },
        ],
        Loads =
        [
            .. spread is null ? [] : new LoadEntry[] { new() { Kind = "distributed", Intensity = spread, Case = "dead" } },
            new() { Kind = "point", At = "end", Force = force },
        ],
        Sections = [new() { Name = "s", Width = "80 mm", Depth = "200 mm" }],
        Materials = [new() { Name = "m", Modulus = "11 GPa", AllowableBending = "10 MPa" }],
    };

    private static BeamDocument Beam(string length, string unbraced) => new()
    {
        Display = "us",
        Spans = [new() { Length = length, Unbraced = unbraced }],
        Supports = [new() { Kind = "pin", Joint = "0", Bearing = "6 in" }, new() { Kind = "roller", Joint = "1", Bearing = "6 in" }],
        Loads = [new() { Kind = "distributed", Intensity = "1 klf" }],
        Sections = [new() { Name = "s", Shape = "W14x30" }],
        Materials = [new() { Name = "m", Grade = "A992" }],
        Limits = new() { Rules = "AISC 360-16 ASD" },
    };

    private static BayHeadroom Ask(BeamDocument document) => Run(document).WhatIf!.LongestFirstBay;

    private static Calculation Run(BeamDocument document) => Calculation.Run(document, SectionCatalogue.BuiltIn(), new BeamSolver());
}
