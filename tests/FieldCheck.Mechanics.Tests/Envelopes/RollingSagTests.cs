using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>
/// The three turns in which the greatest deflection under standing loads and a train is found, each by itself: what is greatest at
/// each of many sections tells what there is to be found.
/// </summary>
public sealed class RollingSagTests
{
    private const int Steps = 8;
    private const int Sections = 4000;

    private static readonly double[] Lengths = [5, 3.5, 1.2];

    /// <summary>Elements, trains, factors of the train and whether the greatest or the least is looked for.</summary>
    public static TheoryData<int, int, double, int, bool> Kinds
    {
        get
        {
            TheoryData<int, int, double, int, bool> all = [];
            foreach (int element in new[] { 0, 1, 2 })
            {
                foreach (int train in new[] { 0, 1 })
                {
                    foreach (double scale in new[] { 1.5, -0.7 })
                    {
                        all.Add(element, train, scale, scale > 0 ? 1 : -1, train == 0);
                        all.Add(element, train, scale, scale > 0 ? -1 : 1, train == 1);
                    }
                }
            }

            return all;
        }
    }

    /// <summary>Eight steps an element, the best of them with the place that makes it so; what is compared is as large as the train makes it.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Take_IsTheBestOfTheSteps(int number, int train, double scale, int sense, bool keepsRows)
    {
        Sag sag = new(number, train, scale, sense, keepsRows);
        Leader<Worst> leader = new(1e-9, 9.7);

        sag.Rolling.Take(sag.Standing, sag.Pieces, scale, ref leader);

        double[] steps = [.. Enumerable.Range(0, Steps + 1).Select(i => i / (double)Steps)];
        Assert.Equal(steps.Max(sag.At), leader.Value, 1e-14);
        Assert.Equal(leader.Value, sag.At(sag.ShareOf(leader.Position)), 1e-14);
        Worst worst = leader.Situation;
        Assert.Equal(leader.Value, sag.Standing.At(worst.Place.Piece, worst.Place.Share) + Math.Abs(scale) * sag.PeakAt(leader.Position), 1e-14);
        Assert.Equal(sag.PositionOf(worst.Place), leader.Position, 1e-12);
        double size = steps.Max(step => Math.Max(sag.Train(step, 1), sag.Train(step, -1)));
        Assert.Equal(Math.Max(1e-21, 1e-12 * Math.Abs(scale) * size), leader.Value - leader.Floor, 2e-16);
    }

    /// <summary>Around the best step the best section, to the last of what golden sections can tell.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Polish_IsTheBestAroundTheBestStep(int number, int train, double scale, int sense, bool keepsRows)
    {
        Sag sag = new(number, train, scale, sense, keepsRows);
        Leader<Worst> leader = new(1e-9, 9.7);
        sag.Rolling.Take(sag.Standing, sag.Pieces, scale, ref leader);
        double best = sag.ShareOf(leader.Position);

        sag.Rolling.Polish(sag.Standing, sag.Pieces, scale, ref leader);

        double around = Enumerable.Range(-Sections, 2 * Sections + 1)
            .Select(i => best + i / (double)(Steps * Sections))
            .Where(share => share is >= 0 and <= 1)
            .Max(sag.At);
        Assert.InRange(leader.Value, around - 1e-12, around + 1e-9);
        Assert.Equal(leader.Value, sag.At(sag.ShareOf(leader.Position)), 1e-11);
    }

    /// <summary>Where more is known already than any section near the steps can give, nothing is taken for more.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void GreaterOneKnown_Stays(int number, int train, double scale, int sense, bool keepsRows)
    {
        Sag sag = new(number, train, scale, sense, keepsRows);
        double known = sag.Greatest + 1e-7;
        Leader<Worst> leader = new(1e-9, 9.7);
        leader.Take(known, -1, default);

        sag.Rolling.Take(sag.Standing, sag.Pieces, scale, ref leader);
        sag.Rolling.Polish(sag.Standing, sag.Pieces, scale, ref leader);

        Assert.True(sag.Rolling.Prove(sag.Standing, sag.Pieces, scale, ref leader));
        Assert.Equal((known, -1), (leader.Value, leader.Position));
    }

    /// <summary>
    /// The proof finds the greatest of all by itself, from what is less or a little less. Two axles in the first element are left out:
    /// below them the line has kinks, and what that takes is more than the budget here.
    /// </summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Prove_ComesToTheGreatestOfAll(int number, int train, double scale, int sense, bool keepsRows)
    {
        foreach (double less in number == 0 && scale > 0 ? [] : new[] { 1, 1e-3, 1e-5 })
        {
            Sag sag = new(number, train, scale, sense, keepsRows);
            Leader<Worst> leader = new(10, 9.7);
            leader.Take(sag.Greatest - less, -1, default);

            Assert.True(sag.Rolling.Prove(sag.Standing, sag.Pieces, scale, ref leader));

            Assert.InRange(leader.Value, sag.Greatest - 1.1e-9, sag.Greatest + 1e-8);
            Assert.Equal(leader.Value, sag.At(sag.ShareOf(leader.Position)), 1e-9);
        }
    }

    /// <summary>What the budget does not reach is said not to be settled; without need nothing is spent.</summary>
    [Fact]
    public void Prove_WithoutBudget_IsNotSettled()
    {
        Sag sag = new(0, 0, 1.5, 1, keepsRows: true, boxes: 0);
        Leader<Worst> below = new(10, 9.7);
        below.Take(sag.Greatest - 1e-6, -1, default);
        Leader<Worst> above = new(10, 9.7);
        above.Take(sag.Greatest + 1, -1, default);

        Assert.False(sag.Rolling.Prove(sag.Standing, sag.Pieces, 1.5, ref below));
        Assert.True(sag.Rolling.Prove(sag.Standing, sag.Pieces, 1.5, ref above));
    }

    /// <summary>
    /// Two spans and an overhang, soft in shear, a force within the first and half of the second loaded, so that elements are of several pieces.
    /// </summary>
    private sealed class Sag
    {
        private readonly TrainElement _element;
        private readonly double _scale;

        internal Sag(int number, int train, double scale, int sense, bool keepsRows, int boxes = 50_000)
        {
            BeamModel model = new(
                [.. Lengths.Select(length => new Span(length, 8e6, 1e9, 4e6))],
                [Support.Pin(0), Support.Roller(5), Support.Spring(8.5, 1e6)],
                [],
                [
                    new LoadCase("dead", [new Load.Point(1.9, 60e3), new Load.Distributed(6.1, 7.9, 12e3, 5e3)]),
                    new LoadCase("live", []),
                ],
                [new Combination("all", CombinationBasis.Service, [1, scale * sense])]);
            RollingLoad axles = new("axles", 1, [new Axle(0, 35e3), new Axle(0.7, -20e3), new Axle(2.1, 145e3)], 0.25);
            Superposition sum = Superposition.Of(new EnvelopeProblem(model, [], [axles]), new BeamSolver())!;
            Standing = new StandingCurve(new CurveParts(sum, Curve.Deflection), 0, sense);
            _element = new TrainElement(sum.Traffic!.Trains[train], sum.Traffic.Influence, number);
            _scale = scale;
            int[] pieces =
            [
                .. Enumerable.Range(0, sum.Imposed.Length)
                    .Where(i => sum.Imposed[i].From >= _element.From && sum.Imposed[i].To <= _element.To),
            ];
            Pieces = pieces[0]..(pieces[^1] + 1);
            Rolling = new RollingSag(_element, keepsRows, new SagBudget(boxes));
            Greatest = Enumerable.Range(0, Sections + 1).Max(i => At(i / (double)Sections));
        }

        internal RollingSag Rolling { get; }

        internal StandingCurve Standing { get; }

        internal Range Pieces { get; }

        /// <summary>The greatest of all sections looked at.</summary>
        internal double Greatest { get; }

        internal double At(double share)
        {
            double position = _element.From + share * (_element.To - _element.From);
            return StandingAt(position) + Math.Abs(_scale) * PeakAt(position);
        }

        internal double PeakAt(double position) => _element.Greatest(Curve.Deflection, position, Math.Sign(_scale)).Value;

        internal double Train(double share, int sense) =>
            _element.Greatest(Curve.Deflection, _element.From + share * (_element.To - _element.From), sense).Value;

        internal double ShareOf(double position) => (position - _element.From) / (_element.To - _element.From);

        internal double PositionOf(in StandingPlace place)
        {
            Piece piece = Standing.Parts.Pieces[place.Piece];
            return piece.From + place.Share * piece.Length;
        }

        private double StandingAt(double position)
        {
            int piece = Pieces.Start.Value;
            while (piece + 1 < Pieces.End.Value && Standing.Parts.Pieces[piece].To < position)
            {
                piece++;
            }

            Piece of = Standing.Parts.Pieces[piece];
            return Standing.At(piece, Math.Clamp((position - of.From) / of.Length, 0, 1));
        }
    }
}
