using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;

namespace Mutants;

/// <summary>The tests of a scope, the quickest first, as measured without a change.</summary>
internal sealed record TrialList(ImmutableArray<Trial> Trials)
{
    /// <summary>How long all of them take [s].</summary>
    internal double Seconds => Trials.Sum(one => one.Seconds);

    /// <summary>Finds and times them; tests that fail by themselves are told and left out.</summary>
    /// <param name="code">Where they are.</param>
    /// <param name="asked">Namespaces, or Namespace/Class.</param>
    /// <param name="leftOut">Classes or Class.Method.</param>
    /// <param name="longest">How long a test may take [s].</param>
    /// <param name="times">Where the times are kept, for the next start.</param>
    internal static TrialList Of(
        ChangedCode code, string[] asked, ImmutableHashSet<string> leftOut, double longest, string times)
    {
        Trial[] all =
        [
            .. from type in code.Tests.GetTypes()
               where type is { IsClass: true, IsAbstract: false, Namespace: not null } && !leftOut.Contains(type.Name)
               where asked.Any(one => one.Split('/') is [string space, .. string[] name]
                   && type.Namespace == $"{code.Name}.{space}"
                   && (name is [] || name[0] == type.Name))
               from trial in Trial.Of(type)
               where !leftOut.Contains(trial.ToString())
               select trial,
        ];
        if (!File.Exists(times))
        {
            string[] kept = [.. all.Select((trial, i) => Time(trial, longest) is double seconds ? $"{i} {seconds:R}" : "").Where(line => line != "")];
            File.WriteAllLines(times, kept);
        }

        return new TrialList(
        [
            .. File.ReadLines(times)
                .Select(line => line.Split(' '))
                .Select(part => all[int.Parse(part[0], CultureInfo.InvariantCulture)] with
                {
                    Seconds = double.Parse(part[1], CultureInfo.InvariantCulture),
                })
                .OrderBy(trial => trial.Seconds),
        ]);
    }

    /// <summary>How long it takes the second time; null: it fails, or takes too long.</summary>
    private static double? Time(Trial trial, double longest)
    {
        Stopwatch first = Stopwatch.StartNew();
        string? fails = trial.Run();
        if (fails is not null || first.Elapsed.TotalSeconds > 10 * longest)
        {
            Console.WriteLine($"left out: {trial}, {fails ?? "slow"}");
            return null;
        }

        Stopwatch second = Stopwatch.StartNew();
        trial.Run();
        if (second.Elapsed.TotalSeconds > longest)
        {
            Console.WriteLine($"left out: {trial}, {second.Elapsed.TotalSeconds:F2} s");
            return null;
        }

        return second.Elapsed.TotalSeconds;
    }
}
