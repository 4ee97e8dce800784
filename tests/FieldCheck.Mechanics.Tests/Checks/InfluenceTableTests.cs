using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>
/// A cantilever whose outer part is of another section, so that every figure follows by virtual work, and a beam on two
/// supports; worked apart.
/// </summary>
public sealed class InfluenceTableTests
{
    private const double Joint = 4;

    private static readonly Span Inner = new(Joint, 50, 1e3, 20);
    private static readonly Span Outer = new(6, 30, 1e3, 8);

    private static readonly InfluenceTable Cantilever = Table(
        new BeamModel(
            [Inner, Outer], [Support.Fixed(0)], [], [new LoadCase("one", [new Load.Point(5, 1)])],
            [new Combination("one", CombinationBasis.Service, [1])]));

    public static TheoryData<double, double> Places()
    {
        TheoryData<double, double> places = [];
        foreach (double section in new[] { 2.5, 6.5, 10 })
        {
            foreach (double load in new[] { 0.4, 1.5, 2.4, 3, 4.8, 6.2, 7, 9.5 })
            {
                places.Add(section, load);
            }
        }

        return places;
    }

    [Theory]
    [MemberData(nameof(Places))]
    public void Force_OnACantilever(double section, double load)
    {
        double nearer = Math.Min(section, load);

        Same(-Math.Max(0, load - section), Curve.Moment);
        Same(load > section ? 1 : 0, Curve.Shear);
        Same(
            Bent(nearer, s => (section - s) * (load - s))
                + Math.Min(nearer, Joint) / Inner.ShearRigidity!.Value
                + Math.Max(0, nearer - Joint) / Outer.ShearRigidity!.Value,
            Curve.Deflection);
        Same(
            -Bent(nearer, s => load - s) - (load > section ? 1 / At(section).ShearRigidity!.Value : 0),
            Curve.Slope);

        void Same(double expected, Curve curve) => Equal(
            expected, Cantilever.Line(Target.At(section, Side.Right, curve)).RangeOfOne(load, load, along: false));
    }

    [Theory]
    [MemberData(nameof(Places))]
    public void CoupleAndForceAlong_OnACantilever(double section, double load)
    {
        double nearer = Math.Min(section, load);

        Same(load > section ? 1 : 0, Curve.Moment);
        Same(0, Curve.Shear);
        Same(-Bent(nearer, s => section - s), Curve.Deflection);
        Same(Bent(nearer, _ => 1), Curve.Slope);
        Equal(
            load > section ? 1 : 0,
            Cantilever.Line(Target.At(section, Side.Right, Curve.Axial)).RangeOfOne(load, load, along: true));

        void Same(double expected, Curve curve) => Equal(
            expected,
            Cantilever.Line(Target.At(section, Side.Right, curve)).RangeOf(new Load.Couple(load, 1), load, load));
    }

    [Fact]
    public void SectionAtAJoint_IsInTheElementOfItsSide()
    {
        foreach (Side side in new[] { Side.Left, Side.Right })
        {
            InfluenceLine line = Cantilever.Line(Target.At(Joint, side, Curve.Deflection));
            Equal(Bent(3, s => (Joint - s) * (3 - s)) + 3 / 20.0, line.RangeOfOne(3, 3, along: false));
            Equal(Bent(4, s => (Joint - s) * (7 - s)) + 4 / 20.0, line.RangeOfOne(7, 7, along: false));
        }
    }

    // In parts of 4 and 6 m: the moment at 4 m is 0.6 ξ, then 0.4 (10 - ξ), most 2.4 a force of one; that at 3 m is 3
    // times the shear at its left end. No force is felt more than once.
    [Fact]
    public void Size_IsTheGreatestTermThatAFigureIsSummedUpFrom()
    {
        InfluenceTable table = Table(Said.On([4, 6], [0, 10], new Load.Point(5, 1)));

        Assert.Equal(1, table.Line(Target.Of(1, ReactionPart.Vertical)).Size, 1e-9);
        Assert.Equal(1, table.Line(Target.Of(0, ReactionPart.Horizontal)).Size, 1e-9);
        Assert.Equal(2.4, table.Line(Target.Of(0, ReactionPart.Moment)).Size, 1e-9);
        Assert.Equal(2.4, table.Line(Target.At(5, Side.Left, Curve.Moment)).Size, 1e-9);
        Assert.Equal(3, table.Line(Target.At(3, Side.Left, Curve.Moment)).Size, 1e-9);
        Assert.Equal(1, table.Line(Target.At(5, Side.Left, Curve.Shear)).Size, 1e-9);
        Assert.Equal(1, table.Line(Target.At(5, Side.Left, Curve.Axial)).Size, 1e-9);
    }

    // In one part the slope at the left end is -ξ (L - ξ) (2L - ξ) / 6LEI, in shares of 10 m 33.3, -50 and 16.7 over EI;
    // no support gives a moment, and no section has one that starts there.
    [Fact]
    public void Size_OfASlope_IsItsOwn()
    {
        InfluenceTable table = Table(Said.Simple(10, new Load.Point(5, 1)));

        Assert.Equal(50 / 1e7, table.Line(Target.At(2, Side.Left, Curve.Slope)).Size, 1e-12);
        Assert.Equal(100 / 1e7, table.Line(Target.At(2, Side.Left, Curve.Deflection)).Size, 1e-12);
        Assert.Equal(0, table.Line(Target.Of(0, ReactionPart.Moment)).Size, 1e-9);
    }

    [Theory]
    [InlineData(1.5, 0.5, "0")]
    [InlineData(5, 0.5, "1")]
    [InlineData(3.5, 0.5, "0 1")] // up to the node itself
    [InlineData(4.5, 0.5, "0 1")]
    [InlineData(7.5, 1, "1 2")]
    [InlineData(9, 0, "")] // stands still
    public void Touched_AreTheElementsThatALoadMayReach(double position, double half, string elements)
    {
        BeamModel model = Said.Simple(10, new Load.Point(position, 1));
        var boxes = LoadBox.Of(model, [new InputSpread.LoadPosition(new LoadIndex(0, 0), half)]);

        Assert.Equal(elements, string.Join(' ', InfluenceTable.Touched([0, 4, 7, 10], boxes)));
    }

    [Fact]
    public void Touched_ByAnyOfThem()
    {
        BeamModel model = Said.Simple(10, new Load.Point(1, 1), new Load.Point(9, 1));
        var boxes = LoadBox.Of(
            model, [new InputSpread.LoadPosition(new LoadIndex(0, 0), 0.5), new InputSpread.LoadPosition(new LoadIndex(0, 1), 0.5)]);

        Assert.Equal([0, 2], InfluenceTable.Touched([0, 4, 7, 10], boxes).AsEnumerable());
    }

    private static Span At(double position) => position < Joint ? Inner : Outer;

    /// <summary>∫ of a polynomial of the second degree over EI from the fixed end on.</summary>
    private static double Bent(double to, Func<double, double> product) =>
        Part(0, Math.Min(to, Joint), product) / Inner.FlexuralRigidity + Part(Joint, Math.Max(to, Joint), product) / Outer.FlexuralRigidity;

    // Simpson's rule, exact here.
    private static double Part(double from, double to, Func<double, double> product) =>
        (to - from) / 6 * (product(from) + 4 * product((from + to) / 2) + product(to));

    private static InfluenceTable Table(BeamModel model) => SuperposedAnswers.Solve(
        new BeamSolver(), model, [new InputSpread.LoadPosition(new LoadIndex(0, 0), model.Length)])!.Table!;

    private static void Equal(double expected, (double Low, double High) found)
    {
        Assert.Equal(expected, found.Low, 1e-9);
        Assert.Equal(expected, found.High, 1e-9);
    }
}
