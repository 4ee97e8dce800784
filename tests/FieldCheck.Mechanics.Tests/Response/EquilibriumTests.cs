using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Response;

namespace FieldCheck.Mechanics.Tests.Response;

/// <summary>The proof, summed by hand; it must show a wrong reaction, not hide it.</summary>
public sealed class EquilibriumTests
{
    private static readonly LoadCase Loads = new(
        "all",
        [
            new Load.Point(2, 1000, 300),
            new Load.Distributed(1, 4, 100, 400),
            new Load.Distributed(0, 2, 50, 50, true),
            new Load.Couple(3, 700),
        ]);

    [Fact]
    public void Prove_SumsLoadsTimesTheirFactor()
    {
        EquilibriumProof proof = ProofWith(2, new Reaction(0, 0, 0, null, false));

        // 1000 + 250·3; 300 + 100; about x = 0: 1000·2 + 250·3·2.8 clockwise (centroid at 1 + 3·(100 + 800)/(3·500)),
        // 700 back.
        Assert.Equal(2 * 1750, proof.LoadDown);
        Assert.Equal(2 * 400, proof.LoadRight);
        Assert.Equal(2 * (700 - 2000 - 750 * 2.8), proof.LoadMoment, 1e-9);
        Assert.Equal(1, proof.Residual);
    }

    [Fact]
    public void Prove_OneSupportThatTakesAll_LeavesNothing()
    {
        EquilibriumProof proof = ProofWith(1, new Reaction(-400, 1750, 3400 - 1750 * 5, null, false));

        Assert.Equal(1750, proof.ReactionUp);
        Assert.Equal(-400, proof.ReactionRight);
        Assert.Equal(3400, proof.ReactionMoment);
        Assert.Equal(0, proof.Residual, 1e-16);
    }

    [Fact]
    public void Prove_AWrongForce_ShowsAsItsShareOfAllForces()
    {
        EquilibriumProof proof = ProofWith(1, new Reaction(-400, 1750 + 43, 3400 - 1793 * 5, null, false));

        // 43 too much of 1750 + 1793 + 400 + 400.
        Assert.Equal(43.0 / 4343, proof.Residual, 1e-15);
    }

    [Fact]
    public void Prove_AWrongMoment_ShowsToo()
    {
        EquilibriumProof proof = ProofWith(1, new Reaction(-400, 1750, 3300 - 1750 * 5, null, false));

        // Terms about x = 0: 2000 + 2100 + 700 of the loads, 8750 and 5450 of the reactions.
        Assert.Equal(100.0 / (2000 + 2100 + 700 + 8750 + 5450), proof.Residual, 1e-15);
    }

    /// <summary>
    /// The sums by which A. Neumaier shows that the rounding must be carried along ("Rundungsfehleranalyse einiger
    /// Verfahren zur Summation endlicher Summen", ZAMM 54, 1974): whichever of the two terms is the larger.
    /// </summary>
    [Theory]
    [InlineData(new[] { 1, 1e100, 1, -1e100 }, 2)]
    [InlineData(new[] { 1e100, 1, 1, -1e100 }, 2)]
    [InlineData(new[] { -3, -1e100, 1e100, 5 }, 2)]
    public void Prove_LargeForcesThatCancel_LeaveTheSmallOnes(double[] forces, double expected)
    {
        Equilibrium equilibrium = default;
        foreach (double force in forces)
        {
            equilibrium.Add(0, new Reaction(0, force, 0, null, false));
        }

        EquilibriumProof proof = equilibrium.Prove();

        Assert.Equal(expected, proof.ReactionUp);
        Assert.Equal(expected / 2e100, proof.Residual, 1e-110);
    }

    [Fact]
    public void Prove_WrongAlongOnly_ShowsAsItsShareOfAllForces()
    {
        EquilibriumProof proof = ProofWith(1, new Reaction(-400 + 43, 1750, 3400 - 1750 * 5, null, false));

        // 43 too little of 1750 + 1750 + 400 + 357.
        Assert.Equal(43.0 / 4257, proof.Residual, 1e-15);
    }

    [Fact]
    public void Prove_NothingActs_IsZero() => Assert.Equal(0, default(Equilibrium).Prove().Residual);

    private static EquilibriumProof ProofWith(double factor, Reaction reaction)
    {
        Equilibrium equilibrium = default;
        equilibrium.Add(Loads, factor);
        equilibrium.Add(5, reaction);
        return equilibrium.Prove();
    }
}
