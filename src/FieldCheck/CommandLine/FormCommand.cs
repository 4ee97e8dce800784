using FieldCheck.Plain;
using FieldCheck.Settings;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Settings;

namespace FieldCheck.CommandLine;

/// <summary>The form, drawn or in lines; where there is no terminal, the check that it would open with.</summary>
internal static class FormCommand
{
    /// <summary>Opens the form or prints the check.</summary>
    /// <returns>The exit status.</returns>
    internal static int Run(
        Request.Form request, Arguments arguments, CommandEnvironment environment, Printout printout)
    {
        if (request.File is string named
            && !Path.Exists(Path.GetFullPath(named, environment.CurrentFolder))
            && Arguments.Meant(named) is string meant)
        {
            printout.Remark($"""
                fieldcheck: there is no file and no command {named}. Did you mean {meant}?
                For a new beam of that name: fieldcheck {named}.toml
                """);
            return ExitStatus.NotUsable;
        }

        if (WhatTheFormLacks(request, environment) is string lacking)
        {
            int status = Print(request.File, arguments, environment, printout);
            printout.Remark($"fieldcheck: for the form, {lacking}.");
            return status;
        }

        if (request.File is not string file)
        {
            return Open(null, BeamFileText.Read(Example.Name, Example.Text), arguments, environment, printout);
        }

        string path = Path.GetFullPath(file, environment.CurrentFolder);
        if (!Path.Exists(path))
        {
            return OpenNew(file, arguments, environment, printout);
        }

        return Open(file, BeamFileOnDisk.Open(file, path), arguments, environment, printout);
    }

    private static BeamFileText Example => PresetLibrary.Example().Text;

    private static string? WhatTheFormLacks(Request.Form request, CommandEnvironment environment) =>
        request.File == "-" ? "name a file: standard input is read once and cannot be saved to"
        : !environment.IsTerminal ? "start it in a terminal and leave standard input and output as they are"
        : null;

    // A terminal that cannot place its cursor cannot show the form, but it can show lines.
    private static bool IsInLines(Arguments arguments, CommandEnvironment environment) =>
        arguments.Plain || environment.Variable("TERM") == "dumb";

    private static int Enter(
        StartRequest start, Arguments arguments, CommandEnvironment environment, Printout printout) =>
        IsInLines(arguments, environment)
            ? PlainSession.Run(start, environment, printout)
            : environment.OpenForm(start);

    private static int Print(string? file, Arguments arguments, CommandEnvironment environment, Printout printout)
    {
        if (file is not null)
        {
            return CheckCommand.Run(new Request.Check([file], false, [], null), arguments.Plain, environment, printout);
        }

        BeamCheck check = new CheckRun(SectionCatalogue.BuiltIn(), null, Option.At).Of(BeamFileText.Read(Example.Name, Example.Text));
        CheckCommand.PrintText("", check, arguments.Plain, environment, printout);
        printout.Remark("fieldcheck: this is the built-in example. For your own beam: fieldcheck check FILE");
        return CheckCommand.StatusOf(check);
    }

    private static int OpenNew(string file, Arguments arguments, CommandEnvironment environment, Printout printout) =>
        Enter(Start(file, new BeamDocument(), null, arguments, environment), arguments, environment, printout);

    private static int Open(
        string? file, BeamFileReading reading, Arguments arguments, CommandEnvironment environment, Printout printout)
    {
        switch (reading)
        {
            case BeamFileReading.Opened opened:
                return Enter(
                    Start(file, opened.Document, opened.Origin, arguments, environment),
                    arguments,
                    environment,
                    printout);
            case BeamFileReading.Refused refused:
                printout.Remarks(refused.Problems);

                return ExitStatus.NotUsable;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    private static string? ProblemOf(PreferencesReading settings, OwnCatalogue own)
    {
        string[] problems =
        [
            .. settings.Problems.Take(1).Select(first => $"{first} - none of these settings is used."),
            .. own.Problems.Take(1).Select(first => own.Problems.Length == 1
                ? $"{first} - this is left out of the catalogue."
                : $"{first} - this and {own.Problems.Length - 1} more are left out of the catalogue."),
        ];
        return problems.Length > 0 ? string.Join(' ', problems) : null;
    }

    private static StartRequest Start(
        string? file,
        BeamDocument document,
        BeamFileText? origin,
        Arguments arguments,
        CommandEnvironment environment)
    {
        Folders folders = Folders.Of(environment, file is null ? null : Path.GetFullPath(file, environment.CurrentFolder));
        PreferencesReading settings = PreferencesReading.Of(new SettingsFile(folders.Settings));
        OwnCatalogue own = folders.Catalogue;
        return new()
        {
            Path = file,
            Document = document,
            Origin = origin,
            IsUtf8 = environment.IsUtf8,
            NoColor = arguments.NoColor || !string.IsNullOrEmpty(environment.Variable("NO_COLOR")),
            Preferences = settings.Preferences,
            Catalogue = own.Catalogue,
            Problem = ProblemOf(settings, own),
            Folders = folders,
            CurrentFolder = environment.CurrentFolder,
            HomeFolder = environment.HomeFolder,
            Clock = environment.Clock,
        };
    }
}
