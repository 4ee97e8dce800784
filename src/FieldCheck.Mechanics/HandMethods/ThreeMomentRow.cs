namespace FieldCheck.Mechanics.HandMethods;

/// <summary>Gathers an equation: what multiplies each unknown, and, at the right, what is known.</summary>
/// <param name="unit">What the equation is measured in.</param>
internal sealed class ThreeMomentRow(HandUnit unit)
{
    private readonly List<(HandName Unknown, int Times, HandFormula Of)> _left = [];
    private readonly List<HandFormula> _right = [];

    /// <summary>Adds a whole number times a factor times a quantity to the left side.</summary>
    internal void Add(int times, HandFormula factor, HandQuantity quantity)
    {
        if (quantity.Unknown is HandName unknown)
        {
            _left.Add((unknown, times, factor));
        }

        if (quantity.Known is HandFormula known)
        {
            HandFormula product = Product(Math.Abs(times), factor, known);
            AddKnown(times > 0 ? product : -product);
        }
    }

    /// <summary>Adds what is known to the left side.</summary>
    internal void AddKnown(HandFormula known) => _right.Add(-known);

    /// <summary>Writes its coefficients, its right side and the equation.</summary>
    internal HandEquation Write(HandWriter writer, int number)
    {
        HandTerm[] terms =
        [
            .. _left.GroupBy(one => one.Unknown).Select(of => new HandTerm(Coefficient(writer, of.Key, of), of.Key)),
        ];
        HandNumber right = _right is [HandFormula.Known only]
            ? only.Number
            : writer.Find(HandFormula.Total(_right, unit), new HandActor.RightSide());
        HandEquation equation = new([.. terms], right);
        writer.Add(new HandLine.Sets(equation, number));
        return equation;
    }

    private static HandNumber Coefficient(
        HandWriter writer, HandName unknown, IEnumerable<(HandName Unknown, int Times, HandFormula Of)> terms)
    {
        HandFormula[] groups =
        [
            .. terms.GroupBy(term => term.Times).Select(group =>
            {
                HandFormula[] factors = [.. group.Select(term => term.Of)];
                HandFormula together = factors.Length == 1 ? factors[0] : HandFormula.Total(factors, factors[0].Unit);
                HandFormula times = Times(Math.Abs(group.Key), together);
                return group.Key > 0 ? times : -times;
            }),
        ];
        HandFormula all = groups.Length == 1 ? groups[0] : groups.Skip(1).Aggregate(groups[0], (sum, one) => sum + one);
        return all is HandFormula.Known known ? known.Number : writer.Find(all, new HandActor.Coefficient(unknown));
    }

    /// <summary>A share of a known quantity is that quantity divided, not one divided first.</summary>
    private static HandFormula Product(int times, HandFormula factor, HandFormula known) =>
        factor is HandFormula.Quotient { Dividend: HandFormula.Whole { Value: 1 } } share
            ? Times(times, known) / share.Divisor
            : Times(times, factor) * known;

    private static HandFormula Times(int times, HandFormula factor) => times == 1 ? factor
        : factor is HandFormula.Quotient { Dividend: HandFormula.Whole { Value: 1 } } share
            ? (HandFormula)times / share.Divisor
            : (HandFormula)times * factor;
}
