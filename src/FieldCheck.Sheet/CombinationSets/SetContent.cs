using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Document.Tables;

namespace FieldCheck.Sheet.CombinationSets;

/// <summary>The keys of a file that holds a set of combinations, and what of the set each one holds.</summary>
internal static class SetContent
{
    private static readonly Wanted Text = new Wanted.FreeText();
    private static readonly Wanted Case = new Wanted.Name("case");
    private static readonly Wanted Number = new Wanted.BareNumber();

    private static readonly TableMapping<SetRowEntry> Row = new(() => new SetRowEntry(),
    [
        Cell<SetRowEntry>("expression", Text, row => row.Expression, (row, text) => row with { Expression = text }),
        Cell<SetRowEntry>("basis", new Wanted.OneOf("service", "factored"),
            row => row.Basis, (row, text) => row with { Basis = text }),
        Part<SetRowEntry>.Of(new FiguresField<SetRowEntry>(
            "factors", Number, row => row.Factors, (row, figures) => row with { Factors = figures })),
        Part<SetRowEntry>.Of("needs", new TextsMapping(), row => row.Needs, (row, texts) => row with { Needs = texts }),
        Cell<SetRowEntry>("source", Text, row => row.Source, (row, text) => row with { Source = text }),
        Cell<SetRowEntry>("status", Text, row => row.Status, (row, text) => row with { Status = text }),
    ]);

    private static readonly TableMapping<PsiEntry> Psi = new(() => new PsiEntry(),
    [
        Cell<PsiEntry>("case", Case, row => row.Case, (row, text) => row with { Case = text }),
        Cell<PsiEntry>("category", Text, row => row.Category, (row, text) => row with { Category = text }),
        Cell<PsiEntry>("psi0", Number, row => row.Psi0, (row, text) => row with { Psi0 = text }),
        Cell<PsiEntry>("psi1", Number, row => row.Psi1, (row, text) => row with { Psi1 = text }),
        Cell<PsiEntry>("psi2", Number, row => row.Psi2, (row, text) => row with { Psi2 = text }),
        Cell<PsiEntry>("source", Text, row => row.Source, (row, text) => row with { Source = text }),
        Cell<PsiEntry>("status", Text, row => row.Status, (row, text) => row with { Status = text }),
    ]);

    private static readonly TableMapping<SetDocument> Document = new(() => new SetDocument(),
    [
        Cell<SetDocument>("title", Text, row => row.Title, (row, text) => row with { Title = text }),
        Cell<SetDocument>("notes", Text, row => row.Notes, (row, text) => row with { Notes = text }),
        Part<SetDocument>.Of("combination", new TableRowsMapping<SetRowEntry>(Row),
            set => set.Combinations, (set, rows) => set with { Combinations = rows }),
        Part<SetDocument>.Of("psi", new TableRowsMapping<PsiEntry>(Psi),
            set => set.Psi, (set, rows) => set with { Psi = rows }),
    ]);

    /// <summary>What may stand in such a file.</summary>
    internal static Schema.Table Schema => Document.Schema;

    /// <summary>The set with this content.</summary>
    internal static SetDocument Read(Content content) => Document.Read(content);

    private static Part<TRow> Cell<TRow>(
        string key, Wanted wanted, Func<TRow, string?> get, Func<TRow, string?, TRow> set) =>
        Part<TRow>.Of(new Field<TRow>(key, wanted, get, set));
}
