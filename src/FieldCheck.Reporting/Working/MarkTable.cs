using System.Collections.Immutable;
using FieldCheck.Mechanics.HandMethods;

namespace FieldCheck.Reporting.Working;

/// <summary>Shear and moment at every mark, and what is greatest.</summary>
/// <param name="Words">Names and numbers.</param>
/// <param name="Marks">The marks, left to right.</param>
internal sealed record MarkTable(WorkingWords Words, ImmutableArray<HandMark> Marks)
{
    private CarriedNumbers Numbers => Words.Numbers;

    /// <summary>A row for each mark, under a row of names.</summary>
    internal IReadOnlyList<string> Rows
    {
        get
        {
            string[][] rows = [Heads(), .. Marks.Select(Cells)];
            int[] widths = [.. rows[0].Select((_, column) => rows.Max(row => row[column].Length))];
            return
            [
                .. rows.Select(row => string.Join(
                    "  ", row.Select((cell, i) => i == 0 ? cell.PadRight(widths[i]) : cell.PadLeft(widths[i])))),
            ];
        }
    }

    /// <summary>A sentence for each mark.</summary>
    internal IEnumerable<string> Sentences => Marks.Select(mark =>
        $"At {Words.Place(mark.Place)}: V {Both(mark.ShearLeft, mark.ShearRight)}; M {Both(mark.MomentLeft, mark.MomentRight)}");

    /// <summary>The greatest and the least shear and moment.</summary>
    internal IEnumerable<string> Greatest =>
    [
        GreatestOf("V", Marks.SelectMany(mark => new[] { (mark, mark.ShearLeft), (mark, mark.ShearRight) })),
        GreatestOf("M", Marks.SelectMany(mark => new[] { (mark, mark.MomentLeft), (mark, mark.MomentRight) })),
    ];

    private string[] Heads()
    {
        string force = Numbers.Figures.UnitOf(HandUnit.OfForce);
        string moment = Numbers.Figures.UnitOf(HandUnit.OfMoment);
        return ["", $"x, {Numbers.Figures.UnitOf(HandUnit.OfLength)}", $"V left, {force}", "V right", $"M left, {moment}", "M right"];
    }

    private string[] Cells(HandMark mark) =>
    [
        NameOf(mark),
        Numbers.Text(mark.Place),
        Numbers.TextOrNothing(mark.ShearLeft),
        ReferenceEquals(mark.ShearLeft, mark.ShearRight) ? "" : Numbers.TextOrNothing(mark.ShearRight),
        Numbers.TextOrNothing(mark.MomentLeft),
        ReferenceEquals(mark.MomentLeft, mark.MomentRight) ? "" : Numbers.TextOrNothing(mark.MomentRight),
    ];

    private string NameOf(HandMark mark)
    {
        string place = Words.Place(mark.Place);
        return mark.IsPeak ? "peak" : place.StartsWith("x = ", StringComparison.Ordinal) ? "" : place;
    }

    private string Both(HandNumber left, HandNumber right) => ReferenceEquals(left, right)
        ? Say(left)
        : $"{Say(left)} left, {Say(right)} right";

    private string Say(HandNumber number) => $"{Numbers.TextOrNothing(number)} {Numbers.Figures.UnitOf(number.Unit)}";

    private string GreatestOf(string name, IEnumerable<(HandMark Mark, HandNumber Number)> values)
    {
        (HandMark Mark, HandNumber Number)[] all = [.. values];
        (HandMark Mark, HandNumber Number) most = all.MaxBy(one => Shown(one.Number));
        (HandMark Mark, HandNumber Number) least = all.MinBy(one => Shown(one.Number));
        return $"{name}: greatest {Say(most.Number)} at {Words.Place(most.Mark.Place)}, "
            + $"least {Say(least.Number)} at {Words.Place(least.Mark.Place)}";
    }

    // What is left of rounding is no peak.
    private double Shown(HandNumber number) => Numbers.IsNothing(number) ? 0 : Numbers.Value(number);
}
