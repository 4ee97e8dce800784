using System.Collections.Immutable;

namespace FieldCheck.Mechanics.HandMethods;

/// <summary>
/// Solves a small system as on paper: an unknown is expressed by the others, put into the rows that have it, and so on
/// until one is left; then back.
/// </summary>
/// <remarks>
/// Of the rows left, the one with the fewest unknowns is taken, and in it the unknown with the largest coefficient beside
/// what else that unknown is multiplied with: few lines first, then little rounding.
/// </remarks>
internal sealed class Substitution
{
    // What is left of two coefficients that cancel.
    private const double Rounding = 1e-13;

    private readonly HandWriter _writer;
    private readonly List<Row> _rows;
    private readonly List<(HandName Unknown, HandNumber Constant, ImmutableArray<HandTerm> Others)> _expressed = [];

    private Substitution(HandWriter writer, List<Row> rows)
    {
        _writer = writer;
        _rows = rows;
    }

    /// <summary>Solves as many equations as there are unknowns, writing every line.</summary>
    /// <param name="writer">Takes the lines.</param>
    /// <param name="equations">The equations, which stand written already, as rows 1, 2, ….</param>
    /// <returns>The unknowns.</returns>
    /// <exception cref="ArgumentException">The equations do not decide the unknowns.</exception>
    internal static Dictionary<HandName, HandNumber> Solve(HandWriter writer, IReadOnlyList<HandEquation> equations)
    {
        Dictionary<HandName, HandNumber>? found = TrySolve(writer, equations);
        Require.That(found is not null, "The equations must decide the unknowns.", nameof(equations));
        return found!;
    }

    /// <summary>As <see cref="Solve"/>; what does not decide the unknowns is written as far as it goes.</summary>
    /// <param name="writer">Takes the lines.</param>
    /// <param name="equations">The equations, which stand written already, as rows 1, 2, ….</param>
    /// <returns>The unknowns; null: the equations do not decide them.</returns>
    internal static Dictionary<HandName, HandNumber>? TrySolve(
        HandWriter writer, IReadOnlyList<HandEquation> equations)
    {
        List<Row> rows = [.. equations.Select((equation, i) => new Row(
            i + 1,
            equation.Terms.Where(term => term.Coefficient.Value != 0)
                .ToDictionary(term => term.Unknown, term => term.Coefficient),
            equation.Constant))];
        Substitution system = new(writer, rows);
        while (rows.Count > 0)
        {
            if (rows.Any(row => row.Terms.Count == 0))
            {
                return null;
            }

            system.Express();
        }

        return system.GoBack();
    }

    private void Express()
    {
        Row row = _rows.MinBy(one => (one.Terms.Count, one.Number))!;
        HandName unknown = row.Terms.MaxBy(term => Math.Abs(term.Value.Value) / Largest(term.Key)).Key;
        HandNumber pivot = row.Terms[unknown];
        _rows.Remove(row);
        HandNumber constant = Quotient(row.Constant, pivot);
        ImmutableArray<HandTerm> others =
        [
            .. row.Terms.Where(term => term.Key != unknown)
                .Select(term => new HandTerm(Quotient(term.Value, pivot), term.Key)),
        ];
        if (others.IsEmpty)
        {
            constant = new HandNumber(constant.Formula, unknown);
            _writer.Add(new HandLine.Finds(constant));
        }
        else
        {
            _writer.Add(new HandLine.Expresses(unknown, constant, others, row.Number));
        }

        _expressed.Add((unknown, constant, others));
        foreach (Row other in _rows.Where(one => one.Terms.ContainsKey(unknown)))
        {
            Put(unknown, constant, others, other);
        }
    }

    private double Largest(HandName unknown) => _rows
        .Where(row => row.Terms.ContainsKey(unknown))
        .Max(row => Math.Abs(row.Terms[unknown].Value));

    private static HandNumber Quotient(HandNumber of, HandNumber by) =>
        IsOne(by) ? of : new HandNumber((HandFormula)of / by);

    private static HandFormula Product(HandNumber one, HandNumber other) =>
        IsOne(one) ? other : IsOne(other) ? one : (HandFormula)one * other;

    private static bool IsOne(HandNumber number) => number == HandNumber.One;

    private void Put(HandName unknown, HandNumber constant, ImmutableArray<HandTerm> others, Row row)
    {
        HandNumber factor = row.Terms[unknown];
        row.Terms.Remove(unknown);
        _writer.Say(new HandRemark.PutsInto(unknown, row.Number));
        foreach (HandTerm other in others)
        {
            HandFormula change = -Product(factor, other.Coefficient);
            HandFormula sum = row.Terms.TryGetValue(other.Unknown, out HandNumber? before) ? before + change : change;
            HandNumber coefficient = _writer.Find(sum, new HandActor.Coefficient(other.Unknown));
            row.Terms[other.Unknown] = coefficient;
            if (before is not null && Math.Abs(coefficient.Value) <= Rounding * Math.Abs(before.Value))
            {
                row.Terms.Remove(other.Unknown);
            }
        }

        row.Constant = _writer.Find((HandFormula)row.Constant - Product(factor, constant), new HandActor.RightSide());
        _writer.Add(new HandLine.Sets(
            new HandEquation([.. row.Terms.Select(term => new HandTerm(term.Value, term.Key))], row.Constant), row.Number));
    }

    private Dictionary<HandName, HandNumber> GoBack()
    {
        Dictionary<HandName, HandNumber> found = [];
        for (int i = _expressed.Count - 1; i >= 0; i--)
        {
            (HandName unknown, HandNumber constant, ImmutableArray<HandTerm> others) = _expressed[i];
            found[unknown] = others.IsEmpty
                ? constant
                : _writer.Find(
                    others.Aggregate(
                        (HandFormula)constant,
                        (sum, other) => sum - Product(other.Coefficient, found[other.Unknown])),
                    unknown);
        }

        return found;
    }

    private sealed class Row(int number, Dictionary<HandName, HandNumber> terms, HandNumber constant)
    {
        internal int Number { get; } = number;

        internal Dictionary<HandName, HandNumber> Terms { get; } = terms;

        internal HandNumber Constant { get; set; } = constant;
    }
}
