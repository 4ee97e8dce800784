using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Solving;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.Solving;

/// <summary>Unknowns less equations, counted by hand.</summary>
public sealed class DeterminacyTests
{
    public static TheoryData<Support[], double[], Determinacy> Counted() => new()
    {
        { [Support.Pin(0), Support.Roller(6)], [], new Determinacy(0, 0, 0, false) },
        { [Support.Fixed(0)], [], new Determinacy(0, 0, 0, false) },
        { [Support.Pin(0), Support.Roller(3), Support.Roller(6)], [], new Determinacy(1, 0, 1, false) },
        { [Support.Fixed(0), Support.Fixed(6)], [], new Determinacy(3, 1, 2, false) },
        { [Support.Fixed(0), Support.Roller(6)], [3], new Determinacy(0, 0, 0, false) },
        { [Support.Pin(0), Support.Roller(6)], [3], new Determinacy(-1, 0, -1, false) },
        { [Support.Roller(0), Support.Roller(6)], [], new Determinacy(-1, -1, 0, false) },
        { [Support.Roller(0), Support.Roller(3), Support.Roller(6)], [], new Determinacy(0, -1, 1, false) },
        { [Support.Fixed(0), Support.Guide(6)], [], new Determinacy(2, 1, 1, false) },
        { [Support.Pin(0), Support.Spring(6, 1e5)], [], new Determinacy(0, 0, 0, false) },
        {
            [new Support(0, Restraint.Held, Restraint.Held, new Restraint.Spring(1)), Support.Roller(6)],
            [],
            new Determinacy(1, 0, 1, false)
        },
        { [Support.Pin(0), Support.Roller(6, 0.3)], [], new Determinacy(0, 0, 0, true) },
        { [Support.Roller(0, -0.3), Support.Roller(3), Support.Roller(6, 0.3)], [], new Determinacy(0, 0, 0, true) },
        { [], [], new Determinacy(-3, -1, -2, false) },
    };

    [Theory]
    [MemberData(nameof(Counted))]
    public void DeterminacyOf_IsAsCountedByHand(Support[] supports, double[] hinges, Determinacy expected)
    {
        BeamModel model = Beam(6, supports, [], hinges);

        Assert.Equal(expected, BeamSolver.DeterminacyOf(model));
        Assert.Equal(expected, new BeamSolver().Solve(model).Determinacy);
    }
}
