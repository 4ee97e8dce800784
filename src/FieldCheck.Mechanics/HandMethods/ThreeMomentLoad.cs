namespace FieldCheck.Mechanics.HandMethods;

/// <summary>A force or couple inside a bay; its distances are written when first asked for.</summary>
/// <param name="Actor">What it comes from.</param>
/// <param name="Size">Its size.</param>
/// <param name="IsPositive">True: down, or counter-clockwise.</param>
/// <param name="Shape">How it is spread.</param>
/// <param name="Width">The length it is spread on; null for a point.</param>
/// <param name="IsCouple">True: a couple.</param>
/// <param name="FillsBay">True: it is spread from end to end of the bay.</param>
/// <param name="FromLeft">Distance of its centre from the bay's left end.</param>
/// <param name="FromRight">Distance of its centre from the bay's right end.</param>
internal sealed record ThreeMomentLoad(
    HandActor Actor,
    HandNumber Size,
    bool IsPositive,
    HandShape Shape,
    Lazy<HandNumber>? Width,
    bool IsCouple,
    bool FillsBay,
    Lazy<HandNumber> FromLeft,
    Lazy<HandNumber> FromRight)
{
    /// <summary>Positive down, or counter-clockwise.</summary>
    internal HandFormula Signed => IsPositive ? Size : -(HandFormula)Size;

    /// <summary>Its part in the load term of an end: 6 EI times the turn that it gives a simple span there.</summary>
    /// <param name="length">Length of the bay.</param>
    /// <param name="atRight">True: the right end, false: the left one.</param>
    internal HandFormula LoadTerm(HandNumber length, bool atRight)
    {
        HandFormula term = IsCouple ? CoupleTerm(length, atRight)
            : FillsBay ? WholeTerm(length, atRight)
            : ForceTerm(length, atRight);
        bool isPositive = IsPositive != (IsCouple && atRight);
        return isPositive ? term : -term;
    }

    /// <summary>Its turning about the bay's right end, counter-clockwise where the load itself is positive.</summary>
    internal HandFormula AboutRightEnd()
    {
        HandFormula turning = IsCouple ? Size : (HandFormula)Size * FromRight.Value;
        return IsPositive ? turning : -turning;
    }

    private HandFormula CoupleTerm(HandNumber length, bool atRight)
    {
        HandNumber far = (atRight ? FromLeft : FromRight).Value;
        return (HandFormula)Size * (Square(length) - (HandFormula)3 * Square(far)) / length;
    }

    private HandFormula WholeTerm(HandNumber length, bool atRight)
    {
        HandFormula square = (HandFormula)Size * Square(length);
        return Shape == HandShape.Uniform ? square / 4
            : GrowsTowards(atRight) ? (HandFormula)4 * square / 15
            : (HandFormula)7 * square / 30;
    }

    private HandFormula ForceTerm(HandNumber length, bool atRight)
    {
        HandNumber far = (atRight ? FromLeft : FromRight).Value;
        HandFormula left = Square(length) - Square(far);
        HandFormula shape = Shape switch
        {
            HandShape.Point => (HandFormula)far * left,
            HandShape.Uniform => (HandFormula)far * (left - Square(Width!.Value) / 4),
            _ => (HandFormula)far * (left - Square(Width!.Value) / 6)
                + (GrowsTowards(atRight) ? Skew(Width!.Value) : -Skew(Width!.Value)),
        };
        return (HandFormula)Size * shape / length;
    }

    private bool GrowsTowards(bool right) => Shape == (right ? HandShape.Rising : HandShape.Falling);

    private static HandFormula.Power Square(HandNumber number) => new HandFormula.Power(number, 2);

    private static HandFormula Skew(HandNumber width) => new HandFormula.Power(width, 3) / 135;
}
