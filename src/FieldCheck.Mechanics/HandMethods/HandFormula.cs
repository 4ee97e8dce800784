using System.Collections.Immutable;
using System.Diagnostics;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>How a number of the working follows from others. Closed set: the cases are the nested records.</summary>
public abstract record HandFormula
{
    private HandFormula()
    {
    }

    /// <summary>What the result is measured in.</summary>
    public abstract HandUnit Unit { get; }

    /// <summary>Works the formula out.</summary>
    /// <param name="valueOf">The value of each number in it, in one coherent set of units.</param>
    /// <returns>The result in the same units [N, m or rad where the values are].</returns>
    public double Evaluate(Func<HandNumber, double> valueOf)
    {
        ArgumentNullException.ThrowIfNull(valueOf);
        return this switch
        {
            Given given => given.Value,
            Known known => valueOf(known.Number),
            Size size => Math.Abs(valueOf(size.Number)),
            Whole whole => whole.Value,
            Sum sum => sum.Terms.Sum(term => term.Evaluate(valueOf)),
            Minus minus => -minus.Formula.Evaluate(valueOf),
            Product product => product.Factors.Aggregate(1.0, (all, factor) => all * factor.Evaluate(valueOf)),
            Quotient quotient => quotient.Dividend.Evaluate(valueOf) / quotient.Divisor.Evaluate(valueOf),
            Power power => Math.Pow(power.Base.Evaluate(valueOf), power.Exponent),
            Root root => Math.Sqrt(Math.Max(root.Square.Evaluate(valueOf), 0)),
            Sine sine => Math.Sin(valueOf(sine.Angle)),
            Cosine cosine => Math.Cos(valueOf(cosine.Angle)),
            _ => throw new UnreachableException(),
        };
    }

    /// <summary>Adds two formulas.</summary>
    public static HandFormula operator +(HandFormula one, HandFormula other) =>
        new Sum([.. TermsOf(one), .. TermsOf(other)], one.Unit);

    /// <summary>Takes one formula from another.</summary>
    public static HandFormula operator -(HandFormula one, HandFormula other) => one + -other;

    /// <summary>Turns the sign of a formula.</summary>
    public static HandFormula operator -(HandFormula formula) =>
        formula is Minus minus ? minus.Formula : new Minus(formula);

    /// <summary>Multiplies two formulas.</summary>
    public static HandFormula operator *(HandFormula one, HandFormula other) =>
        new Product([.. FactorsOf(one), .. FactorsOf(other)]);

    /// <summary>Divides one formula by another.</summary>
    public static HandFormula operator /(HandFormula one, HandFormula other) => new Quotient(one, other);

    /// <summary>A number as a formula.</summary>
    public static implicit operator HandFormula(HandNumber number) => new Known(number);

    /// <summary>A count as a formula.</summary>
    public static implicit operator HandFormula(int count) => new Whole(count);

    /// <summary>Adds two formulas.</summary>
    /// <param name="one">One term.</param>
    /// <param name="other">The other one.</param>
    public static HandFormula Add(HandFormula one, HandFormula other) => one + other;

    /// <summary>Takes one formula from another.</summary>
    /// <param name="one">What is left of.</param>
    /// <param name="other">What is taken away.</param>
    public static HandFormula Subtract(HandFormula one, HandFormula other) => one - other;

    /// <summary>Turns the sign of a formula.</summary>
    /// <param name="formula">The formula.</param>
    public static HandFormula Negate(HandFormula formula) => -formula;

    /// <summary>Multiplies two formulas.</summary>
    /// <param name="one">One factor.</param>
    /// <param name="other">The other one.</param>
    public static HandFormula Multiply(HandFormula one, HandFormula other) => one * other;

    /// <summary>Divides one formula by another.</summary>
    /// <param name="one">What is divided.</param>
    /// <param name="other">What it is divided by.</param>
    public static HandFormula Divide(HandFormula one, HandFormula other) => one / other;

    /// <summary>A number as a formula.</summary>
    /// <param name="number">The number.</param>
    public static HandFormula FromHandNumber(HandNumber number) => new Known(number);

    /// <summary>A count as a formula.</summary>
    /// <param name="count">The count.</param>
    public static HandFormula FromInt32(int count) => new Whole(count);

    /// <summary>A sum of any number of terms, none among them.</summary>
    /// <param name="terms">The terms.</param>
    /// <param name="unit">What they are measured in.</param>
    internal static HandFormula Total(IEnumerable<HandFormula> terms, HandUnit unit) => new Sum([.. terms], unit);

    private static ImmutableArray<HandFormula> TermsOf(HandFormula formula) =>
        formula is Sum sum ? sum.Terms : [formula];

    private static ImmutableArray<HandFormula> FactorsOf(HandFormula formula) =>
        formula is Product product ? product.Factors : [formula];

    /// <summary>What was measured or typed.</summary>
    /// <param name="Value">The number [N, m or rad].</param>
    /// <param name="GivenUnit">What it is measured in.</param>
    public sealed record Given(double Value, HandUnit GivenUnit) : HandFormula
    {
        /// <inheritdoc/>
        public override HandUnit Unit => GivenUnit;
    }

    /// <summary>A number found before.</summary>
    /// <param name="Number">The number.</param>
    public sealed record Known(HandNumber Number) : HandFormula
    {
        /// <inheritdoc/>
        public override HandUnit Unit => Number.Unit;
    }

    /// <summary>A number found before, without its sign.</summary>
    /// <param name="Number">The number.</param>
    public sealed record Size(HandNumber Number) : HandFormula
    {
        /// <inheritdoc/>
        public override HandUnit Unit => Number.Unit;
    }

    /// <summary>A count, such as the 2 of a half.</summary>
    /// <param name="Value">The count.</param>
    public sealed record Whole(int Value) : HandFormula
    {
        /// <inheritdoc/>
        public override HandUnit Unit => HandUnit.Ratio;
    }

    /// <summary>Terms added up; one that is taken away is a <see cref="Minus"/>.</summary>
    /// <param name="Terms">The terms, of one unit; may be empty.</param>
    /// <param name="TermUnit">What they are measured in.</param>
    public sealed record Sum(ImmutableArray<HandFormula> Terms, HandUnit TermUnit) : HandFormula
    {
        /// <summary>The terms, of one unit; may be empty.</summary>
        public ImmutableArray<HandFormula> Terms { get; } = OfOneUnit(Terms, TermUnit);

        /// <inheritdoc/>
        public override HandUnit Unit => TermUnit;

        private static ImmutableArray<HandFormula> OfOneUnit(ImmutableArray<HandFormula> terms, HandUnit unit)
        {
            Require.That(terms.All(term => term.Unit == unit), "Terms must be of one unit.", nameof(Terms));
            return terms;
        }
    }

    /// <summary>A formula with its sign turned.</summary>
    /// <param name="Formula">The formula.</param>
    public sealed record Minus(HandFormula Formula) : HandFormula
    {
        /// <inheritdoc/>
        public override HandUnit Unit => Formula.Unit;
    }

    /// <summary>Factors multiplied.</summary>
    /// <param name="Factors">The factors, one or more.</param>
    public sealed record Product(ImmutableArray<HandFormula> Factors) : HandFormula
    {
        /// <inheritdoc/>
        public override HandUnit Unit => Factors.Aggregate(HandUnit.Ratio, (all, factor) => all * factor.Unit);
    }

    /// <summary>One formula divided by another.</summary>
    /// <param name="Dividend">What is divided.</param>
    /// <param name="Divisor">What it is divided by.</param>
    public sealed record Quotient(HandFormula Dividend, HandFormula Divisor) : HandFormula
    {
        /// <inheritdoc/>
        public override HandUnit Unit => Dividend.Unit / Divisor.Unit;
    }

    /// <summary>A formula multiplied with itself.</summary>
    /// <param name="Base">The formula.</param>
    /// <param name="Exponent">How often it stands in the product; 2 or more.</param>
    public sealed record Power(HandFormula Base, int Exponent) : HandFormula
    {
        /// <inheritdoc/>
        public override HandUnit Unit => new(Base.Unit.Force * Exponent, Base.Unit.Length * Exponent);
    }

    /// <summary>The square root of a formula; of what rounding has brought below zero, zero.</summary>
    /// <param name="Square">The formula.</param>
    public sealed record Root(HandFormula Square) : HandFormula
    {
        /// <inheritdoc/>
        public override HandUnit Unit => new(Square.Unit.Force / 2, Square.Unit.Length / 2);
    }

    /// <summary>The sine of an angle.</summary>
    /// <param name="Angle">The angle.</param>
    public sealed record Sine(HandNumber Angle) : HandFormula
    {
        /// <inheritdoc/>
        public override HandUnit Unit => HandUnit.Ratio;
    }

    /// <summary>The cosine of an angle.</summary>
    /// <param name="Angle">The angle.</param>
    public sealed record Cosine(HandNumber Angle) : HandFormula
    {
        /// <inheritdoc/>
        public override HandUnit Unit => HandUnit.Ratio;
    }
}
