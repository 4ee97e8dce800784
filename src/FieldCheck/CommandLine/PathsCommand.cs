namespace FieldCheck.CommandLine;

/// <summary>The folders that the program reads from and keeps things in.</summary>
internal static class PathsCommand
{
    internal static int Run(CommandEnvironment environment, Printout printout)
    {
        Folders folders = Folders.Of(environment);
        printout.Result(string.Join('\n',
        [
            "Your presets:   " + folders.PersonalPresets,
            .. folders.SitePresets.Select(folder => "Site presets:   " + folder),
            "Your sections:  " + folders.Sections,
            "Your materials: " + folders.Materials,
            "Unsaved work:   " + folders.State,
            "Settings:       " + folders.Settings,
        ]));
        return ExitStatus.Holds;
    }
}
