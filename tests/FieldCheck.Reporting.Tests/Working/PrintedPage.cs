using System.Globalization;
using System.Text.RegularExpressions;
using FieldCheck.Reporting.Working;

namespace FieldCheck.Reporting.Tests.Working;

/// <summary>Reads a printed working as its reader would, and works every line of figures again from what is printed.</summary>
internal sealed partial class PrintedPage
{
    // Every number has so many decimals, zeros at its end left out.
    private const int LeastDecimals = 4;

    private static readonly Dictionary<string, double> NoNames = [];

    private readonly string[] _statements;
    private readonly Dictionary<string, double> _names;

    private PrintedPage(IEnumerable<WorkingLine> lines)
    {
        _statements =
        [
            .. lines.Where(line => line.Kind == WorkingLineKind.Figures && line.Text.Contains(" = ", StringComparison.Ordinal))
                .SelectMany(line => Closing().Replace(Place().Replace(line.Text, ""), "").Trim().Split("; "))
                .Select(statement => Label().Replace(statement, ""))
                .Where(statement => statement.Contains(" = ", StringComparison.Ordinal)),
        ];
        _names = new Dictionary<string, double>();
        foreach (string statement in _statements)
        {
            string[] sides = statement.Split(" = ");
            if (Identifier().IsMatch(sides[0]) && Leading().Match(sides[^1]) is { Success: true } number)
            {
                _names[sides[0]] = Value(number);
            }
        }
    }

    /// <summary>Works every line again.</summary>
    /// <param name="lines">A page wide enough that no line is broken.</param>
    /// <returns>How many results were found again.</returns>
    internal static int WorkAgain(IEnumerable<WorkingLine> lines) => new PrintedPage(lines).WorkAgain();

    private int WorkAgain() => _statements.Sum(WorkAgain);

    private int WorkAgain(string statement)
    {
        string[] sides = statement.Split(" = ");
        bool isNumber = !PrintedExpression.TryWork(sides[^1], _names, out double last)
            || PrintedExpression.TryWork(sides[^1], NoNames, out _);
        if (isNumber)
        {
            Match number = Leading().Match(sides[^1]);
            Assert.True(number.Success, $"No result: {statement}");
            last = Value(number);
        }

        int worked = 0;
        foreach (string side in sides[..^1])
        {
            if (side == sides[0] && Words().IsMatch(side))
            {
                continue;
            }

            if (PrintedExpression.TryWork(side, NoNames, out double exact) && isNumber)
            {
                worked++;
                Assert.True(
                    Math.Abs(exact - last) <= HalfOfLastDigit(sides[^1], last),
                    $"{side} is {exact.ToString("R", CultureInfo.InvariantCulture)}: {statement}");
            }
            else if (PrintedExpression.TryWork(side, _names, out double found))
            {
                worked++;
                double slack = SlackOf(side) + SlackOf(sides[^1]);
                Assert.True(Math.Abs(found - last) <= slack, $"{side} comes to {found:R}: {statement}");
            }
            else
            {
                Assert.Fail($"Cannot be worked again: {side} in {statement}");
            }
        }

        return worked;
    }

    private static double HalfOfLastDigit(string written, double value)
    {
        string digits = Leading().Match(written).Value;
        int power = digits.IndexOf('e', StringComparison.Ordinal);
        if (power >= 0)
        {
            return HalfOfLastDigit(digits[..power] + " ", 1e6) * Math.Pow(10, int.Parse(digits[(power + 1)..], CultureInfo.InvariantCulture));
        }

        int point = digits.IndexOf('.', StringComparison.Ordinal);
        int decimals = Math.Max(point < 0 ? 0 : digits.Length - point - 1, Math.Abs(value) < 1e5 ? LeastDecimals : 0);
        return 0.5000001 * Math.Pow(10, -decimals) + 1e-11 * Math.Abs(value);
    }

    // Names stand for numbers that were rounded on the way: a row is off by a share of what its terms come to.
    private double SlackOf(string side)
    {
        Dictionary<string, double> sizes = _names.ToDictionary(pair => pair.Key, pair => Math.Abs(pair.Value));
        string sum = side.Replace("-", "+", StringComparison.Ordinal).TrimStart('+');
        return 1e-3 * (PrintedExpression.TryWork(sum, sizes, out double size) ? size : 0) + 1e-3;
    }

    private static double Value(Match number) => double.Parse(number.Value, NumberStyles.Float, CultureInfo.InvariantCulture);

    [GeneratedRegex(@", at x = .*$")]
    private static partial Regex Place();

    [GeneratedRegex(@": (closes.*|DOES NOT CLOSE)$")]
    private static partial Regex Closing();

    [GeneratedRegex(@"^[A-Za-z][^=]*?: ")]
    private static partial Regex Label();

    [GeneratedRegex(@"^[A-Za-z]\w*$")]
    private static partial Regex Identifier();

    [GeneratedRegex(@"^[A-Za-z][\w ]*$")]
    private static partial Regex Words();

    [GeneratedRegex(@"^-?\d[\d.]*(e\d+)?")]
    private static partial Regex Leading();
}
