using FieldCheck.Reporting.Record;
using FieldCheck.Sheet.Catalogue;

namespace FieldCheck.CommandLine;

/// <summary>The check of each file, as text or JSON on standard output.</summary>
internal static class CheckCommand
{
    /// <summary>Checks every file asked for.</summary>
    /// <returns>The largest exit status over the files.</returns>
    internal static int Run(Request.Check request, bool plain, CommandEnvironment environment, Printout printout)
    {
        OwnCatalogue own = Folders.Of(environment).Catalogue;
        printout.Remarks(own.Problems);
        CheckRun run = new(own.Catalogue, request.Units, Option.At, request.Places);
        int status = ExitStatus.Holds;
        bool isFirst = true;
        foreach (string file in request.Files)
        {
            BeamCheck check = run.Of(file, environment);
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

                PrintText(CheckRun.Shown(file), check, plain, environment, printout, request.HasWorking);
            }

            isFirst = false;
            status = Math.Max(status, StatusOf(check));
        }

        return status;
    }

    /// <summary>Prints one check as text; what is wrong with a file goes to standard error.</summary>
    internal static void PrintText(
        string file,
        BeamCheck check,
        bool plain,
        CommandEnvironment environment,
        Printout printout,
        bool hasWorking = false)
    {
        switch (check)
        {
            case BeamCheck.Unusable unusable:
                printout.Remarks(unusable.Problems);
                break;
            case BeamCheck.Calculated done:
                CheckRequest request = new(file, done.At, environment.TextWidth) { HasWorking = hasWorking };
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

    /// <summary>One check as JSON.</summary>
    /// <param name="file">The file, as it was named.</param>
    /// <param name="check">What came of it.</param>
    /// <param name="isIndented">True: over many lines for reading; false: one line.</param>
    internal static string JsonOf(string file, BeamCheck check, bool isIndented) => check switch
    {
        BeamCheck.Unusable unusable => CheckJson.OfProblems(file, unusable.Problems, isIndented),
        BeamCheck.Calculated done => CheckJson.Of(done.Calculation, new(file, done.At), isIndented),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static void PrintJson(string file, BeamCheck check, bool isIndented, Printout printout)
    {
        if (check is BeamCheck.Unusable unusable)
        {
            printout.Remarks(unusable.Problems);
        }

        printout.Result(JsonOf(file, check, isIndented));
    }
}
