using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using FieldCheck.Sheet.Document;
using FieldCheck.Sheet.Presets;
using Xunit.Abstractions;

namespace FieldCheck.Tests.Terminal;

/// <summary>
/// The program killed at random moments while someone types: what stood on the screen a second before is kept.
/// </summary>
public sealed partial class KillTests(ITestOutputHelper output)
{
    private const int Kills = 50;
    private const int AtOnce = 6;
    private const int WordsInACell = 6;

    private static readonly TimeSpan Promise = TimeSpan.FromSeconds(1);

    // Several programs, and whatever else the machine has to do, on as few as two processors.
    private static readonly TimeSpan Margin = TimeSpan.FromSeconds(1.5);

    [TerminalFact]
    public async Task KilledAtARandomMoment_HasKeptAllThatStoodOnTheScreenASecondBefore()
    {
        int seed = Environment.GetEnvironmentVariable("FIELDCHECK_SEED") is string given
            ? int.Parse(given, CultureInfo.InvariantCulture)
            : Random.Shared.Next();
        output.WriteLine($"FIELDCHECK_SEED={seed}");
        int[] demanded = new int[Kills];

        void Typist(int first)
        {
            for (int kill = first; kill < Kills; kill += AtOnce)
            {
                try
                {
                    demanded[kill] = TypeAndKill(new Random(unchecked(seed + kill)));
                }
                catch (Exception fault)
                {
                    throw new InvalidOperationException($"FIELDCHECK_SEED={seed}, kill {kill}: {fault.Message}", fault);
                }
            }
        }

        await Task.WhenAll(Enumerable.Range(0, AtOnce).Select(first => Task.Factory.StartNew(
            () => Typist(first), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default)));

        // Were nothing demanded of any of them, nothing would be proved.
        output.WriteLine($"words demanded: {string.Join(' ', demanded)}");
        Assert.True(demanded.Count(words => words > 0) > Kills / 2, string.Join(' ', demanded));
    }

    [TerminalFact]
    public void AfterAKill_TheNextStartOffersTheWork()
    {
        using Session session = new();
        using (PseudoTerminal killed = session.Open())
        {
            killed.Press("4.25");
            killed.WaitUntil(_ => Directory.Exists(session.Kept) && Directory.EnumerateFiles(session.Kept, "*.toml").Any(), "the work kept");
            killed.Signal("KILL");
            Assert.Equal(128 + 9, killed.Finish());
        }

        using PseudoTerminal next = session.Open();
        next.WaitFor("Unsaved work from ");
        next.Press("\r");
        next.WaitFor("Here is the work that was not saved.");
        Assert.Contains("[4.25 m", next.Screen, StringComparison.Ordinal);
        next.Signal("TERM");
        Assert.Equal(128 + 15, next.Finish());
    }

    // Gives how many words had to be kept.
    private static int TypeAndKill(Random random)
    {
        using Session session = new();
        BeamDocument beam = Beam();
        File.WriteAllText(Path.Combine(session.Folder, "beam.toml"), BeamFileText.New("beam.toml", beam).Text);
        using PseudoTerminal terminal = session.Open(["beam.toml"], (100, 30));
        terminal.Press("\u001b[6~\u001b[6~\u001b[F");

        Stopwatch clock = Stopwatch.StartNew();
        List<(TimeSpan At, int Words)> seen = [];
        terminal.Written = image =>
        {
            int words = WordsOn(image.ToString());
            if (words > (seen.Count > 0 ? seen[^1].Words : 0))
            {
                seen.Add((clock.Elapsed, words));
            }
        };
        TimeSpan end = TimeSpan.FromSeconds(2.6 + (2.4 * random.NextDouble()));
        List<string> typed = [];
        while (clock.Elapsed < end)
        {
            typed.Add(string.Create(CultureInfo.InvariantCulture, $"w{typed.Count:000}"));
            foreach (char letter in typed[^1] + (typed.Count % WordsInACell == 0 ? '\r' : ' '))
            {
                terminal.Press($"{letter}");
                Thread.Sleep(random.Next(0, 60));
            }
        }

        terminal.Process.Kill();
        TimeSpan killed = clock.Elapsed;
        terminal.Finish();
        int demanded = Math.Min(
            seen.Where(sight => sight.At < killed - Promise - Margin).Select(sight => sight.Words).LastOrDefault(), typed.Count);

        Assert.True(demanded <= KeptWords(session, beam, typed), $"Of {demanded} words some are lost.");
        return demanded;
    }

    // Checks that what is kept is whole, and gives how many words it holds, in their order.
    private static int KeptWords(Session session, BeamDocument beam, List<string> typed)
    {
        if (!Directory.Exists(session.Kept) || Directory.GetFiles(session.Kept, "*.toml") is not [string file])
        {
            return 0;
        }

        string text = File.ReadAllText(file);
        Assert.StartsWith("#kept\tbeam\tbeam.toml\n", text, StringComparison.Ordinal);
        BeamDocument kept = Assert.IsType<BeamFileReading.Opened>(BeamFileText.Read("kept.toml", text)).Document;
        string notes = string.Join(' ', kept.Loads.Select(load => load.Label).Where(label => label is not null)).TrimEnd();
        Assert.StartsWith(notes, string.Join(' ', typed), StringComparison.Ordinal);
        Assert.Equal(beam, kept with { Loads = [.. kept.Loads.Select(load => load with { Label = null })] });
        return Word().Count(notes);
    }

    private static int WordsOn(string screen) => Word().Matches(screen)
        .Select(word => int.Parse(word.ValueSpan[1..], CultureInfo.InvariantCulture) + 1)
        .DefaultIfEmpty(0)
        .Max();

    private static BeamDocument Beam() => new()
    {
        Spans = [new SpanEntry { Length = "6 m" }],
        Supports = [new SupportEntry { Kind = "pin", Joint = "0" }, new SupportEntry { Kind = "roller", Joint = "1" }],
        Loads = [.. Enumerable.Repeat(new LoadEntry { Kind = "point", Force = "1 kN", At = "2 m" }, 40)],
    };

    [GeneratedRegex(@"\bw\d{3}\b")]
    private static partial Regex Word();
}
