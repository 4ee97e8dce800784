using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Response;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Influence;

namespace FieldCheck.Sheet.Tests.Influence;

/// <summary>Influence lines of beams as typed; how the lines themselves are found is proved where they are found.</summary>
public sealed class InfluenceLineTests
{
    private static readonly BeamDocument TwoBays = new()
    {
        Spans = [new SpanEntry { Length = "4 m" }, new SpanEntry { Length = "4 m" }],
        Supports =
        [
            new SupportEntry { Kind = "pin", Joint = "0" },
            new SupportEntry { Kind = "roller", Joint = "1", Settlement = "5 mm", Acts = "up" },
            new SupportEntry { Kind = "roller", Joint = "2" },
        ],
        Sections = [new SectionEntry { Name = "beam", Shape = "IPE200" }],
        Materials = [new MaterialEntry { Name = "steel", Modulus = "210 GPa" }],
    };

    /// <summary>A force in the middle of one of two equal bays: 13/32, 22/32 and -3/32 of it (usual tables of continuous beams).</summary>
    [Theory]
    [InlineData(0, 13.0 / 32)]
    [InlineData(1, 22.0 / 32)]
    [InlineData(2, -3.0 / 32)]
    public void ReactionToAForceInTheMiddleOfABay_IsThatOfTheTables(int support, double expected)
    {
        InfluenceLine line = LineOf(TwoBays, new InfluenceOf.Reaction(support));

        Assert.Equal(expected, line.At(2).Left, 12);
        Assert.Equal(support == 1 ? 1 : 0, line.At(4).Left, 12);
    }

    /// <summary>On a simple span a moment's line is a triangle of height a b / L, a shear's jumps by one (statics).</summary>
    [Fact]
    public void SectionOfASimpleSpan_HasItsTriangleAndItsJump()
    {
        BeamDocument simple = TwoBays with { Supports = [TwoBays.Supports[0], TwoBays.Supports[2]] };

        Extreme peak = LineOf(simple, new InfluenceOf.Section(Curve.Moment, 3)).Peaks.MaxBy(one => one.Value);
        Assert.Equal((3 * 5 / 8.0, 3.0), (Math.Round(peak.Value, 12), peak.Position));
        (double left, double right) = LineOf(simple, new InfluenceOf.Section(Curve.Shear, 3)).At(3);
        Assert.Equal((-3 / 8.0, 5 / 8.0), (Math.Round(left, 12), Math.Round(right, 12)));
    }

    [Fact]
    public void SectionAtTheRightEnd_IsTakenJustLeftOfIt() =>
        Assert.Equal(-0.5, LineOf(TwoBays with { Supports = [TwoBays.Supports[0], TwoBays.Supports[2]] }, new InfluenceOf.Section(Curve.Shear, 8)).At(4).Left, 12);

    [Fact]
    public void BeamThatCanMove_HasNone() => Assert.Null(InfluenceLines.Of(
        Built(TwoBays with { Supports = [TwoBays.Supports[0]] }), new InfluenceOf.Reaction(0)));

    private static InfluenceLine LineOf(BeamDocument document, InfluenceOf figure) =>
        InfluenceLines.Of(Built(document), figure)!;

    private static BuiltBeam Built(BeamDocument document) =>
        Assert.IsType<BuildOutcome.Built>(ModelBuilder.Build(document, SectionCatalogue.BuiltIn())).Beam;
}
