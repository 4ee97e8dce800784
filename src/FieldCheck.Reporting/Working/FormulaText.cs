using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using FieldCheck.Mechanics.HandMethods;

namespace FieldCheck.Reporting.Working;

/// <summary>Formulas as they are written, with their numbers.</summary>
/// <param name="Numbers">The numbers as they are written.</param>
internal sealed record FormulaText(CarriedNumbers Numbers)
{
    // What a formula binds more weakly than its surroundings needs brackets in them.
    private const int OfSum = 0;
    private const int OfProduct = 1;
    private const int OfOne = 2;

    /// <summary>A formula, as "12.00 x 1.50 - 3.20".</summary>
    internal string Of(HandFormula formula) => Written(formula, OfSum, isFirst: true);

    /// <summary>
    /// What must be worked out before a formula: each inline number of it in a line of its own, as "1.80 - 0.30 = 1.50".
    /// </summary>
    internal ImmutableArray<string> Before(HandFormula formula)
    {
        List<HandNumber> inline = [];
        Collect(formula, inline);
        return [.. inline.Select(number => $"{Of(number.Formula)} = {Numbers.Text(number)}")];
    }

    private static void Collect(HandFormula formula, List<HandNumber> inline)
    {
        switch (formula)
        {
            case HandFormula.Known { Number: { IsInline: true } number }:
                Add(number, inline);
                break;
            case HandFormula.Size { Number: { IsInline: true } number }:
                Add(number, inline);
                break;
            case HandFormula.Sum sum:
                sum.Terms.ToList().ForEach(term => Collect(term, inline));
                break;
            case HandFormula.Minus minus:
                Collect(minus.Formula, inline);
                break;
            case HandFormula.Product product:
                product.Factors.ToList().ForEach(factor => Collect(factor, inline));
                break;
            case HandFormula.Quotient quotient:
                Collect(quotient.Dividend, inline);
                Collect(quotient.Divisor, inline);
                break;
            case HandFormula.Power power:
                Collect(power.Base, inline);
                break;
            case HandFormula.Root root:
                Collect(root.Square, inline);
                break;
        }
    }

    // A number of one term, as the size of another, is nothing to be worked out.
    private static void Add(HandNumber number, List<HandNumber> inline)
    {
        Collect(number.Formula, inline);
        bool isNew = inline.All(other => !ReferenceEquals(other, number));
        if (isNew && number.Formula is not (HandFormula.Size or HandFormula.Minus { Formula: HandFormula.Known }))
        {
            inline.Add(number);
        }
    }

    private string Written(HandFormula formula, int around, bool isFirst) => formula switch
    {
        HandFormula.Known known => Signed(Numbers.Text(known.Number), around, isFirst),
        HandFormula.Size size => Numbers.Text(size.Number).TrimStart('-'),
        HandFormula.Whole whole => Signed(whole.Value.ToString(CultureInfo.InvariantCulture), around, isFirst),
        HandFormula.Given given => Signed(
            Numbers.Figures.Write(Numbers.Figures.FromSi(given.Value, given.Unit), given.Unit), around, isFirst),
        HandFormula.Sum sum => Bracketed(Sum(sum), around > OfSum && sum.Terms.Length != 1),
        HandFormula.Minus minus => Bracketed(Minus(minus.Formula), around > OfSum && !isFirst),
        HandFormula.Product product => Bracketed(
            string.Join(" x ", product.Factors.Select((factor, i) => Written(factor, OfProduct, isFirst && i == 0))),
            around > OfProduct),
        HandFormula.Quotient quotient => Bracketed(
            $"{Written(quotient.Dividend, OfProduct, isFirst)} / {Written(quotient.Divisor, OfOne, false)}",
            around > OfProduct),
        HandFormula.Power power =>
            $"{Written(power.Base, OfOne, false)}^{power.Exponent.ToString(CultureInfo.InvariantCulture)}",
        HandFormula.Root root => $"root({Written(root.Square, OfSum, true)})",
        HandFormula.Sine sine => $"sin {Numbers.Text(sine.Angle)} deg",
        HandFormula.Cosine cosine => $"cos {Numbers.Text(cosine.Angle)} deg",
        _ => throw new UnreachableException(),
    };

    private static string Signed(string number, int around, bool isFirst) =>
        number[0] == '-' && !(isFirst && around < OfOne) ? $"({number})" : number;

    private static string Bracketed(string text, bool isBracketed) => isBracketed ? $"({text})" : text;

    private string Minus(HandFormula formula) => formula is HandFormula.Known known && IsNegative(known.Number)
        ? Numbers.Text(known.Number)[1..]
        : "-" + Written(formula, OfProduct, false);

    private bool IsNegative(HandNumber number) => Numbers.Text(number)[0] == '-' && Numbers.Text(number) != "--";

    /// <summary>A term with a negative number is taken away, and one taken away that is negative is added.</summary>
    private string Sum(HandFormula.Sum sum)
    {
        StringBuilder text = new();
        foreach (HandFormula term in sum.Terms)
        {
            (bool isMinus, HandFormula inner) = term is HandFormula.Minus minus ? (true, minus.Formula) : (false, term);
            string written = inner is HandFormula.Known known && IsNegative(known.Number)
                ? Numbers.Text(known.Number)[1..]
                : Written(inner, OfProduct, false);
            isMinus ^= inner is HandFormula.Known other && IsNegative(other.Number);
            text.Append((text.Length == 0, isMinus) switch
            {
                (true, true) => "-",
                (true, false) => "",
                (false, true) => " - ",
                _ => " + ",
            }).Append(written);
        }

        return text.Length == 0 ? Numbers.Figures.Write(0, sum.Unit) : text.ToString();
    }
}
