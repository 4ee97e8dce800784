using System.Collections.Immutable;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Sheet.CombinationSets;

/// <summary>A set of combinations, of a standard or a person's own, that can be turned into rows for a beam.</summary>
public sealed record CombinationSet
{
    private readonly SetDocument _document;
    private readonly ImmutableArray<PsiEntry> _psi;

    private CombinationSet(string name, PresetPlace place, string? path, SetDocument document, ImmutableArray<PsiEntry> psi)
    {
        Name = name;
        Place = place;
        Path = path;
        _document = document;
        _psi = psi;
    }

    /// <summary>Its file name without extension.</summary>
    public string Name { get; }

    /// <summary>Where it was found.</summary>
    public PresetPlace Place { get; }

    /// <summary>Its path, or null for a built-in one.</summary>
    public string? Path { get; }

    /// <summary>What it is: the file's title, with the kind of use where the file holds several.</summary>
    public string Title
    {
        get
        {
            string title = string.IsNullOrWhiteSpace(_document.Title) ? Name : _document.Title.Trim();
            string use = string.Join(", ", _psi.Where(IsChosen).Select(row => row.Category).OfType<string>());
            return use.Length == 0 ? title : $"{title}: {use}";
        }
    }

    /// <summary>What to know before it is used; empty where nothing is written.</summary>
    public string Notes => (_document.Notes ?? "").Trim();

    /// <summary>The rows for a beam: those that its cases give something to, each once.</summary>
    /// <param name="beam">The beam as typed; its loads, own weight and rolling loads say which cases there are.</param>
    public CombinationSetRows For(BeamDocument beam)
    {
        ArgumentNullException.ThrowIfNull(beam);
        ImmutableArray<string> cases = LoadCases.WithLoads(beam);
        SetExpansion expansion = new(cases, _psi);
        ImmutableArray<CombinationSetRow> rows =
        [
            .. _document.Combinations.SelectMany(expansion.Of)
                .DistinctBy(row => SetExpansion.KeyOf(row.Entry), StringComparer.Ordinal),
        ];
        return new CombinationSetRows(
            rows,
            [.. cases.Where(name => !rows.Any(row => row.Entry.Factors.Any(factor => factor.Name == name)))],
            [
                .. rows.Select(row => SourceOf(row.Source, row.Status))
                    .Concat(_psi.Where(row => cases.Contains(row.Case!, StringComparer.Ordinal))
                        .Select(row => SourceOf(row.Source, row.Status)))
                    .Where(source => source.Length > 0)
                    .Distinct(),
            ]);
    }

    /// <summary>The sets of one file: one for each kind of use that it gives a case's psi for.</summary>
    internal static IEnumerable<CombinationSet> Of(string name, PresetPlace place, string? path, SetDocument document) =>
        document.Psi
            .GroupBy(row => row.Case, StringComparer.Ordinal)
            .Aggregate(
                (IEnumerable<ImmutableArray<PsiEntry>>)[[]],
                (chosen, rows) => chosen.SelectMany(before => rows.Select(row => before.Add(row))))
            .Select(psi => new CombinationSet(name, place, path, document, psi));

    private bool IsChosen(PsiEntry row) => _document.Psi.Count(other => other.Case == row.Case) > 1;

    private static string SourceOf(string? source, string? status) =>
        string.Join("; ", new[] { source, status }.Where(text => !string.IsNullOrWhiteSpace(text)));
}
