using FieldCheck.Mechanics.Solving;
using FieldCheck.Reporting.Working;
using FieldCheck.Sheet;
using FieldCheck.Sheet.Catalogue;
using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Reading;

namespace FieldCheck.CommandLine;

/// <summary>The working by hand on standard output.</summary>
internal static class WorkingCommand
{
    /// <summary>Prints the working of one file.</summary>
    /// <returns>The exit status: a working asks for nothing to hold, only that the beam can be worked.</returns>
    internal static int Run(Request.Working request, bool plain, CommandEnvironment environment, Printout printout)
    {
        OwnCatalogue own = Folders.Of(environment).Catalogue;
        printout.Remarks(own.Problems);
        CheckRun run = request.About is string about
            ? new(own.Catalogue, request.Units, Option.About, about)
            : new(own.Catalogue, request.Units, Option.About);
        switch (run.Of(request.File, environment))
        {
            case BeamCheck.Unusable unusable:
                printout.Remarks(unusable.Problems);
                return ExitStatus.NotUsable;
            case BeamCheck.Calculated done:
                return Print(request, done, plain, environment, printout);
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }

    private static int Print(
        Request.Working request, BeamCheck.Calculated done, bool plain, CommandEnvironment environment, Printout printout)
    {
        int? combination = null;
        if (request.Combination is string name && done.Calculation.Outcome is BeamOutcome.Stands stands)
        {
            switch (AskedCombination.Find(stands, name))
            {
                case Reading<int>.Accepted found:
                    combination = found.Value;
                    break;
                case Reading<int>.Refused refused:
                    printout.Remarks([FileProblem.OfWhole(
                        CheckRun.Named(request.File), $"{Option.Combination} '{name}': {refused.Text}")]);
                    return ExitStatus.NotUsable;
            }
        }

        WorkingRequest wanted = new(plain ? SpokenWorking.Width : environment.TextWidth)
        {
            About = done.At is [var place, ..] ? place.Position : null,
            IsShort = request.IsShort,
            HasStepNames = request.HasStepNames,
            HasTables = !plain,
        };
        var lines = PrintedWorking.Lines(done.Calculation, CheckRun.Shown(request.File), combination, wanted);
        printout.Result(string.Join('\n', plain ? SpokenWorking.Of(lines) : lines));
        return StatusOf(done.Calculation);
    }

    private static int StatusOf(Calculation calculation) =>
        calculation.Outcome is BeamOutcome.Stands ? ExitStatus.Holds : (int)calculation.Status;
}
