using System.Diagnostics;
using System.Text;

namespace FieldCheck.Tests.CommandLine;

/// <summary>Starts the program as it was built, as a shell would.</summary>
internal static class Executable
{
    private static readonly string Path = System.IO.Path.Combine(
        AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "fieldcheck.exe" : "fieldcheck");

    internal static Process Start(IEnumerable<string> words, params (string Name, string Value)[] variables) =>
        Start(Path, words, variables);

    /// <summary>Starts it from a shell script, in which $0 is the program.</summary>
    internal static Process StartFromShell(string script) => Start("/bin/sh", ["-c", script, Path], []);

    /// <summary>Gives it its input, waits for its end and collects what it said.</summary>
    internal static (int Status, string Output, string Error) Finish(this Process process, string input = "")
    {
        using (process)
        {
            Task<string> output = process.StandardOutput.ReadToEndAsync();
            Task<string> error = process.StandardError.ReadToEndAsync();
            process.StandardInput.Write(input);
            process.StandardInput.Close();
            process.WaitForExit();
            return (process.ExitCode, output.Result, error.Result);
        }
    }

    private static Process Start(string program, IEnumerable<string> words, (string Name, string Value)[] variables)
    {
        ProcessStartInfo start = new(program, words)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardInputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
            StandardOutputEncoding = Encoding.UTF8,
            WorkingDirectory = System.IO.Path.GetTempPath(),
        };
        foreach ((string name, string value) in variables)
        {
            start.Environment[name] = value;
        }

        return Process.Start(start)!;
    }
}
