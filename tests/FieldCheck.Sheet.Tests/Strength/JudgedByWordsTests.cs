using FieldCheck.Mechanics.Solving;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;

namespace FieldCheck.Sheet.Tests.Strength;

/// <summary>What answers are judged by; which checks a beam has is told by its sheet.</summary>
public sealed class JudgedByWordsTests
{
    private static readonly BeamDocument Beam = new()
    {
        Spans = [new() { Length = "6 m" }],
        Supports = [new() { Kind = "pin", Joint = "0" }, new() { Kind = "roller", Joint = "1" }],
        Loads = [new() { Kind = "distributed", Intensity = "8 kN/m" }],
        Sections = [new() { Name = "s", Shape = "IPE 200" }],
        Materials = [new() { Name = "m", Grade = "S235" }],
        Limits = new() { Deflection = "L/200" },
    };

    [Fact]
    public void NoStrengthAskedFor_IsSaid()
    {
        BeamChecks checks = Checks(Beam);

        Assert.Equal("Judged by: deflection only; strength was not judged: no strengths or rules are given.", JudgedByWords.Of(checks));
        Assert.Equal(JudgedByWords.Of(checks), JudgedByWords.Caveat(checks));
        Assert.StartsWith("Not checked: strength in bending, strength in shear, ", JudgedByWords.NotChecked(checks), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatIsNotJudged_IsNamed()
    {
        // Factored rules without a factored combination.
        BeamChecks checks = Checks(Beam with { Limits = new() { Deflection = "L/200", Rules = "EN 1993-1-1" } });

        Assert.Equal("Judged by: deflection only; strength was not judged. NOT JUDGED: bending, shear.", JudgedByWords.Of(checks));
    }

    /// <summary>The size factor of No.2 is for pieces up to 4 in thick (NDS Supplement Table 4A): a 6x12 is not judged in bending, the other span is.</summary>
    [Fact]
    public void SpanThatIsNotJudged_IsNamed_AndSoIsTheOneThatAModulusIsOf()
    {
        BeamDocument mixed = Beam with
        {
            Display = "us",
            Spans =
            [
                new() { Length = "10 ft", Unbraced = "braced", Section = "a" }, new() { Length = "10 ft", Unbraced = "braced", Section = "b" },
            ],
            Supports =
            [
                new() { Kind = "pin", Joint = "0", Bearing = "3 in" },
                new() { Kind = "roller", Joint = "1", Bearing = "3 in" },
                new() { Kind = "roller", Joint = "2", Bearing = "3 in" },
            ],
            Loads = [new() { Kind = "distributed", Intensity = "100 plf" }],
            Sections = [new() { Name = "a", Shape = "6x12" }, new() { Name = "b", Shape = "2x12" }],
            Materials = [new() { Name = "m", Grade = "DF-L No.2", Factors = [new("duration", "1.0")] }],
            Limits = new() { Rules = "NDS" },
        };
        Calculation calculation = Run(mixed);

        Assert.Equal(
            "Judged by: bending of span 2, shear of span 2, bearing of span 2 at B, bearing at C. "
                + "NOT JUDGED: bending of span 1, shear of span 1, bearing at A, bearing of span 1 at B.",
            JudgedByWords.Of(calculation.Checks));
        Assert.Contains(
            "in3 for bending of span 2.",
            new WhatIfWords(calculation.Beam!, mixed).Needed(calculation.WhatIf!.Needed),
            StringComparison.Ordinal);
    }

    [Fact]
    public void EverythingJudged_NeedsNoCaveat()
    {
        BeamChecks checks = Checks(Beam with { Materials = [new() { Name = "m", Grade = "S235", AllowableBending = "140 MPa", AllowableShear = "80 MPa" }] });

        Assert.Equal("Judged by: bending, shear, deflection.", JudgedByWords.Of(checks));
        Assert.Equal("", JudgedByWords.Caveat(checks));
    }

    [Fact]
    public void PliesThatAreNotTried_AreSaid()
    {
        BeamDocument header = Beam with
        {
            Sections = [new() { Name = "header", Width = "38 mm", Depth = "235 mm", Plies = "3" }],
            Materials = [new() { Name = "m", Modulus = "11 GPa", AllowableBending = "10 MPa" }],
        };
        WouldDo found = Run(header).WhatIf!.SectionsThatDo(["sawn timber, metric"]);

        Assert.Contains(", as single pieces, not 3 side by side, ", WouldDoWords.Count(found), StringComparison.Ordinal);
        Assert.Null(Run(Beam).WhatIf!.SectionsThatDo(["IPE"]).Plies);
    }

    private static BeamChecks Checks(BeamDocument document) => Run(document).Checks;

    private static Calculation Run(BeamDocument document) => Calculation.Run(document, SectionCatalogue.BuiltIn(), new BeamSolver());
}
