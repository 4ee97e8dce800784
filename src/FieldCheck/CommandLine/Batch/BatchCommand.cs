using FieldCheck.Sheet.Catalogue;

namespace FieldCheck.CommandLine.Batch;

/// <summary>The check of any number of files, a line of JSON each.</summary>
internal static class BatchCommand
{
    // A line that a full pipe does not take cannot be waited for.
    private static readonly TimeSpan LastLine = TimeSpan.FromSeconds(1);

    /// <summary>Checks every file asked for, on all processors.</summary>
    /// <returns>The largest exit status over the files; that of a signal that ended it.</returns>
    internal static int Run(Request.Batch request, bool plain, CommandEnvironment environment, Printout printout)
    {
        OwnCatalogue own = Folders.Of(environment).Catalogue;
        printout.Remarks(own.Problems);
        BatchProgress progress = new(printout, environment.Clock, isTold: CanBeErased(plain, environment));
        OrderedWork<BatchName, BatchLine> work = new(
            request.Jobs ?? Environment.ProcessorCount,
            () => new BatchWorker(new(own.Catalogue, request.Units, Option.At, request.Places), environment).Check);
        CancellationTokenSource stop = new();
        int status = ExitStatus.Holds;
        using EndingSignals signals = new(_ => stop.Cancel());

        // On a thread of its own: this one is free to end the program where a write hangs.
        Task writing = Task.Factory.StartNew(
            () => work.Run(BatchNames.Of(request.Names, environment), Write, stop.Token),
            CancellationToken.None,
            TaskCreationOptions.LongRunning,
            TaskScheduler.Default);
        WaitFor(writing, stop.Token);
        printout.Passing("");
        return signals.HaveCome ? signals.Status : status;

        void Write(BatchLine line)
        {
            printout.Remarks(line.Problems);
            if (line.Fault is string fault)
            {
                printout.Remark(fault);
            }

            printout.Result(line.Json);
            progress.Count();
            status = Math.Max(status, line.Status);
            if (printout.IsClosed)
            {
                stop.Cancel();
            }
        }
    }

    private static void WaitFor(Task writing, CancellationToken stop)
    {
        try
        {
            writing.WaitAsync(stop).GetAwaiter().GetResult();
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            Task.WaitAny([writing], LastLine);
        }
    }

    // What is told in passing is taken back by overwriting, which a page of lines cannot do and a screen reader reads out.
    private static bool CanBeErased(bool plain, CommandEnvironment environment) =>
        environment.ShowsProgress && !plain && environment.Variable("TERM") != "dumb";
}
