using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Sheet.Document;

namespace FieldCheck.Sheet.Editing;

/// <summary>The rows of sections, materials, limits, bracing and bearings.</summary>
public static class StickRows
{
    /// <summary>What a section or material is called that no span names.</summary>
    private const string Unnamed = "beam";

    /// <summary>The sections in their order; one that typing makes where there is none.</summary>
    /// <param name="document">The beam.</param>
    /// <returns>One name at least.</returns>
    public static ImmutableArray<string> Sections(BeamDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        return Names(document.Sections.Select(section => section.Name), document.Spans.Select(span => span.Section));
    }

    /// <summary>The materials in their order; one that typing makes where there is none.</summary>
    /// <param name="document">The beam.</param>
    /// <returns>One name at least.</returns>
    public static ImmutableArray<string> Materials(BeamDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        return Names(document.Materials.Select(material => material.Name), document.Spans.Select(span => span.Material));
    }

    /// <summary>The spans that a section or material is of, as "span 1" or "spans 2, 3"; "no span" where none is.</summary>
    /// <param name="document">The beam.</param>
    /// <param name="place">A cell of it.</param>
    public static string UsedBy(BeamDocument document, FormPlace place)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(place);
        bool isSection = place.Block == FormBlock.Sections;
        ImmutableArray<string> names = isSection ? Sections(document) : Materials(document);
        string? name = names.ElementAtOrDefault(place.Row);
        string[] spans =
        [
            .. Enumerable.Range(0, document.Spans.Count)
                .Where(row => (isSection ? document.Spans[row].Section : document.Spans[row].Material) is string named
                    ? named == name
                    : names.Length == 1)
                .Select(row => (row + 1).ToString(CultureInfo.InvariantCulture)),
        ];
        return spans.Length switch
        {
            0 => "no span",
            1 => $"span {spans[0]}",
            _ => $"spans {string.Join(", ", spans)}",
        };
    }

    internal static int CountOf(BeamDocument document, FormBlock block) => block switch
    {
        FormBlock.Sections => Sections(document).Length,
        FormBlock.Materials => Materials(document).Length,
        FormBlock.Bracing => document.Spans.Count,
        FormBlock.Bearings => document.Supports.Count,
        _ => 1,
    };

    private static ImmutableArray<string> Names(IEnumerable<string> standing, IEnumerable<string?> named)
    {
        ImmutableArray<string> names = [.. standing];
        return names.IsEmpty ? [named.OfType<string>().FirstOrDefault() ?? Unnamed] : names;
    }
}
