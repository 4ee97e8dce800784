using System.Collections.Immutable;
using FieldCheck.Sheet.Building;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>Texts typed in the rows of the cases. What cannot be done changes nothing.</summary>
internal static class CaseEdits
{
    internal const string Yes = "yes";
    private const string No = "no";

    internal static ImmutableArray<string> YesOrNo { get; } = [Yes, No];

    internal static string? TextOf(BeamDocument document, int row, FormColumn column) =>
        CaseRows.Of(document).ElementAtOrDefault(row) is not CaseRow named ? null : column switch
        {
            FormColumn.Case => document.Renames.FirstOrDefault(rename => rename.Name == named.Name)?.Text ?? named.Name,
            FormColumn.Pattern => named.IsPattern ? Yes : null,
            FormColumn.OwnWeight => named.HasOwnWeight ? Yes : null,
            _ => null,
        };

    internal static BeamDocument Type(BeamDocument document, int row, FormColumn column, string? text)
    {
        if (CaseRows.Of(document).ElementAtOrDefault(row) is not CaseRow named)
        {
            return document;
        }

        string? answer = text is null ? No : SupportCells.Whole(text, YesOrNo);
        return column switch
        {
            FormColumn.Case => Rename(document, named.Name, text),
            FormColumn.Pattern when answer == Yes && !named.IsPattern =>
                document with { Patterns = document.Patterns.Add(new PatternEntry { Case = named.Name }) },
            FormColumn.Pattern when answer == No =>
                document with { Patterns = [.. document.Patterns.Where(pattern => pattern.Case != named.Name)] },
            FormColumn.OwnWeight when answer == Yes => document with { SelfWeight = new() { Case = named.Name } },
            FormColumn.OwnWeight when answer == No && named.HasOwnWeight => document with { SelfWeight = null },
            _ => document,
        };
    }

    /// <summary>The beam without names for cases that are no more.</summary>
    internal static BeamDocument WithoutNamesForNone(BeamDocument before, BeamDocument after) => after.Renames.Count == 0
        ? after
        : after with
        {
            Renames = [.. after.Renames.Where(rename => CaseRows.IndexOf(before, rename.Name) is null
                || CaseRows.IndexOf(after, rename.Name) is not null)],
        };

    /// <summary>
    /// The beam with a case called otherwise wherever it is named. Two cases do not become one, for their factors might
    /// differ: the name of another is kept beside, to be mended.
    /// </summary>
    private static BeamDocument Rename(BeamDocument document, string old, string? name)
    {
        BeamDocument bare = document with { Renames = [.. document.Renames.Where(rename => rename.Name != old)] };
        return name is null || name == old ? bare
            : CaseRows.IndexOf(document, name) is null ? Renamed(bare, old, name)
            : document.Renames.FirstOrDefault(rename => rename.Name == old)?.Text == name ? document
            : bare with { Renames = bare.Renames.Add(new NamedFigure(old, name)) };
    }

    private static BeamDocument Renamed(BeamDocument document, string old, string name)
    {
        string? Named(string? other) => (other ?? LoadCases.Default) == old ? name : other;
        Rows<NamedFigure> Figures(Rows<NamedFigure> figures) =>
            [.. figures.Select(figure => figure.Name == old ? figure with { Name = name } : figure)];
        return document with
        {
            Ask = [.. document.Ask.Select(key => KeyRenamed(key, old, name))],
            SelfWeight = document.SelfWeight?.Case == old ? new() { Case = name } : document.SelfWeight,
            Loads = [.. document.Loads.Select(load => load with { Case = Named(load.Case) })],
            Rolling = [.. document.Rolling.Select(load => load with { Case = Named(load.Case) })],
            Patterns = [.. document.Patterns.Select(row => row.Case == old ? row with { Case = name } : row)],
            Combinations = [.. document.Combinations.Select(row => row with { Factors = Figures(row.Factors) })],
            Stated = [.. document.Stated.Select(row => row.Case == old ? row with { Case = name } : row)],
            Limits = document.Limits is LimitsEntry limits
                ? limits with
                {
                    DeflectionCases = Figures(limits.DeflectionCases),
                    Lasting = Figures(limits.Lasting),
                }
                : null,
        };
    }

    private static string KeyRenamed(string key, string old, string name) => KeyPath.Parse(key)?.Steps switch
    {
        [KeyStep.Into { Key: "combination" }, KeyStep.At row, KeyStep.Into { Key: "factors" } factors, KeyStep.Into last]
            when last.Key == old =>
            KeyPath.Top.Into("combination").At(row.Row).Into(factors.Key).Into(name).ToString(),
        [KeyStep.Into { Key: "limits" }, KeyStep.Into { Key: "deflection_cases" or "lasting" } cases, KeyStep.Into last]
            when last.Key == old => KeyPath.Top.Into("limits").Into(cases.Key).Into(name).ToString(),
        _ => key,
    };
}
