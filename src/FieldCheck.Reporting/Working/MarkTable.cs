using System.Collections.Immutable;
using FieldCheck.Mechanics.HandMethods;

namespace FieldCheck.Reporting.Working;

/// <summary>Shear and moment at every mark in columns, with what is greatest.</summary>
internal static class MarkTable
{
    internal static IEnumerable<string> Of(WorkingWords words, ImmutableArray<HandMark> marks)
    {
        CarriedNumbers numbers = words.Numbers;
        string force = numbers.Figures.UnitOf(HandUnit.OfForce);
        string moment = numbers.Figures.UnitOf(HandUnit.OfMoment);
        string length = numbers.Figures.UnitOf(HandUnit.OfLength);
        List<string[]> rows = [["", $"x, {length}", $"V left, {force}", "V right", $"M left, {moment}", "M right"]];
        foreach (HandMark mark in marks)
        {
            rows.Add(
            [
                NameOf(words, mark),
                numbers.Text(mark.Place),
                numbers.Text(mark.ShearLeft),
                ReferenceEquals(mark.ShearLeft, mark.ShearRight) ? "" : numbers.Text(mark.ShearRight),
                numbers.Text(mark.MomentLeft),
                ReferenceEquals(mark.MomentLeft, mark.MomentRight) ? "" : numbers.Text(mark.MomentRight),
            ]);
        }

        int[] widths = [.. Enumerable.Range(0, rows[0].Length).Select(column => rows.Max(row => row[column].Length))];
        return rows
            .Select(row => string.Join("  ", row.Select((cell, i) => i == 0 ? cell.PadRight(widths[i]) : cell.PadLeft(widths[i]))))
            .Concat([Greatest("V", marks.SelectMany(mark => new[] { (mark, mark.ShearLeft), (mark, mark.ShearRight) }), words),
                Greatest("M", marks.SelectMany(mark => new[] { (mark, mark.MomentLeft), (mark, mark.MomentRight) }), words)]);
    }

    private static string NameOf(WorkingWords words, HandMark mark)
    {
        string place = words.Place(mark.Place);
        return mark.IsPeak ? "peak" : place.StartsWith("x = ", StringComparison.Ordinal) ? "" : place;
    }

    private static string Greatest(string name, IEnumerable<(HandMark Mark, HandNumber Number)> values, WorkingWords words)
    {
        (HandMark Mark, HandNumber Number)[] all = [.. values];
        (HandMark Mark, HandNumber Number) most = all.MaxBy(one => one.Number.Value);
        (HandMark Mark, HandNumber Number) least = all.MinBy(one => one.Number.Value);
        return $"{name} greatest {words.Numbers.Say(most.Number)} at {words.Place(most.Mark.Place)}, least {words.Numbers.Say(least.Number)} at {words.Place(least.Mark.Place)}";
    }
}
