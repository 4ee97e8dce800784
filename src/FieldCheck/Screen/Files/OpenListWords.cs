using System.Collections.Immutable;
using System.Globalization;
using FieldCheck.Screen.FormGrid;
using FieldCheck.Screen.Overlays;
using FieldCheck.Screen.Painting;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Editing;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Reading;
using FieldCheck.Sheet.Units;

namespace FieldCheck.Screen.Files;

/// <summary>What is said of the beams to open.</summary>
internal static class OpenListWords
{
    /// <summary>Where a beam comes from.</summary>
    /// <param name="choice">The beam.</param>
    internal static string From(BeamChoice choice) => choice.Place switch
    {
        BeamPlace.BuiltIn => "built in",
        BeamPlace.Personal => "your presets",
        BeamPlace.Site => "site folder",
        BeamPlace.Here => "this folder",
        _ => choice.Folder,
    };

    /// <summary>When a beam was used last.</summary>
    /// <param name="choice">The beam.</param>
    /// <param name="today">The day.</param>
    internal static string LastUsed(BeamChoice choice, DateOnly today)
    {
        if (choice.UsedAt is not DateTimeOffset at)
        {
            return "never";
        }

        DateOnly day = DateOnly.FromDateTime(at.DateTime);
        return (today.DayNumber - day.DayNumber) switch
        {
            0 => "today",
            1 => "yesterday",
            _ => day.ToString(day.Year == today.Year ? "d MMM" : "d MMM yyyy", CultureInfo.InvariantCulture),
        };
    }

    /// <summary>The length of a beam, or that it does not read.</summary>
    /// <param name="choice">The beam.</param>
    internal static string Length(BeamChoice choice)
    {
        if (choice.Reading is not BeamFileReading.Opened { Document: BeamDocument document })
        {
            return "unreadable";
        }

        ImmutableArray<double> joints = FormLabels.JointsOf(document);
        return document.Spans.Count > 0 && joints.Length > document.Spans.Count
            ? new DisplayUnits(document.Units).Say(joints[^1], QuantityKind.Length)
            : "--";
    }

    /// <summary>What the beam chosen is, in lines; empty where none is chosen.</summary>
    /// <param name="list">The list.</param>
    internal static ImmutableArray<string> Preview(Overlay.OpenList list) => (list.Chosen, list.Preview) switch
    {
        ({ Reading: BeamFileReading.Refused refused } choice, _) =>
            [$"{choice.Name} cannot be opened:", .. refused.Problems.Select(problem => problem.ToString())],
        ({ } choice, { } preview) => [.. Beam(choice, preview)],
        _ => [],
    };

    /// <summary>What stands in the message line.</summary>
    /// <param name="list">The list.</param>
    internal static Notice Message(Overlay.OpenList list) =>
        OpenListKeys.PathIn(list) is string path ? new Notice($"Enter opens the file {path}")
        : list.Chosen is { Path: string file } ? new Notice(file, Role.Faint)
        : list.Chosen is not null ? new Notice("It ships with the program: saving asks for a name.", Role.Faint)
        : new Notice("");

    private static IEnumerable<string> Beam(BeamChoice choice, Calculation preview)
    {
        BeamDocument document = preview.Document;
        if (!string.IsNullOrWhiteSpace(document.Title))
        {
            yield return document.Title;
        }

        yield return $"{Length(choice)}, {Supports(preview)}, {FormWords.Count(document.Loads.Count, "load")}";
        if (!preview.Problems.IsEmpty)
        {
            yield return $"To mend: {FormWords.Count(preview.Problems.Length, "cell")}";
        }

        ImmutableArray<string> asks = [.. Asked.Of(document).Select(cell => Asked.Words(document, cell))];
        if (!asks.IsEmpty)
        {
            yield return $"Asks for: {string.Join(", ", asks)}";
        }
    }

    private static string Supports(Calculation preview)
    {
        if (preview.Beam is not { Supports: [_, ..] } beam)
        {
            return FormWords.Count(preview.Document.Supports.Count, "support");
        }

        string[] places = [.. beam.Supports.Select(support => beam.Display.Say(support.Support.Position, QuantityKind.Length))];
        return "held at " + (places.Length == 1 ? places[0] : $"{string.Join(", ", places[..^1])} and {places[^1]}");
    }
}
