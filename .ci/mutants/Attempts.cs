using System.Globalization;

namespace Mutants;

/// <summary>Tries one change after another.</summary>
internal sealed class Attempts(ChangedCode code, TrialList trials, string results)
{
    /// <summary>Deep enough for what recurses deeply; a change that never stops recursing still ends soon.</summary>
    private const int Stack = 16 << 20;

    /// <summary>Tests that noticed the last changes of a file are tried first on the next.</summary>
    private const int Remembered = 6;

    private readonly Dictionary<string, List<Trial>> _lastOf = [];

    /// <summary>Tries all that have no result yet.</summary>
    /// <returns>0, or 3: another process must go on, because a change never ended, or left something wrong behind.</returns>
    internal int Run(IEnumerable<string> changes)
    {
        HashSet<string> done = File.Exists(results) ? [.. File.ReadLines(results).Select(line => line.Split('\t')[0])] : [];
        using StreamWriter to = new(results, append: true) { AutoFlush = true };
        bool isFirst = true;
        foreach (string[] change in changes.Select(line => line.Split('\t')).Where(change => !done.Contains(change[0])))
        {
            File.WriteAllText(results + ".now", change[0]);
            (string outcome, Trial? by) = Try(int.Parse(change[0], CultureInfo.InvariantCulture), change[1]);

            // What a change before this one left behind would be taken for this one's.
            bool isSpoilt = outcome == "Killed" && by!.Run() is not null;
            if (!isSpoilt || isFirst)
            {
                to.WriteLine($"{change[0]}\t{outcome}\t{by}");
            }

            if (outcome == "Timeout" || isSpoilt)
            {
                return 3;
            }

            isFirst = false;
        }

        return 0;
    }

    private (string Outcome, Trial? By) Try(int change, string file)
    {
        List<Trial> last = _lastOf.TryGetValue(file, out List<Trial>? known) ? known : _lastOf[file] = [];
        Trial? current = null;
        bool isNoticed = false;
        Thread thread = new(
            () =>
            {
                code.Activate(change);
                foreach (Trial trial in last.Take(Remembered).Concat(trials.Trials).ToArray())
                {
                    current = trial;
                    if (trial.Run() is not null)
                    {
                        isNoticed = true;
                        return;
                    }
                }
            },
            Stack)
        {
            IsBackground = true,
        };
        thread.Start();
        if (!thread.Join(TimeSpan.FromSeconds(6 + 4 * trials.Seconds)))
        {
            return ("Timeout", current);
        }

        code.Activate(-1);
        if (isNoticed)
        {
            last.Remove(current!);
            last.Insert(0, current!);
        }

        return isNoticed ? ("Killed", current) : ("Survived", null);
    }
}
