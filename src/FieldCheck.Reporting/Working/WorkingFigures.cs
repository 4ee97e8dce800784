using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Mechanics.HandMethods;

namespace FieldCheck.Reporting.Working;

/// <summary>The lines of a working that hold numbers.</summary>
/// <param name="Words">Names and numbers.</param>
internal sealed record WorkingFigures(WorkingWords Words)
{
    // Of terms of a million kN the digits that results are shown with are not all held.
    private const double Rounding = 1e-8;

    private CarriedNumbers Numbers => Words.Numbers;

    private WorkingNames Names => Words.Names;

    private FormulaText Formulas => new(Numbers);

    /// <summary>A line of figures, as "V_B = 39.60 / 2.40 = 16.50 kN up".</summary>
    internal string Of(HandLine line) => line switch
    {
        HandLine.Finds finds => Finds(finds),
        HandLine.Turns turns => Turns(turns),
        HandLine.Balances balances => Balances(balances),
        HandLine.Sets sets => Sets(sets),
        HandLine.Expresses expresses => Expresses(expresses),
        HandLine.Closes closes => Closes(closes),
        _ => throw new UnreachableException(),
    };

    private string Finds(HandLine.Finds finds)
    {
        HandNumber number = finds.Number;
        string name = number.Name is HandName named ? $"{Names.Of(named)} = " : "";
        string actor = finds.Actor is null ? "" : $"{Names.Of(finds.Actor)}{Words.SizeTyped(finds.Actor)}: ";
        string formula = number.Formula is HandFormula.Given ? "" : Formulas.Of(number.Formula);
        string said = Numbers.Say(number);
        string worked = formula.Length == 0 || formula == Numbers.Text(number) ? "" : $"{formula} = ";
        string at = finds.At is HandNumber place
            ? $", at x = {Numbers.Say(place)}{Words.PlaceTyped(finds.Actor)}"
            : "";
        return actor + Steps(number.Formula) + name + worked + said + Sense(finds) + at;
    }

    /// <summary>What comes before a formula, each followed by a semicolon.</summary>
    private string Steps(HandFormula formula) =>
        string.Concat(Formulas.Before(formula).Select(step => $"{step}; "));

    private string Sense(HandLine.Finds finds)
    {
        if (Numbers.Value(finds.Number) == 0)
        {
            return "";
        }

        bool isNegative = finds.Number.Value < 0;
        return finds.Sense switch
        {
            HandSense.Down => " down",
            HandSense.Up => " up",
            HandSense.Right => " right",
            HandSense.Left => " left",
            HandSense.CounterClockwise => " ccw",
            HandSense.Clockwise => " cw",
            _ => finds.Number.Name?.Role switch
            {
                HandRole.Vertical => Way(finds.Number, isNegative, "up", "down"),
                HandRole.Horizontal => Way(finds.Number, isNegative, "right", "left"),
                HandRole.Couple => Way(finds.Number, isNegative, "ccw", "cw"),
                HandRole.Normal => Way(finds.Number, isNegative, "push", "pull"),
                HandRole.SupportMoment or HandRole.MomentLeft or HandRole.MomentRight or HandRole.PeakMoment =>
                    isNegative ? " (hogging)" : " (sagging)",
                _ => "",
            },
        };
    }

    private string Way(HandNumber number, bool isNegative, string positive, string negative) =>
        isNegative ? $", that is {Numbers.SaySize(number)} {negative}" : $" {positive}";

    private string Turns(HandLine.Turns turns)
    {
        string name = Names.Of(turns.Unknown);
        if (turns.Sense == HandSense.None)
        {
            return $"{name}: passes through the point, no arm";
        }

        string sense = turns.Sense == HandSense.CounterClockwise ? "ccw" : "cw";
        if (turns.Arm is not HandNumber arm)
        {
            return $"{name}: itself a couple, {sense} where it is positive";
        }

        string steps = arm.Formula is HandFormula.Given ? "" : $"{Formulas.Of(arm.Formula)} = {Numbers.Text(arm)}; ";
        return $"{name}: {steps}{name} x {Numbers.Text(arm)}, {sense} where {name} is positive";
    }

    private string Balances(HandLine.Balances balances)
    {
        string together = Numbers.Text(balances.Together);
        string known = together[0] == '-' ? $" - {together[1..]}" : $" + {together}";
        return $"{Terms(balances.Terms)}{known} = 0";
    }

    private string Sets(HandLine.Sets sets)
    {
        string row = sets.Row == 0 ? "" : $"row {sets.Row}: ";
        string steps = string.Concat(sets.Equation.Terms
            .Where(term => term.Coefficient.IsInline)
            .Select(term => (HandFormula)term.Coefficient)
            .Append(sets.Equation.Constant)
            .SelectMany(formula => Formulas.Before(formula))
            .Select(step => $"{step}; "));
        return $"{row}{steps}{Terms(sets.Equation.Terms)} = {Numbers.Text(sets.Equation.Constant)}";
    }

    private string Expresses(HandLine.Expresses expresses)
    {
        string unknown = Names.Of(expresses.Unknown);
        string divided = expresses.Constant.Formula is HandFormula.Quotient
            ? $"{Divided(expresses)} = "
            : "";
        return $"row {expresses.Row}: {unknown} = {divided}{Numbers.Text(expresses.Constant)}{Taken(expresses.Others)}";
    }

    private string Divided(HandLine.Expresses expresses) => Formulas.Of(expresses.Constant.Formula)
        + string.Concat(expresses.Others.Select(other => other.Coefficient.Formula is HandFormula.Quotient quotient
            ? $" - ({Formulas.Of(quotient)}) {Names.Of(other.Unknown)}"
            : Taken([other])));

    private string Taken(ImmutableArray<HandTerm> others) => string.Concat(others.Select(other =>
    {
        string text = Numbers.Text(other.Coefficient);
        string sign = text[0] == '-' ? "+" : "-";
        return $" {sign} {Coefficient(text.TrimStart('-'))}{Names.Of(other.Unknown)}";
    }));

    private string Terms(ImmutableArray<HandTerm> terms)
    {
        string text = string.Concat(terms.Select((term, i) =>
        {
            string number = Numbers.Text(term.Coefficient);
            bool isNegative = number[0] == '-';
            string sign = i == 0 ? isNegative ? "-" : "" : isNegative ? " - " : " + ";
            return $"{sign}{Coefficient(number.TrimStart('-'))}{Names.Of(term.Unknown)}";
        }));
        return text.Length == 0 ? "0" : text;
    }

    private static string Coefficient(string number) => number == "1" ? "" : $"{number} ";

    private string Closes(HandLine.Closes closes)
    {
        HandNumber sum = closes.Sum;
        string formula = Formulas.Of(sum.Formula);
        string name = sum.Name is HandName named ? $"{Names.Of(named)} = " : "";
        string value = Numbers.Text(sum);
        string unit = Numbers.Figures.UnitOf(sum.Unit);
        string worked = formula == value ? "" : $"{formula} = ";
        string verdict = !IsClosed(closes) ? "DOES NOT CLOSE"
            : Numbers.IsNothing(sum) ? value == Numbers.Rest(sum) ? "closes" : "closes to the figures shown"
            : "closes, beside terms of such size";
        return $"{name}{worked}{value} {unit}: {verdict}";
    }

    /// <summary>
    /// True: what must come to nothing does, to the digits that results are shown with, or beside the size of its terms.
    /// </summary>
    internal bool IsClosed(HandLine.Closes closes) => Numbers.IsNothing(closes.Sum)
        || Math.Abs(Numbers.InSi(closes.Sum)) <= Rounding * closes.Scale;
}
