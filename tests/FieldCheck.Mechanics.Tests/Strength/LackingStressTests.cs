using System.Collections.Immutable;
using FieldCheck.Mechanics.Model;
using FieldCheck.Mechanics.Strength;

namespace FieldCheck.Mechanics.Tests.Strength;

/// <summary>
/// A span without the stress that another has: two simple spans of 4 and 6 m under 2 kN/m, of which the second has 9 kN·m
/// in its middle and 6 kN at its ends.
/// </summary>
public sealed class LackingStressTests
{
    private static readonly Strengths Both = new(10e6, 1e6, null);

    [Theory]
    [InlineData(CombinationBasis.Service)]
    [InlineData(CombinationBasis.Factored)]
    public void SpanWithoutAStress_SaysWhatItWouldHaveToCarry(CombinationBasis basis)
    {
        bool isService = basis == CombinationBasis.Service;
        BeamModel model = NeededFiguresTests.Hinged(4, 6);
        Member first = isService ? Checked.Stick(Both) : Checked.Stick(design: Both);

        ImmutableArray<SectionCheck> all = Checked.Problem(isService ? model : model.Factored(), first, Checked.Stick()).Find();

        Assert.Equal(
            [(CheckKind.Bending, 0, null), (CheckKind.Bending, 1, NotJudgedReason.NoLimit), (CheckKind.Shear, 0, null), (CheckKind.Shear, 1, NotJudgedReason.NoLimit)],
            all.Select(one => (one.Kind, one.Span!.Value, one.Reason)));
        Assert.All(all, one => Assert.Equal(basis, one.Basis));
        Assert.Equal([CheckSymbol.Moment], all[1].Terms.Select(term => term.Symbol));
        Assert.Equal((9000, 7), (Math.Round(all[1].Term(CheckSymbol.Moment), 6), Math.Round(all[1].Position!.Value, 6)));
        Assert.Equal([CheckSymbol.Shear], all[3].Terms.Select(term => term.Symbol));
        Assert.Equal(6000, all[3].Term(CheckSymbol.Shear), 1e-6);
    }

    [Fact]
    public void WithoutACombinationOfTheBasis_NothingIsSaidOfFigures()
    {
        SectionCheck[] lacking =
        [
            .. Checked.Problem(NeededFiguresTests.Hinged(4, 6).Factored(), Checked.Stick(Both), Checked.Bare).Find()
                .Where(one => one.Span == 1),
        ];

        Assert.Equal([CheckKind.Bending, CheckKind.Shear], lacking.Select(one => one.Kind));
        Assert.All(lacking, one => Assert.Equal((NotJudgedReason.NoMaterial, null), (one.Reason!.Value, one.Position)));
        Assert.All(lacking, one => Assert.Empty(one.Terms));
    }

    /// <summary>One check for all spans of a member is named by that where the worst stands; where none is known, by the first.</summary>
    [Fact]
    public void CheckOfAMember_IsNamedByTheSpanOfItsWorst()
    {
        BeamModel model = NeededFiguresTests.Hinged(4, 6);

        SectionCheck bending = Checked.Problem(model, Checked.Stick(Both)).Only(CheckKind.Bending);
        SectionCheck open = Checked.Problem(model.Factored(), Checked.Stick(Both)).Only(CheckKind.Bending);

        Assert.Equal((1, 7), (bending.Span!.Value, Math.Round(bending.Position!.Value, 6)));
        Assert.Equal(9000 / Checked.Plank.SectionModulus!.Value, bending.Demand!.Value, 1e-3);
        Assert.Equal((0, NotJudgedReason.NoCombination), (open.Span!.Value, open.Reason!.Value));
    }
}
