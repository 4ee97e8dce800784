using System.Collections.Immutable;

namespace FieldCheck.Reporting.Drawing;

/// <summary>Peaks and zeros of several curves in words, in few lines.</summary>
public static class PeakLines
{
    private const string More = "...";

    /// <summary>The words, each curve by its name, broken into lines.</summary>
    /// <param name="curves">The curves.</param>
    /// <param name="width">Columns of a line; 20 or more.</param>
    /// <param name="mostLines">
    /// How many lines there may be. Where not all fits the least ones go, and the greatest of each sign stay; "..." says so.
    /// </param>
    public static ImmutableArray<string> Of(IEnumerable<PlotCurve> curves, int width, int mostLines)
    {
        ArgumentNullException.ThrowIfNull(curves);
        (string Name, string Text, double Weight)[] items =
        [
            .. curves.SelectMany(curve => PeakWords.Weighted(curve)
                .Select(item => (curve.Edge.FirstOrDefault("peaks"), item.Text, item.Weight))),
        ];
        if (items.Length == 0 || mostLines < 1)
        {
            return [];
        }

        int[] byWeight = [.. Enumerable.Range(0, items.Length).OrderByDescending(index => items[index].Weight)];

        // The most items that fit, found by halving: each try breaks a whole text into lines.
        int fits = 0;
        int fitsNot = items.Length + 1;
        while (fitsNot - fits > 1)
        {
            int middle = (fits + fitsNot) / 2;
            (fits, fitsNot) = Lines(items, byWeight[..middle], width).Length <= mostLines ? (middle, fitsNot) : (fits, middle);
        }

        return fits > 0
            ? Lines(items, byWeight[..fits], width)
            : [.. Lines(items, byWeight[..1], width).Take(mostLines)];
    }

    private static ImmutableArray<string> Lines((string Name, string Text, double Weight)[] items, int[] kept, int width)
    {
        List<string> said = [];
        string? last = null;
        foreach (int index in kept.Order())
        {
            (string name, string text, _) = items[index];
            said.Add(name == last ? text : $"{name}: {text}");
            last = name;
        }

        if (kept.Length < items.Length && kept.Length > 0)
        {
            said.Add(More);
        }

        return TextFlow.Join(said, "   ", width, indent: 2);
    }
}
