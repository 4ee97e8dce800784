using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>Each case followed only as far as it reaches, against the whole beam solved anew.</summary>
public sealed class SolvePartsTests
{
    private const int Spans = 110;
    private const double L = 6;

    private static readonly LoadCase[] Cases =
    [
        new("middle", [new Load.Point(30.5 * L, 5e3)]),
        new("spread", [new Load.Distributed(30.2 * L, 32.7 * L, 400, 1700)]),
        new("nothing", []),
        new("first", [new Load.Couple(0, 900), new Load.Point(2, -800)]),
        new("last", [Uniform((Spans - 1) * L, Spans * L, 1e3)]),
        new("on a support", [new Load.Point(20 * L, 7e3), new Load.Couple(20 * L, 300, Side.Right)]),
        new("at a hinge", [new Load.Couple(40.5 * L, 600, Side.Right), new Load.Point(40.5 * L, 900)]),
        new("along", [new Load.Point(10.3 * L, 0, 2e3), new Load.Distributed(12 * L, 13 * L, 10, 60, true)]),
        new("several", [new Load.Point(15.5 * L, 5e3), new Load.Point(16.25 * L, 4e3), Uniform(15 * L, 16 * L, 200)]),
    ];

    public static TheoryData<double, double?> Kinds() => new()
    {
        { 0, null },
        { 0, 5e5 },
        { 0.3, null },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void TracedCase_IsTheWholeAnswer_AsFarAsItReaches(double slope, double? shear)
    {
        BeamModel model = Chain(slope, shear);
        BeamOutcome.Stands whole = Stands(model);

        PartAnswers parts = new BeamSolver().SolveParts(model, Cases.Length)!;

        Assert.Empty(parts.Starts);
        for (int i = 0; i < Cases.Length; i++)
        {
            (PartAnswer part, BeamResponse response) = (parts.Cases[i], whole.Cases[i]!);
            double scale = Scale(response);
            for (int support = 0; support < model.Supports.Length; support++)
            {
                Same(response.Reactions[support], part.ReactionOf(support), scale);
            }

            for (int piece = 0; piece < response.Pieces.Length; piece++)
            {
                int at = piece - part.FirstPiece;
                Piece expected = response.Pieces[piece];
                Piece actual = at >= 0 && at < part.Pieces.Length ? part.Pieces[at] : Still(expected);
                Assert.Equal((expected.From, expected.To), (actual.From, actual.To));
                Same(expected.Start, actual.Start, scale);
                Same(expected.End, actual.End, scale);
                Assert.Equal(
                    (expected.Up, expected.UpChange, expected.Right, expected.RightChange),
                    (actual.Up, actual.UpChange, actual.Right, actual.RightChange));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void UntracedCase_HasTheStatesAtTheStartsOfItsElements(double slope, double? shear)
    {
        BeamModel model = Chain(slope, shear);
        BeamOutcome.Stands whole = Stands(model);
        double[] nodes = [.. model.Supports.Select(support => support.Position).Append(40.5 * L).Order()];

        PartAnswers parts = new BeamSolver().SolveParts(model, 0)!;

        Assert.Empty(parts.Cases);
        for (int i = 0; i < Cases.Length; i++)
        {
            (PartStarts starts, BeamResponse response) = (parts.Starts[i], whole.Cases[i]!);
            double scale = Scale(response);
            for (int support = 0; support < model.Supports.Length; support++)
            {
                Reaction expected = response.Reactions[support];
                Close(expected.Horizontal, starts.Reaction(support, 0), scale);
                Close(expected.Vertical, starts.Reaction(support, 1), scale);
                Close(expected.Moment, starts.Reaction(support, 2), scale);
            }

            for (int element = 0; element < nodes.Length - 1; element++)
            {
                PieceEnd expected = response.Pieces.Single(piece => piece.From == nodes[element]).Start;
                PieceEnd actual = new(
                    starts.State(element, 0),
                    starts.State(element, 1),
                    starts.State(element, 2),
                    starts.State(element, 3),
                    starts.State(element, 4));
                Same(expected, actual, scale);
            }
        }
    }

    [Fact]
    public void LoadInTheMiddle_ReachesAFewSpansOnly()
    {
        PartAnswers parts = new BeamSolver().SolveParts(Chain(0, null), Cases.Length)!;

        // Over equal spans a moment dies away by 2 + √3 from support to support, so to 1e-26 over 45 of them.
        Assert.Equal(0, parts.Cases[3].FirstSupport);
        Assert.InRange(parts.Cases[3].Reactions.Length, 35, 60);
        Assert.InRange(parts.Cases[4].FirstSupport, 50, 75);
        Assert.Equal(Spans + 1, parts.Cases[4].FirstSupport + parts.Cases[4].Reactions.Length);
    }

    [Fact]
    public void SomeTraced_TheOthersAreStarts()
    {
        PartAnswers parts = new BeamSolver().SolveParts(Chain(0, null), 2)!;

        Assert.Equal((2, Cases.Length - 2), (parts.Cases.Length, parts.Starts.Length));
        Assert.Equal(5e3, parts.Cases[0].Reactions.Sum(reaction => reaction.Vertical), 1e-8);
        Assert.Equal(2625, parts.Cases[1].Reactions.Sum(reaction => reaction.Vertical) / L, 1e-8);
    }

    [Fact]
    public void ImposedMovements_AreThoseOfTheWholeBeam()
    {
        BeamModel model = Chain(0, null);
        model = model with { Supports = model.Supports.SetItem(7, Support.Roller(7 * L) with { Settlement = 0.01 }) };
        BeamResponse expected = Stands(model).ImposedMovements!;

        foreach (BeamResponse actual in new[]
        {
            new BeamSolver().SolveParts(model, 1)!.Imposed, new BeamSolver().SolveImposed(model)!,
        })
        {
            Assert.Equal(expected.Reactions, actual.Reactions.AsEnumerable());
            Assert.Equal(expected.Pieces, actual.Pieces.AsEnumerable());
        }
    }

    [Fact]
    public void BeamThatCanMove_HasNoParts() =>
        Assert.Null(new BeamSolver().SolveParts(Beam(L, [Support.Pin(0)], [new Load.Point(2, 10)]), 1));

    private static BeamModel Chain(double slope, double? shear) => new(
        [new Span(Spans * L, Rigidity, 1e9, shear)],
        [
            Support.Pin(0),
            .. Enumerable.Range(1, Spans).Select(i => i == 25 ? Support.Roller(i * L, slope) : Support.Roller(i * L)),
        ],
        [40.5 * L],
        [.. Cases],
        []);

    private static double Scale(BeamResponse response) =>
        Math.Max(1, response.Pieces.Max(piece => Math.Max(Math.Abs(piece.Start.Shear), Math.Abs(piece.Start.Moment))));

    private static Piece Still(Piece at) => new()
    {
        From = at.From,
        To = at.To,
        Length = at.Length,
        Start = default,
        End = default,
        Up = 0,
        UpChange = 0,
        Right = 0,
        RightChange = 0,
        FlexuralRigidity = at.FlexuralRigidity,
        ShearFlexibility = at.ShearFlexibility,
    };

    private static void Same(Reaction expected, Reaction actual, double scale)
    {
        Close(expected.Horizontal, actual.Horizontal, scale);
        Close(expected.Vertical, actual.Vertical, scale);
        Close(expected.Moment, actual.Moment, scale);
    }

    private static void Same(PieceEnd expected, PieceEnd actual, double scale)
    {
        Close(expected.Axial, actual.Axial, scale);
        Close(expected.Shear, actual.Shear, scale);
        Close(expected.Moment, actual.Moment, scale);
        Close(expected.Turn * Rigidity, actual.Turn * Rigidity, scale * L);
        Close(expected.Rise * Rigidity, actual.Rise * Rigidity, scale * L * L);
    }

    private static void Close(double expected, double actual, double scale) =>
        Assert.True(Math.Abs(expected - actual) <= 1e-12 * scale, $"expected {expected:R}, was {actual:R}");
}
