using System.Diagnostics;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>The cells of a combination's row.</summary>
internal static class CombinationCells
{
    internal static string? TextOf(BeamDocument document, CombinationEntry row, FormColumn column) => column switch
    {
        FormColumn.Name => row.Name,
        FormColumn.Basis => row.Basis,
        _ => CaseIn(document, column) is string name
            ? row.Factors.FirstOrDefault(factor => factor.Name == name)?.Text
            : null,
    };

    internal static BeamDocument Type(BeamDocument document, int row, FormColumn column, string? text)
    {
        CombinationEntry entry = document.Combinations[row];
        return column switch
        {
            FormColumn.Name => Rename(document, row, text),
            FormColumn.Basis => With(document, row, entry with
            {
                Basis = text is null ? null : SupportCells.Whole(text, StatedCells.Bases[..2]),
            }),
            _ => CaseIn(document, column) is string name
                ? With(document, row, entry with { Factors = Put(entry.Factors, name, text) })
                : document,
        };
    }

    /// <summary>A copy of a row, under a name that no other has.</summary>
    internal static CombinationEntry CopyOf(BeamDocument document, int row)
    {
        CombinationEntry entry = document.Combinations[row];
        HashSet<string?> names = [.. document.Combinations.Select(other => other.Name)];
        string? name = entry.Name is string own
            ? Enumerable.Range(2, names.Count).Select(number => $"{own} {number}").First(next => !names.Contains(next))
            : null;
        return entry with { Name = name };
    }

    internal static FormColumn ColumnOf(BeamDocument document, Rows<KeyStep> steps) => steps switch
    {
        [_, _, KeyStep.Into { Key: "basis" }, ..] => FormColumn.Basis,
        [_, _, KeyStep.Into { Key: "factors" }, KeyStep.Into name] =>
            CaseRows.IndexOf(document, name.Key) is int row ? FormColumns.OfCase(row) : FormColumn.Name,
        [_, _, KeyStep.Into { Key: "factors" }, ..] => FormColumns.OfCase(0),
        _ => FormColumn.Name,
    };

    // What is stated for a combination stays stated for it.
    private static BeamDocument Rename(BeamDocument document, int row, string? name)
    {
        CombinationEntry entry = document.Combinations[row];
        Rows<NamedFigure> factors = entry.Factors.Count == 0 && name is not null
            ? FactorText.Read(name, new LoadCases(document).Known)
            : entry.Factors;
        BeamDocument renamed = With(document, row, entry with { Name = name, Factors = factors });
        bool isOnlyOne = document.Combinations.Count(other => other.Name == entry.Name) == 1;
        return name is null || entry.Name is null || !isOnlyOne ? renamed : renamed with
        {
            Stated = [.. document.Stated.Select(stated =>
                stated.Combination == entry.Name ? stated with { Combination = name } : stated)],
        };
    }

    private static Rows<NamedFigure> Put(Rows<NamedFigure> factors, string name, string? text)
    {
        int index = factors.ToList().FindIndex(factor => factor.Name == name);
        return (index, text) switch
        {
            ( < 0, null) => factors,
            ( < 0, string typed) => factors.Add(new NamedFigure(name, typed)),
            (_, null) => factors.RemoveAt(index),
            (_, string typed) => factors.SetItem(index, new NamedFigure(name, typed)),
        };
    }

    private static string? CaseIn(BeamDocument document, FormColumn column) => FormColumns.CaseOf(column) is int row
        ? CaseRows.Of(document).ElementAtOrDefault(row)?.Name
        : throw new UnreachableException();

    private static BeamDocument With(BeamDocument document, int row, CombinationEntry entry) =>
        document with { Combinations = document.Combinations.SetItem(row, entry) };
}
