using System.Runtime.InteropServices;
using Terminal.Gui.App;

namespace FieldCheck.Views;

/// <summary>How often the toolkit's loop turns: fast while keys come, and hardly at all while nothing happens.</summary>
/// <remarks>
/// Left to itself the loop sleeps a fixed time each turn and no key wakes it, so a quick answer would cost a steady share
/// of a processor. Here it rests before a turn until the terminal has something to read. The toolkit takes that up on
/// another thread, which looks every 20 ms; until it has, the loop turns fast. On Windows, where the terminal cannot be
/// waited for so, it turns fast for a while after each key.
/// </remarks>
internal sealed class LoopPace
{
    private const int StandardInput = 0;
    private const short SomethingToRead = 1;
    private const long GarbageAllowed = 2 << 20;
    private const ushort WithoutSleep = ushort.MaxValue;
    private const ushort FastOnWindows = 125;
    private const ushort SlowOnWindows = 25;

    // Signals, timers and a new size of the window wait for a turn at most so long.
    private static readonly TimeSpan Rest = TimeSpan.FromMilliseconds(100);
    private static readonly TimeSpan Breath = TimeSpan.FromMilliseconds(2);

    // Longer than the toolkit needs to take up a key, and to tell Esc from the beginning of another key.
    private static readonly TimeSpan Wakefulness = TimeSpan.FromMilliseconds(100);
    private static readonly TimeSpan WakefulnessOnWindows = TimeSpan.FromSeconds(1);

    private readonly TimeProvider _clock;
    private readonly Waited[] _waited = [new Waited { Descriptor = StandardInput, Events = SomethingToRead }];
    private long? _lastKey;
    private long _allocated;

    private LoopPace(TimeProvider clock) => _clock = clock;

    /// <summary>Keeps the loop of an application at this pace.</summary>
    /// <param name="application">The application, initialised.</param>
    /// <param name="clock">The clock.</param>
    internal static void Keep(IApplication application, TimeProvider clock)
    {
        LoopPace pace = new(clock);
        if (OperatingSystem.IsWindows())
        {
            application.Keyboard.KeyDown += (_, _) => pace.Wake();
            application.Iteration += (_, _) => Application.MaximumIterationsPerSecond =
                pace.IsAwake(WakefulnessOnWindows) ? FastOnWindows : SlowOnWindows;
            return;
        }

        Application.MaximumIterationsPerSecond = WithoutSleep;
        application.Iteration += (_, _) => pace.RestBeforeTurn();
    }

    private void Wake() => _lastKey = _clock.GetTimestamp();

    private bool IsAwake(TimeSpan wakefulness) =>
        _clock.GetElapsedTime(_lastKey ??= _clock.GetTimestamp()) < wakefulness;

    private void RestBeforeTurn()
    {
        CollectGarbage();
        TimeSpan rest = IsAwake(Wakefulness) ? Breath : Rest;
        if (Poll(_waited, (nuint)_waited.Length, (int)rest.TotalMilliseconds) > 0)
        {
            Wake();
            Thread.Sleep(Breath / 2);
        }
    }

    // Between keys, so that no key waits for it; left to itself, garbage grows to the size of the processor's cache.
    private void CollectGarbage()
    {
        long allocated = GC.GetTotalAllocatedBytes();
        if (allocated - _allocated > GarbageAllowed)
        {
            _allocated = allocated;
            GC.Collect(0);
        }
    }

    [DllImport("libc", EntryPoint = "poll")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static extern int Poll([In, Out] Waited[] waited, nuint count, int milliseconds);

    [StructLayout(LayoutKind.Sequential)]
    private struct Waited
    {
        internal int Descriptor;
        internal short Events;
        internal short Happened;
    }
}
