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
    [InlineData("AISC 360-16 ASD", "sideways buckling of the web")]
    [InlineData("EN 1993-1-1", "the web over supports and under point loads")]
    [InlineData("elastic allowable", "local buckling of thin plates")]
    [InlineData("NDS", "tension across the grain")]
    public void Rules_SayWhatTheyLeaveOutHere(string rules, string left) => Assert.Contains(
        left, Of(Beams.Simple with { Limits = new() { Rules = rules } }, false, CheckKind.Bending));

    /// <summary>Lateral stability by rules on steel takes supports for granted that keep the section upright, and knows no free tips.</summary>
    [Theory]
    [InlineData("AISC 360-16 LRFD", false, "supports that let the section twist")]
    [InlineData("EN 1993-1-1", true, "supports that let the section twist", "the free tip of an overhang, which may twist")]
    [InlineData("NDS", true)]
    public void SteelThatMayBuckleSideways_IsTakenAsHeldFromTwisting(string rules, bool hasOverhang, params string[] told)
    {
        BeamDocument document = Beams.Simple with
        {
            Spans = hasOverhang ? [.. Beams.Simple.Spans, new() { Length = "2 m" }] : Beams.Simple.Spans,
            Limits = new() { Rules = rules },
        };

        Assert.Equal(
            told, Of(document, false, CheckKind.Bending, CheckKind.LateralStability).Where(one => one.Contains("twist", StringComparison.Ordinal)));
        Assert.DoesNotContain(Of(document, false, CheckKind.Bending), one => one.Contains("twist", StringComparison.Ordinal));
    }

    [Fact]
    public void BendingWithAForceAlong_IsBending() => Assert.DoesNotContain(
        "strength in bending", Of(Beams.Simple, true, CheckKind.BendingAndAxial));

    // 6 m on A and B, and an overhang of 2 m beyond B.
    [Fact]
    public void WhatOnlySomeSupportsOrBaysAreCheckedFor_IsNamedByThem()
    {
        BeamDocument overhang = Beams.Simple with
        {
            Spans = [.. Beams.Simple.Spans, new() { Length = "2 m" }],
            Supports = [Beams.Pin, Beams.Roller with { Pad = "200 mm x 200 mm" }],
        };

        ImmutableArray<string> atA = Of(overhang, ["A", "B"], Check(CheckKind.Bearing, 0), Check(CheckKind.Deflection));
        ImmutableArray<string> atNone = Of(overhang, ["A", "B"], Check(CheckKind.OverhangDeflection));
        ImmutableArray<string> pulled = Of(overhang, ["A", null], Check(CheckKind.Bearing, 0), Check(CheckKind.AbsoluteDeflection));

        Assert.Equal(
            ["bearing at B", "the ground under the pad of B", "deflection of the overhang"],
            atA.Where(one => one.Contains("bearing") || one.Contains("ground") || one.Contains("deflection")));
        Assert.Contains("bearing at the supports", atNone);
        Assert.Contains("deflection between the supports", atNone);
        Assert.DoesNotContain(pulled, one => one.Contains("bearing") || one.Contains("pad") || one.Contains("deflection"));
    }

    [Fact]
    public void SeveralSupports_AreNamedTogether()
    {
        BeamDocument document = Beams.TwoSpans with
        {
            Supports = [.. Beams.TwoSpans.Supports.Select(one => one with { Pad = "200 mm x 200 mm" })],
        };

        ImmutableArray<string> left = Of(
            document, ["A", "B", "C"], Check(CheckKind.Bearing, 0), Check(CheckKind.PadPressure, 1));

        Assert.Contains("bearing at B and C", left);
        Assert.Contains("the ground under the pads of A and C", left);
    }

    private static ImmutableArray<string> Of(BeamDocument document, bool isCompressed, params CheckKind[] kinds) =>
        NotCheckedWords.Of(
            StrengthRows.Of(Beams.Built(document), document),
            [.. kinds.SelectMany(kind => new[] { Check(kind, 0), Check(kind, 1) })],
            ["A", "B"],
            isCompressed);

    private static ImmutableArray<string> Of(BeamDocument document, ImmutableArray<string?> pushing, params SectionCheck[] checks) =>
        NotCheckedWords.Of(StrengthRows.Of(Beams.Built(document), document), [.. checks], pushing, isCompressed: false);

    private static SectionCheck Check(CheckKind kind, int? support = null) => new()
    {
        Kind = kind,
        Basis = CombinationBasis.Service,
        Clause = CheckClause.Given,
        Unit = CheckUnit.Number,
        Support = support,
    };
}
