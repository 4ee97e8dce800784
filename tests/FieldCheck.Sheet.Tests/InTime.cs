namespace FieldCheck.Sheet.Tests;

/// <summary>What waits for ever, or is busy for hours, is a failure and not a hanging test. How fast it is, is not judged.</summary>
internal static class InTime
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(10);

    internal static T Of<T>(Func<T> work)
    {
        Task<T> running = Task.Factory.StartNew(work, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        Assert.True(running.Wait(Patience), "it does not end");
        return running.Result;
    }
}
