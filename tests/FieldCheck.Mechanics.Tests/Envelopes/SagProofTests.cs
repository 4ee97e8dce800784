using FieldCheck.Mechanics.Envelopes;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;
using FieldCheck.Mechanics.Solving;

namespace FieldCheck.Mechanics.Tests.Envelopes;

/// <summary>
/// The search for a deflection greater than the one known, element by element: what is greatest at each of many sections
/// tells what there is to be found.
/// </summary>
public sealed class SagProofTests
{
    private const int Sections = 4000;

    private static readonly double[] Lengths = [5, 3.5, 1.2];

    private static readonly double[] Standing = [0.01, -0.02, 0.03, 0, 0.01, -0.005];

    /// <summary>Elements, senses and directions; what lifts a span stands in another one.</summary>
    public static TheoryData<int, int, double, double, double> Stretches
    {
        get
        {
            TheoryData<int, int, double, double, double> all = [];
            foreach (int element in new[] { 0, 1, 2 })
            {
                foreach (double scale in new[] { 1.5, -1 })
                {
                    all.Add(element, 0, scale, 0, 1);
                    all.Add(element, 1, scale, 0.55, 0.4);
                    all.Add(element, 1, scale, 0.1, 0.3);
                }
            }

            return all;
        }
    }

    /// <summary>A greater one is met wherever there is one by more than what is proved to, and never where there is none.</summary>
    [Theory]
    [MemberData(nameof(Stretches))]
    public void Search_FindsAGreaterOneJustWhereThereIsOne(int number, int train, double scale, double from, double width)
    {
        TrainElement element = Element(number, train);
        double greatest = Greatest(element, scale, from, width);

        foreach (double less in new[] { 0.5, 1e-2, 1e-4 })
        {
            double known = greatest - less * 0.03;
            SagFinding found = Search(element, scale, from, width, known, new SagBudget(20_000));
            Assert.Equal(SagFindingKind.Greater, found.Kind);
            Assert.InRange(found.From, from, from + width);
            Assert.InRange(found.To, found.From, from + width + 1e-12);
            Assert.True(At(element, scale, from, width, (found.From + found.To) / 2) > known, $"less than {known:R} is met");
        }

        Assert.Equal(
            SagFindingKind.Nothing, Search(element, scale, from, width, greatest + 1e-6, new SagBudget(20_000)).Kind);
    }

    /// <summary>One box for what bounds tell at once; what is not told within the budget is said not to be settled.</summary>
    [Fact]
    public void Search_EndsWithItsBudget()
    {
        TrainElement element = Element(0, 0);
        double greatest = Greatest(element, 1, 0, 1);

        Assert.Equal(SagFindingKind.Nothing, Search(element, 1, 0, 1, greatest + 10, new SagBudget(1)).Kind);
        Assert.Equal(SagFindingKind.Unsettled, Search(element, 1, 0, 1, greatest + 10, new SagBudget(0)).Kind);
        Assert.Equal(SagFindingKind.Unsettled, Search(element, 1, 0, 1, greatest + 1e-6, new SagBudget(3)).Kind);

        SagBudget shared = new(20_000);
        int settled = 0;
        while (settled < 20_000 && Search(element, 1, 0, 1, greatest + 1e-6, shared).Kind == SagFindingKind.Nothing)
        {
            settled++;
        }

        Assert.True(shared.IsSpent);
        Assert.InRange(settled, 1, 10_000);
    }

    [Fact]
    public void Budget_IsSpentBoxByBox()
    {
        SagBudget budget = new(2);

        Assert.False(budget.IsSpent);
        budget.Spend();
        Assert.False(budget.IsSpent);
        budget.Spend();
        Assert.True(budget.IsSpent);
        budget.Spend();
        Assert.True(budget.IsSpent);
    }

    [Fact]
    public void Box_IsHalvedOnOneSide()
    {
        SagBox box = new(0.25, 0.5, 0.125, 0.75);

        Assert.Equal(new SagBox(0.25, 0.25, 0.125, 0.75), box.Half(isOfSections: true, 0));
        Assert.Equal(new SagBox(0.5, 0.25, 0.125, 0.75), box.Half(isOfSections: true, 1));
        Assert.Equal(new SagBox(0.25, 0.5, 0.125, 0.375), box.Half(isOfSections: false, 0));
        Assert.Equal(new SagBox(0.25, 0.5, 0.5, 0.375), box.Half(isOfSections: false, 1));
    }

    private static SagFinding Search(TrainElement element, double scale, double from, double width, double known, SagBudget budget)
    {
        Leader<Worst> leader = new(0.03, 9.7);
        leader.Take(known, 0, default);
        return new SagProof(element, budget).Search(Standing, from, width, scale, leader);
    }

    private static double Greatest(TrainElement element, double scale, double from, double width) => Enumerable
        .Range(0, Sections + 1)
        .Max(i => At(element, scale, from, width, from + width * i / Sections));

    /// <summary>The greatest at one section, over all places of the train.</summary>
    private static double At(TrainElement element, double scale, double from, double width, double share) =>
        Roots.Value(Standing, (share - from) / width)
            + element.Greatest(Curve.Deflection, element.From + share * (element.To - element.From), scale).Value;

    private static TrainElement Element(int number, int train)
    {
        BeamModel model = new(
            [.. Lengths.Select(length => new Span(length, 8e6, 1e9, 4e6))],
            [Support.Pin(0), Support.Roller(5), Support.Spring(8.5, 1e6)],
            [],
            [new LoadCase("live", [])],
            [new Combination("all", CombinationBasis.Service, [1])]);
        RollingLoad axles = new("axles", 0, [new Axle(0, 35e3), new Axle(0.7, -20e3), new Axle(2.1, 145e3)], 0.25);
        Traffic traffic = Superposition.Of(new EnvelopeProblem(model, [], [axles]), new BeamSolver())!.Traffic!;
        return new TrainElement(traffic.Trains[train], traffic.Influence, number);
    }
}
