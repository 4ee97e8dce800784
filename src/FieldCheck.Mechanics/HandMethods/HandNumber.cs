namespace FieldCheck.Mechanics.HandMethods;

/// <summary>
/// A number that the working writes down: given, or worked out from numbers before it. The same formula is worked out
/// twice: exactly, for <see cref="Value"/>, and by whoever prints it with the numbers as they are printed.
/// </summary>
public sealed class HandNumber
{
    /// <summary>A number that follows from a formula.</summary>
    /// <param name="formula">What it follows from.</param>
    /// <param name="name">What it is called; null: it stands in its line without a name.</param>
    internal HandNumber(HandFormula formula, HandName? name = null)
    {
        Formula = formula;
        Name = name;
        Unit = formula.Unit;
        Value = formula.Evaluate(number => number.Value);
    }

    /// <summary>What it follows from.</summary>
    public HandFormula Formula { get; }

    /// <summary>What it is called; null: it stands in its line without a name.</summary>
    public HandName? Name { get; }

    /// <summary>What it is measured in.</summary>
    public HandUnit Unit { get; }

    /// <summary>The number, not rounded [N, m or rad, as <see cref="Unit"/> has them].</summary>
    public double Value { get; }

    /// <summary>
    /// True: no line of its own finds it, so the line that uses it writes its formula first, as in
    /// 12.00 x (1.10 - 0.30) = 12.00 x 0.80.
    /// </summary>
    public bool IsInline { get; internal init; }

    /// <summary>One, as the coefficient of an unknown that stands alone.</summary>
    internal static HandNumber One { get; } = Given(1, HandUnit.Ratio);

    /// <summary>A number that was measured or typed.</summary>
    /// <param name="value">The number [N, m or rad].</param>
    /// <param name="unit">What it is measured in.</param>
    /// <param name="name">What it is called.</param>
    public static HandNumber Given(double value, HandUnit unit, HandName? name = null) =>
        new(new HandFormula.Given(value, unit), name);

    /// <summary>The distance between two places, without sign; it is written out in the line that uses it.</summary>
    internal static HandNumber Distance(HandNumber from, HandNumber to)
    {
        (HandNumber left, HandNumber right) = from.Value <= to.Value ? (from, to) : (to, from);
        return left.Value == 0 && left.Formula is HandFormula.Given ? right : Difference(right, left);
    }

    /// <summary>One number less another; it is written out in the line that uses it.</summary>
    internal static HandNumber Difference(HandNumber of, HandNumber less) =>
        new((HandFormula)of - less) { IsInline = true };
}
