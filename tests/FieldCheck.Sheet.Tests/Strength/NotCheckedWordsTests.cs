using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Strength;
using FieldCheck.Sheet.Tests.Building;

namespace FieldCheck.Sheet.Tests.Strength;

/// <summary>What was left out is always said: the same whatever is asked, and more where less is checked.</summary>
public sealed class NotCheckedWordsTests
{
    private static readonly string[] Always =
    [
        "columns and props", "connections", "bracing", "overall stability", "foundations", "vibration", "fire", "fatigue",
        "ponding", "torsion", "notches and holes",
    ];

    [Fact]
    public void DeflectionAlone_LeavesAllStrengthOut() => Assert.Equal<string>(
        [
            "strength in bending", "strength in shear", "sideways buckling between lateral supports",
            "bearing at the supports", .. Always,
        ],
        Of(Beams.Simple, false, CheckKind.Deflection));

    [Fact]
    public void EverythingChecked_LeavesOutWhatNoRuleHereSpeaksOf() => Assert.Equal<string>(
        Always,
        Of(
            Beams.Simple with { Spans = [Beams.Simple.Spans[0] with { Unbraced = "braced" }] }, false,
            CheckKind.Bending, CheckKind.Shear, CheckKind.Bearing, CheckKind.Deflection));

    [Fact]
    public void PressedBeam_MayBuckle() =>
        Assert.Contains("buckling by the force along the beam", Of(Beams.Simple, true, CheckKind.Bending));

    [Theory]
    [InlineData("AISC 360-16 ASD", "crippling and sideways buckling of the web")]
    [InlineData("EN 1993-1-1", "the web over supports and under point loads")]
    [InlineData("elastic allowable", "local buckling of thin plates")]
    [InlineData("NDS", "tension across the grain")]
    public void Rules_SayWhatTheyLeaveOutHere(string rules, string left) => Assert.Contains(
        left, Of(Beams.Simple with { Limits = new() { Rules = rules } }, false, CheckKind.Bending));

    private static ImmutableArray<string> Of(BeamDocument document, bool isCompressed, params CheckKind[] kinds) =>
        NotCheckedWords.Of(
            StrengthRows.Of(Beams.Built(document), document),
            [
                .. kinds.Select(kind => new SectionCheck
                {
                    Kind = kind, Basis = CombinationBasis.Service, Clause = CheckClause.Given, Unit = CheckUnit.Number,
                }),
            ],
            isCompressed);
}
