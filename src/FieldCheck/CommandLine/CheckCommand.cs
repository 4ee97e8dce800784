using System.Collections.Immutable;
using FieldCheck.Reporting.Record;
using FieldCheck.Sheet.Presets;

namespace FieldCheck.CommandLine;

/// <summary>The check of each file, as text or JSON on standard output.</summary>
internal static class CheckCommand
{
    private const string StandardInput = "-";
    private const string NameOfStandardInput = "standard input";
    private const int LeastWidth = 40;
    private const int MostWidth = 120;

    /// <summary>Checks every file asked for.</summary>
    /// <returns>The largest exit status over the files.</returns>
    internal static int Run(Request.Check request, bool plain, CommandEnvironment environment, Printout printout)
    {
        CheckRun run = new(request.Places, request.Units);
        int status = ExitStatus.Holds;
        bool isFirst = true;
        foreach (string file in request.Files)
        {
            BeamCheck check = file == StandardInput
                ? run.Of(BeamFileOnDisk.Open(NameOfStandardInput, environment.OpenInput()))
                : run.Of(BeamFileOnDisk.Open(file, Path.GetFullPath(file, environment.CurrentFolder)));
            if (request.IsJson)
            {
                PrintJson(file, check, request.Files.Length == 1, printout);
            }
            else
            {
                if (!isFirst)
                {
                    printout.Result("");
                }

                PrintText(file == StandardInput ? "" : file, check, plain, environment, printout);
            }

            isFirst = false;
            status = Math.Max(status, StatusOf(check));
        }

        return status;
    }

    /// <summary>Prints one check as text; what is wrong with a file goes to standard error.</summary>
    internal static void PrintText(
        string file, BeamCheck check, bool plain, CommandEnvironment environment, Printout printout)
    {
        switch (check)
        {
            case BeamCheck.Unusable unusable:
                PrintProblems(unusable.Problems, printout);
                break;
            case BeamCheck.Calculated done:
                CheckRequest request = new(file, done.At, Math.Clamp(environment.Width(), LeastWidth, MostWidth));
                printout.Result(string.Join('\n', plain
                    ? PlainText.Lines(done.Calculation, request)
                    : CheckText.Lines(done.Calculation, request)));
                break;
        }
    }

    /// <summary>The exit status of one check.</summary>
    internal static int StatusOf(BeamCheck check) => check switch
    {
        BeamCheck.Unusable => ExitStatus.NotUsable,
        BeamCheck.Calculated done => (int)done.Calculation.Status,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static void PrintJson(string file, BeamCheck check, bool isIndented, Printout printout)
    {
        switch (check)
        {
            case BeamCheck.Unusable unusable:
                PrintProblems(unusable.Problems, printout);
                printout.Result(CheckJson.OfProblems(file, unusable.Problems, isIndented));
                break;
            case BeamCheck.Calculated done:
                printout.Result(CheckJson.Of(done.Calculation, new(file, done.At), isIndented));
                break;
        }
    }

    private static void PrintProblems(ImmutableArray<FileProblem> problems, Printout printout)
    {
        foreach (FileProblem problem in problems)
        {
            printout.Remark(problem.ToString());
        }
    }
}
