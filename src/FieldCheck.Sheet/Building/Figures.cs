using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.Sheet.Building;

/// <summary>Named figures, as <c>factors = { dead = 1.2 }</c>.</summary>
internal static class Figures
{
    /// <summary>Tells what is wrong with the figures of a row.</summary>
    /// <param name="field">The key that holds them.</param>
    /// <param name="entry">The row.</param>
    /// <param name="path">Key path of the row.</param>
    /// <param name="problems">Takes what is wrong.</param>
    /// <param name="doubt">What is wrong with a name; null: nothing.</param>
    internal static void Check<T>(
        FiguresField<T> field, T entry, string path, ProblemList problems, Func<string, string?> doubt)
    {
        HashSet<string> names = new(StringComparer.Ordinal);
        foreach (NamedFigure figure in field.Get(entry))
        {
            string key = $"{path}.{field.Key}.{TomlText.Key(figure.Name)}";
            string? wrong = string.IsNullOrWhiteSpace(figure.Name) ? ProblemText.EmptyName
                : !names.Add(figure.Name) ? ProblemText.SameName("figure", figure.Name)
                : doubt(figure.Name);
            if (wrong is not null)
            {
                problems.Add(key, wrong);
            }

            Row.Read(figure.Text, field.Wanted, key, problems);
        }
    }

    /// <summary>The number of a figure that has been checked.</summary>
    internal static double Number(NamedFigure figure) =>
        ((Reading<double?>.Accepted)CellReading.Read(figure.Text, new Wanted.BareNumber())).Value!.Value;
}
