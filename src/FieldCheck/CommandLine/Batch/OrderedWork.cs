using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;

namespace FieldCheck.CommandLine.Batch;

/// <summary>Works through a stream of any length on several threads and hands the results on in the order of the stream.</summary>
/// <remarks>
/// At most <see cref="MostAhead"/> items are taken and not yet handed on, so memory does not grow with the stream, and
/// whoever takes the results slowly holds the threads back. The threads never keep the process alive: an ending program
/// leaves them where they are.
/// </remarks>
/// <param name="threads">How many work at the same time; at least 1.</param>
/// <param name="newWorker">Makes what one thread works with; no two threads share it.</param>
[SuppressMessage(
    "Design",
    "CA1001",
    Justification = "Threads may still wait for them when an ending program leaves; without a handle asked for they hold memory only.")]
internal sealed class OrderedWork<TItem, TResult>(int threads, Func<Func<TItem, TResult>> newWorker)
{
    // One hard item is waited for while the others go on with as many as this.
    private const int AheadForEach = 16;

    private readonly SemaphoreSlim _room = new(threads * AheadForEach);
    private readonly BlockingCollection<Slot> _toDo = [];
    private readonly BlockingCollection<Slot> _inOrder = [];

    /// <summary>How many items are taken and not yet handed on, at most.</summary>
    internal int MostAhead => threads * AheadForEach;

    /// <summary>Works through the stream; once only.</summary>
    /// <param name="items">The stream; drawn from on a thread of its own, so it may wait for more.</param>
    /// <param name="handOn">Takes each result; called on the calling thread.</param>
    /// <param name="stop">Ends it early; what is being handed on is handed on whole.</param>
    /// <exception cref="OperationCanceledException">It was ended early.</exception>
    internal void Run(IEnumerable<TItem> items, Action<TResult> handOn, CancellationToken stop)
    {
        InBackground(() => Take(items, stop));
        for (int i = 0; i < threads; i++)
        {
            Func<TItem, TResult> worker = newWorker();
            InBackground(() => Work(worker, stop));
        }

        foreach (Slot slot in _inOrder.GetConsumingEnumerable(stop))
        {
            slot.Result.Task.WaitAsync(stop).GetAwaiter().GetResult();
            handOn(slot.Result.Task.Result);
            _room.Release();
        }
    }

    private void Take(IEnumerable<TItem> items, CancellationToken stop)
    {
        try
        {
            foreach (TItem item in items)
            {
                _room.Wait(stop);
                Slot slot = new(item);
                _inOrder.Add(slot, stop);
                _toDo.Add(slot, stop);
            }
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            return;
        }
        catch (Exception fault)
        {
            Slot broken = new(default!);
            broken.Result.SetException(fault);
            _inOrder.Add(broken, CancellationToken.None);
        }

        _toDo.CompleteAdding();
        _inOrder.CompleteAdding();
    }

    private void Work(Func<TItem, TResult> worker, CancellationToken stop)
    {
        try
        {
            foreach (Slot slot in _toDo.GetConsumingEnumerable(stop))
            {
                slot.Do(worker);
            }
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            // Nobody waits for the rest.
        }
    }

    private static void InBackground(Action work) => new Thread(() => work()) { IsBackground = true }.Start();

    /// <summary>One item and what comes of it.</summary>
    private sealed record Slot(TItem Item)
    {
        internal TaskCompletionSource<TResult> Result { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);

        internal void Do(Func<TItem, TResult> worker)
        {
            try
            {
                Result.SetResult(worker(Item));
            }
            catch (Exception fault)
            {
                Result.SetException(fault);
            }
        }
    }
}
