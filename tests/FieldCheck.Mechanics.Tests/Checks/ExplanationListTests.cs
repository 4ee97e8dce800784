using System.Collections.Immutable;
using FieldCheck.Mechanics.Checks;
using FieldCheck.Mechanics.Model;

namespace FieldCheck.Mechanics.Tests.Checks;

/// <summary>What is kept of made-up figures, stated as 1000 and 2000 N within 10 N.</summary>
public sealed class ExplanationListTests
{
    private static readonly Slip Left = new Slip.LoadLeftOut(0);
    private static readonly Slip Doubled = new Slip.LoadDoubled(1);
    private static readonly Slip Factor = new Slip.CommonFactor(1.5, IsTakenOff: false, IsOnVariableOnly: false);
    private static readonly Slip OtherFactor = new Slip.OtherCombination(0);

    // The same to a thousandth of the 10 N allowed.
    [Theory]
    [InlineData(0.009, true)]
    [InlineData(0.011, false)]
    [InlineData(-0.009, true)]
    [InlineData(-0.011, false)]
    public void FiguresAlikeToAThousandthOfWhatIsAllowed_AreTied(double apart, bool areTied)
    {
        ImmutableArray<Explanation> ranked = Ranked((Left, [1000, 2000]), (Doubled, [1000, 2000 + apart]));

        Assert.Equal([Left, Doubled], ranked.Select(one => one.Slip));
        Assert.Equal(areTied, ranked[0].TiedWith.Contains(1));
        Assert.Equal(areTied, ranked[1].TiedWith.Contains(0));
    }

    [Fact]
    public void TwoSetsOfFactorsThatGiveTheSame_AreToldOnce()
    {
        Assert.Equal([Factor], Ranked((Factor, [1000, 2000]), (OtherFactor, [1000, 2000])).Select(one => one.Slip));
        Assert.Equal(2, Ranked((Factor, [1000, 2000]), (OtherFactor, [1000, 2001])).Length);
    }

    [Fact]
    public void FactorsAndSomethingElseThatGiveTheSame_AreBothTold()
    {
        Assert.Equal([Left, Factor], Ranked((Left, [1000, 2000]), (Factor, [1000, 2000])).Select(one => one.Slip));
        Assert.Equal([Factor, Left], Ranked((Factor, [1000, 2000]), (Left, [1000, 2000])).Select(one => one.Slip));
    }

    private static ImmutableArray<Explanation> Ranked(params (Slip Slip, double[] Predicted)[] all)
    {
        BeamModel model = Said.Simple(6, Said.Point(2, 12));
        StatedSet stated = new(
            model, [1],
            [new ReactionFigure(0, ReactionPart.Vertical, 1000, 10), new ReactionFigure(1, ReactionPart.Vertical, 2000, 10)]);
        ExplanationList found = new(new ExplanationFit(stated, [0, 0]));
        foreach ((Slip slip, double[] predicted) in all)
        {
            found.Add(slip, 2, predicted);
        }

        return found.Ranked();
    }
}
