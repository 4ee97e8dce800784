using System.Collections.Concurrent;
using FieldCheck.CommandLine.Batch;

namespace FieldCheck.Tests.CommandLine.Batch;

public sealed class OrderedWorkTests
{
    private const int Many = 10_000;

    [Fact]
    public void UnevenWork_ComesOutInTheOrderOfTheStream()
    {
        // Every 50th item spins a thousand times as long as the others.
        OrderedWork<int, int> work = new(4, () => item =>
        {
            Thread.SpinWait(item % 50 == 0 ? 100_000 : 100);
            return item * 2;
        });
        List<int> got = [];

        work.Run(Enumerable.Range(0, Many), got.Add, CancellationToken.None);

        Assert.Equal(Enumerable.Range(0, Many).Select(item => item * 2), got);
    }

    [Fact]
    public void Threads_WorkAtTheSameTime()
    {
        // Each of three items ends only when all three have begun.
        using CountdownEvent begun = new(3);
        OrderedWork<int, bool> work = new(3, () => _ =>
        {
            begun.Signal();
            return begun.Wait(TimeSpan.FromMinutes(1));
        });
        List<bool> met = [];

        work.Run([1, 2, 3], met.Add, CancellationToken.None);

        Assert.Equal([true, true, true], met);
    }

    [Fact]
    public void Worker_IsNeverWithTwoThreads()
    {
        ConcurrentDictionary<object, int> threadOf = [];
        OrderedWork<int, bool> work = new(3, () =>
        {
            object own = new();
            return _ => threadOf.GetOrAdd(own, Environment.CurrentManagedThreadId) == Environment.CurrentManagedThreadId;
        });
        List<bool> same = [];

        work.Run(Enumerable.Range(0, 1000), same.Add, CancellationToken.None);

        Assert.All(same, Assert.True);
        Assert.InRange(threadOf.Count, 1, 3);
    }

    [Fact]
    public void SlowTaker_HoldsTheStreamBack()
    {
        int drawn = 0;
        int taken = 0;
        int mostAhead = 0;
        OrderedWork<int, int> work = new(2, () => item => item);

        work.Run(
            Enumerable.Range(0, Many).Select(item =>
            {
                // One is drawn before there is room for it.
                mostAhead = Math.Max(mostAhead, Interlocked.Increment(ref drawn) - 1 - Volatile.Read(ref taken));
                return item;
            }),
            _ =>
            {
                if (taken % 1000 == 0)
                {
                    Thread.Sleep(5);
                }

                Interlocked.Increment(ref taken);
            },
            CancellationToken.None);

        Assert.Equal(Many, taken);
        Assert.InRange(mostAhead, 1, work.MostAhead);
    }

    [Fact]
    public void NothingThatIsDone_IsKept()
    {
        OrderedWork<object, byte[]> work = new(2, () => _ => new byte[1000]);
        List<WeakReference> made = [];
        int taken = 0;
        int mostAlive = 0;

        work.Run(Items(made), _ => CountNowAndThen(), CancellationToken.None);

        Assert.Equal(Many, taken);

        // Those in work, and what the queues have not yet written over.
        Assert.InRange(mostAlive, 1, 4 * work.MostAhead);

        void CountNowAndThen()
        {
            taken++;
            if (taken % 1000 == 0)
            {
                GC.Collect();
                lock (made)
                {
                    mostAlive = Math.Max(mostAlive, made.Count(item => item.IsAlive));
                }
            }
        }

        static IEnumerable<object> Items(List<WeakReference> made)
        {
            for (int i = 0; i < Many; i++)
            {
                object item = new();
                lock (made)
                {
                    made.Add(new WeakReference(item));
                }

                yield return item;
            }
        }
    }

    [Fact]
    public void FaultInTheStream_ComesAfterWhatWasDrawnBefore()
    {
        OrderedWork<int, int> work = new(2, () => item => item);
        List<int> got = [];

        Assert.Throws<InvalidOperationException>(() => work.Run(Broken(), got.Add, CancellationToken.None));

        Assert.Equal([1, 2], got);

        static IEnumerable<int> Broken()
        {
            yield return 1;
            yield return 2;
            throw new InvalidOperationException();
        }
    }

    [Fact]
    public void Stop_EndsAnEndlessStream()
    {
        using CancellationTokenSource stop = new();
        OrderedWork<int, int> work = new(2, () => item => item);
        int taken = 0;

        Assert.ThrowsAny<OperationCanceledException>(() => work.Run(
            Endless(),
            _ =>
            {
                if (++taken == 100)
                {
                    stop.Cancel();
                }
            },
            stop.Token));

        Assert.Equal(100, taken);

        static IEnumerable<int> Endless()
        {
            while (true)
            {
                yield return 0;
            }
        }
    }
}
