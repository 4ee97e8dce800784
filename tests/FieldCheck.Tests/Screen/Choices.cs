using System.Collections.Immutable;
using FieldCheck.Screen.Files;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.Tests.Screen;

/// <summary>Beams that several tests choose from.</summary>
internal static class Choices
{
    /// <summary>One of every kind, in no order.</summary>
    internal static ImmutableArray<BeamChoice> OfEveryKind { get; } =
    [
        Shipped("propped strip", Beams.Trench with { Title = "Strip of slab on props", Ask = ["load[4].force"] }),
        Shipped("trench bearer", Beams.Trench with
        {
            Title = "Bearer over a trench",
            Ask = ["load[4].force", "load[4].angle"],
        }, daysAgo: 2),
        Of("yard plank", BeamPlace.Personal, "/home/me/presets/yard plank.toml", Beams.Trench),
        Of("hire deck", BeamPlace.Site, "/site/presets/hire deck.toml", Beams.Trench),
        Of("north bay", BeamPlace.Here, "north bay.toml", Beams.Trench with { Display = "us" }, daysAgo: 0),
        Of("south bay", BeamPlace.Here, "south bay.toml", Beams.Trench with { Loads = [Beams.Trench.Loads[3]] }),
        Of("east bay", BeamPlace.Elsewhere, "/jobs/old crane/east bay.toml", Beams.Trench, daysAgo: 1),
        Of("梁 in the west", BeamPlace.Elsewhere, "/jobs/west/梁 in the west.toml", Beams.Trench, daysAgo: 400),
        Broken("torn bay", "torn bay.toml", "format = 1\n[[span]\nlength = \"3 m\"\n"),
        Of("half done", BeamPlace.Here, "half done.toml", Beams.Trench with { Spans = [new SpanEntry { Length = "3 n" }] }),
    ];

    internal static BeamChoice Shipped(string name, BeamDocument document, int? daysAgo = null) =>
        Of(name, BeamPlace.BuiltIn, null, document, daysAgo);

    internal static BeamChoice Of(string name, BeamPlace place, string? path, BeamDocument document, int? daysAgo = null) =>
        Read(name, place, path, BeamFileText.New(path ?? name, document).Text, daysAgo);

    internal static BeamChoice Broken(string name, string path, string text) => Read(name, BeamPlace.Here, path, text, null);

    private static BeamChoice Read(string name, BeamPlace place, string? path, string text, int? daysAgo) => new(
        name,
        place,
        path,
        new(() => BeamFileText.Read(path ?? name, text)),
        daysAgo is int days
            ? new DateTimeOffset(Desk.Today.AddDays(-days).ToDateTime(new TimeOnly(9, 30)), TimeSpan.FromHours(2))
            : null);
}
