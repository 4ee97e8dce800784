using System.Globalization;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>Figures by name in one cell: "duration 1.25, size 1.1".</summary>
public static class FigureText
{
    private const char Between = ',';

    /// <summary>The figures as one text; null where there are none.</summary>
    /// <param name="figures">The figures.</param>
    public static string? Of(Rows<NamedFigure>? figures) => figures is null || figures.Count == 0
        ? null
        : string.Join($"{Between} ", figures.Select(figure => $"{figure.Name} {figure.Text}"));

    /// <summary>Reads such a text; either may stand first, the name or the number.</summary>
    /// <param name="text">As typed; empty: no figures.</param>
    /// <returns>The figures, each as typed; null where a part has no figure, or no name.</returns>
    public static Rows<NamedFigure>? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        NamedFigure?[] parts =
            [.. text.Split(Between).Select(part => part.Trim()).Where(part => part.Length > 0).Select(Part)];
        return parts.All(part => part is not null)
            && parts.Select(part => part!.Name).Distinct(StringComparer.Ordinal).Count() == parts.Length
            ? [.. parts.OfType<NamedFigure>()]
            : null;
    }

    private static NamedFigure? Part(string part)
    {
        int first = part.IndexOfAny([' ', '=']);
        int last = part.LastIndexOfAny([' ', '=']);
        return last < 0 ? null
            : IsNumber(part[..first]) && !IsNumber(part[(last + 1)..])
                ? new NamedFigure(part[(first + 1)..].Trim(' ', '='), part[..first])
                : new NamedFigure(part[..last].Trim(' ', '='), part[(last + 1)..]);
    }

    private static bool IsNumber(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
}
