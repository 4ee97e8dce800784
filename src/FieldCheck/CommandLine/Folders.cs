using System.Collections.Immutable;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.CombinationSets;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.CommandLine;

/// <summary>The folders that the program reads from and keeps things in. None need exist.</summary>
/// <remarks>
/// As the XDG base directory specification 0.8 has it: a variable that is not an absolute path counts as not set.
/// </remarks>
/// <param name="PersonalPresets">The person's own presets.</param>
/// <param name="SitePresets">Presets of a site, in order.</param>
/// <param name="State">Unsaved work and what was opened last.</param>
/// <param name="Settings">The file of the person's settings.</param>
internal sealed record Folders(
    string PersonalPresets, ImmutableArray<string> SitePresets, string State, string Settings)
{
    /// <summary>Names folders of site presets in place of those found by themselves; parted as PATH is.</summary>
    internal const string SiteVariable = "FIELDCHECK_PRESETS";

    private const string Program = "fieldcheck";
    private const string Presets = "presets";

    /// <summary>The presets in these folders, and the built-in ones.</summary>
    internal PresetLibrary Library => new(PersonalPresets, SitePresets);

    /// <summary>The sets of combinations in folders of their own within these, and the built-in ones.</summary>
    internal CombinationLibrary Combinations => new(
        CombinationsIn(PersonalPresets), [.. SitePresets.Select(CombinationsIn)]);

    /// <summary>The catalogue with the person's own sections and materials.</summary>
    internal OwnCatalogue Catalogue => OwnCatalogue.Read(Sections, Materials);

    /// <summary>Where the person's own sections lie.</summary>
    internal string Sections => Path.Combine(PersonalPresets, "sections");

    /// <summary>Where the person's own materials lie.</summary>
    internal string Materials => Path.Combine(PersonalPresets, "materials");

    /// <summary>Where the sets of combinations lie beside the presets of a folder.</summary>
    internal static string CombinationsIn(string presets) => Path.Combine(presets, "combinations");

    /// <summary>Finds the folders.</summary>
    /// <param name="environment">What stands around the program.</param>
    /// <param name="openedFile">Full path of the file that is open; null for none.</param>
    internal static Folders Of(CommandEnvironment environment, string? openedFile = null) =>
        Of(environment, openedFile, OperatingSystem.IsWindows());

    internal static Folders Of(CommandEnvironment environment, string? openedFile, bool isWindows)
    {
        string data = isWindows
            ? Absolute(environment, "APPDATA") ?? Path.Combine(environment.HomeFolder, "AppData", "Roaming")
            : Absolute(environment, "XDG_DATA_HOME") ?? Path.Combine(environment.HomeFolder, ".local", "share");
        string state = isWindows
            ? Absolute(environment, "LOCALAPPDATA") ?? Path.Combine(environment.HomeFolder, "AppData", "Local")
            : Absolute(environment, "XDG_STATE_HOME") ?? Path.Combine(environment.HomeFolder, ".local", "state");
        string settings = isWindows
            ? data
            : Absolute(environment, "XDG_CONFIG_HOME") ?? Path.Combine(environment.HomeFolder, ".config");
        return new(
            Path.Combine(data, Program, Presets),
            Site(environment, openedFile),
            Path.Combine(state, Program),
            Path.Combine(settings, Program, "settings.toml"));
    }

    private static ImmutableArray<string> Site(CommandEnvironment environment, string? openedFile)
    {
        if (environment.Variable(SiteVariable) is string named && named.Trim().Length > 0)
        {
            return [.. named
                .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                .Select(folder => Path.GetFullPath(folder, environment.CurrentFolder))
                .Distinct()];
        }

        string?[] places = [openedFile is null ? null : Path.GetDirectoryName(openedFile), environment.CurrentFolder];
        return [.. places.OfType<string>().Select(folder => Path.Combine(folder, Presets)).Distinct()];
    }

    private static string? Absolute(CommandEnvironment environment, string variable) =>
        environment.Variable(variable) is string path && Path.IsPathFullyQualified(path) ? path : null;
}
