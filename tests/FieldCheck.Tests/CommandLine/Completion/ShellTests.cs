using System.Diagnostics;
using FieldCheck.CommandLine.Completion;

namespace FieldCheck.Tests.CommandLine.Completion;

/// <summary>The scripts in the shells themselves, where this system has them.</summary>
public sealed class ShellTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("fieldcheck-");

    public ShellTests()
    {
        foreach (string name in new[] { "bearer.toml", "my beam.toml", "notes.txt", "-x.toml" })
        {
            File.WriteAllText(Path.Combine(_folder.FullName, name), "");
        }

        _folder.CreateSubdirectory("yard");
    }

    [Theory]
    [InlineData("", "./-x.toml batch bearer.toml check completion my beam.toml presets report working yard")]
    [InlineData("ch", "check")]
    [InlineData("b", "batch bearer.toml")]
    [InlineData("check ", "./-x.toml bearer.toml my beam.toml yard")]
    [InlineData("check m", "my beam.toml")]
    [InlineData("check bearer.toml ", "./-x.toml bearer.toml my beam.toml yard")]
    [InlineData("batch y", "yard")]
    [InlineData("check --j", "--json")]
    [InlineData("batch --j", "--jobs")]
    [InlineData("--at end check --j", "--json")]
    [InlineData("--at=end check --j", "--json")]
    [InlineData("check --units ", "si us")]
    [InlineData("check --units = u", "us")]
    [InlineData("check --units =", "si us")]
    [InlineData("check --at ", "")]
    [InlineData("report bearer.toml --fo", "--force")]
    [InlineData("working --s", "--short")]
    [InlineData("presets ", "")]
    [InlineData("completion ", "bash fish powershell zsh")]
    [InlineData("--p", "--paths --plain")]
    [InlineData("-- ", "-x.toml bearer.toml my beam.toml yard")]
    [InlineData("check -- b", "bearer.toml")]
    [InlineData("check bearer.toml -- -", "-x.toml")]
    [InlineData("presets -- ", "")]
    public void Bash_Proposes(string typed, string expected)
    {
        const string Bash = "/bin/bash";
        if (!File.Exists(Bash))
        {
            return;
        }

        // As bash calls it: the words so far, the last one being typed; --at=end is parted at the sign.
        string words = string.Join(' ', typed.Replace("=", " = ", StringComparison.Ordinal)
            .Split(' ').Select((word, i) => $"'{word}'")).Replace("'' '='", "'='", StringComparison.Ordinal)
            .Replace("'=' ''", "'='", StringComparison.Ordinal);
        string script = BashCompletion.Script() + $"\nCOMP_WORDS=(fieldcheck {words})\n"
            + "COMP_CWORD=$((${#COMP_WORDS[@]} - 1))\n_fieldcheck\nprintf '%s\\n' \"${COMPREPLY[@]}\"\n";

        Assert.Equal(expected, Sorted(Run(Bash, ["--norc", "-u"], script)));
    }

    [Theory]
    [InlineData("ch", "check")]
    [InlineData("check --j", "--json")]
    [InlineData("batch --j", "--jobs")]
    [InlineData("check --units ", "si us")]
    [InlineData("check --at ", "")]
    [InlineData("completion ", "bash fish powershell zsh")]
    [InlineData("check bea", "bearer.toml")]
    [InlineData("presets ", "")]
    public void Fish_Proposes(string typed, string expected)
    {
        const string Fish = "/usr/bin/fish";
        if (!File.Exists(Fish))
        {
            return;
        }

        string script = FishCompletion.Script() + $"\ncomplete -C 'fieldcheck {typed}'\n";

        Assert.Equal(expected, Sorted(Run(Fish, ["--no-config"], script)));
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private static string Sorted(string lines) => string.Join(' ', lines
        .Split('\n', StringSplitOptions.RemoveEmptyEntries)
        .Select(line => line.Split('\t')[0])
        .Order(StringComparer.Ordinal));

    private string Run(string shell, string[] options, string script)
    {
        ProcessStartInfo start = new(shell, options)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = _folder.FullName,
        };
        start.Environment["HOME"] = _folder.FullName;
        (int status, string output, string error) = Process.Start(start)!.Finish(script);
        Assert.Equal((0, ""), (status, error));
        return output;
    }
}
