using FieldCheck.Sheet.Presets;
using FieldCheck.Sheet.Units;

namespace FieldCheck.CommandLine;

/// <summary>What the program says: results on standard output, everything else on standard error.</summary>
/// <remarks>
/// Titles and file names are other people's text, so nothing is printed that could command the terminal. A reader that
/// goes away ends the output quietly.
/// </remarks>
internal sealed class Printout(TextWriter output, TextWriter error)
{
    // EPIPE on Unix; broken pipe and "the pipe is being closed" on Windows.
    private const int UnixBrokenPipe = 32;
    private const int WindowsBrokenPipe = unchecked((int)0x8007006D);
    private const int WindowsClosingPipe = unchecked((int)0x800700E8);

    private int _passing;

    /// <summary>What writing came to: <see cref="ExitStatus.NotUsable"/> once a result could not be written.</summary>
    internal int Status { get; private set; } = ExitStatus.Holds;

    /// <summary>True: nobody takes results any more.</summary>
    internal bool IsClosed { get; private set; }

    /// <summary>Writes a result, with a line end where it has none.</summary>
    /// <param name="text">One or more lines.</param>
    internal void Result(string text) => Write(WithLineEnd(text));

    /// <summary>Writes a question, whose answer is typed on the same line.</summary>
    /// <param name="text">The question, with what parts it from the answer.</param>
    internal void Prompt(string text) => Write(text);

    /// <summary>Writes something that is no result: an error, or how to go on.</summary>
    /// <param name="text">One or more lines.</param>
    internal void Remark(string text)
    {
        Passing("");
        WriteError(Printable(WithLineEnd(text)));
    }

    /// <summary>Tells on standard error what the next remark, or the next of these, takes the place of.</summary>
    /// <param name="text">One line of our own, in ASCII; empty: takes back what stands there.</param>
    internal void Passing(string text)
    {
        if (text.Length == 0 && _passing == 0)
        {
            return;
        }

        // Blanks and returns wipe it without an escape code.
        WriteError($"\r{text.PadRight(_passing)}" + (text.Length == 0 ? "\r" : ""));
        _passing = text.Length;
    }

    /// <summary>Tells what is wrong with files, a line each.</summary>
    /// <param name="problems">The problems.</param>
    internal void Remarks(IEnumerable<FileProblem> problems)
    {
        foreach (FileProblem problem in problems)
        {
            Remark(problem.ToString());
        }
    }

    private void Write(string text)
    {
        if (IsClosed)
        {
            return;
        }

        try
        {
            output.Write(Printable(text));
            output.Flush();
        }
        catch (IOException problem)
        {
            IsClosed = true;
            if (problem.HResult is not (UnixBrokenPipe or WindowsBrokenPipe or WindowsClosingPipe))
            {
                Status = ExitStatus.NotUsable;
                Remark($"fieldcheck: the output cannot be written: {DiskFault.OfOutput(problem)}");
            }
        }
    }

    private void WriteError(string text)
    {
        try
        {
            error.Write(text);
            error.Flush();
        }
        catch (IOException)
        {
            // Nobody listens to errors any more; the exit status still tells.
        }
    }

    private static string WithLineEnd(string text) => text.EndsWith('\n') ? text : text + "\n";

    private static string Printable(string text) =>
        string.Join('\n', text.Split('\n').Select(TextSafety.ForTerminal));
}
