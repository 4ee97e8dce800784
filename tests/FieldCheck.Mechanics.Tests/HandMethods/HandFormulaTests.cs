using FieldCheck.Mechanics.HandMethods;
using static FieldCheck.Mechanics.Tests.Solving.Beams;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>Formulas and their units: sums are of one unit, products and quotients have their own.</summary>
public sealed class HandFormulaTests
{
    private static readonly HandFormula Force = new HandFormula.Given(12, HandUnit.OfForce);
    private static readonly HandFormula OtherForce = new HandFormula.Given(3, HandUnit.OfForce);
    private static readonly HandFormula Length = new HandFormula.Given(4, HandUnit.OfLength);

    [Fact]
    public void NamedOperations_GiveWhatTheSignsDo()
    {
        Assert.Equal((15, HandUnit.OfForce), Result(HandFormula.Add(Force, OtherForce)));
        Assert.Equal((9, HandUnit.OfForce), Result(HandFormula.Subtract(Force, OtherForce)));
        Assert.Equal((48, HandUnit.OfMoment), Result(HandFormula.Multiply(Force, Length)));
        Assert.Equal((3, HandUnit.OfIntensity), Result(HandFormula.Divide(Force, Length)));
        Assert.Equal((-12, HandUnit.OfForce), Result(HandFormula.Negate(Force)));
        Assert.Equal((7, HandUnit.Ratio), Result(HandFormula.FromInt32(7)));
        Assert.Equal((5, HandUnit.OfLength), Result(HandFormula.FromHandNumber(HandNumber.Given(5, HandUnit.OfLength))));
    }

    [Fact]
    public void TermsOfAnotherUnit_AreAMistake()
    {
        ArgumentException mistake = Assert.Throws<ArgumentException>(() => Force + Length);

        Assert.StartsWith("Terms must be of one unit.", mistake.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Units_MultiplyAndDivideByTheirPowers()
    {
        Assert.Equal(HandUnit.OfMoment, HandUnit.Multiply(HandUnit.OfForce, HandUnit.OfLength));
        Assert.Equal(HandUnit.OfIntensity, HandUnit.Divide(HandUnit.OfForce, HandUnit.OfLength));
        Assert.Equal(HandUnit.OfRigidity, HandUnit.OfMoment * HandUnit.OfLength);
        Assert.Equal(new HandUnit(0, 0, IsAngle: true), HandUnit.OfAngle);
        Assert.NotEqual(HandUnit.Ratio, HandUnit.OfAngle * HandUnit.Ratio);
    }

    [Fact]
    public void Nothing_IsRefusedByName()
    {
        Assert.Equal("valueOf", Assert.Throws<ArgumentNullException>(() => Force.Evaluate(null!)).ParamName);
        Assert.Equal("model", Assert.Throws<ArgumentNullException>(() => HandWorking.Of(null!, [])).ParamName);
        Assert.Equal("model", Assert.Throws<ArgumentNullException>(() => HandWorking.FreeBodyOf(null!, false)).ParamName);
        Assert.Equal("model", Assert.Throws<ArgumentNullException>(() => HandWorking.Prove(null!, [], [], [])).ParamName);
        Assert.Equal("model", Assert.Throws<ArgumentNullException>(() => HandPlaces.Of(null!)).ParamName);
    }

    /// <summary>What acts along the beam is kept elsewhere.</summary>
    [Fact]
    public void ForceAlong_IsNotKeptAmongThoseAcross()
    {
        HandBeam beam = ThreeMomentCase.Prepare(Beam(6, [], []));
        HandName along = new(HandRole.Horizontal);

        Assert.StartsWith(
            "Must be a force or couple across.",
            Assert.Throws<ArgumentOutOfRangeException>(() => beam.Keep(along, HandNumber.One, liftsLeft: true)).Message,
            StringComparison.Ordinal);
        Assert.StartsWith(
            "Must be a force or couple across.",
            Assert.Throws<ArgumentOutOfRangeException>(() => beam.Found(along)).Message,
            StringComparison.Ordinal);
    }

    private static (double Value, HandUnit Unit) Result(HandFormula formula) =>
        (formula.Evaluate(number => number.Value), formula.Unit);
}
