using System.Collections.Immutable;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.CommandLine;

/// <summary>The presets that can be found, with their folders and titles.</summary>
internal static class PresetsCommand
{
    /// <summary>Lists them; files that cannot be used are named on standard error.</summary>
    /// <returns>The exit status: a preset that cannot be used makes the list itself no worse.</returns>
    internal static int Run(bool plain, CommandEnvironment environment, Printout printout)
    {
        Folders folders = Folders.Of(environment);
        PresetSearch found = folders.Library.Search();
        printout.Result(plain ? Sentences(found.Presets) : Table(folders, found.Presets));
        printout.Remarks(found.Unreadable);

        return ExitStatus.Holds;
    }

    private static string Table(Folders folders, ImmutableArray<Preset> presets)
    {
        int width = presets.Max(preset => preset.Name.Length);
        List<string> lines = [];
        Section("Built in", PresetPlace.BuiltIn, "");
        Section($"Your own, in {folders.PersonalPresets}", PresetPlace.Personal, folders.PersonalPresets);
        foreach (string folder in folders.SitePresets)
        {
            Section($"Of the site, in {folder}", PresetPlace.Site, folder);
        }

        return string.Join('\n', lines);

        void Section(string heading, PresetPlace place, string folder)
        {
            lines.Add((lines.Count > 0 ? "\n" : "") + heading);
            string[] rows =
            [
                .. presets
                    .Where(preset => preset.Place == place && FolderOf(preset) == folder)
                    .Select(preset => $"  {preset.Name.PadRight(width)}  {TitleOf(preset)}".TrimEnd()),
            ];
            lines.AddRange(rows is [] ? ["  none"] : rows);
        }
    }

    private static string FolderOf(Preset preset) =>
        preset.Path is null ? "" : Path.GetDirectoryName(preset.Path)!;

    private static string Sentences(ImmutableArray<Preset> presets) => string.Join('\n', presets.Select(preset =>
        $"Preset {preset.Name}, {Origin(preset)}: {(TitleOf(preset) is { Length: > 0 } title ? title : "no title")}."));

    private static string Origin(Preset preset) => preset.Place switch
    {
        PresetPlace.BuiltIn => "built in",
        PresetPlace.Personal => $"your own, {preset.Path}",
        PresetPlace.Site => $"of the site, {preset.Path}",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static string TitleOf(Preset preset) =>
        BeamFileText.Read(preset.Text.Name, preset.Text.Text) is BeamFileReading.Opened opened
            ? (opened.Document.Title ?? "").ReplaceLineEndings(" ")
            : "";
}
