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

    /// <summary>The rule of its part in the load term of an end.</summary>
    /// <param name="atRight">True: the right end, false: the left one.</param>
    internal HandLoadTerm Rule(bool atRight)
    {
        bool growsNear = Shape == (atRight ? HandShape.Rising : HandShape.Falling);
        return Shape switch
        {
            _ when IsCouple => HandLoadTerm.Couple,
            HandShape.Point => HandLoadTerm.Point,
            HandShape.Uniform => FillsBay ? HandLoadTerm.WholeUniform : HandLoadTerm.Uniform,
            _ when FillsBay => growsNear ? HandLoadTerm.WholeGrowsNear : HandLoadTerm.WholeGrowsAway,
            _ => growsNear ? HandLoadTerm.GrowsNear : HandLoadTerm.GrowsAway,
        };
    }

    /// <summary>Its part in the load term of an end: 6 EI times the turn that it gives a simple span there.</summary>
    /// <param name="length">Length of the bay.</param>
    /// <param name="atRight">True: the right end, false: the left one.</param>
    internal HandFormula LoadTerm(HandNumber length, bool atRight)
    {
        HandFormula square = Square(length);
        HandFormula term = Rule(atRight) switch
        {
            HandLoadTerm.WholeUniform => Size * square / 4,
            HandLoadTerm.WholeGrowsNear => (HandFormula)4 * Size * square / 15,
            HandLoadTerm.WholeGrowsAway => (HandFormula)7 * Size * square / 30,
            HandLoadTerm rule => PartTerm(rule, length, square, (atRight ? FromLeft : FromRight).Value),
        };
        bool isPositive = IsPositive != (IsCouple && atRight);
        return isPositive ? term : -term;
    }

    /// <summary>Its turning about the bay's right end, counter-clockwise where the load itself is positive.</summary>
    internal HandFormula AboutRightEnd()
    {
        HandFormula turning = IsCouple ? Size : (HandFormula)Size * FromRight.Value;
        return IsPositive ? turning : -turning;
    }

    private HandFormula PartTerm(HandLoadTerm rule, HandNumber length, HandFormula square, HandNumber far)
    {
        HandFormula left = square - Square(far);
        HandFormula shape = rule switch
        {
            HandLoadTerm.Couple => square - (HandFormula)3 * Square(far),
            HandLoadTerm.Point => far * left,
            HandLoadTerm.Uniform => far * (left - Square(Width!.Value) / 4),
            HandLoadTerm.GrowsNear => far * (left - Square(Width!.Value) / 6) + Skew(Width.Value),
            _ => far * (left - Square(Width!.Value) / 6) - Skew(Width.Value),
        };
        return Size * shape / length;
    }

    private static HandFormula.Power Square(HandNumber number) => new(number, 2);

    private static HandFormula Skew(HandNumber width) => new HandFormula.Power(width, 3) / 135;
}
