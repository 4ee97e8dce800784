using System.Collections.Frozen;
using System.Diagnostics;
using System.Globalization;

namespace FieldCheck.Fuzz;

/// <summary>Changes texts by chance and checks what is made of them, going on from those with a new kind of answer.</summary>
/// <param name="target">What reads them.</param>
/// <param name="seed">Decides all of it.</param>
/// <param name="folder">Where what was found is kept; null for nowhere.</param>
/// <param name="corpus">The folder whose corpus is written anew; null to leave it.</param>
internal sealed class FuzzRun(FuzzTarget target, int seed, string? folder, string? corpus)
{
    private const int Longest = 1 << 20;
    private const int MostFound = 20;

    // Far above what any text takes, on the slowest of machines with other work to do.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    private readonly Dictionary<string, string> _shortest = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _found = new(StringComparer.Ordinal);
    private readonly Random _random = new(seed);
    private volatile string _current = "";
    private string? _watched;
    private long _cases;
    private long _slowest;

    /// <summary>Runs for a time.</summary>
    /// <returns>0; 1 where something was found.</returns>
    internal int For(TimeSpan time)
    {
        Timer watch = new(_ => EndIfHanging(), null, Patience, Patience);
        Stopwatch clock = Stopwatch.StartNew();
        List<string> pool = [.. target.Seeds, .. FuzzCorpus.Of(target.Name)];
        foreach (string text in pool)
        {
            Try(text);
        }

        while (clock.Elapsed < time && _found.Count < MostFound)
        {
            string text = pool[_random.Next(pool.Count)];
            for (int change = _random.Next(1, 6); change > 0 && text.Length < Longest; change--)
            {
                text = target.Change(text, pool[_random.Next(pool.Count)], _random);
            }

            if (Try(text) && text.Length < 1 << 13)
            {
                pool.Add(text);
            }
        }

        watch.Dispose();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{target.Name}: seed {seed}, {clock.Elapsed.TotalMinutes:0.0} min, {_cases} texts, {_shortest.Count} kinds of answer, "
                + $"the slowest {Stopwatch.GetElapsedTime(0, _slowest).TotalSeconds:0.00} s, {_found.Count} found"));
        Keep();
        return _found.Count == 0 ? 0 : 1;
    }

    // True: a kind of answer that was not there yet.
    private bool Try(string text)
    {
        _cases++;
        _current = text;
        long start = Stopwatch.GetTimestamp();
        string? fault = FaultOf(text, out IReadOnlySet<string> kinds);
        long taken = Stopwatch.GetTimestamp() - start;
        if (taken > _slowest)
        {
            _slowest = taken;
            Write("slowest", text);
        }

        if (fault is not null)
        {
            if (_found.TryAdd(fault, text))
            {
                _found[fault] = Shrunk(text, fault);
                Console.WriteLine($"FOUND {fault}\n{_found[fault]}\n");
                Write($"found-{_found.Count}", _found[fault]);
            }

            return false;
        }

        bool hasNew = false;
        foreach (string kind in kinds)
        {
            bool isNew = !_shortest.TryGetValue(kind, out string? before);
            if (isNew || text.Length < before!.Length)
            {
                _shortest[kind] = text;
            }

            hasNew |= isNew;
        }

        return hasNew;
    }

    private string? FaultOf(string text, out IReadOnlySet<string> kinds)
    {
        kinds = FrozenSet<string>.Empty;
        try
        {
            kinds = target.Check(text);
            return null;
        }
        catch (BrokenPromiseException broken)
        {
            return broken.Message;
        }
        catch (Exception fault)
        {
            // Two faults are the same where the same line of the program throws.
            string at = (fault.StackTrace ?? "").Split('\n')[0].Trim();
            return $"{fault.GetType().Name} {at}";
        }
    }

    /// <summary>The text with as much taken out as leaves the fault.</summary>
    private string Shrunk(string text, string fault)
    {
        for (int piece = text.Length / 2; piece > 0; piece /= 2)
        {
            for (int at = 0; at + piece <= text.Length;)
            {
                string less = text.Remove(at, piece);
                bool isFault = FaultOf(less, out _) == fault;
                text = isFault ? less : text;
                at += isFault ? 0 : piece;
            }
        }

        return text;
    }

    private void EndIfHanging()
    {
        string text = _current;
        if (ReferenceEquals(text, _watched))
        {
            Console.WriteLine($"{target.Name}: seed {seed}: HANGS after {_cases} texts, {text.Length} characters long");
            Write("hangs", text);
            Console.Out.Flush();
            Process.GetCurrentProcess().Kill();
        }

        _watched = text;
    }

    private void Keep()
    {
        Dictionary<string, IReadOnlySet<string>> kinds = _shortest.Values
            .Distinct(StringComparer.Ordinal)
            .Where(text => text.Length <= FuzzCorpus.Longest)
            .ToDictionary(text => text, target.Check, StringComparer.Ordinal);
        IReadOnlyList<string> few = FuzzCorpus.Fewest(kinds, target.MostKept);
        for (int number = 1; number <= few.Count; number++)
        {
            Write(string.Create(CultureInfo.InvariantCulture, $"kind-{number:000}"), few[number - 1]);
        }

        if (corpus is not null)
        {
            File.WriteAllText(Path.Combine(corpus, target.Name + ".txt"), string.Concat(few.Select(text => QuotedText.Of(text) + '\n')));
        }
    }

    private void Write(string name, string text)
    {
        if (folder is not null)
        {
            Directory.CreateDirectory(folder);

            // UTF-16, for a text need not be anything that UTF-8 can hold.
            File.WriteAllText(Path.Combine(folder, $"{target.Name}-{name}"), text, System.Text.Encoding.Unicode);
        }
    }
}
