using System.Collections;
using System.Globalization;
using System.Reflection;
using FieldCheck.Mechanics.HandMethods;

namespace FieldCheck.Mechanics.Tests.HandMethods;

/// <summary>
/// A working as short text, every property of every line: what is found with its formula, value and sense, what is said with
/// all that it names. What is false, none or empty is left out.
/// </summary>
internal static class HandTrace
{
    // In the beams of these tests, of newtons and metres: what is left of sums that come to nothing.
    private const double Rounding = 1e-9;

    internal const string Found = "Found";

    /// <summary>
    /// The lines of a working, then how far it came and what it found; or of some steps alone, <see cref="Found"/> among them.
    /// </summary>
    internal static string Of(HandWorking working, params string[] steps)
    {
        List<string> lines = [];
        bool isAsked = true;
        foreach (HandLine line in working.Lines)
        {
            isAsked = line is HandLine.Begins begins ? steps.Length == 0 || steps.Contains(begins.Title.GetType().Name) : isAsked;
            lines.AddRange(isAsked ? Lines(line) : []);
        }

        return string.Join('\n', steps.Length == 0 || steps.Contains(Found) ? lines.Concat(Result(working)) : lines);
    }

    private static IEnumerable<string> Result(HandWorking working) =>
    [
        $"= {working.Reach}",
        .. working.Reactions.Select((one, i) => $"{i}:" + Part("H", one.Horizontal) + Part("V", one.Vertical)
            + Part("C", one.Couple) + Part("N", one.Normal) + (one.HasLetGo ? " let go" : "")),
    ];

    private static string Part(string letter, HandNumber? number) => number is null ? "" : $" {letter} {Value(number)}";

    private static IEnumerable<string> Lines(HandLine line) => line switch
    {
        HandLine.Begins begins => ["# " + All(begins.Title)],
        HandLine.Says says => ["- " + All(says.What)],
        HandLine.Finds finds =>
        [
            (finds.Number.Name is HandName name ? Name(name) : "?") + " = " + Worked(finds.Number)
                + (finds.Sense == HandSense.None ? "" : $" {finds.Sense}")
                + (finds.Actor is HandActor actor ? $" of {All(actor)}" : "")
                + (finds.At is HandNumber at ? $" at {Text(at)}" : ""),
        ],
        HandLine.Turns turns =>
        [
            $"{Name(turns.Unknown)} turns {turns.Sense}" + (turns.Arm is HandNumber arm ? " by " + Worked(arm) : ""),
        ],
        HandLine.Balances balances => [$"{Terms(balances.Terms, Text)} + {Text(balances.Together)} = 0"],
        HandLine.Sets sets => [$"({sets.Row}) {Terms(sets.Equation.Terms, Text)} = {Text(sets.Equation.Constant)}"],
        HandLine.Expresses expresses =>
        [
            $"({expresses.Row}) {Name(expresses.Unknown)} = {Worked(expresses.Constant)}, less {Terms(expresses.Others, Worked)}",
        ],
        HandLine.Closes closes =>
        [
            (closes.Sum.Name is HandName name ? Name(name) : "?")
                + $" closes {Text(closes.Sum.Formula)} = {Value(closes.Sum)} of {Digits(closes.Scale)}",
        ],
        HandLine.Marks marks => marks.All.Select(mark =>
            $"| {Digits(mark.Place.Value)}: V {Both(mark.ShearLeft, mark.ShearRight)} M {Both(mark.MomentLeft, mark.MomentRight)}"
            + (mark.IsPeak ? " peak" : "")),
        _ => throw new ArgumentOutOfRangeException(nameof(line), line, "Not a line."),
    };

    private static string Both(HandNumber left, HandNumber right) =>
        left == right ? Digits(left.Value) : $"{Digits(left.Value)}|{Digits(right.Value)}";

    private static string Terms(IEnumerable<HandTerm> terms, Func<HandNumber, string> text) =>
        string.Join(" + ", terms.Select(term => $"{text(term.Coefficient)} {Name(term.Unknown)}"));

    /// <summary>The formula and what comes out of it.</summary>
    private static string Worked(HandNumber number)
    {
        string formula = Text(number.Formula);
        return formula == Digits(number.Value) ? Value(number) : $"{formula} = {Value(number)}";
    }

    /// <summary>Name of a record and its properties, in their order.</summary>
    private static string All(object record) => record.GetType().Name + string.Concat(record.GetType()
        .GetProperties(BindingFlags.Public | BindingFlags.Instance)
        .Select(property => (property.Name, Value: property.GetValue(record)))
        .Where(one => one.Value is not (null or false))
        .Select(one => " " + (one.Value is true ? one.Name : one.Value is HandNumber or HandName or Enum
            ? Any(one.Value)
            : $"{one.Name} {Any(one.Value!)}")));

    private static string Any(object value) => value switch
    {
        HandNumber number => Text(number),
        HandName name => Name(name),
        HandActor actor => All(actor),
        IEnumerable list => "[" + string.Join(", ", list.Cast<object>().Select(Any)) + "]",
        _ => Convert.ToString(value, CultureInfo.InvariantCulture)!,
    };

    private static string Name(HandName name)
    {
        string role = name.Role switch
        {
            HandRole.Horizontal => "H",
            HandRole.Vertical => "V",
            HandRole.Couple => "C",
            HandRole.Normal => "N",
            HandRole.HingeForce => "G",
            _ => name.Role.ToString(),
        };
        return $"{role}{name.Index}" + (name.Part == HandName.OnlyPart ? ".only" : name.Part == 0 ? "" : $".{name.Part}");
    }

    /// <summary>A number in a line: by its name, its value, or its formula where that is written out.</summary>
    private static string Text(HandNumber number) => number switch
    {
        { IsInline: true } => $"({Text(number.Formula)})",
        { Name: HandName name, Formula: HandFormula.Given } => $"{Name(name)}[{Digits(number.Value)}]",
        { Name: HandName name } => Name(name),
        { Formula: HandFormula.Given } => Digits(number.Value),
        _ => $"[{Digits(number.Value)}]",
    };

    private static string Text(HandFormula formula) => formula switch
    {
        HandFormula.Given given => Digits(given.Value),
        HandFormula.Known known => Text(known.Number),
        HandFormula.Size size => $"|{Text(size.Number)}|",
        HandFormula.Whole whole => Digits(whole.Value),
        HandFormula.Sum { Terms.IsEmpty: true } => "0",
        HandFormula.Sum sum => string.Join(" + ", sum.Terms.Select(Text)).Replace("+ -", "- ", StringComparison.Ordinal),
        HandFormula.Minus minus => "-" + Bracketed(minus.Formula),
        HandFormula.Product product => string.Join(" * ", product.Factors.Select(Bracketed)),
        HandFormula.Quotient quotient => $"{Bracketed(quotient.Dividend)} / {Bracketed(quotient.Divisor)}",
        HandFormula.Power power => $"{Bracketed(power.Base)}^{power.Exponent}",
        HandFormula.Root root => $"sqrt({Text(root.Square)})",
        HandFormula.Sine sine => $"sin({Text(sine.Angle)})",
        HandFormula.Cosine cosine => $"cos({Text(cosine.Angle)})",
        _ => throw new ArgumentOutOfRangeException(nameof(formula), formula, "Not a formula."),
    };

    private static string Bracketed(HandFormula formula) =>
        formula is HandFormula.Sum or HandFormula.Quotient or HandFormula.Product or HandFormula.Minus
            ? $"({Text(formula)})"
            : Text(formula);

    private static string Value(HandNumber number) => Digits(number.Value) + (number.Unit switch
    {
        { IsAngle: true } => " rad",
        { Force: 0, Length: 0 } => "",
        { Force: 0, Length: 1 } => " m",
        { Force: 1, Length: 0 } => " N",
        { Force: 1, Length: 1 } => " Nm",
        { Force: 1, Length: -1 } => " N/m",
        HandUnit unit => $" N{unit.Force}m{unit.Length}",
    });

    private static string Digits(double value) =>
        (Math.Abs(value) < Rounding ? 0 : value).ToString("G6", CultureInfo.InvariantCulture);
}
