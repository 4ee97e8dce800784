using FieldCheck.Reporting.Pages;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.CommandLine;

/// <summary>The record of a check, written to a file.</summary>
internal static class ReportCommand
{
    /// <summary>Checks one file and writes its record.</summary>
    /// <returns>The exit status of the check; that of unusable input where nothing could be written.</returns>
    internal static int Run(Request.Report request, CommandEnvironment environment, Printout printout)
    {
        OwnCatalogue own = Folders.Of(environment).Catalogue;
        printout.Remarks(own.Problems);
        BeamCheck check = new CheckRun(own.Catalogue, request.Units, Option.Output).Of(request.File, environment);
        switch (check)
        {
            case BeamCheck.Unusable unusable:
                printout.Remarks(unusable.Problems);
                return ExitStatus.NotUsable;
            case BeamCheck.Calculated done:
                string file = request.File == CheckRun.StandardInput ? "standard input" : Path.GetFileName(request.File);
                RecordRequest wanted = new(file, done.Origin.Digest(), Program.Version)
                {
                    Date = request.Date,
                    IsWorkingShort = request.IsShort,
                    IsPlain = request.Format == RecordFormat.Text,
                };
                CheckRecord record = RecordBuilder.Of(done.Calculation, own.Catalogue, wanted);
                return Save(request, RecordFile.Bytes(record, request.Format), environment, printout)
                    ? CheckCommand.StatusOf(check)
                    : ExitStatus.NotUsable;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    private static bool Save(Request.Report request, byte[] bytes, CommandEnvironment environment, Printout printout)
    {
        string path = Path.GetFullPath(request.Output, environment.CurrentFolder);
        if (request.File != CheckRun.StandardInput
            && BeamFileStore.IsSame(path, Path.GetFullPath(request.File, environment.CurrentFolder)))
        {
            printout.Remark($"{request.Output}: this is the beam file itself; name another file for the record.");
            return false;
        }

        switch (BeamFileStore.SaveBytes(path, bytes, request.IsForced))
        {
            case BeamFileSaving.Saved:
                printout.Result($"record: {request.Output}");
                if (WindowsFileName.ProblemOf(Path.GetFileName(request.Output)) is string problem)
                {
                    printout.Remark($"{request.Output}: saved, but: {problem}");
                }

                return true;
            case BeamFileSaving.Failed failed:
                printout.Remark($"{request.Output}: {failed.Text}");
                return false;
            default:
                printout.Remark($"{request.Output}: a file of that name is there; {Option.Force} writes over it.");
                return false;
        }
    }
}
