using System.Collections.Immutable;
using FieldCheck.Mechanics.HandMethods;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>Follows a working as a reader does: every number in a line stands in a line before, or was given.</summary>
internal sealed class FoundBeforeUse
{
    private readonly HashSet<HandNumber> _found = [];

    internal static void Check(ImmutableArray<HandLine> lines)
    {
        FoundBeforeUse reader = new();
        foreach (HandLine line in lines)
        {
            reader.Read(line);
        }
    }

    private void Read(HandLine line)
    {
        switch (line)
        {
            case HandLine.Finds finds:
                Known(finds.Number.Formula, line);
                Assert.True(_found.Add(finds.Number), $"Found twice: {line}");
                break;
            case HandLine.Sets sets:
                Shown(sets.Equation.Constant, line);
                sets.Equation.Terms.ToList().ForEach(term => Shown(term.Coefficient, line));
                break;
            case HandLine.Expresses expresses:
                Shown(expresses.Constant, line);
                expresses.Others.ToList().ForEach(term => Shown(term.Coefficient, line));
                break;
        }
    }

    /// <summary>A number that the line itself shows.</summary>
    private void Shown(HandNumber number, HandLine line)
    {
        Known(number.Formula, line);
        _found.Add(number);
    }

    private void Known(HandFormula formula, HandLine line)
    {
        switch (formula)
        {
            case HandFormula.Known known:
                Known(known.Number, line);
                break;
            case HandFormula.Size size:
                Known(size.Number, line);
                break;
            case HandFormula.Sum sum:
                sum.Terms.ToList().ForEach(term => Known(term, line));
                break;
            case HandFormula.Minus minus:
                Known(minus.Formula, line);
                break;
            case HandFormula.Product product:
                product.Factors.ToList().ForEach(factor => Known(factor, line));
                break;
            case HandFormula.Quotient quotient:
                Known(quotient.Dividend, line);
                Known(quotient.Divisor, line);
                break;
            case HandFormula.Power power:
                Known(power.Base, line);
                break;
        }
    }

    private void Known(HandNumber number, HandLine line)
    {
        if (number.Formula is HandFormula.Given || _found.Contains(number))
        {
            return;
        }

        Assert.True(number.IsInline, $"No line finds {number.Name}, which {line} uses.");
        Known(number.Formula, line);
    }
}
