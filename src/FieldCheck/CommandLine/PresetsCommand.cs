using System.Collections.Immutable;
using System.Diagnostics;
using FieldCheck.Sheet.CombinationSets;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.CommandLine;

/// <summary>The presets and sets of combinations that can be found, with their folders and titles.</summary>
internal static class PresetsCommand
{
    /// <summary>Lists them; files that cannot be used are named on standard error.</summary>
    /// <returns>The exit status: a preset that cannot be used makes the list itself no worse.</returns>
    internal static int Run(bool plain, CommandEnvironment environment, Printout printout)
    {
        Folders folders = Folders.Of(environment);
        PresetSearch found = folders.Library.Search();
        CombinationSearch combinations = folders.Combinations.Search();
        ImmutableArray<Listed> beams = [.. found.Presets.Select(Listed.Of)];
        ImmutableArray<Listed> sets = [.. combinations.Sets.Select(Listed.Of)];
        printout.Result(plain
            ? string.Join('\n', [.. Sentences("Preset", beams), .. Sentences("Combinations", sets)])
            : Table(folders, beams, sets));
        printout.Remarks([.. found.Unreadable, .. combinations.Unreadable]);

        return ExitStatus.Holds;
    }

    private static string Table(Folders folders, ImmutableArray<Listed> beams, ImmutableArray<Listed> sets) => string.Join(
        '\n',
        (string[])
        [
            .. Sections("", folders, beams, folder => folder),
            "",
            .. Sections("Combinations, ", folders, sets, Folders.CombinationsIn),
        ]);

    private static IEnumerable<string> Sections(
        string what, Folders folders, ImmutableArray<Listed> all, Func<string, string> within)
    {
        int width = all.Max(one => one.Name.Length);
        string personal = within(folders.PersonalPresets);
        return
        [
            .. Section("built in", PresetPlace.BuiltIn, ""),
            "",
            .. Section($"your own, in {personal}", PresetPlace.Personal, personal),
            .. folders.SitePresets.Select(within).SelectMany(folder =>
                Section($"of the site, in {folder}", PresetPlace.Site, folder).Prepend("")),
        ];

        IEnumerable<string> Section(string heading, PresetPlace place, string folder) => all
            .Where(one => one.Place == place && one.Folder == folder)
            .Select(one => $"  {one.Name.PadRight(width)}  {one.Title}".TrimEnd())
            .DefaultIfEmpty("  none")
            .Prepend(what.Length > 0 ? what + heading : char.ToUpperInvariant(heading[0]) + heading[1..]);
    }

    private static IEnumerable<string> Sentences(string what, ImmutableArray<Listed> all) => all.Select(one =>
        $"{what} {one.Name}, {one.Origin}: {(one.Title.Length > 0 ? one.Title : "no title")}.");

    /// <summary>One line of the list.</summary>
    private sealed record Listed(string Name, PresetPlace Place, string? Path, string Title)
    {
        internal string Folder => Path is null ? "" : System.IO.Path.GetDirectoryName(Path)!;

        internal string Origin => Place switch
        {
            PresetPlace.BuiltIn => "built in",
            PresetPlace.Personal => $"your own, {Path}",
            PresetPlace.Site => $"of the site, {Path}",
            _ => throw new UnreachableException(),
        };

        internal static Listed Of(Preset preset) => new(preset.Name, preset.Place, preset.Path, TitleOf(preset));

        internal static Listed Of(CombinationSet set) =>
            new(set.Name, set.Place, set.Path, set.Title.ReplaceLineEndings(" "));

        private static string TitleOf(Preset preset) =>
            BeamFileText.Read(preset.Text.Name, preset.Text.Text) is BeamFileReading.Opened opened
                ? (opened.Document.Title ?? "").ReplaceLineEndings(" ")
                : "";
    }
}
