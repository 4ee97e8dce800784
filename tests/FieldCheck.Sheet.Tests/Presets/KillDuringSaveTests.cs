using System.Diagnostics;
using System.Globalization;
using FieldCheck.Sheet.Presets;
using Xunit.Abstractions;

namespace FieldCheck.Sheet.Tests.Presets;

/// <summary>
/// A program that saves over and over is killed at random moments: each time the old file stands or the new one, whole.
/// FIELDCHECK_KILLS says how often.
/// </summary>
public sealed class KillDuringSaveTests(ITestOutputHelper output) : IDisposable
{
    private const int Kills = 25;
    private const int Lines = 20_000;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("fieldcheck-");

    private string Beam => Path.Combine(_folder.FullName, "beam.toml");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void KilledAtAnyMoment_LeavesOneFileOrTheOther_Whole()
    {
        int kills = int.Parse(
            Environment.GetEnvironmentVariable("FIELDCHECK_KILLS") ?? $"{Kills}", CultureInfo.InvariantCulture);
        byte[] one = Text("one");
        byte[] two = Text("two, which is longer");
        string first = Write("one", one);
        string second = Write("two", two);
        int ones = 0;
        int halves = 0;
        for (int kill = 0; kill < kills; kill++)
        {
            File.WriteAllBytes(Beam, two);
            SaveAndKill(first, second);
            byte[] stands = File.ReadAllBytes(Beam);
            bool isOne = stands.AsSpan().SequenceEqual(one);
            Assert.True(isOne || stands.AsSpan().SequenceEqual(two), $"after kill {kill + 1}: {stands.Length} bytes of neither");
            ones += isOne ? 1 : 0;

            // What a killed save leaves beside the file is hidden, is no beam file, and is in nobody's way.
            string[] left = [.. _folder.GetFiles().Select(file => file.FullName).Except([Beam, first, second])];
            Assert.All(left, path => Assert.StartsWith(".beam.toml.", Path.GetFileName(path), StringComparison.Ordinal));
            Assert.Equal(["beam.toml"], BeamFolder.Search(_folder.FullName, 10).Files.Select(file => Path.GetFileName(file.Path)));
            halves += left.Length;
            Array.ForEach(left, File.Delete);
        }

        output.WriteLine($"{kills} kills, {halves} of them in the middle of a save; {ones} times the one file stood.");

        // Were none killed while it saves, nothing would be proved.
        Assert.InRange(halves, 1, kills);
    }

    private static byte[] Text(string title) => System.Text.Encoding.UTF8.GetBytes(
        $"format = 1\ntitle = \"{title}\"\n" + string.Concat(Enumerable.Repeat($"# {title}\n", Lines)));

    private void SaveAndKill(string first, string second)
    {
        string program = Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "FieldCheck.Fuzz.exe" : "FieldCheck.Fuzz");
        using Process saving = Process.Start(new ProcessStartInfo(program, ["save", Beam, first, second])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        Assert.Equal("saving", saving.StandardOutput.ReadLine());
        Thread.Sleep(Random.Shared.Next(40));
        Assert.False(saving.HasExited, saving.HasExited ? saving.StandardError.ReadToEnd() : "");
        saving.Kill();
        saving.WaitForExit();
    }

    private string Write(string name, byte[] bytes)
    {
        string path = Path.Combine(_folder.FullName, name);
        File.WriteAllBytes(path, bytes);
        return path;
    }
}
